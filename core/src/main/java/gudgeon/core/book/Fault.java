package gudgeon.core.book;

import java.util.List;

/** What resisted, what was tried, what state things are in. */
public sealed interface Fault extends Body {
    /** What can be the matter with a fastener. */
    enum Kind {
        SEIZED,
        ROUNDED,
        SNAPPED,
        STRIPPED,
        MISSING
    }

    /** How an attempt ended. */
    enum Outcome {
        /** It did not help. */
        NO,
        /** It is out and whole. */
        OUT,
        /** It is out, drilled; the hole must be looked at. */
        DRILLED
    }

    /**
     * Fasteners of a joint give trouble.
     *
     * @param joint id
     * @param fasteners ids of the fasteners; empty when it is not said which
     * @param note a word on it; may be empty
     */
    record Trouble(String joint, Kind kind, List<String> fasteners, String note) implements Fault {
        public Trouble {
            fasteners = List.copyOf(fasteners);
        }
    }

    /**
     * A rung of the rescue ladder was tried.
     *
     * @param joint id
     * @param rung id of the rung, see {@link RescueLadder}; or the owner's own words
     * @param minutes how long it took; 0 when not said
     */
    record Rescue(String joint, List<String> fasteners, String rung, double minutes, Outcome outcome) implements Fault {
        public Rescue {
            fasteners = List.copyOf(fasteners);
            Said.minutes(minutes);
        }
    }

    /** What a part looks like. */
    record Condition(String part, String text) implements Fault {}
}
