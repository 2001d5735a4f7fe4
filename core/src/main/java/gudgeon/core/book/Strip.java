package gudgeon.core.book;

import java.util.List;

/** What came apart, and how it was found. */
public sealed interface Strip extends Body {
    /** Work on a joint or preparation begins. */
    record OperationStarted(String operation) implements Strip {}

    /**
     * A joint is undone, or a preparation is done, by plan or out of it.
     *
     * @param operation id of the joint or ready operation
     * @param cut whether it was destroyed in the way the file gives
     * @param minutes how long it took; 0 when not said
     */
    record OperationDone(String operation, boolean cut, double minutes) implements Strip {
        public OperationDone {
            Said.minutes(minutes);
        }
    }

    /** A joint is put together again, or a preparation taken back, by hand and not as a step of the build. */
    record PutBack(String operation) implements Strip {}

    /**
     * Parts come away as one piece and go somewhere.
     *
     * @param parts all of them
     * @param place where they lie; empty when not said
     * @param aside whether they still hang on the engine
     */
    record Removed(List<String> parts, String place, boolean aside) implements Strip {
        public Removed {
            parts = List.copyOf(parts);
            if (parts.isEmpty()) {
                throw new IllegalArgumentException("something is removed");
            }
        }
    }

    /**
     * A joint as it was found. Two counts of one joint are both kept.
     *
     * @param joint id
     * @param count fasteners found
     * @param pieces what they were, where it was looked at
     * @param bag the bag they went into; empty when not said
     * @param differs how it differs from the file, in words; empty when it does not
     */
    record AsFound(String joint, int count, List<Piece> pieces, String bag, String differs) implements Strip {
        public AsFound {
            Said.counts(count, "a count");
            pieces = List.copyOf(pieces);
        }

        /** A count alone. */
        public static AsFound counted(String joint, int count, String bag) {
            return new AsFound(joint, count, List.of(), bag, "");
        }
    }

    /**
     * Some fasteners of a joint that are alike.
     *
     * @param count how many
     * @param thread as measured, M8x1.25; empty when not said
     * @param length_mm under the head; 0 when not said
     * @param position which hole or where, in words; empty when not said
     */
    record Piece(int count, String thread, double length_mm, String position) {
        public Piece {
            Said.counts(count, "a count");
        }
    }

    /** How something flexible runs. */
    record Routing(String part, String text) implements Strip {}
}
