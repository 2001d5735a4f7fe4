package gudgeon.core.planning;

import java.util.List;

/**
 * No plan exists, with the reasons found.
 *
 * @param reasons what stands in the way, most telling first; never empty
 * @param landmarks the proof: the clauses over which no hitting set exists, an empty one last when there is one
 */
public record Blocked(List<Reason> reasons, List<List<String>> landmarks) implements StripAnswer {
    public Blocked {
        reasons = List.copyOf(reasons);
        landmarks = landmarks.stream().map(List::copyOf).toList();
    }

    /**
     * One thing that stands in the way.
     *
     * @param kind what sort of obstacle
     * @param about ids of the parts, joints, operations or circuits concerned
     * @param massKilograms for {@code TOO_HEAVY}: the lightest set that would have to be lifted; 0 otherwise
     * @param unblockedBy what would unblock it: names of ways of lifting for {@code TOO_HEAVY}, joint ids for the others
     */
    public record Reason(Kind kind, List<String> about, double massKilograms, List<String> unblockedBy) {
        public Reason {
            about = List.copyOf(about);
            unblockedBy = List.copyOf(unblockedBy);
        }
    }

    /** Sorts of obstacle. */
    public enum Kind {
        /** A set of pieces is heavier than every way of lifting allows. */
        TOO_HEAVY,
        /** A joint is for licensed practice only. */
        LICENSED,
        /** A joint will not come and has no destructive way. */
        WILL_NOT_COME,
        /** A flexible joint does not carry what would hang on it and has no strap. */
        WOULD_HANG,
        /** Pieces would be loose and nothing carries them. */
        LOOSE,
        /** No order satisfies these two constraints together. */
        ORDER,
        /** No order was found within the allowed number of states, and none was proven not to exist. */
        UNDECIDED,
        /** Nothing in the file lets this be done. */
        NO_WAY
    }
}
