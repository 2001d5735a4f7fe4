package gudgeon.core.session;

import java.util.List;

/**
 * How an engine would be left if one stopped here.
 *
 * @param unsafe what forbids stopping here; empty when it may be left
 * @param openings joints that stand open to a fluid, gas or fuel and must be covered before leaving, in order
 * @param bare surfaces that must be oiled before leaving, in order
 */
public record Stand(List<Unsafe> unsafe, List<String> openings, List<String> bare) {
    /** Nothing open, nothing loose. */
    public static final Stand CLOSED = new Stand(List.of(), List.of(), List.of());

    public Stand {
        unsafe = List.copyOf(unsafe);
        openings = List.copyOf(openings);
        bare = List.copyOf(bare);
    }

    public boolean isSafe() {
        return unsafe.isEmpty();
    }

    /**
     * Something that must not be left so.
     *
     * @param about ids of the parts, joints or ready operations
     */
    public record Unsafe(Kind kind, List<String> about) {
        public Unsafe {
            about = List.copyOf(about);
        }
    }

    /** Sorts of thing that must not be left. */
    public enum Kind {
        /** A part is neither fixed, away, resting nor carried. */
        LOOSE,
        /** A joint is cracked loose, neither tight nor out, and the starter still has current. */
        CRACKED_LOOSE,
        /** Pins are in and the starter still has current. */
        PINS_AND_CURRENT,
        /** Something hangs on a jack: a jack sinks, and nobody is there to see it. */
        ON_A_JACK,
        /** Sealant is on and the joint is not together: it skins. */
        SEALANT_OPEN,
        /** A part is in its place and nothing holds it yet. */
        NOT_HELD,
        /** A joint is together and has not all of its stages. */
        HALF_TIGHTENED
    }
}
