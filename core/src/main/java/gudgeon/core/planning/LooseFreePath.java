package gudgeon.core.planning;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;

/**
 * Whether any order of any permitted actions reaches a goal without leaving a piece loose on the way, cost aside. Lifting
 * as soon as possible never stands in the way of that, so what has been done is all there is to a state.
 */
final class LooseFreePath {
    private static final int MOST_STATES = 30_000;

    private LooseFreePath() {}

    /** False only when it is certain that there is none; a search that grows too large answers true. */
    static boolean mayExist(Reach reach, BitSet permitted, Goal goal, BitSet tolerated) {
        Deque<State> open = new ArrayDeque<>();
        Set<BitSet> seen = new HashSet<>();
        open.push(reach.initial());
        while (!open.isEmpty()) {
            State state = open.pop();
            if (goal.reached(state) || seen.size() > MOST_STATES) {
                return true;
            }
            state.refresh();
            for (int a = permitted.nextSetBit(0); a >= 0; a = permitted.nextSetBit(a + 1)) {
                if (!state.done.get(a) && state.free(a)) {
                    State next = state.copy();
                    next.perform(a);
                    next.refresh();
                    reach.lifting().close(next);
                    if (next.loose(tolerated).isEmpty() && seen.add(next.done)) {
                        open.push(next);
                    }
                }
            }
        }
        return false;
    }
}
