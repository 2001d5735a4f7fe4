package gudgeon.core.planning;

import java.util.Arrays;
import java.util.Random;

/**
 * Improves a plain order by exchanging neighbouring stretches of it, which keeps every stretch as it runs; then shakes it and
 * improves again. Nothing is proven here.
 *
 * <p>Source: [GD2000] for the exchange under precedences.
 */
final class SegmentExchange {
    private static final int LONGEST = 60;

    private final OrderMatrix problem;
    private final Random random;
    private int[] order;
    private int[] position;
    private long value;
    private final long[] left;
    private final int[] scratch;
    /** Things whose neighbourhood has changed, to be looked at again. */
    private final int[] waiting;

    private final boolean[] isWaiting;
    private int waitingCount;
    private long work;

    SegmentExchange(OrderMatrix problem, int[] order, long seed) {
        this.problem = problem;
        this.random = new Random(seed);
        this.order = order.clone();
        position = new int[problem.size];
        left = new long[problem.words];
        scratch = new int[problem.size];
        waiting = new int[problem.size];
        isWaiting = new boolean[problem.size];
        restart(order);
    }

    long value() {
        return value;
    }

    int[] order() {
        return order.clone();
    }

    /** Elementary steps so far: how much was done, without a clock. */
    long work() {
        return work;
    }

    /** Goes on from another order. */
    void restart(int[] other) {
        order = other.clone();
        number();
        value = problem.costOf(order);
        for (int o = 0; o < order.length; o++) {
            await(order[o]);
        }
        settle();
    }

    /** Shakes and improves a number of times; what became dearer is taken back. */
    void shake(int times) {
        int[] best = order.clone();
        long bestValue = value;
        for (int t = 0; t < times; t++) {
            for (int kicks = 1 + random.nextInt(3); kicks > 0; kicks--) {
                kick();
            }
            settle();
            if (value <= bestValue) {
                System.arraycopy(order, 0, best, 0, best.length);
                bestValue = value;
            } else {
                System.arraycopy(best, 0, order, 0, best.length);
                value = bestValue;
                number();
            }
            work += order.length;
        }
    }

    private void number() {
        for (int i = 0; i < order.length; i++) {
            position[order[i]] = i;
        }
    }

    private void await(int thing) {
        if (!isWaiting[thing]) {
            isWaiting[thing] = true;
            waiting[waitingCount++] = thing;
        }
    }

    private void settle() {
        while (waitingCount > 0) {
            int thing = waiting[--waitingCount];
            isWaiting[thing] = false;
            if (forward(position[thing]) || backward(position[thing])) {
                await(thing);
            }
        }
    }

    private void kick() {
        int n = order.length;
        for (int attempt = 0; attempt < 30 && n > 3; attempt++) {
            int i = random.nextInt(n - 3);
            int j = i + 1 + random.nextInt(Math.min(12, n - 3 - i));
            int k = j + 1 + random.nextInt(Math.min(12, n - 2 - j));
            if (mayExchange(i, j, k)) {
                exchange(i, j, k, gain(i, j, k));
                return;
            }
        }
    }

    private boolean mayExchange(int i, int j, int k) {
        clearLeft();
        for (int a = i + 1; a <= j; a++) {
            left[order[a] >> 6] |= 1L << order[a];
        }
        for (int b = j + 1; b <= k; b++) {
            if (meets(problem.before[order[b]])) {
                return false;
            }
        }
        return true;
    }

    private void clearLeft() {
        Arrays.fill(left, 0);
    }

    private boolean meets(long[] set) {
        long met = 0;
        for (int w = 0; w < left.length; w++) {
            met |= set[w] & left[w];
        }
        return met != 0;
    }

    /** What exchanging i+1..j with j+1..k saves. */
    private long gain(int i, int j, int k) {
        int[][] c = problem.cost;
        int a = order[i];
        int b = order[i + 1];
        int d = order[j];
        int e = order[j + 1];
        int f = order[k];
        int g = order[k + 1];
        return (long) c[a][b] + c[d][e] + c[f][g] - c[a][e] - c[f][b] - c[d][g];
    }

    private void exchange(int i, int j, int k, long gain) {
        int length = j - i;
        System.arraycopy(order, i + 1, scratch, 0, length);
        System.arraycopy(order, j + 1, order, i + 1, k - j);
        System.arraycopy(scratch, 0, order, i + 1 + k - j, length);
        for (int p = i + 1; p <= k; p++) {
            position[order[p]] = p;
        }
        value -= gain;
        int seam = i + k - j;
        for (int p : new int[] {i, i + 1, seam, seam + 1, k, k + 1}) {
            await(order[p]);
        }
    }

    /** An exchange that begins after a position and saves something. */
    private boolean forward(int i) {
        int n = order.length;
        clearLeft();
        for (int j = i + 1; j < n - 2 && j <= i + LONGEST; j++) {
            left[order[j] >> 6] |= 1L << order[j];
            for (int k = j + 1; k < n - 1 && k <= j + LONGEST; k++) {
                work++;
                if (meets(problem.before[order[k]])) {
                    break;
                }
                long gain = gain(i, j, k);
                if (gain > 0) {
                    exchange(i, j, k, gain);
                    return true;
                }
            }
        }
        return false;
    }

    /** An exchange that ends with a position and saves something. */
    private boolean backward(int k) {
        int n = order.length;
        if (k >= n - 1) {
            return false;
        }
        for (int j = k - 1; j > 0 && j >= k - LONGEST; j--) {
            for (int i = j - 1; i >= 0 && i >= j - LONGEST; i--) {
                work++;
                if (isBeforeAny(order[i + 1], j + 1, k)) {
                    break;
                }
                long gain = gain(i, j, k);
                if (gain > 0) {
                    exchange(i, j, k, gain);
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isBeforeAny(int thing, int from, int to) {
        for (int p = from; p <= to; p++) {
            if ((problem.before[order[p]][thing >> 6] & 1L << thing) != 0) {
                return true;
            }
        }
        return false;
    }
}
