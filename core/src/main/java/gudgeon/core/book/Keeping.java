package gudgeon.core.book;

import java.util.List;

/** Where things are, what is shut, what is bought and counted. */
public sealed interface Keeping extends Body {
    /**
     * A bag or box.
     *
     * @param bag what is written on it
     * @param contents what is in it, in words; empty when an entry about a joint says so
     * @param place where it lies; empty when not said
     */
    record BagMade(String bag, String contents, String place) implements Keeping {
        public BagMade {
            Said.something(bag, "a bag's number");
        }
    }

    /** Somebody was at a bag. */
    record BagOpened(String bag, String why) implements Keeping {}

    /** A bag lies elsewhere now. */
    record BagMoved(String bag, String place) implements Keeping {}

    /** A part lies elsewhere now. */
    record PartMoved(String part, String place) implements Keeping {}

    /** A part is marked, so that its position, orientation or mate cannot be lost. */
    record Marked(List<String> parts, String how) implements Keeping {
        public Marked {
            parts = List.copyOf(parts);
        }
    }

    /** A new item takes the place of an old one; what was measured on the old one does not judge it. */
    record Renewed(String part, String spec) implements Keeping {}

    /** An opening is shut against dirt. */
    record Covered(String opening, String with) implements Keeping {}

    record Uncovered(String opening) implements Keeping {}

    /**
     * Rags, cloths or plugs go in.
     *
     * @param where in what
     * @param count how many
     */
    record RagIn(String where, int count) implements Keeping {
        public RagIn {
            Said.counts(count, "a count of rags");
        }
    }

    record RagOut(String where, int count) implements Keeping {
        public RagOut {
            Said.counts(count, "a count of rags");
        }
    }

    /** A support, strap, pin or the like that the file does not have. */
    record AidFitted(String aid, String about) implements Keeping {}

    record AidRemoved(String aid) implements Keeping {}

    /** A bag or tray was counted. Two counts are both kept. */
    record Counted(String bag, int count) implements Keeping {
        public Counted {
            Said.counts(count, "a count");
        }
    }

    /**
     * Something is on its way.
     *
     * @param price of all, in the currency of the file; negative when not said
     */
    record Ordered(String spec, int count, double price) implements Keeping {
        public Ordered {
            Said.counts(count, "a count");
        }
    }

    /**
     * A tool is in the toolbox, lent, or not there. The last word on it holds, in all jobs of one toolbox.
     *
     * @param tool what steps call it: {@code socket 13 mm}
     * @param from from whom it is borrowed; empty otherwise
     */
    record ToolMarked(String tool, Whose whose, String from) implements Keeping {
        public ToolMarked {
            Said.something(tool, "a tool");
        }
    }

    /** Where a tool comes from. */
    enum Whose {
        OWNED,
        BORROWED,
        MISSING
    }

    /**
     * One fact of a new piece beside that of the old one.
     *
     * @param spec what arrived
     * @param fact which fact: count, length, size, holes
     * @param was the old one
     * @param now the new one
     */
    record Compared(String spec, String fact, String was, String now) implements Keeping {
        public Compared {
            Said.something(spec, "what is compared");
            Said.something(fact, "the fact that is compared");
        }
    }

    /** Something arrived. @param compared whether it was laid beside the old one and agrees */
    record Received(String spec, int count, boolean compared, String note) implements Keeping {
        public Received {
            Said.counts(count, "a count");
        }
    }
}
