package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * States seen by the order search, to pass over any that another one makes superfluous: one that has done at least as
 * much, and whose cost with the change of zone and tools to the other's is no higher. It must agree on what holds want
 * intact and on the moves that can take an operation to the bench, because these are not monotone.
 */
final class Dominance {
    private final OrderProblem problem;
    private final BitSet benchParts = new BitSet();
    private final List<List<Entry>> byContext = new ArrayList<>();
    private final int toolSets;

    private record Entry(long[] operations, BitSet heldDone, BitSet moved, long spent) {}

    Dominance(OrderProblem problem) {
        this.problem = problem;
        toolSets = problem.toolSets.size();
        for (int o = problem.benchable.nextSetBit(0); o >= 0; o = problem.benchable.nextSetBit(o + 1)) {
            for (int p : problem.parts[o]) {
                benchParts.set(p);
            }
        }
        for (int c = 0; c < problem.zones.size() * toolSets; c++) {
            byContext.add(new ArrayList<>());
        }
    }

    void add(BitSet operations, BitSet moved, int zone, int toolSet, long spent) {
        byContext.get(zone * toolSets + toolSet).add(entry(operations, moved, spent));
    }

    private Entry entry(BitSet operations, BitSet moved, long spent) {
        BitSet heldDone = (BitSet) operations.clone();
        heldDone.and(problem.held);
        BitSet benched = (BitSet) moved.clone();
        benched.and(benchParts);
        return new Entry(padded(operations), heldDone, benched, spent);
    }

    private long[] padded(BitSet operations) {
        return java.util.Arrays.copyOf(operations.toLongArray(), (problem.size() + 63) / 64);
    }

    /** Whether some other state seen makes this one superfluous. */
    boolean dominated(BitSet operations, BitSet moved, int zone, int toolSet, long spent) {
        Entry entry = entry(operations, moved, spent);
        for (int z = 0; z < problem.zones.size(); z++) {
            for (int t = 0; t < toolSets; t++) {
                long change = problem.travel[z][zone] + problem.pickUp[t][toolSet];
                boolean same = z == zone && t == toolSet;
                for (Entry other : byContext.get(z * toolSets + t)) {
                    if (other.spent + change <= spent && beats(other, entry, same)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean beats(Entry other, Entry entry, boolean same) {
        boolean more = false;
        for (int w = 0; w < entry.operations.length; w++) {
            long missing = entry.operations[w] & ~other.operations[w];
            if (missing != 0) {
                return false;
            }
            more |= other.operations[w] != entry.operations[w];
        }
        boolean strict = more || (same && other.spent < entry.spent);
        return strict && other.heldDone.equals(entry.heldDone) && other.moved.equals(entry.moved);
    }
}
