package gudgeon.core.bolting;

import java.util.OptionalDouble;

/**
 * Whether a bolt that was tightened into yield may be used once more, by what it measures.
 *
 * <p>Common practice: a bolt that has grown longer than its limit, or thinner at its thinnest place than its limit, is renewed;
 * one that the file calls single-use is renewed whatever it measures. A reading within its uncertainty of the limit decides
 * nothing.
 *
 * @param singleUse whether it may never be used again
 * @param length measured length under the head against the longest allowed; empty when not measured
 * @param neck measured smallest diameter against the smallest allowed; empty when not measured
 */
public record StretchCheck(boolean singleUse, Compared length, Compared neck) {
    /**
     * A reading against its limit.
     *
     * @param reading_mm what was measured; empty when it was not
     * @param limit_mm the limit; empty when it is not known
     * @param uncertainty_mm expanded uncertainty of the reading, at least 0
     */
    public record Compared(OptionalDouble reading_mm, OptionalDouble limit_mm, double uncertainty_mm) {
        /** Nothing measured and no limit known. */
        public static final Compared NOTHING = new Compared(OptionalDouble.empty(), OptionalDouble.empty(), 0);

        public Compared {
            if (reading_mm.isPresent() && !(reading_mm.getAsDouble() > 0)
                    || limit_mm.isPresent() && !(limit_mm.getAsDouble() > 0)) {
                throw new IllegalArgumentException("readings and limits of a bolt are above 0");
            }
            if (!(uncertainty_mm >= 0)) {
                throw new IllegalArgumentException("an uncertainty is at least 0, not " + uncertainty_mm);
            }
        }

        /** A reading against a limit. */
        public static Compared of(double reading_mm, double limit_mm, double uncertainty_mm) {
            return new Compared(OptionalDouble.of(reading_mm), OptionalDouble.of(limit_mm), uncertainty_mm);
        }

        /** @param sign 1 when the limit is the largest allowed, -1 when it is the smallest */
        private Verdict verdict(int sign) {
            if (reading_mm.isEmpty() || limit_mm.isEmpty()) {
                return Verdict.NOT_MEASURED;
            }
            double room_mm = sign * (limit_mm.getAsDouble() - reading_mm.getAsDouble());
            if (room_mm >= uncertainty_mm) {
                return Verdict.WITHIN;
            }
            return room_mm < -uncertainty_mm ? Verdict.BEYOND : Verdict.TOO_CLOSE;
        }
    }

    /** What a reading says. */
    public enum Verdict {
        WITHIN,
        BEYOND,
        TOO_CLOSE,
        NOT_MEASURED
    }

    /** What to do with the bolt. */
    public enum Advice {
        MAY_BE_USED_AGAIN,
        RENEW,
        /** Too close to call: measure more finely, or renew. */
        MEASURE_OR_RENEW,
        /** Neither length nor neck was compared. */
        NOTHING_KNOWN
    }

    /** The verdict on the length. */
    public Verdict lengthVerdict() {
        return length.verdict(1);
    }

    /** The verdict on the neck. */
    public Verdict neckVerdict() {
        return neck.verdict(-1);
    }

    /** What to do. */
    public Advice advice() {
        Verdict onLength = lengthVerdict();
        Verdict onNeck = neckVerdict();
        if (singleUse || onLength == Verdict.BEYOND || onNeck == Verdict.BEYOND) {
            return Advice.RENEW;
        }
        if (onLength == Verdict.TOO_CLOSE || onNeck == Verdict.TOO_CLOSE) {
            return Advice.MEASURE_OR_RENEW;
        }
        return onLength == Verdict.NOT_MEASURED && onNeck == Verdict.NOT_MEASURED
                ? Advice.NOTHING_KNOWN
                : Advice.MAY_BE_USED_AGAIN;
    }
}
