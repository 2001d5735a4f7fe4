package gudgeon.core.planning;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * States seen by the order search, to pass over any that another one makes superfluous: one in the same
 * zone with the same tools that has done at least as much for no more. States elsewhere, with the change added, would count
 * as well, but they hardly ever win and looking through them costs more than it saves. It must agree on what holds want
 * intact and on the moves that can take an operation to the bench, because these are not monotone. Kept in flat arrays,
 * one for each zone and tool set, since they are read through again and again.
 */
final class Dominance {
    private final OrderProblem problem;
    private final BitSet benchParts = new BitSet();
    private final int words;
    /** By zone and tool set: rows of the class of holds and moves, the cost, the operations done. */
    private final long[][] rows;

    private final int[] filled;
    private final Map<List<BitSet>, Integer> classes = new HashMap<>();

    Dominance(OrderProblem problem) {
        this.problem = problem;
        words = (problem.size() + 63) / 64;
        for (int o = problem.benchable.nextSetBit(0); o >= 0; o = problem.benchable.nextSetBit(o + 1)) {
            for (int p : problem.parts[o]) {
                benchParts.set(p);
            }
        }
        rows = new long[problem.zones.size() * problem.toolSets.size()][0];
        filled = new int[rows.length];
    }

    void add(BitSet operations, BitSet moved, int zone, int toolSet, long spent) {
        int context = zone * problem.toolSets.size() + toolSet;
        int at = filled[context];
        if (at + words + 2 > rows[context].length) {
            rows[context] = Arrays.copyOf(rows[context], Math.max(16 * (words + 2), 2 * rows[context].length));
        }
        long[] row = row(operations, moved, spent);
        System.arraycopy(row, 0, rows[context], at, row.length);
        filled[context] = at + row.length;
    }

    private long[] row(BitSet operations, BitSet moved, long spent) {
        BitSet heldDone = (BitSet) operations.clone();
        heldDone.and(problem.held);
        BitSet benched = (BitSet) moved.clone();
        benched.and(benchParts);
        long[] row = new long[words + 2];
        row[0] = classes.computeIfAbsent(List.of(heldDone, benched), key -> classes.size());
        row[1] = spent;
        long[] bits = operations.toLongArray();
        System.arraycopy(bits, 0, row, 2, bits.length);
        return row;
    }

    /** Whether some other state seen makes this one superfluous. */
    boolean dominated(BitSet operations, BitSet moved, int zone, int toolSet, long spent) {
        long[] row = row(operations, moved, spent);
        int context = zone * problem.toolSets.size() + toolSet;
        return beaten(rows[context], filled[context], row);
    }

    private boolean beaten(long[] others, int end, long[] row) {
        for (int at = 0; at < end; at += words + 2) {
            if (others[at] == row[0] && others[at + 1] <= row[1]) {
                long missing = 0;
                long more = 0;
                for (int w = 2; w < words + 2; w++) {
                    missing |= row[w] & ~others[at + w];
                    more |= row[w] ^ others[at + w];
                }
                if (missing == 0 && (more != 0 || others[at + 1] < row[1])) {
                    return true;
                }
            }
        }
        return false;
    }
}
