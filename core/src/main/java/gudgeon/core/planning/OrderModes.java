package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * An order problem as numbers: contexts are zone and tool set, and an operation's modes are what must be done before it is
 * free, once in its own zone and, where its parts can be moved, once on the bench. Lifts are left out: whoever may be
 * moved counts as moved or not, as it suits. Holds with alternatives and loose pieces are left out too. So no order can cost
 * less than the best sequence; whether a sequence is an order must be seen by following it.
 */
final class OrderModes {
    private static final int MOST_SETS = 12;

    final Sequencing sequencing;
    /** By context: its zone. */
    final int[] zone;

    private final OrderProblem problem;
    private final Precedences precedences;
    private final List<int[]> contexts = new ArrayList<>();
    private boolean impossible;

    OrderModes(OrderProblem problem, Precedences precedences) {
        this.problem = problem;
        this.precedences = precedences;
        context(problem.start, 0);
        List<List<Sequencing.Mode>> modes = new ArrayList<>();
        for (int o = 0; o < problem.size(); o++) {
            List<Sequencing.Mode> own = new ArrayList<>();
            add(own, o, context(problem.zone[o], problem.toolSet[o]), false);
            if (problem.benchable.get(o) && problem.zone[o] != problem.bench) {
                add(own, o, context(problem.bench, problem.toolSet[o]), true);
            }
            impossible |= own.isEmpty();
            modes.add(own);
        }
        int k = contexts.size();
        zone = contexts.stream().mapToInt(c -> c[0]).toArray();
        int[][] change = new int[k][k];
        int[] leave = new int[k];
        for (int a = 0; a < k; a++) {
            for (int b = 0; b < k; b++) {
                change[a][b] = (int) (problem.travel[zone[a]][zone[b]]
                        + problem.pickUp[contexts.get(a)[1]][contexts.get(b)[1]]);
            }
            leave[a] = (int) problem.travel[zone[a]][problem.start];
        }
        sequencing = new Sequencing(modes, change, leave, zone, 0);
    }

    /** Whether some operation can never be done, whatever comes before it: then there is no order. */
    boolean impossible() {
        return impossible;
    }

    private int context(int zone, int toolSet) {
        for (int c = 0; c < contexts.size(); c++) {
            if (contexts.get(c)[0] == zone && contexts.get(c)[1] == toolSet) {
                return c;
            }
        }
        contexts.add(new int[] {zone, toolSet});
        return contexts.size() - 1;
    }

    private void add(List<Sequencing.Mode> modes, int operation, int context, boolean moved) {
        for (BitSet needs : needs(operation, moved)) {
            modes.add(new Sequencing.Mode(context, needs.stream().boxed().toList()));
        }
    }

    /** The smallest sets that let an operation be done, as far as they are few; else what all of them share. */
    private List<BitSet> needs(int operation, boolean moved) {
        BitSet shared = precedences.before(operation);
        if (enables(shared, operation, moved)) {
            return List.of(shared);
        }
        List<BitSet> found = new ArrayList<>();
        BitSet all = new BitSet();
        all.set(0, problem.size());
        all.clear(operation);
        return branch(all, operation, moved, found, new ArrayList<>()) ? found : List.of(shared);
    }

    private boolean branch(BitSet allowed, int operation, boolean moved, List<BitSet> found, List<BitSet> tried) {
        if (tried.contains(allowed) || !enables(allowed, operation, moved)) {
            return true;
        }
        tried.add(allowed);
        BitSet least = smallest(allowed, operation, moved);
        if (!found.contains(least)) {
            found.add(least);
        }
        if (found.size() > MOST_SETS || tried.size() > 20 * MOST_SETS) {
            return false;
        }
        for (int o = least.nextSetBit(0); o >= 0; o = least.nextSetBit(o + 1)) {
            BitSet fewer = (BitSet) allowed.clone();
            fewer.clear(o);
            if (!branch(fewer, operation, moved, found, tried)) {
                return false;
            }
        }
        return true;
    }

    private BitSet smallest(BitSet allowed, int operation, boolean moved) {
        BitSet least = (BitSet) allowed.clone();
        BitSet doubtful = (BitSet) allowed.clone();
        doubtful.andNot(precedences.before(operation));
        thin(least, doubtful.stream().toArray(), operation, moved);
        State state = after(least);
        least.clear();
        for (int o = 0; o < problem.size(); o++) {
            least.set(o, o != operation && state.done.get(problem.action[o]));
        }
        return least;
    }

    /** Takes out of a set what it can do without, halves first. */
    private void thin(BitSet set, int[] doubtful, int operation, boolean moved) {
        if (doubtful.length == 0) {
            return;
        }
        IntStream.of(doubtful).forEach(set::clear);
        if (enables(set, operation, moved)) {
            return;
        }
        IntStream.of(doubtful).forEach(set::set);
        if (doubtful.length > 1) {
            int half = doubtful.length / 2;
            thin(set, Arrays.copyOfRange(doubtful, 0, half), operation, moved);
            thin(set, Arrays.copyOfRange(doubtful, half, doubtful.length), operation, moved);
        }
    }

    private boolean enables(BitSet allowed, int operation, boolean moved) {
        State state = after(allowed);
        if (!problem.unheld(state, operation)) {
            return false;
        }
        if (moved) {
            for (int p : problem.parts[operation]) {
                if (!state.moved.get(p)) {
                    return false;
                }
            }
        }
        return true;
    }

    private State after(BitSet allowed) {
        State state = problem.reach.initial();
        BitSet open = (BitSet) allowed.clone();
        boolean again = true;
        while (again) {
            again = false;
            state.refresh();
            for (int o = open.nextSetBit(0); o >= 0; o = open.nextSetBit(o + 1)) {
                if (problem.unheld(state, o)) {
                    state.perform(problem.action[o]);
                    open.clear(o);
                    again = true;
                }
            }
            if (again) {
                problem.reach.lifting().close(state);
            }
        }
        return state;
    }

    /** The order that a sequence stands for, its lifts put in; empty when it is none or costs more than the sequence. */
    Optional<OrderSearch.Found> follow(SequencingSearch.Found found) {
        Walk walk = new Walk();
        long[] done = new long[sequencing.words];
        for (int context : found.contexts()) {
            long[] before = done.clone();
            sequencing.close(done, context);
            for (int o : sequencing.here[context]) {
                boolean now = (done[o >> 6] & ~before[o >> 6] & 1L << o) != 0;
                before[o >> 6] |= done[o >> 6] & 1L << o;
                if (now && !walk.perform(o, zone[context])) {
                    return Optional.empty();
                }
            }
        }
        long cost = walk.spent + problem.travel[walk.zone][problem.start];
        if (!walk.settle() || cost > found.cost()) {
            return Optional.empty();
        }
        return Optional.of(new OrderSearch.Found(
                List.copyOf(walk.steps),
                cost,
                Math.min(cost, found.lowerBound()),
                "best first over closed states, costs shared among projections",
                found.expanded()));
    }

    /** A sequence followed with all that it leaves out: lifts, holds, loose pieces. */
    private final class Walk {
        private final State state =
                State.of(problem.model, problem.reach.initial().done, new BitSet(), problem.frame);
        private final List<OrderSearch.Step> steps = new ArrayList<>();
        private int zone = problem.start;
        private int toolSet;
        private long spent;

        boolean perform(int operation, int where) {
            if (!settle()) {
                return false;
            }
            boolean again = true;
            while (again && (!problem.permitted(state, operation) || problem.zoneIn(state, operation) != where)) {
                again = liftAny(set -> true);
            }
            if (!problem.permitted(state, operation) || problem.zoneIn(state, operation) != where) {
                return false;
            }
            spent += problem.travel[zone][where] + problem.pickUp[toolSet][problem.toolSet[operation]];
            zone = where;
            toolSet = problem.toolSet[operation];
            state.perform(problem.action[operation]);
            steps.add(new OrderSearch.Step(problem.action[operation], new int[0]));
            return true;
        }

        /** Lifts what changes no zone, and what is loose; whether nothing is loose then. */
        boolean settle() {
            while (liftAny(set -> problem.harmless(state, set))) {
                // one after another
            }
            BitSet loose = state.loose(problem.tolerated);
            while (!loose.isEmpty()) {
                BitSet fallen = loose;
                if (!liftAny(set -> IntStream.of(set).anyMatch(fallen::get))) {
                    return false;
                }
                loose = state.loose(problem.tolerated);
            }
            return true;
        }

        private boolean liftAny(Predicate<int[]> which) {
            state.refresh();
            for (int[] set : problem.reach.lifting().all(state)) {
                if (which.test(set)) {
                    for (int part : set) {
                        state.moved.set(part);
                    }
                    steps.add(new OrderSearch.Step(OrderSearch.Step.LIFT, set));
                    return true;
                }
            }
            return false;
        }
    }
}
