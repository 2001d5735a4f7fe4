package gudgeon.core.forecast;

import java.util.List;

/**
 * The distribution of a time on a grid of minutes 0, h, 2h, ... Immutable.
 *
 * <p>A time is put on the grid by sharing its mass between the two points about it so that its mean stays exact; that adds to
 * the variance of each piece of work between 0 and h²/4, and moves no quantile of a sum of n pieces by more than n h (in
 * practice far less; {@link #errorBound}). Sums of independent times are exact on the grid, to rounding. What lies beyond the
 * grid is kept as one mass.
 */
public final class TimeSpread {
    private final Grid grid;
    private final double[] mass;
    private final int pieces;

    private TimeSpread(Grid grid, double[] mass, int pieces) {
        this.grid = grid;
        this.mass = mass;
        this.pieces = pieces;
    }

    /**
     * A grid.
     *
     * @param step minutes between two points
     * @param cells number of points, a power of two
     */
    public record Grid(double step, int cells) {
        public Grid {
            if (!(step > 0) || cells < 2 || Integer.bitCount(cells) != 1) {
                throw new IllegalArgumentException("a grid has a positive step and a power of two of points, not step "
                        + step + " and " + cells + " points");
            }
        }

        /** A grid of {@code cells} points that ends at some minutes. */
        public static Grid upTo(double minutes, int cells) {
            return new Grid(minutes / cells, cells);
        }
    }

    /** No time at all. */
    public static TimeSpread zero(Grid grid) {
        double[] mass = new double[grid.cells()];
        mass[0] = 1;
        return new TimeSpread(grid, mass, 0);
    }

    /** The distribution of one piece of work. */
    public static TimeSpread of(WorkTime time, Grid grid) {
        TimeSpread spread = logNormal(time.median(), time.sigma(), 1, grid);
        WorkTime.Seizure seizure = time.seizure();
        if (seizure.counts()) {
            spread = spread.plus(logNormal(seizure.median(), seizure.sigma(), seizure.chance(), grid));
        }
        return new TimeSpread(grid, spread.later(time.idle()).mass, 1);
    }

    /** With a chance a log-normal time, otherwise none. */
    private static TimeSpread logNormal(double median, double sigma, double chance, Grid grid) {
        double[] mass = new double[grid.cells()];
        double h = grid.step();
        double before = 0;
        double here = 0;
        for (int k = 0; k < mass.length; k++) {
            double after = excess(median, sigma, (k + 1) * h);
            mass[k] = Math.max(0, chance * (after - 2 * here + before) / h);
            before = here;
            here = after;
        }
        mass[0] += 1 - chance;
        return new TimeSpread(grid, mass, 1);
    }

    /** The expectation of what is left of {@code t} after the time: E max(t - T, 0). */
    private static double excess(double median, double sigma, double t) {
        if (median == 0 || sigma == 0) {
            return Math.max(0, t - median);
        }
        double z = Math.log(t / median) / sigma;
        return t * Normal.below(z) - median * Math.exp(sigma * sigma / 2) * Normal.below(z - sigma);
    }

    /**
     * This time and then another, independent of it.
     *
     * @throws IllegalArgumentException when the grids differ
     */
    public TimeSpread plus(TimeSpread other) {
        if (!grid.equals(other.grid)) {
            throw new IllegalArgumentException("times on different grids cannot be added: " + grid + ", " + other.grid);
        }
        return new TimeSpread(grid, Convolution.of(mass, other.mass), pieces + other.pieces);
    }

    /** The sum of independent pieces of work. */
    public static TimeSpread sum(List<WorkTime> times, Grid grid) {
        TimeSpread sum = zero(grid);
        for (WorkTime time : times) {
            sum = sum.plus(of(time, grid));
        }
        return sum;
    }

    private TimeSpread later(double minutes) {
        if (minutes == 0) {
            return this;
        }
        double[] moved = new double[mass.length];
        int whole = (int) Math.min(mass.length, Math.floor(minutes / grid.step()));
        double rest = minutes / grid.step() - whole;
        for (int k = 0; k + whole < mass.length; k++) {
            moved[k + whole] += mass[k] * (1 - rest);
            if (k + whole + 1 < mass.length) {
                moved[k + whole + 1] += mass[k] * rest;
            }
        }
        return new TimeSpread(grid, moved, pieces);
    }

    /** The same, but never before some minutes: who is early waits. */
    public TimeSpread notBefore(double minutes) {
        int first = (int) Math.min(mass.length, Math.ceil(minutes / grid.step()));
        if (first <= 0) {
            return this;
        }
        double[] moved = mass.clone();
        double early = 0;
        for (int k = 0; k < first; k++) {
            early += moved[k];
            moved[k] = 0;
        }
        if (first < moved.length) {
            moved[first] += early;
        }
        return new TimeSpread(grid, moved, pieces);
    }

    /** The chance that it is over within some minutes. */
    public double within(double minutes) {
        if (minutes < 0) {
            return 0;
        }
        double at = minutes / grid.step() + 0.5;
        int whole = (int) Math.min(mass.length, Math.floor(at));
        double sum = 0;
        for (int k = 0; k < whole; k++) {
            sum += mass[k];
        }
        return Math.min(1, whole < mass.length ? sum + mass[whole] * (at - whole) : sum);
    }

    /**
     * The minutes within which it is over with a chance; infinite when they lie beyond the grid.
     *
     * @param p strictly between 0 and 1
     */
    public double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a quantile lies strictly between 0 and 1, not at " + p);
        }
        double sum = 0;
        for (int k = 0; k < mass.length; k++) {
            if (sum + mass[k] >= p) {
                return Math.max(0, (k - 0.5 + (p - sum) / mass[k]) * grid.step());
            }
            sum += mass[k];
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The mean of what lies on the grid, in minutes. */
    public double mean() {
        double sum = 0;
        for (int k = 0; k < mass.length; k++) {
            sum += k * mass[k];
        }
        return sum * grid.step();
    }

    /** The variance of what lies on the grid, in square minutes. */
    public double variance() {
        double mean = mean() / grid.step();
        double sum = 0;
        for (int k = 0; k < mass.length; k++) {
            sum += (k - mean) * (k - mean) * mass[k];
        }
        return sum * grid.step() * grid.step();
    }

    /** The chance of what lies beyond the grid. */
    public double beyond() {
        double sum = 0;
        for (double m : mass) {
            sum += m;
        }
        return Math.max(0, 1 - sum);
    }

    /** No quantile is wrong by more than these minutes because of the grid. */
    public double errorBound() {
        return (pieces + 0.5) * grid.step();
    }
}
