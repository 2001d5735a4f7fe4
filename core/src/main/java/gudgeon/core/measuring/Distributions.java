package gudgeon.core.measuring;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t and the normal distribution, at the tails that verdicts need. */
public final class Distributions {
    /** Above this many degrees of freedom t is the normal distribution to every digit shown. */
    private static final double AS_NORMAL = 1e8;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private Distributions() {}

    /**
     * The value that Student's t exceeds with a probability.
     *
     * @param degreesOfFreedom above zero, need not be whole; infinite for the normal distribution
     * @param upperTail strictly between 0 and 1
     */
    public static double studentQuantile(double degreesOfFreedom, double upperTail) {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be above zero, not " + degreesOfFreedom);
        }
        probability(upperTail);
        if (degreesOfFreedom > AS_NORMAL) {
            return -normalQuantile(upperTail);
        }
        return -new TDistribution(degreesOfFreedom).inverseCumulativeProbability(upperTail);
    }

    /** The probability that Student's t lies below a value. */
    public static double studentBelow(double degreesOfFreedom, double value) {
        return degreesOfFreedom > AS_NORMAL
                ? normalBelow(value)
                : new TDistribution(degreesOfFreedom).cumulativeProbability(value);
    }

    /** The probability that a standard normal value lies below z; small tails keep their digits. */
    public static double normalBelow(double z) {
        return NORMAL.cumulativeProbability(z);
    }

    /** The value below which a standard normal value lies with a probability. */
    public static double normalQuantile(double probability) {
        return NORMAL.inverseCumulativeProbability(probability(probability));
    }

    static double normalDensity(double z) {
        return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    }

    private static double probability(double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException("a probability must lie strictly between 0 and 1, not at " + value);
        }
        return value;
    }
}
