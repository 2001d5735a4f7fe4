package gudgeon.core.measuring;

/** When a result counts as within or beyond a limit, by the edition of the standard that a job keeps to. Source: [ISO14253-1]. */
public enum DecisionRule {
    /** Edition 1998: farther inside, or outside, than the expanded uncertainty. */
    GUARD_BAND_1998,
    /** Edition 2017: within with a probability of at least 95 %, or beyond with one. About 1.65 standard uncertainties on one side. */
    PROBABILITY_2017;

    static final double SURE = 0.95;

    /** What the rule says of a result. */
    Outcome outcome(Estimate result, Limits limits) {
        return switch (this) {
            case GUARD_BAND_1998 -> {
                double expanded = result.expanded();
                double room = limits.room(result.value());
                yield room >= expanded ? Outcome.WITHIN : room < -expanded ? Outcome.BEYOND : Outcome.TOO_CLOSE;
            }
            case PROBABILITY_2017 -> {
                double probability = conformance(result, limits);
                yield probability >= SURE
                        ? Outcome.WITHIN
                        : 1 - probability >= SURE ? Outcome.BEYOND : Outcome.TOO_CLOSE;
            }
        };
    }

    /**
     * The probability that the true value lies within the limits, given the result and no other knowledge; by Student's t where
     * the uncertainty is itself known from few readings. Source: [JCGM106] 7.2.
     */
    static double conformance(Estimate result, Limits limits) {
        double uncertainty = result.standardUncertainty();
        if (uncertainty == 0) {
            return limits.room(result.value()) >= 0 ? 1 : 0;
        }
        double freedom = result.budget().effectiveDegreesOfFreedom();
        double above = limits.upper().isPresent()
                ? Distributions.studentBelow(freedom, (result.value() - limits.most()) / uncertainty)
                : 0;
        double below = limits.lower().isPresent()
                ? Distributions.studentBelow(freedom, (limits.least() - result.value()) / uncertainty)
                : 0;
        return Math.max(0, 1 - above - below);
    }

    /** What a rule can say. */
    public enum Outcome {
        WITHIN,
        BEYOND,
        /** The uncertainty straddles the limit. */
        TOO_CLOSE
    }
}
