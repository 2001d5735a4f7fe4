package gudgeon.core.planning;

/** Sets as bits, and conditions over them. */
final class BruteSets {
    private BruteSets() {}

    /** All members of the sets that some of the elements are in. */
    static long union(long[] in, long some) {
        long union = 0;
        for (int p = 0; p < in.length; p++) {
            if ((some >> p & 1) != 0) {
                union |= in[p];
            }
        }
        return union;
    }

    /** Whether every clause has an alternative that is away and done. */
    static boolean holds(long[][][] clauses, long away, long done) {
        for (long[][] clause : clauses) {
            boolean met = false;
            for (long[] alternative : clause) {
                met |= (alternative[0] & ~away) == 0 && (alternative[1] & ~done) == 0;
            }
            if (!met) {
                return false;
            }
        }
        return true;
    }
}
