package gudgeon.core.finding;

import org.hipparchus.special.Erf;

/**
 * Chance of a reading: good with a normal scatter, or bad and anywhere in a range. Inside the range it is a density, at its ends a
 * mass (the reading says only "this or beyond"), so that over all readings it sums to one.
 */
final class ReadingChance {
    private static final double ROOT = Math.sqrt(2 * Math.PI);

    private ReadingChance() {}

    static double of(double value, double mean, double scatter, double bad, double[] range) {
        if (value <= range[0]) {
            return (1 - bad) * below((range[0] - mean) / scatter);
        }
        if (value >= range[1]) {
            return (1 - bad) * below((mean - range[1]) / scatter);
        }
        double z = (value - mean) / scatter;
        return (1 - bad) * Math.exp(-z * z / 2) / (scatter * ROOT) + bad / (range[1] - range[0]);
    }

    /**
     * The good part alone at evenly spaced readings, falling from the first by the step: the bell by its own recurrence from the
     * reading nearest to the mean outwards, two products for each.
     */
    static void falling(double first, double step, double mean, double scatter, double[] range, double[] into) {
        int n = into.length;
        int nearest = (int) Math.max(0, Math.min(n - 1, Math.rint((first - mean) / step)));
        double z = (first - nearest * step - mean) / scatter;
        double delta = step / scatter;
        double top = Math.exp(-z * z / 2) / (scatter * ROOT);
        double shrink = Math.exp(-delta * delta);
        into[nearest] = top;
        double factor = Math.exp(z * delta - delta * delta / 2);
        for (int i = nearest + 1; i < n; i++) {
            into[i] = into[i - 1] * factor;
            factor *= shrink;
        }
        factor = Math.exp(-z * delta - delta * delta / 2);
        for (int i = nearest - 1; i >= 0; i--) {
            into[i] = into[i + 1] * factor;
            factor *= shrink;
        }
        if (first >= range[1] || first - (n - 1) * step <= range[0]) {
            for (int i = 0; i < n; i++) {
                double value = first - i * step;
                if (value <= range[0] || value >= range[1]) {
                    into[i] = of(value, mean, scatter, 0, range);
                }
            }
        }
    }

    /** The good part alone. */
    static double good(double value, double mean, double scatter, double[] range) {
        return of(value, mean, scatter, 0, range);
    }

    /** The bad part alone; 0 at the ends of the range. */
    static double bad(double value, double[] range) {
        return value <= range[0] || value >= range[1] ? 0 : 1 / (range[1] - range[0]);
    }

    private static double below(double z) {
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }
}
