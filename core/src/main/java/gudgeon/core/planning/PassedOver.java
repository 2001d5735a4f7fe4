package gudgeon.core.planning;

import java.util.Arrays;

/** States already looked at, to pass over those that another one in the same context makes superfluous. */
final class PassedOver {
    private final int words;
    /** By context: rows of what was spent and the operations done. */
    private final long[][] rows;

    private final int[] filled;

    PassedOver(int contexts, int words) {
        this.words = words;
        rows = new long[contexts][0];
        filled = new int[contexts];
    }

    void clear() {
        Arrays.fill(filled, 0);
    }

    void add(long[] done, int context, int spent) {
        int at = filled[context];
        if (at + words + 1 > rows[context].length) {
            rows[context] = Arrays.copyOf(rows[context], Math.max(64 * (words + 1), 2 * rows[context].length));
        }
        rows[context][at] = spent;
        System.arraycopy(done, 0, rows[context], at + 1, words);
        filled[context] = at + words + 1;
    }

    /** Whether a state with at least as much done, for no more, was looked at. */
    boolean covers(long[] done, int context, int spent) {
        long[] row = rows[context];
        for (int at = filled[context] - words - 1; at >= 0; at -= words + 1) {
            if (row[at] <= spent) {
                long missing = 0;
                for (int w = 0; w < words; w++) {
                    missing |= done[w] & ~row[at + 1 + w];
                }
                if (missing == 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
