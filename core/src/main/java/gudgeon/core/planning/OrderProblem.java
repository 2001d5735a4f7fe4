package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Question 2 for one chosen set: its operations numbered 0..n-1, their zones and tool sets, the cost of changing over, and
 * the constraints of order that question 1 does not look at.
 */
final class OrderProblem {
    final Reach reach;
    final Model model;
    final BitSet tolerated;
    /** Pieces follow from the chosen joints alone. */
    final State.Frame frame;

    /** By operation: its action. */
    final int[] action;
    /** By operation: parts whose moving takes it to the bench; null when it stays in its zone. */
    final int[][] parts;

    final int[] zone;
    final int[] toolSet;
    /** By operation: operations that must come earlier. */
    final int[][] earlier;
    /** By operation: alternatives of actions that must be intact while it is done; null when nothing is held. */
    final int[][][] hold;
    /** Operations that some hold of another operation wants intact. */
    final BitSet held = new BitSet();
    /** Operations whose parts can all be moved without them, so that they might be done on the bench. */
    final BitSet benchable = new BitSet();

    final List<String> zones = new ArrayList<>();
    final List<List<String>> toolSets = new ArrayList<>();
    /** Zone to zone, seconds, closed under shortest paths. */
    final long[][] travel;
    /** Tool set to tool set, seconds. */
    final long[][] pickUp;

    final int bench;
    final int start;

    /** A constraint of order that may be left out to find the ones that contradict each other. */
    sealed interface Constraint {
        record Before(Precedence pair) implements Constraint {}

        record Held(String operation, List<String> joints) implements Constraint {}
    }

    OrderProblem(
            Reach reach, StripRequest request, BitSet chosen, BitSet tolerated, List<Constraint> constraints) {
        this.reach = reach;
        this.model = reach.model();
        this.tolerated = tolerated;
        action = sorted(model, chosen);
        BitSet undone = (BitSet) reach.initial().done.clone();
        undone.or(chosen);
        frame = State.Frame.of(model, undone);
        int n = action.length;
        Engine engine = model.engine;
        engine.workplace().zones().forEach(z -> zones.add(z.id()));
        bench = zones.indexOf(Zone.BENCH);
        start = zones.indexOf(engine.workplace().startZone());
        travel = travel(engine.workplace().zones());
        parts = new int[n][];
        zone = new int[n];
        toolSet = new int[n];
        toolSets.add(List.of());
        for (int o = 0; o < n; o++) {
            place(o, chosen, request);
        }
        pickUp = pickUp(engine.workplace().toolChangeSeconds());
        earlier = new int[n][];
        hold = new int[n][][];
        constrain(constraints);
    }

    int size() {
        return action.length;
    }

    /** Every constraint of order that concerns a chosen set. */
    static List<Constraint> constraints(Model model, BitSet chosen) {
        List<Constraint> constraints = new ArrayList<>();
        for (Precedence pair : model.engine.rules().precedences()) {
            if (chosen.get(model.action(pair.first())) && chosen.get(model.action(pair.then()))) {
                constraints.add(new Constraint.Before(pair));
            }
        }
        for (int a = chosen.nextSetBit(0); a >= 0; a = chosen.nextSetBit(a + 1)) {
            Joint.Hold hold = holdOf(model, a);
            if (!hold.alternatives().isEmpty()) {
                Set<String> joints = new LinkedHashSet<>();
                hold.alternatives().forEach(joints::addAll);
                constraints.add(new Constraint.Held(model.actionId(a), List.copyOf(joints)));
            }
        }
        return constraints;
    }

    private static Joint.Hold holdOf(Model model, int action) {
        return action < model.joints
                ? model.engine.joints().get(action).freedom().hold()
                : model.engine.ready().get(action - model.joints).effect().hold();
    }

    /** Records and make-safe operations first, then joints and the rest in file order: the order among equals. */
    private static int[] sorted(Model model, BitSet chosen) {
        List<Integer> order = new ArrayList<>(chosen.stream().boxed().toList());
        order.sort((a, b) -> {
            int byRank = Integer.compare(rank(model, a), rank(model, b));
            return byRank != 0 ? byRank : Integer.compare(a, b);
        });
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int rank(Model model, int action) {
        if (action < model.joints) {
            return 3;
        }
        return switch (model.engine.ready().get(action - model.joints).kind()) {
            case RECORD -> 0;
            case MAKE_SAFE -> 1;
            case CRACK_LOOSE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL -> 2;
        };
    }

    private void place(int operation, BitSet chosen, StripRequest request) {
        int a = action[operation];
        int judge = model.judgedAt[a];
        if (judge >= 0) {
            parts[operation] = model.jointParts[judge];
            BitSet others = (BitSet) chosen.clone();
            others.clear(a);
            State without = reach.sweep(others);
            boolean all = true;
            for (int p : parts[operation]) {
                all &= without.moved.get(p);
            }
            benchable.set(operation, all);
        }
        String where = a < model.joints
                ? model.engine.joints().get(a).work().zone()
                : Steps.ready(model, a).zone();
        zone[operation] = zones.indexOf(where);
        toolSet[operation] = toolSet(Steps.tools(model, request, a));
    }

    private int toolSet(List<String> tools) {
        List<String> set = tools.stream().distinct().sorted().toList();
        int known = toolSets.indexOf(set);
        if (known < 0) {
            toolSets.add(set);
            return toolSets.size() - 1;
        }
        return known;
    }

    static long[][] travel(List<Zone> zones) {
        int n = zones.size();
        long[][] travel = new long[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                travel[a][b] = a == b ? 0 : zones.get(a).backSeconds() + zones.get(b).goSeconds();
            }
        }
        for (int via = 0; via < n; via++) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    travel[a][b] = Math.min(travel[a][b], travel[a][via] + travel[via][b]);
                }
            }
        }
        return travel;
    }

    private long[][] pickUp(long each) {
        int n = toolSets.size();
        long[][] seconds = new long[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                List<String> inHand = toolSets.get(a);
                seconds[a][b] = each * toolSets.get(b).stream().filter(tool -> !inHand.contains(tool)).count();
            }
        }
        return seconds;
    }

    private void constrain(List<Constraint> constraints) {
        Map<Integer, Integer> operationOf = new LinkedHashMap<>();
        for (int o = 0; o < action.length; o++) {
            operationOf.put(action[o], o);
        }
        List<List<Integer>> before = new ArrayList<>();
        for (int o = 0; o < action.length; o++) {
            before.add(new ArrayList<>());
        }
        for (Constraint constraint : constraints) {
            switch (constraint) {
                case Constraint.Before pair -> {
                    Integer first = operationOf.get(model.action(pair.pair().first()));
                    Integer then = operationOf.get(model.action(pair.pair().then()));
                    if (first != null && then != null) {
                        before.get(then).add(first);
                    }
                }
                case Constraint.Held held -> holdFast(model.action(held.operation()), operationOf, before);
            }
        }
        for (int o = 0; o < action.length; o++) {
            earlier[o] = before.get(o).stream().mapToInt(Integer::intValue).toArray();
        }
    }

    /** A hold with one alternative is a precedence: the operation comes before every joint that must be intact. */
    private void holdFast(int holding, Map<Integer, Integer> operationOf, List<List<Integer>> before) {
        int[][] alternatives = holdOf(model, holding).alternatives().stream()
                .map(model::actions)
                .toArray(int[][]::new);
        Integer operation = operationOf.get(holding);
        if (operation == null) {
            return;
        }
        hold[operation] = alternatives;
        for (int[] alternative : alternatives) {
            for (int joint : alternative) {
                Integer holder = operationOf.get(joint);
                if (holder != null && alternatives.length == 1) {
                    before.get(holder).add(operation);
                } else if (holder != null) {
                    held.set(holder);
                }
            }
        }
    }

    /** Whether an operation would take the last hold from one that is still to be done. */
    boolean spoils(State state, int operation) {
        if (!held.get(operation)) {
            return false;
        }
        State after = state.copy();
        after.perform(action[operation]);
        for (int o = 0; o < action.length; o++) {
            if (o != operation && !after.done.get(action[o]) && !isHeld(after, o)) {
                return true;
            }
        }
        return false;
    }

    /** Whether an operation may be done in a state: free, pairs kept, held. */
    boolean permitted(State state, int operation) {
        return unheld(state, operation) && isHeld(state, operation) && !spoils(state, operation);
    }

    /** Permitted but for holds with alternatives, which are not monotone. */
    boolean unheld(State state, int operation) {
        for (int before : earlier[operation]) {
            if (!state.done.get(action[before])) {
                return false;
            }
        }
        return state.free(action[operation]);
    }

    private boolean isHeld(State state, int operation) {
        int[][] alternatives = hold[operation];
        if (alternatives == null) {
            return true;
        }
        for (int[] alternative : alternatives) {
            boolean intact = true;
            for (int joint : alternative) {
                intact &= !state.done.get(joint);
            }
            if (intact) {
                return true;
            }
        }
        return false;
    }

    /** The zone in which an operation is done in a state. */
    int zoneIn(State state, int operation) {
        if (benchable.get(operation)) {
            for (int p : parts[operation]) {
                if (!state.moved.get(p)) {
                    return zone[operation];
                }
            }
            return bench;
        }
        return zone[operation];
    }

    /** Whether lifting a set leaves the zones of all remaining operations as they are, now and later. */
    boolean harmless(State state, int[] set) {
        for (int o = benchable.nextSetBit(0); o >= 0; o = benchable.nextSetBit(o + 1)) {
            if (!state.done.get(action[o])) {
                for (int p : parts[o]) {
                    for (int lifted : set) {
                        if (p == lifted) {
                            return false;
                        }
                    }
                }
            }
        }
        return true;
    }
}
