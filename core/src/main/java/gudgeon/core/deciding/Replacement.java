package gudgeon.core.deciding;

/**
 * When to renew a part that wears: before it fails, at a planned cost, or when it has failed, at a larger one. Source:
 * [BARLOWHUNTER], the long-run cost per unit of time.
 *
 * @param life the part's life
 * @param planned cost of renewing it in time, above 0
 * @param failed cost when it fails, above 0
 */
public record Replacement(Weibull life, double planned, double failed) {
    public Replacement {
        if (!(planned > 0 && failed > 0 && Double.isFinite(planned) && Double.isFinite(failed))) {
            throw new IllegalArgumentException(
                    "Both costs must be above 0, not " + planned + " and " + failed + ".");
        }
    }

    /** Cost per unit of time when it is renewed at an age or when it fails before. */
    public double costRate(double age) {
        double gone = life.goneBy(age);
        return (planned * (1 - gone) + failed * gone) / life.meanUpTo(age);
    }

    /** Cost per unit of time when it runs until it fails. */
    public double runToFailureRate() {
        return failed / life.mean();
    }

    /** Whether renewing in time ever pays: only when it wears and failing costs more. */
    public boolean pays() {
        return life.shape() > 1 && failed > planned;
    }

    /**
     * The age at which renewing costs least: the root of hazard(t) · E min(life, t) − gone(t) = planned / (failed − planned),
     * whose left side grows for a life that wears.
     *
     * @throws IllegalArgumentException when renewing in time never pays
     */
    public double bestAge() {
        if (!pays()) {
            throw new IllegalArgumentException("Renewing in time pays only when the part wears (a shape above 1, not "
                    + life.shape() + ") and failing costs more than renewing (" + failed + " against " + planned + ").");
        }
        double wanted = planned / (failed - planned);
        double high = life.scale();
        while (gain(high) < wanted) {
            high *= 2;
            if (!Double.isFinite(high) || high > 1e6 * life.scale()) {
                throw new IllegalArgumentException("Renewing in time saves next to nothing here; let it run.");
            }
        }
        double low = 0;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (gain(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double gain(double age) {
        return age <= 0 ? 0 : life.hazard(age) * life.meanUpTo(age) - life.goneBy(age);
    }

    /**
     * The interval of renewing a thing that is mended at once whenever it fails and is then as it was: scale · (planned /
     * (mend · (shape − 1)))^(1/shape).
     *
     * @param mend cost of one mending, above 0
     */
    public static double bestInterval(Weibull life, double planned, double mend) {
        if (!(life.shape() > 1 && planned > 0 && mend > 0)) {
            throw new IllegalArgumentException("An interval needs a life that wears and costs above 0.");
        }
        return life.scale() * Math.pow(planned / (mend * (life.shape() - 1)), 1 / life.shape());
    }

    /** Cost per unit of time at that interval. */
    public static double intervalRate(Weibull life, double planned, double mend) {
        double interval = bestInterval(life, planned, mend);
        return (planned + mend * Math.pow(interval / life.scale(), life.shape())) / interval;
    }
}
