package gudgeon.core.forecast;

/**
 * One person's time against the nominal one: log-normal.
 *
 * @param median the ratio that is exceeded half of the time
 * @param sigma standard deviation of its logarithm
 * @param timed how many timed pieces of work it rests on
 */
public record Pace(double median, double sigma, int timed) {
    /**
     * Before anything was timed: one nominal minute takes 1.8, give or take a factor of 1.65 (sigma 0.5). Typical: weak evidence,
     * common practice; the person's own record replaces it.
     */
    public static final Pace USUAL = new Pace(1.8, 0.5, 0);

    /**
     * Standard deviation of the logarithm of what is lost to a seizure: two thirds of losses lie between half and twice the
     * file's figure. Typical, common practice.
     */
    public static final double SEIZURE_SIGMA = 0.7;

    public Pace {
        if (!(median > 0 && sigma > 0) || timed < 0) {
            throw new IllegalArgumentException("a pace is positive, not " + median + " and " + sigma);
        }
    }

    /** The time that this person needs. Waits and losses to seizure do not depend on the pace. */
    public WorkTime time(Nominal nominal) {
        WorkTime.Seizure seizure = nominal.seizureChance() > 0 && nominal.seizureMinutes() > 0
                ? new WorkTime.Seizure(nominal.seizureChance(), nominal.seizureMinutes(), SEIZURE_SIGMA)
                : WorkTime.Seizure.NONE;
        return new WorkTime(nominal.waitMinutes(), median * nominal.minutes(), sigma, seizure);
    }
}
