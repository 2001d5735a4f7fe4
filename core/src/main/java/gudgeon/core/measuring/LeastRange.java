package gudgeon.core.measuring;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The linear combination of some columns that leaves residuals of least range (largest less smallest), exactly: a linear
 * programme whose dual is solved by the simplex method with bases of a few points, from a start that needs no first phase.
 * Columns that say nothing more than others do are left at zero. Cost: for n points a few dozen steps of n each.
 */
final class LeastRange {
    private static final double DEPENDENT = 1e-10;
    private static final double OPTIMAL = 1e-13;

    private final double[][] places;
    private final double[] values;
    private final double scale;
    private final int rank;
    private final int[] basis;
    private final double[][] directions;
    private double[] multipliers = new double[0];
    private double[] weights = new double[0];

    private LeastRange(double[][] columns, double[] values) {
        int[] start = new int[columns[0].length + 1];
        double[][] found = new double[columns[0].length][];
        this.rank = independent(columns, start, found);
        this.directions = Arrays.copyOf(found, rank);
        this.places = new double[values.length][rank];
        for (int i = 0; i < values.length; i++) {
            double[] from = minus(columns[i], columns[0]);
            for (int j = 0; j < rank; j++) {
                places[i][j] = dot(from, directions[j]);
            }
        }
        double low = Arrays.stream(values).min().orElse(0);
        double high = Arrays.stream(values).max().orElse(0);
        this.scale = high > low ? high - low : 1;
        this.values = Arrays.stream(values).map(value -> (value - low) / scale).toArray();
        // One point as highest and lowest at once, and points that make the basis regular, at weight zero.
        this.basis = new int[rank + 2];
        basis[1] = values.length;
        for (int j = 0; j < rank; j++) {
            basis[j + 2] = start[j + 1];
        }
    }

    /**
     * @param columns one row a point, at least one point
     * @param values one a point
     */
    static Solution of(double[][] columns, double[] values) {
        LeastRange problem = new LeastRange(columns, values);
        problem.solve();
        return problem.solution(columns, values);
    }

    /**
     * @param coefficients one a column
     * @param range largest residual less smallest
     * @param bound no combination leaves a smaller range than this; equal to the range but for rounding
     * @param highs points that hold the upper side
     * @param lows points that hold the lower side
     * @param rank columns that the points tell apart
     */
    record Solution(
            double[] coefficients,
            double range,
            double bound,
            List<FacePlane.Contact> highs,
            List<FacePlane.Contact> lows,
            int rank) {}

    private void solve() {
        int limit = 200 * (values.length + 10);
        int idle = 0;
        double before = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < limit; step++) {
            Dense matrix = basisMatrix();
            multipliers = matrix.solveTransposed(costs());
            weights = matrix.solve(unitSums());
            int entering = entering(idle > 2 * basis.length);
            if (entering < 0) {
                return;
            }
            double[] moved = matrix.solve(column(entering));
            basis[leaving(moved)] = entering;
            double now = dot(weights, costs());
            idle = now > before + 1e-15 ? 0 : idle + 1;
            before = Math.max(before, now);
        }
        throw new IllegalStateException("the least range was not found in " + limit + " steps");
    }

    /** The column that promises most, or when it turns in place the first that promises anything; -1 when none does. */
    private int entering(boolean first) {
        int best = -1;
        double most = OPTIMAL;
        for (int i = 0; i < 2 * values.length; i++) {
            double promise = cost(i) - dot(multipliers, column(i));
            if (promise > most) {
                best = i;
                if (first) {
                    return best;
                }
                most = promise;
            }
        }
        return best;
    }

    private int leaving(double[] moved) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < moved.length; i++) {
            if (moved[i] > 1e-11) {
                double ratio = Math.max(0, weights[i]) / moved[i];
                if (ratio < least - 1e-14 || (ratio <= least + 1e-14 && best >= 0 && basis[i] < basis[best])) {
                    best = i;
                    least = Math.min(least, ratio);
                }
            }
        }
        if (best < 0) {
            throw new IllegalStateException("the weights of highest and lowest points cannot grow without end");
        }
        return best;
    }

    private Solution solution(double[][] columns, double[] original) {
        double[] coefficients = new double[columns[0].length];
        for (int j = 0; j < rank; j++) {
            for (int k = 0; k < coefficients.length; k++) {
                coefficients[k] += multipliers[j + 2] * scale * directions[j][k];
            }
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < original.length; i++) {
            double residual = original[i] - dot(coefficients, minus(columns[i], columns[0]));
            low = Math.min(low, residual);
            high = Math.max(high, residual);
        }
        double bound = dot(weights, costs()) * scale;
        return new Solution(coefficients, high - low, Math.max(0, bound), active(true), active(false), rank);
    }

    private List<FacePlane.Contact> active(boolean high) {
        return IntStream.range(0, basis.length)
                .filter(i -> weights[i] > 1e-9 && high == basis[i] < values.length)
                .mapToObj(i -> new FacePlane.Contact(basis[i] % values.length, weights[i]))
                .sorted(Comparator.comparingInt(FacePlane.Contact::point))
                .toList();
    }

    private Dense basisMatrix() {
        double[][] matrix = new double[basis.length][basis.length];
        for (int j = 0; j < basis.length; j++) {
            double[] column = column(basis[j]);
            for (int i = 0; i < basis.length; i++) {
                matrix[i][j] = column[i];
            }
        }
        return new Dense(matrix);
    }

    private double[] column(int index) {
        double[] column = new double[rank + 2];
        boolean high = index < values.length;
        column[high ? 0 : 1] = 1;
        for (int j = 0; j < rank; j++) {
            double place = places[index % values.length][j];
            column[j + 2] = high ? place : -place;
        }
        return column;
    }

    private double cost(int index) {
        return index < values.length ? values[index] : -values[index - values.length];
    }

    private double[] costs() {
        return Arrays.stream(basis).mapToDouble(this::cost).toArray();
    }

    private double[] unitSums() {
        double[] sums = new double[rank + 2];
        sums[0] = 1;
        sums[1] = 1;
        return sums;
    }

    /** Points whose places span what all span, the first point apart, farthest first; unit directions into found, scaled so that the farthest is at one. */
    private static int independent(double[][] columns, int[] start, double[][] found) {
        double[][] left = new double[columns.length][];
        double largest = 0;
        for (int i = 0; i < columns.length; i++) {
            left[i] = minus(columns[i], columns[0]);
            largest = Math.max(largest, Math.sqrt(dot(left[i], left[i])));
        }
        int rank = 0;
        while (rank < columns[0].length) {
            int far = 0;
            for (int i = 1; i < left.length; i++) {
                if (dot(left[i], left[i]) > dot(left[far], left[far])) {
                    far = i;
                }
            }
            double length = Math.sqrt(dot(left[far], left[far]));
            if (!(length > DEPENDENT * largest)) {
                break;
            }
            double[] unit = Arrays.stream(left[far]).map(x -> x / length).toArray();
            for (double[] place : left) {
                double along = dot(place, unit);
                for (int k = 0; k < place.length; k++) {
                    place[k] -= along * unit[k];
                }
            }
            found[rank] = Arrays.stream(unit).map(x -> x / length).toArray();
            rank++;
            start[rank] = far;
        }
        return rank;
    }

    private static double[] minus(double[] left, double[] right) {
        double[] difference = new double[left.length];
        for (int i = 0; i < left.length; i++) {
            difference[i] = left[i] - right[i];
        }
        return difference;
    }

    private static double dot(double[] left, double[] right) {
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            sum += left[i] * right[i];
        }
        return sum;
    }
}
