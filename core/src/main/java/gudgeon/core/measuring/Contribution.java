package gudgeon.core.measuring;

/**
 * One line of a budget of uncertainty.
 *
 * @param source what it comes from; two lines with the same source in the two sides of a difference are one and the same error
 * @param standardUncertainty of the input, in the input's unit; not negative
 * @param sensitivity how much the result moves when the input moves by one, with its sign
 * @param degreesOfFreedom how well the uncertainty itself is known; infinite when it is taken as exact
 * @param spread how the input is spread, for those who draw from it; first order needs only its standard uncertainty
 */
public record Contribution(
        Source source, double standardUncertainty, double sensitivity, double degreesOfFreedom, Spread spread) {
    public Contribution {
        if (!(standardUncertainty >= 0 && Double.isFinite(standardUncertainty))) {
            throw new IllegalArgumentException(
                    "the standard uncertainty of " + source + " must be zero or more, not " + standardUncertainty);
        }
        if (!Double.isFinite(sensitivity)) {
            throw new IllegalArgumentException("the sensitivity to " + source + " must be finite, not " + sensitivity);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "the degrees of freedom of " + source + " must be above zero, not " + degreesOfFreedom);
        }
    }

    /** A line of a sample: normal, with the sample's degrees of freedom. */
    public static Contribution of(
            Source source, double standardUncertainty, double sensitivity, double degreesOfFreedom) {
        return new Contribution(source, standardUncertainty, sensitivity, degreesOfFreedom, Spread.NORMAL);
    }

    /** A line known by bounds only, taken as exactly known. */
    public static Contribution within(Source source, Spread spread, double halfWidth, double sensitivity) {
        return new Contribution(
                source, spread.standardUncertainty(halfWidth), sensitivity, Double.POSITIVE_INFINITY, spread);
    }

    /** What the result moves when the input moves by its standard uncertainty, in the result's unit, with its sign. */
    public double signed() {
        return sensitivity * standardUncertainty;
    }

    /** The share of the result's standard uncertainty, in the result's unit. */
    public double component() {
        return Math.abs(signed());
    }

    /** The same with the sensitivity multiplied. */
    public Contribution times(double factor) {
        return new Contribution(source, standardUncertainty, sensitivity * factor, degreesOfFreedom, spread);
    }
}
