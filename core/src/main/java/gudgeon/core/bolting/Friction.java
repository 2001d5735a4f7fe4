package gudgeon.core.bolting;

import java.util.Arrays;
import java.util.Optional;

/**
 * Coefficients of friction of a bolted joint.
 *
 * @param thread in the thread, above 0 and at most 1
 * @param head under the head or nut that is turned, above 0 and at most 1
 */
public record Friction(double thread, double head) {
    public Friction {
        if (!(thread > 0 && thread <= 1 && head > 0 && head <= 1)) {
            throw new IllegalArgumentException(
                    "coefficients of friction lie above 0 and at most at 1, not " + thread + " and " + head);
        }
    }

    /** The same in the thread and under the head. */
    public static Friction of(double both) {
        return new Friction(both, both);
    }

    /**
     * A range of friction: what is known of a thread before it is tightened.
     *
     * @param least the most slippery
     * @param most the roughest; in neither coefficient below the least
     */
    public record Range(Friction least, Friction most) {
        public Range {
            if (most.thread() < least.thread() || most.head() < least.head()) {
                throw new IllegalArgumentException("a range of friction goes from the least to the most");
            }
        }

        /** The same range in the thread and under the head. */
        public static Range of(double least, double most) {
            return new Range(Friction.of(least), Friction.of(most));
        }

        /** Half way between. */
        public Friction middle() {
            return new Friction((least.thread() + most.thread()) / 2, (least.head() + most.head()) / 2);
        }
    }

    /**
     * States of a thread with the range of friction that goes with them. Typical values: confirm from a manual or a trial.
     *
     * <p>Source: [VDI2230] friction classes A to D, from memory; which state belongs to which is common practice.
     */
    public enum State {
        /** Grease or paste with solid lubricant. */
        PASTE(0.04, 0.10, "paste", "anti-seize", "molybdenum", "waxed"),
        /** Engine oil on thread and under the head. */
        OILED(0.08, 0.16, "oiled", "oil", "greased", "grease"),
        /** Clean, nothing on it. */
        DRY(0.14, 0.24, "dry", "plated"),
        /** Fluid thread-lock or sealant in the thread, still wet. */
        LOCKED(0.10, 0.24, "locked", "sealed", "thread-lock");

        private final Range range;
        private final String[] words;

        State(double least, double most, String... words) {
            this.range = Range.of(least, most);
            this.words = words;
        }

        /** The typical range. */
        public Range range() {
            return range;
        }

        /** The state that a word of an engine file names; empty for a word that is not known. */
        public static Optional<State> find(String word) {
            String key = word.strip().toLowerCase(java.util.Locale.ROOT);
            return Arrays.stream(values())
                    .filter(state -> Arrays.asList(state.words).contains(key))
                    .findFirst();
        }
    }
}
