package gudgeon.core.deciding;

/**
 * An amount given as lowest, likeliest and highest. Mean and spread by the usual rule of project planning: a sixth of the
 * range.
 *
 * @param low at least
 * @param mode likeliest
 * @param high at most
 */
public record ThreePoint(double low, double mode, double high) {
    public ThreePoint {
        if (!(low <= mode && mode <= high && Double.isFinite(low) && Double.isFinite(high))) {
            throw new IllegalArgumentException(
                    "Low, likely and high must grow: " + low + ", " + mode + ", " + high + " do not.");
        }
    }

    /** (low + 4 likely + high) / 6. */
    public double mean() {
        return (low + 4 * mode + high) / 6;
    }

    /** (high − low) / 6. */
    public double standardDeviation() {
        return (high - low) / 6;
    }
}
