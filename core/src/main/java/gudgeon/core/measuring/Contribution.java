package gudgeon.core.measuring;

/**
 * One line of a budget of uncertainty.
 *
 * @param source what it comes from; two lines with the same source in the two sides of a difference are one and the same error
 * @param standardUncertainty of the input, in the input's unit; not negative
 * @param sensitivity how much the result moves when the input moves by one, with its sign
 * @param degreesOfFreedom how well the uncertainty itself is known; infinite when it is taken as exact
 */
public record Contribution(String source, double standardUncertainty, double sensitivity, double degreesOfFreedom) {
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

    /** A contribution whose uncertainty is taken as exactly known, and counts as it is. */
    public static Contribution of(String source, double standardUncertainty) {
        return new Contribution(source, standardUncertainty, 1, Double.POSITIVE_INFINITY);
    }

    /** A contribution with the degrees of freedom of a sample. */
    public static Contribution of(String source, double standardUncertainty, double degreesOfFreedom) {
        return new Contribution(source, standardUncertainty, 1, degreesOfFreedom);
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
        return new Contribution(source, standardUncertainty, sensitivity * factor, degreesOfFreedom);
    }
}
