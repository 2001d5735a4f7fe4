package gudgeon.core.fitting;

import java.util.Arrays;

/** Assigns one row after another along a shortest augmenting path; the potentials keep reduced costs at 0 or above. */
final class AugmentingPaths {
    private static final int NONE = -1;

    private final double[][] cost;
    private final int columns;
    private final double[] rowPrice;
    private final double[] columnPrice;
    private final int[] rowOf;

    AugmentingPaths(double[][] cost, int columns) {
        this.cost = cost;
        this.columns = columns;
        rowPrice = new double[cost.length];
        columnPrice = new double[columns];
        rowOf = new int[columns];
        Arrays.fill(rowOf, NONE);
    }

    /** Gives a row a column, moving others as needed; false when there is no way. */
    boolean assign(int row) {
        double[] least = new double[columns];
        int[] from = new int[columns];
        boolean[] settled = new boolean[columns];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(from, NONE);
        int last = NONE;
        int at = row;
        double way = 0;
        while (true) {
            relax(at, last, way, least, from, settled);
            int next = nearest(least, settled);
            if (next == NONE) {
                return false;
            }
            settled[next] = true;
            way = least[next];
            last = next;
            if (rowOf[next] == NONE) {
                break;
            }
            at = rowOf[next];
        }
        reprice(row, way, least, settled);
        flip(row, last, from);
        return true;
    }

    private void relax(int row, int last, double way, double[] least, int[] from, boolean[] settled) {
        for (int column = 0; column < columns; column++) {
            if (!settled[column] && cost[row][column] != Double.POSITIVE_INFINITY) {
                double length = way + cost[row][column] - rowPrice[row] - columnPrice[column];
                if (length < least[column]) {
                    least[column] = length;
                    from[column] = last;
                }
            }
        }
    }

    /** The nearest unsettled column; of equally near ones a free one, else the first. */
    private int nearest(double[] least, boolean[] settled) {
        int best = NONE;
        for (int column = 0; column < columns; column++) {
            if (!settled[column]
                    && least[column] < Double.POSITIVE_INFINITY
                    && (best == NONE
                            || least[column] < least[best]
                            || (least[column] <= least[best] && rowOf[column] == NONE && rowOf[best] != NONE))) {
                best = column;
            }
        }
        return best;
    }

    private void reprice(int row, double way, double[] least, boolean[] settled) {
        rowPrice[row] += way;
        for (int column = 0; column < columns; column++) {
            if (settled[column]) {
                double shift = way - least[column];
                columnPrice[column] -= shift;
                if (rowOf[column] != NONE) {
                    rowPrice[rowOf[column]] += shift;
                }
            }
        }
    }

    private void flip(int row, int end, int[] from) {
        int column = end;
        while (from[column] != NONE) {
            rowOf[column] = rowOf[from[column]];
            column = from[column];
        }
        rowOf[column] = row;
    }

    int[] columnOf(int rows) {
        int[] columnOf = new int[rows];
        for (int column = 0; column < columns; column++) {
            if (rowOf[column] != NONE) {
                columnOf[rowOf[column]] = column;
            }
        }
        return columnOf;
    }
}
