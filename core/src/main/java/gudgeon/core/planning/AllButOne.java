package gudgeon.core.planning;

import java.util.BitSet;

/**
 * What a set of actions reaches with one of them left out, for every one of them: halves are let in and left out by turns,
 * so that the closures share all but their last steps. Cost: about as many steps as the set has members, times the
 * logarithm of their number, instead of times their number.
 */
final class AllButOne {
    private final Reach reach;
    private final BitSet all;
    private final int[] members;
    private final Visitor visitor;

    /** Is told what is reached without an action; the state may be kept. */
    interface Visitor {
        void without(int action, State reached);

        /** Whether there is nothing to tell of any action, when all of them are left out and this is reached still. */
        default boolean settled(State reached) {
            return false;
        }
    }

    private AllButOne(Reach reach, BitSet all, Visitor visitor) {
        this.reach = reach;
        this.all = all;
        this.members = all.stream().toArray();
        this.visitor = visitor;
    }

    static void visit(Reach reach, BitSet set, Visitor visitor) {
        if (!set.isEmpty()) {
            AllButOne run = new AllButOne(reach, set, visitor);
            run.split(reach.initial(), 0, run.members.length);
        }
    }

    /** The actions without which the others do not reach a goal that all together reach. */
    static BitSet forced(Reach reach, BitSet set, Goal goal) {
        BitSet forced = new BitSet();
        visit(reach, set, new Visitor() {
            @Override
            public void without(int action, State reached) {
                forced.set(action, !goal.reached(reached));
            }

            @Override
            public boolean settled(State reached) {
                return goal.reached(reached);
            }
        });
        return forced;
    }

    /** @param state everything outside the range, closed */
    private void split(State state, int from, int to) {
        if (visitor.settled(state)) {
            return;
        }
        if (to - from == 1) {
            visitor.without(members[from], state);
            return;
        }
        int middle = (from + to) >>> 1;
        split(extended(state, from, middle), from, middle);
        split(extended(state, middle, to), middle, to);
    }

    private State extended(State state, int from, int to) {
        BitSet permitted = (BitSet) all.clone();
        for (int k = from; k < to; k++) {
            permitted.clear(members[k]);
        }
        State larger = state.copy();
        reach.extend(larger, permitted);
        return larger;
    }
}
