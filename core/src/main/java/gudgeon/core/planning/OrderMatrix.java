package gudgeon.core.planning;

import java.util.Arrays;

/**
 * A plain sequential ordering problem: what it costs to do one thing right after another, and what must come before what.
 * The first thing begins, the last one ends. Which things can follow each other at once follows from the precedences.
 */
final class OrderMatrix {
    /** Stands for: cannot follow at once. */
    static final int NEVER = 50_000_000;

    final int size;
    final int words;
    final int[][] cost;
    /** By thing: all that must come before it. */
    final long[][] before;

    /**
     * @param cost by pair; below zero where the second one cannot follow the first at once
     * @param precedes by pair: whether the first one must come before the second
     * @throws IllegalArgumentException when the shapes differ or the precedences run in a circle
     */
    OrderMatrix(int[][] cost, boolean[][] precedes) {
        size = cost.length;
        words = (size + 63) / 64;
        if (size < 2 || precedes.length != size) {
            throw new IllegalArgumentException("costs and precedences must be of the same two or more things");
        }
        boolean[][] closed = closed(precedes);
        before = new long[size][words];
        this.cost = new int[size][size];
        for (int a = 0; a < size; a++) {
            if (closed[a][a]) {
                throw new IllegalArgumentException("thing " + a + " would have to come before itself");
            }
            for (int b = 0; b < size; b++) {
                if (closed[a][b]) {
                    before[b][a >> 6] |= 1L << a;
                }
                this.cost[a][b] = a == b || cost[a][b] < 0 || closed[b][a] || between(closed, a, b)
                        ? NEVER
                        : cost[a][b];
            }
        }
        this.cost[0][size - 1] = size > 2 ? NEVER : cost[0][1];
    }

    private boolean[][] closed(boolean[][] precedes) {
        boolean[][] closed = Arrays.stream(precedes).map(boolean[]::clone).toArray(boolean[][]::new);
        for (int o = 1; o < size; o++) {
            closed[0][o] = true;
            closed[o - 1][size - 1] = true;
        }
        for (int via = 0; via < size; via++) {
            for (int a = 0; a < size; a++) {
                for (int b = 0; closed[a][via] && b < size; b++) {
                    closed[a][b] |= closed[via][b];
                }
            }
        }
        return closed;
    }

    private static boolean between(boolean[][] closed, int a, int b) {
        for (int via = 0; closed[a][b] && via < closed.length; via++) {
            if (closed[a][via] && closed[via][b]) {
                return true;
            }
        }
        return false;
    }

    long costOf(int[] order) {
        long sum = 0;
        for (int i = 1; i < order.length; i++) {
            sum += cost[order[i - 1]][order[i]];
        }
        return sum;
    }

    /** An order that always goes on with the cheapest thing that may come next; ties by number. */
    int[] greedy() {
        int[] order = new int[size];
        long[] done = new long[words];
        done[0] |= 1;
        for (int i = 1; i < size; i++) {
            int best = -1;
            for (int o = 1; o < size; o++) {
                if ((done[o >> 6] & 1L << o) == 0
                        && Sequencing.holds(done, before[o])
                        && (best < 0 || cost[order[i - 1]][o] < cost[order[i - 1]][best])) {
                    best = o;
                }
            }
            order[i] = best;
            done[best >> 6] |= 1L << best;
        }
        return order;
    }
}
