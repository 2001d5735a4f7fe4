package gudgeon.core.planning;

import java.util.Arrays;

/**
 * A lower bound of a plain order: everything but the last has one successor, everything but the first one predecessor, and
 * those together cost at least what the cheapest assignment does. The prices of its dual are charged to what is left, so
 * that the bound of a partial order is a sum over what is not done.
 *
 * <p>Source: [KUHN1955]; shortest augmenting paths, n cubed steps.
 */
final class AssignmentBound {
    /** By thing: the price of leaving it; of the last one nothing. */
    final long[] leaving;
    /** By thing: the price of arriving at it; of the first one nothing. */
    final long[] arriving;

    private final int rows;

    AssignmentBound(OrderMatrix problem) {
        rows = problem.size - 1;
        leaving = new long[problem.size];
        arriving = new long[problem.size];
        long[] u = new long[rows + 1];
        long[] v = new long[rows + 1];
        int[] match = new int[rows + 1];
        int[] way = new int[rows + 1];
        for (int row = 1; row <= rows; row++) {
            match[0] = row;
            int column = augment(problem, u, v, match, way);
            while (column != 0) {
                int before = way[column];
                match[column] = match[before];
                column = before;
            }
        }
        for (int i = 1; i <= rows; i++) {
            leaving[i - 1] = u[i];
            arriving[i] = v[i];
        }
    }

    /** Rows are things 0 to n - 2 as 1 to n - 1, columns things 1 to n - 1 as themselves; returns the free column reached. */
    private int augment(OrderMatrix problem, long[] u, long[] v, int[] match, int[] way) {
        long[] least = new long[rows + 1];
        boolean[] used = new boolean[rows + 1];
        Arrays.fill(least, Long.MAX_VALUE / 2);
        int column = 0;
        do {
            used[column] = true;
            int row = match[column];
            long delta = Long.MAX_VALUE;
            int next = 0;
            for (int c = 1; c <= rows; c++) {
                if (!used[c]) {
                    long reduced = problem.cost[row - 1][c] - u[row] - v[c];
                    if (reduced < least[c]) {
                        least[c] = reduced;
                        way[c] = column;
                    }
                    if (least[c] < delta) {
                        delta = least[c];
                        next = c;
                    }
                }
            }
            for (int c = 0; c <= rows; c++) {
                if (used[c]) {
                    u[match[c]] += delta;
                    v[c] -= delta;
                } else {
                    least[c] -= delta;
                }
            }
            column = next;
        } while (match[column] != 0);
        return column;
    }

    /** Lower bound of the whole. */
    long whole() {
        return Arrays.stream(leaving).sum() + Arrays.stream(arriving).sum();
    }
}
