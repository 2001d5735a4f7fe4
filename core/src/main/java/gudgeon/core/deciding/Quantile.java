package gudgeon.core.deciding;

/**
 * A share and the time by which it is gone.
 *
 * @param share above 0 and below 1
 * @param time above 0
 */
public record Quantile(double share, double time) {
    public Quantile {
        if (!(share > 0 && share < 1 && time > 0 && Double.isFinite(time))) {
            throw new IllegalArgumentException(
                    "A share must lie between 0 and 1 and a time above 0, not " + share + " and " + time + ".");
        }
    }

    static void guard(Quantile early, Quantile late) {
        if (!(late.share() > early.share() && late.time() > early.time())) {
            throw new IllegalArgumentException("The larger share must be gone later: " + early.share() + " by "
                    + early.time() + " and " + late.share() + " by " + late.time() + " do not fit.");
        }
    }
}
