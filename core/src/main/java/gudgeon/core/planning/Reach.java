package gudgeon.core.planning;

import java.util.BitSet;

/**
 * The greedy sweep: everything that a set of permitted actions can do, with all lifts. It reaches whatever any order of
 * them can, because freedom and lifting are monotone.
 */
final class Reach {
    private final Lifting lifting;
    private final BitSet start;
    private final Model model;

    /** @param start actions done before the plan starts */
    Reach(Model model, Lifting lifting, BitSet start) {
        this.model = model;
        this.lifting = lifting;
        this.start = start;
    }

    Model model() {
        return model;
    }

    Lifting lifting() {
        return lifting;
    }

    /** The state before the plan, with all lifts that are possible by then. */
    State initial() {
        State state = new State(model, start);
        lifting.close(state);
        return state;
    }

    /** The closure of the permitted actions from the start. */
    State sweep(BitSet permitted) {
        State state = initial();
        extend(state, permitted);
        return state;
    }

    /** Carries a closed state on with what is permitted. */
    void extend(State state, BitSet permitted) {
        BitSet open = (BitSet) permitted.clone();
        open.andNot(state.done);
        boolean again = true;
        while (again) {
            again = false;
            state.refresh();
            for (int a = open.nextSetBit(0); a >= 0; a = open.nextSetBit(a + 1)) {
                if (state.free(a)) {
                    state.perform(a);
                    open.clear(a);
                    again = true;
                }
            }
            if (again) {
                lifting.close(state);
            }
        }
    }

    /** Whether a goal is reached with only these actions. */
    boolean reaches(BitSet permitted, Goal goal) {
        return goal.reached(sweep(permitted));
    }
}
