package gudgeon.core.planning;

import gudgeon.core.planning.BuildPlan.Correction;
import gudgeon.core.planning.BuildPlan.CorrectionKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What was done in the strip, replayed step by step: when each joint and ready operation was done, what was lifted together,
 * and for every condition the alternative that held then. Conditions that nothing met are kept as corrections.
 */
final class BuildHistory {
    /** A literal as in {@link Model#lift}, with the state in which it held. */
    record Met(int literal, State before) {}

    /** What was lifted together and when. */
    record Lifted(BitSet parts, int position, State before) {}

    final Model model;
    /** By action: its position in the strip, or -1. */
    final int[] position;
    /** By action: the state before it was done; absent when it was not. */
    final State[] before;
    /** By part: the index of its lift, or -1. */
    final int[] liftOf;

    final List<Lifted> lifts = new ArrayList<>();
    final BitSet cut = new BitSet();
    final List<Correction> corrections = new ArrayList<>();
    final State end;
    final int length;
    /** Joints undone in the strip, in file order. */
    private final int[] joints;

    BuildHistory(Model model, List<BuildRequest.Step> steps) {
        this.model = model;
        position = new int[model.actions];
        Arrays.fill(position, -1);
        before = new State[model.actions];
        liftOf = new int[model.parts];
        Arrays.fill(liftOf, -1);
        end = new State(model, new BitSet());
        length = steps.size();
        for (int at = 0; at < length; at++) {
            BuildRequest.Step step = steps.get(at);
            if (step.kind() == StripPlan.Kind.LIFT) {
                lift(step, at);
            } else {
                perform(model.action(step.id()), step.kind() == StripPlan.Kind.CUT, at);
            }
        }
        end.refresh();
        joints = IntStream.range(0, model.joints).filter(this::happened).toArray();
    }

    private void lift(BuildRequest.Step step, int at) {
        end.refresh();
        BitSet set = new BitSet();
        for (String id : step.parts()) {
            int part = model.part(id);
            if (end.piece[part] != end.piece[model.base] && !end.moved.get(part)) {
                Arrays.stream(end.partsOfPiece(end.piece[part])).forEach(set::set);
            }
        }
        if (set.isEmpty()) {
            return;
        }
        set.stream().forEach(part -> liftOf[part] = lifts.size());
        lifts.add(new Lifted(set, at, end.copy()));
        end.moved.or(set);
    }

    private void perform(int action, boolean isCut, int at) {
        if (position[action] >= 0) {
            return;
        }
        end.refresh();
        position[action] = at;
        before[action] = end.copy();
        cut.set(action, isCut && action < model.joints);
        end.perform(action);
    }

    /** Joints undone in the strip, in file order. */
    int[] joints() {
        return joints.clone();
    }

    /** Ready operations done in the strip, in file order. */
    int[] readyOperations() {
        return IntStream.range(model.joints, model.actions)
                .filter(this::happened)
                .toArray();
    }

    boolean happened(int action) {
        return position[action] >= 0;
    }

    State stateBefore(int action) {
        State state = before[action];
        if (state == null) {
            throw new IllegalArgumentException("not done in the strip: " + model.actionId(action));
        }
        return state;
    }

    /** Whether a part was away when an action of the strip was done. */
    boolean wasAway(int part, int action) {
        return stateBefore(action).moved.get(part);
    }

    /** Whether all parts of a joint were away when an action was done. */
    boolean onBench(int joint, int action) {
        return IntStream.of(model.jointParts[joint]).allMatch(part -> wasAway(part, action));
    }

    /** The lift that closes a joint on the way back, or -1. */
    int closingLift(int joint) {
        return IntStream.of(model.jointParts[joint])
                .filter(part -> liftOf[part] >= 0 && !wasAway(part, joint))
                .map(part -> liftOf[part])
                .min()
                .orElse(-1);
    }

    /**
     * For every clause the literals of its first alternative that held; clauses that nothing met become corrections.
     *
     * @param judge as for {@link State#holds}
     */
    List<Met> met(int[][][] clauses, State state, int @org.jspecify.annotations.Nullable [] judge, Doubt doubt) {
        List<Met> met = new ArrayList<>();
        for (int[][] clause : clauses) {
            Optional<int[]> held = Arrays.stream(clause)
                    .filter(alternative -> state.holds(new int[][][] {{alternative}}, judge))
                    .findFirst();
            held.ifPresentOrElse(
                    alternative -> Arrays.stream(alternative).forEach(literal -> met.add(new Met(literal, state))),
                    () -> correct(doubt.kind(), doubt.about(), ids(clause)));
        }
        return met;
    }

    /** The same for a lift, whose own parts count as away. */
    List<Met> metByLift(int part, Lifted lifted) {
        State state = lifted.before().copy();
        state.moved.or(lifted.parts());
        return met(model.lift[part], state, null, new Doubt(CorrectionKind.LIFT, model.partId(part)));
    }

    /** What a condition that does not hold is reported as. */
    record Doubt(CorrectionKind kind, String about) {}

    void correct(CorrectionKind kind, String about, List<String> ids) {
        Correction correction = new Correction(kind, about, ids);
        if (!corrections.contains(correction)) {
            corrections.add(correction);
        }
    }

    private List<String> ids(int[][] clause) {
        LinkedHashSet<String> ids = new LinkedHashSet<>();
        for (int[] alternative : clause) {
            for (int literal : alternative) {
                ids.add(literal < 0 ? model.actionId(~literal) : model.partId(literal));
            }
        }
        return List.copyOf(ids);
    }

    /** Rigid joints that had been undone around the piece of a part: while they are open the piece stays by itself. */
    List<Integer> cutAround(int part, State state) {
        state.refresh();
        List<Integer> around = new ArrayList<>();
        for (int j = state.done.nextSetBit(0); j >= 0 && j < model.joints; j = state.done.nextSetBit(j + 1)) {
            if (model.flexible[j] || !happened(j)) {
                continue;
            }
            boolean inside = IntStream.of(model.jointParts[j]).anyMatch(p -> state.piece[p] == state.piece[part]);
            boolean outside = IntStream.of(model.jointParts[j]).anyMatch(p -> state.piece[p] != state.piece[part]);
            if (inside && outside) {
                around.add(j);
            }
        }
        return around;
    }
}
