package gudgeon.core.measuring;

/**
 * A lower and an upper limit, in one unit.
 *
 * @param lower finite
 * @param upper not below the lower
 */
public record TwoLimits(double lower, double upper) {
    public TwoLimits {
        if (!(Double.isFinite(lower) && Double.isFinite(upper) && lower <= upper)) {
            throw new IllegalArgumentException(
                    "a lower limit of " + lower + " and an upper of " + upper + " leave nothing between");
        }
    }

    /**
     * The zone in which conformance is proven: the limits drawn in by the expanded uncertainty. Source: [ISO14253-1] edition
     * 1998.
     *
     * @throws IllegalArgumentException when the uncertainty leaves nothing between the limits
     */
    public TwoLimits conformanceZone(double expandedUncertainty) {
        return new TwoLimits(lower + expandedUncertainty, upper - expandedUncertainty);
    }

    /** The limits beyond which non-conformance is proven: pushed out by the expanded uncertainty. Source: [ISO14253-1]. */
    public TwoLimits nonconformanceLimits(double expandedUncertainty) {
        return new TwoLimits(lower - expandedUncertainty, upper + expandedUncertainty);
    }

    /** The least distance of a process mean from a limit, over three standard deviations: Cpk. */
    public double processCapability(double mean, double standardDeviation) {
        return Math.min(upper - mean, mean - lower) / (3 * positive(standardDeviation));
    }

    /** The share of a normal process beyond the limits. */
    public double beyond(double mean, double standardDeviation) {
        double sd = positive(standardDeviation);
        return Distributions.normalBelow((lower - mean) / sd) + Distributions.normalBelow((mean - upper) / sd);
    }

    private static double positive(double standardDeviation) {
        if (!(standardDeviation > 0)) {
            throw new IllegalArgumentException("a standard deviation must be above zero, not " + standardDeviation);
        }
        return standardDeviation;
    }
}
