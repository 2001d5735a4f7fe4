package gudgeon.core.measuring;

import java.math.BigDecimal;
import java.util.Arrays;

/**
 * Repeated readings of one thing, in one unit. Sums are exact for the decimals read, so that a spread of a tenth on readings of
 * ten million is not lost. Source: [GUM] 4.2.
 */
public final class Sample {
    private final BigDecimal[] values;
    private final BigDecimal mean;
    private final BigDecimal squares;

    private Sample(BigDecimal[] values) {
        this.values = values;
        this.mean = Decimal.over(Decimal.sum(values), values.length);
        BigDecimal sum = BigDecimal.ZERO;
        for (BigDecimal value : values) {
            BigDecimal off = value.subtract(mean);
            sum = sum.add(off.multiply(off));
        }
        this.squares = sum;
    }

    /**
     * The sample of some readings.
     *
     * @param readings at least one, all finite
     * @throws IllegalArgumentException when there is none, or one is not a finite number
     */
    public static Sample of(double... readings) {
        if (readings.length == 0) {
            throw new IllegalArgumentException("a sample needs at least one reading");
        }
        return new Sample(Decimal.of(readings));
    }

    /** How many readings. */
    public int size() {
        return values.length;
    }

    /** The arithmetic mean, in the readings' unit. */
    public double mean() {
        return mean.doubleValue();
    }

    /** The sum of squared distances from the mean, in the readings' unit squared. */
    public double sumOfSquares() {
        return squares.doubleValue();
    }

    /**
     * The experimental standard deviation, with n - 1. Source: [GUM] 4.2.2.
     *
     * @throws IllegalArgumentException when there is only one reading
     */
    public double standardDeviation() {
        needTwo("standard deviation");
        return Decimal.root(Decimal.over(squares, values.length - 1L));
    }

    /** The standard deviation of the mean. Source: [GUM] 4.2.3. */
    public double standardDeviationOfMean() {
        needTwo("standard deviation of the mean");
        return Decimal.root(Decimal.over(Decimal.over(squares, values.length - 1L), values.length));
    }

    /**
     * The lag-1 autocorrelation: products of neighbouring distances from the mean, over the sum of their squares. Near 1, the
     * readings drift; near -1, they alternate. Source: [STRD], univariate.
     *
     * @throws IllegalArgumentException when all readings are equal
     */
    public double lag1Autocorrelation() {
        needTwo("autocorrelation");
        if (squares.signum() == 0) {
            throw new IllegalArgumentException("equal readings have no autocorrelation");
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 1; i < values.length; i++) {
            sum = sum.add(values[i].subtract(mean).multiply(values[i - 1].subtract(mean)));
        }
        return Decimal.over(sum, squares).doubleValue();
    }

    /** Largest less smallest. */
    public double range() {
        BigDecimal[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length - 1].subtract(sorted[0]).doubleValue();
    }

    /**
     * The covariance of the means of two quantities read together, pair by pair. Source: [GUM] 5.2.3.
     *
     * @param other as many readings, in the same order
     * @throws IllegalArgumentException when the numbers of readings differ, or there is only one
     */
    public double covarianceOfMeans(Sample other) {
        needTwo("covariance");
        if (other.values.length != values.length) {
            throw new IllegalArgumentException(
                    values.length + " readings cannot be paired with " + other.values.length);
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < values.length; i++) {
            sum = sum.add(values[i].subtract(mean).multiply(other.values[i].subtract(other.mean)));
        }
        return Decimal.over(sum, (long) values.length * (values.length - 1)).doubleValue();
    }

    private void needTwo(String what) {
        if (values.length < 2) {
            throw new IllegalArgumentException("a " + what + " needs at least two readings");
        }
    }
}
