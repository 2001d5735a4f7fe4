package gudgeon.core.planning;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Which operations of an order problem come before which in every order: those without which the closure of all others
 * does not contain it. Holds with alternatives and loose pieces are not looked at, so there may be more.
 */
final class Precedences {
    private final BitSet[] before;
    private final int[][] nearest;
    private final int[] topological;

    Precedences(OrderProblem problem) {
        int n = problem.size();
        before = new BitSet[n];
        Arrays.setAll(before, o -> new BitSet(n));
        for (int left = 0; left < n; left++) {
            BitSet reached = closure(problem, left);
            for (int o = 0; o < n; o++) {
                if (o != left && !reached.get(o)) {
                    before[o].set(left);
                }
            }
        }
        Integer[] order = new Integer[n];
        Arrays.setAll(order, o -> o);
        Arrays.sort(order, (a, b) -> Integer.compare(before[a].cardinality(), before[b].cardinality()));
        topological = Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        nearest = new int[n][];
        for (int o = 0; o < n; o++) {
            BitSet far = new BitSet(n);
            before[o].stream().forEach(p -> far.or(before[p]));
            nearest[o] = before[o].stream().filter(p -> !far.get(p)).toArray();
        }
    }

    /** Operations that come before one in every order. */
    BitSet before(int operation) {
        return before[operation];
    }

    /** Operations of a set, earlier ones first. */
    int[] sorted(BitSet operations) {
        return Arrays.stream(topological).filter(operations::get).toArray();
    }

    /** Whether the nearest predecessors of an operation are all done. */
    boolean allow(int operation, BitSet done) {
        for (int p : nearest[operation]) {
            if (!done.get(p)) {
                return false;
            }
        }
        return true;
    }

    private static BitSet closure(OrderProblem problem, int left) {
        State state = problem.reach.initial();
        BitSet reached = new BitSet();
        boolean again = true;
        while (again) {
            again = false;
            state.refresh();
            for (int o = 0; o < problem.size(); o++) {
                if (o != left && !reached.get(o) && problem.unheld(state, o)) {
                    state.perform(problem.action[o]);
                    reached.set(o);
                    again = true;
                }
            }
            if (again) {
                problem.reach.lifting().close(state);
            }
        }
        return reached;
    }
}
