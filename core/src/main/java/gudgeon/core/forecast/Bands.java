package gudgeon.core.forecast;

import java.util.List;

/**
 * Within how many minutes something is over: with a chance of 10, 50, 80 and 90 %.
 *
 * @param mean expected minutes
 */
public record Bands(double p10, double p50, double p80, double p90, double mean) {
    private static final int CELLS = 8192;
    private static final double[] LEVELS = {0.1, 0.5, 0.8, 0.9};

    /** Of a sum of pieces of work whose delays have nothing to do with each other. */
    public static Bands independent(List<WorkTime> times) {
        double mean = times.stream().mapToDouble(WorkTime::mean).sum();
        double spread = Math.sqrt(times.stream().mapToDouble(WorkTime::variance).sum());
        if (mean == 0) {
            return new Bands(0, 0, 0, 0, 0);
        }
        TimeSpread sum = TimeSpread.sum(times, TimeSpread.Grid.upTo(mean + 8 * spread + mean / 8, CELLS));
        return new Bands(
                sum.quantile(LEVELS[0]),
                sum.quantile(LEVELS[1]),
                sum.quantile(LEVELS[2]),
                sum.quantile(LEVELS[3]),
                mean);
    }

    /** Of a sum of pieces of work whose delays go together. */
    public static Bands together(List<WorkTime> times) {
        OneFate sum = OneFate.sum(times);
        return new Bands(
                sum.quantile(LEVELS[0]),
                sum.quantile(LEVELS[1]),
                sum.quantile(LEVELS[2]),
                sum.quantile(LEVELS[3]),
                times.stream().mapToDouble(WorkTime::mean).sum());
    }
}
