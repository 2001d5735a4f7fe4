package gudgeon.core.measuring;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Readings as the decimals that they were read as. An instrument shows 1000000.1, which no double is; sums of squares of such
 * figures lose what is looked for, so samples and fits are summed here without loss and rounded once, at the end.
 */
final class Decimal {
    /** Digits kept by divisions and roots: far more than a fit of tenth order with doubles as data can lose. */
    static final MathContext DIGITS = new MathContext(120, RoundingMode.HALF_EVEN);

    private Decimal() {}

    /** The shortest decimal that stands for a double, which is the one that was typed. */
    static BigDecimal of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading must be a finite number, not " + value);
        }
        return BigDecimal.valueOf(value);
    }

    static BigDecimal[] of(double[] values) {
        BigDecimal[] decimals = new BigDecimal[values.length];
        for (int i = 0; i < values.length; i++) {
            decimals[i] = of(values[i]);
        }
        return decimals;
    }

    static BigDecimal sum(BigDecimal[] values) {
        BigDecimal sum = BigDecimal.ZERO;
        for (BigDecimal value : values) {
            sum = sum.add(value);
        }
        return sum;
    }

    static BigDecimal sumOfProducts(BigDecimal[] left, BigDecimal[] right) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < left.length; i++) {
            sum = sum.add(left[i].multiply(right[i]));
        }
        return sum;
    }

    static BigDecimal over(BigDecimal dividend, BigDecimal divisor) {
        return dividend.divide(divisor, DIGITS);
    }

    static BigDecimal over(BigDecimal dividend, long divisor) {
        return dividend.divide(BigDecimal.valueOf(divisor), DIGITS);
    }

    /** The root; of what came out a trifle below zero by rounding, zero. */
    static double root(BigDecimal value) {
        return value.signum() <= 0 ? 0 : value.sqrt(DIGITS).doubleValue();
    }
}
