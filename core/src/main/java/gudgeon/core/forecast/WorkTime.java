package gudgeon.core.forecast;

/**
 * How long one piece of work takes, in minutes: a waiting time that is what it is, plus log-normal work, plus, with some
 * chance, a log-normal loss because something is seized. The loss is hours added, not a factor.
 *
 * @param idle minutes that pass whatever one does; 0 or more
 * @param median median minutes of the work; 0 for a mere wait
 * @param sigma standard deviation of the logarithm of the work; 0 when it is known exactly
 * @param seizure what is lost when it is seized
 */
public record WorkTime(double idle, double median, double sigma, Seizure seizure) {
    public WorkTime {
        if (!(idle >= 0 && median >= 0 && sigma >= 0 && Double.isFinite(idle + median + sigma))) {
            throw new IllegalArgumentException(
                    "times are 0 or more and finite, not idle " + idle + ", median " + median + ", sigma " + sigma);
        }
    }

    /**
     * The tail.
     *
     * @param chance 0 to 1
     * @param median median minutes lost
     * @param sigma standard deviation of the logarithm of the loss
     */
    public record Seizure(double chance, double median, double sigma) {
        /** Nothing can be seized. */
        public static final Seizure NONE = new Seizure(0, 0, 0);

        public Seizure {
            if (!(chance >= 0 && chance <= 1 && median >= 0 && sigma >= 0 && Double.isFinite(median + sigma))) {
                throw new IllegalArgumentException("a chance lies between 0 and 1 and a loss is 0 or more, not chance "
                        + chance + ", median " + median + ", sigma " + sigma);
            }
        }

        boolean counts() {
            return chance > 0 && median > 0;
        }
    }

    /** Log-normal work alone. */
    public static WorkTime of(double median, double sigma) {
        return new WorkTime(0, median, sigma, Seizure.NONE);
    }

    /** A wait alone. */
    public static WorkTime waiting(double minutes) {
        return new WorkTime(minutes, 0, 0, Seizure.NONE);
    }

    /** The expected minutes. */
    public double mean() {
        return idle + mean(median, sigma) + seizure.chance() * mean(seizure.median(), seizure.sigma());
    }

    /** The variance, in square minutes. */
    public double variance() {
        double lost = mean(seizure.median(), seizure.sigma());
        double squareLost = lost * lost * Math.exp(seizure.sigma() * seizure.sigma());
        double ofLoss = seizure.chance() * squareLost - Math.pow(seizure.chance() * lost, 2);
        double work = mean(median, sigma);
        return work * work * Math.expm1(sigma * sigma) + ofLoss;
    }

    private static double mean(double median, double sigma) {
        return median * Math.exp(sigma * sigma / 2);
    }
}
