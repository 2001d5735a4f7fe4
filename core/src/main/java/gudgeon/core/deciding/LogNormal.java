package gudgeon.core.deciding;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * An amount whose logarithm is normal: costs, times of repair.
 *
 * @param mu mean of the natural logarithm
 * @param sigma standard deviation of the natural logarithm, above 0
 */
public record LogNormal(double mu, double sigma) {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    public LogNormal {
        if (!(Double.isFinite(mu) && sigma > 0 && Double.isFinite(sigma))) {
            throw new IllegalArgumentException("A log-normal amount needs a finite mean and a spread above 0, not " + mu
                    + " and " + sigma + ".");
        }
    }

    /** The amount of which two things are believed: a share below a value, and a larger share below a larger one. */
    public static LogNormal from(Quantile low, Quantile high) {
        Quantile.guard(low, high);
        double from = NORMAL.inverseCumulativeProbability(low.share());
        double to = NORMAL.inverseCumulativeProbability(high.share());
        double sigma = Math.log(high.time() / low.time()) / (to - from);
        return new LogNormal(Math.log(low.time()) - sigma * from, sigma);
    }

    /** The mean, exp(μ + σ²/2). */
    public double mean() {
        return Math.exp(mu + sigma * sigma / 2);
    }

    /** The amount below which a share, above 0 and below 1, lies. */
    public double quantile(double share) {
        return Math.exp(mu + sigma * NORMAL.inverseCumulativeProbability(share));
    }
}
