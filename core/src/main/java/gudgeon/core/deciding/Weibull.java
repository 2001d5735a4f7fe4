package gudgeon.core.deciding;

import org.hipparchus.special.Gamma;

/**
 * A life that ends by wear: gone by t with chance 1 − exp(−(t/scale)^shape). Source: [MEEKER]; time in whatever unit the owner
 * counts in (km, hours, years).
 *
 * @param shape above 0; below 1 early failures, 1 chance alone, above 1 wear
 * @param scale the time by which 63.2 % are gone, above 0
 */
public record Weibull(double shape, double scale) {
    public Weibull {
        if (!(shape > 0 && Double.isFinite(shape) && scale > 0 && Double.isFinite(scale))) {
            throw new IllegalArgumentException(
                    "A life needs a shape and a scale above 0, not " + shape + " and " + scale + ".");
        }
    }

    /**
     * The life of which two things are believed, like "one in ten gone by 1,000, half by 2,000".
     *
     * @param early a share and when it is gone
     * @param late a larger share and when it is gone, later
     */
    public static Weibull from(Quantile early, Quantile late) {
        Quantile.guard(early, late);
        double shape = (logLog(late.share()) - logLog(early.share())) / Math.log(late.time() / early.time());
        return new Weibull(shape, early.time() / Math.pow(-Math.log1p(-early.share()), 1 / shape));
    }

    private static double logLog(double share) {
        return Math.log(-Math.log1p(-share));
    }

    /** The chance to be gone by a time, 0 or more. */
    public double goneBy(double time) {
        return time <= 0 ? 0 : -Math.expm1(-Math.pow(time / scale, shape));
    }

    /** The chance to be gone by {@code to}, known to be still there at {@code from}. */
    public double goneBetween(double from, double to) {
        if (!(to >= from && from >= 0)) {
            throw new IllegalArgumentException("From " + from + " to " + to + " is no span of a life.");
        }
        return -Math.expm1(Math.pow(from / scale, shape) - Math.pow(to / scale, shape));
    }

    /** The time by which a share, 0 to below 1, is gone. */
    public double quantile(double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException("The share is " + share + "; it must be 0 or more and below 1.");
        }
        return scale * Math.pow(-Math.log1p(-share), 1 / shape);
    }

    /** Mean life, scale · Γ(1 + 1/shape). */
    public double mean() {
        return scale * Gamma.gamma(1 + 1 / shape);
    }

    /** The mean of the shorter of the life and a time: ∫₀^t of the chance to be still there. */
    double meanUpTo(double time) {
        double power = Math.pow(time / scale, shape);
        double inverse = 1 / shape;
        return scale * inverse * Gamma.gamma(inverse) * Gamma.regularizedGammaP(inverse, power);
    }

    /** How fast the survivors fail at a time above 0, per unit of time. */
    double hazard(double time) {
        return shape / scale * Math.pow(time / scale, shape - 1);
    }
}
