package gudgeon.core.measuring;

import java.math.BigDecimal;
import java.util.Arrays;

/**
 * A linear model fitted by least squares, with a constant: y = b0 + b1 x1 + b2 x2 ... The normal equations are solved in decimals
 * of 120 digits, so that nearly dependent columns cost time, not digits. Cost: n k^2 + k^3 for n points, k columns. Source:
 * [GUM] H.3, [STRD] linear regression.
 */
public final class LeastSquaresFit {
    private static final BigDecimal DEPENDENT = new BigDecimal("1e-60");

    private final BigDecimal[] coefficients;
    private final BigDecimal[][] inverse;
    private final BigDecimal residual;
    private final BigDecimal total;
    private final int points;
    private final BigDecimal offset;

    private LeastSquaresFit(
            BigDecimal[] coefficients,
            BigDecimal[][] inverse,
            BigDecimal residual,
            BigDecimal total,
            int points,
            BigDecimal offset) {
        this.coefficients = coefficients;
        this.inverse = inverse;
        this.residual = residual;
        this.total = total;
        this.points = points;
        this.offset = offset;
    }

    /**
     * The straight line y = intercept + slope (x - offset).
     *
     * @param x places, at least two of them different
     * @param y values, as many
     * @param offset where the intercept is taken, in x's unit
     */
    public static LeastSquaresFit line(double[] x, double[] y, double offset) {
        BigDecimal shift = Decimal.of(offset);
        BigDecimal[][] rows = new BigDecimal[x.length][];
        for (int i = 0; i < x.length; i++) {
            rows[i] = new BigDecimal[] {BigDecimal.ONE, Decimal.of(x[i]).subtract(shift)};
        }
        return fit(rows, y, shift);
    }

    /**
     * The fit of a constant and some columns.
     *
     * @param x one row a point, all of one length
     * @param y one value a point
     * @throws IllegalArgumentException when points and values differ in number, are too few, or a column is a combination of
     *     the others
     */
    public static LeastSquaresFit of(double[][] x, double[] y) {
        BigDecimal[][] rows = new BigDecimal[x.length][];
        for (int i = 0; i < x.length; i++) {
            if (x[i].length != x[0].length) {
                throw new IllegalArgumentException(
                        "point " + (i + 1) + " has " + x[i].length + " columns, not " + x[0].length);
            }
            rows[i] = new BigDecimal[x[i].length + 1];
            rows[i][0] = BigDecimal.ONE;
            System.arraycopy(Decimal.of(x[i]), 0, rows[i], 1, x[i].length);
        }
        return fit(rows, y, BigDecimal.ZERO);
    }

    private static LeastSquaresFit fit(BigDecimal[][] rows, double[] y, BigDecimal offset) {
        if (rows.length != y.length) {
            throw new IllegalArgumentException(rows.length + " points but " + y.length + " values");
        }
        int columns = rows.length == 0 ? 1 : rows[0].length;
        if (rows.length < columns) {
            throw new IllegalArgumentException(
                    columns + " coefficients need at least " + columns + " points, not " + rows.length);
        }
        BigDecimal[] values = Decimal.of(y);
        BigDecimal[][] normal = new BigDecimal[columns][columns];
        BigDecimal[] right = new BigDecimal[columns];
        for (int i = 0; i < columns; i++) {
            BigDecimal[] column = column(rows, i);
            right[i] = Decimal.sumOfProducts(column, values);
            for (int j = 0; j <= i; j++) {
                normal[i][j] = Decimal.sumOfProducts(column, column(rows, j));
                normal[j][i] = normal[i][j];
            }
        }
        BigDecimal[][] inverse = invert(normal);
        BigDecimal[] coefficients = new BigDecimal[columns];
        for (int i = 0; i < columns; i++) {
            coefficients[i] = Decimal.sumOfProducts(inverse[i], right).round(Decimal.DIGITS);
        }
        BigDecimal residual = BigDecimal.ZERO;
        for (int i = 0; i < rows.length; i++) {
            BigDecimal off = values[i].subtract(Decimal.sumOfProducts(rows[i], coefficients));
            residual = residual.add(off.multiply(off)).round(Decimal.DIGITS);
        }
        BigDecimal sum = Decimal.sum(values);
        BigDecimal total =
                Decimal.sumOfProducts(values, values).subtract(Decimal.over(sum.multiply(sum), values.length));
        return new LeastSquaresFit(coefficients, inverse, residual, total, rows.length, offset);
    }

    /** The coefficient of a column; 0 is the constant. */
    public double coefficient(int index) {
        return coefficients[checked(index)].doubleValue();
    }

    /** The standard deviation of a coefficient; 0 is the constant. */
    public double standardDeviation(int index) {
        return Decimal.root(inverse[checked(index)][index].multiply(variance()));
    }

    /** The correlation of the estimates of two coefficients. */
    public double correlation(int first, int second) {
        BigDecimal product = inverse[checked(first)][first].multiply(inverse[checked(second)][second]);
        return inverse[first][second]
                .divide(product.sqrt(Decimal.DIGITS), Decimal.DIGITS)
                .doubleValue();
    }

    /** The sum of squared residuals. */
    public double residualSquares() {
        return residual.doubleValue();
    }

    /** Points less coefficients. */
    public int degreesOfFreedom() {
        return points - coefficients.length;
    }

    /**
     * The standard deviation of the residuals.
     *
     * @throws IllegalArgumentException when there are only as many points as coefficients
     */
    public double residualStandardDeviation() {
        return Decimal.root(variance());
    }

    /** The sum of squares about the mean that the fit explains. */
    public double regressionSquares() {
        return total.subtract(residual).doubleValue();
    }

    /**
     * The explained share of the sum of squares about the mean.
     *
     * @throws IllegalArgumentException when all values are equal
     */
    public double rSquared() {
        if (total.signum() == 0) {
            throw new IllegalArgumentException("equal values: no share can be explained");
        }
        return Decimal.over(total.subtract(residual), total).doubleValue();
    }

    /** The value of a fitted line at a place, in y's unit. */
    public double at(double x) {
        return Decimal.sumOfProducts(place(x), coefficients).doubleValue();
    }

    /** The standard deviation of the fitted line (not of a new reading) at a place. Source: [GUM] H.3.4. */
    public double standardDeviationAt(double x) {
        BigDecimal[] place = place(x);
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < place.length; i++) {
            sum = sum.add(place[i].multiply(Decimal.sumOfProducts(inverse[i], place)));
        }
        return Decimal.root(sum.multiply(variance()));
    }

    private BigDecimal[] place(double x) {
        if (coefficients.length != 2) {
            throw new IllegalArgumentException("only a straight line has a value at one place");
        }
        return new BigDecimal[] {BigDecimal.ONE, Decimal.of(x).subtract(offset)};
    }

    private BigDecimal variance() {
        if (degreesOfFreedom() < 1) {
            throw new IllegalArgumentException("as many points as coefficients: the residuals say nothing");
        }
        return Decimal.over(residual, degreesOfFreedom());
    }

    private int checked(int index) {
        if (index < 0 || index >= coefficients.length) {
            throw new IllegalArgumentException("no coefficient " + index + ", only 0 to " + (coefficients.length - 1));
        }
        return index;
    }

    private static BigDecimal[] column(BigDecimal[][] rows, int index) {
        return Arrays.stream(rows).map(row -> row[index]).toArray(BigDecimal[]::new);
    }

    /** The inverse of a symmetric positive matrix, by elimination with the largest pivot first. */
    private static BigDecimal[][] invert(BigDecimal[][] matrix) {
        int size = matrix.length;
        BigDecimal[][] work = new BigDecimal[size][2 * size];
        for (int i = 0; i < size; i++) {
            Arrays.fill(work[i], BigDecimal.ZERO);
            System.arraycopy(matrix[i], 0, work[i], 0, size);
            work[i][size + i] = BigDecimal.ONE;
        }
        for (int column = 0; column < size; column++) {
            int pivot = column;
            for (int i = column + 1; i < size; i++) {
                if (work[i][column].abs().compareTo(work[pivot][column].abs()) > 0) {
                    pivot = i;
                }
            }
            BigDecimal[] swapped = work[column];
            work[column] = work[pivot];
            work[pivot] = swapped;
            if (work[column][column]
                            .abs()
                            .compareTo(matrix[column][column].abs().multiply(DEPENDENT))
                    <= 0) {
                throw new IllegalArgumentException(
                        "the places do not tell the coefficients apart. Maybe all x are equal?");
            }
            eliminate(work, column);
        }
        BigDecimal[][] inverse = new BigDecimal[size][];
        for (int i = 0; i < size; i++) {
            inverse[i] = Arrays.copyOfRange(work[i], size, 2 * size);
        }
        return inverse;
    }

    private static void eliminate(BigDecimal[][] work, int column) {
        BigDecimal pivot = work[column][column];
        for (int j = 0; j < work[column].length; j++) {
            work[column][j] = Decimal.over(work[column][j], pivot);
        }
        for (int i = 0; i < work.length; i++) {
            BigDecimal factor = work[i][column];
            if (i == column || factor.signum() == 0) {
                continue;
            }
            for (int j = 0; j < work[i].length; j++) {
                work[i][j] =
                        work[i][j].subtract(factor.multiply(work[column][j])).round(Decimal.DIGITS);
            }
        }
    }
}
