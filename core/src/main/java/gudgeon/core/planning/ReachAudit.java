package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Finds parts of an engine that no plan can reach, and the conditions that contradict each other. */
public final class ReachAudit {
    private ReachAudit() {}

    /**
     * A part that cannot be taken off.
     *
     * @param part its id
     * @param licensedOnly whether only joints for licensed practice stand in the way; that is no fault of the file
     * @param conflict ids of joints and ready operations whose conditions together make it unreachable, none of them
     *     superfluous; empty for all but the first few parts
     */
    public record Unreachable(String part, boolean licensedOnly, List<String> conflict) {
        public Unreachable {
            conflict = List.copyOf(conflict);
        }
    }

    private static final int EXPLAINED = 5;

    /** Parts, the base left out, that are never off and moved whatever is done and however strong the lift. */
    public static List<Unreachable> unreachable(Engine engine) {
        Model model = new Model(engine);
        State end = sweep(model, false, new BitSet());
        State licensed = sweep(model, true, new BitSet());
        List<Unreachable> found = new ArrayList<>();
        int explained = 0;
        for (int p = 0; p < model.parts; p++) {
            if (p == model.base || isOff(end, p)) {
                continue;
            }
            boolean licensedOnly = isOff(licensed, p);
            boolean explain = !licensedOnly && explained++ < EXPLAINED;
            found.add(new Unreachable(model.partId(p), licensedOnly, explain ? conflict(model, off(p)) : List.of()));
        }
        return found;
    }

    /** Parts that are moved in the untouched engine, because nothing but slack holds them, however strong the lift. */
    public static List<String> movedUntouched(Engine engine) {
        Model model = new Model(engine);
        State state = new State(model, new BitSet());
        new Lifting(model, Long.MAX_VALUE, false).close(state);
        return state.moved.stream().mapToObj(model::partId).toList();
    }

    /** Joints and ready operations that are never free, whatever is done; licensed practice is not in the way. */
    public static List<String> neverFree(Engine engine) {
        Model model = new Model(engine);
        State end = sweep(model, true, new BitSet());
        List<String> never = new ArrayList<>();
        for (int a = 0; a < model.actions; a++) {
            if (!end.done.get(a)) {
                never.add(model.actionId(a));
            }
        }
        return never;
    }

    private static Goal off(int part) {
        BitSet parts = new BitSet();
        parts.set(part);
        return new Goal(parts, parts, new BitSet(), List.of());
    }

    private static boolean isOff(State end, int part) {
        return end.moved.get(part) && !end.linked().get(part);
    }

    /** Conditions are dropped one by one as long as the goal stays out of reach; the rest contradict each other. */
    static List<String> conflict(Model model, Goal goal) {
        BitSet dropped = new BitSet();
        for (int a = 0; a < model.actions; a++) {
            dropped.set(a);
            if (goal.reached(sweep(model, true, dropped))) {
                dropped.clear(a);
            }
        }
        List<String> ids = new ArrayList<>();
        for (int a = 0; a < model.actions; a++) {
            if (!dropped.get(a)) {
                ids.add(model.actionId(a));
            }
        }
        return ids;
    }

    /** Everything that can be done when the conditions of some actions are dropped. */
    private static State sweep(Model model, boolean licensed, BitSet dropped) {
        State state = new State(model, new BitSet());
        Lifting lifting = new Lifting(model, Long.MAX_VALUE, false);
        lifting.close(state);
        boolean again = true;
        while (again) {
            again = false;
            state.refresh();
            for (int a = 0; a < model.actions; a++) {
                boolean allowed = licensed || !model.licensed[a];
                if (!state.done.get(a) && allowed && (dropped.get(a) || state.free(a))) {
                    state.perform(a);
                    again = true;
                }
            }
            if (again) {
                lifting.close(state);
            }
        }
        return state;
    }
}
