package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Operations to be put in order, each done in a context, where changing the context costs: question 2 as numbers alone. A
 * context is a place with the tools in hand; whoever is in a context does there all that can be done, for nothing. Costs
 * are whole units, at most a million each.
 *
 * <p>An operation has one or more modes; it can be done in the context of a mode once all that the mode needs is done. An
 * instance of the sequential ordering problem is the case of one context and one mode for each operation.
 */
public final class Sequencing {
    private static final int MOST = 1_000_000;

    final int operations;
    final int contexts;
    /** Words of a set of operations. */
    final int words;

    final int start;
    final int[][] change;
    final int[] leave;
    /** By context: the place it is at; contexts at one place are close to each other. */
    final int[] place;
    /** By context: operations with a mode there, those that need least first; an operation may stand here twice. */
    final int[][] here;
    /** By context and entry of {@link #here}: what the mode needs, as a set of operations. */
    final long[][][] needs;
    /** Whether going through another context never saves anything. */
    final boolean metric;

    /**
     * One way of doing an operation.
     *
     * @param context where
     * @param needs operations that must be done before, with all that they need in turn
     */
    public record Mode(int context, List<Integer> needs) {
        public Mode {
            needs = List.copyOf(needs);
        }
    }

    /**
     * @param modes by operation: at least one
     * @param change cost of going from one context to another; 0 from a context to itself
     * @param leave cost of ending in a context
     * @param place by context: a number for the place it is at
     * @param start the context in which one begins
     * @throws IllegalArgumentException when the shapes do not agree, a cost is negative or above a million, or contexts are
     *     shared by operations although going through another context can be cheaper than going straight
     */
    public Sequencing(List<List<Mode>> modes, int[][] change, int[] leave, int[] place, int start) {
        operations = modes.size();
        contexts = change.length;
        words = Math.max(1, (operations + 63) / 64);
        this.start = start;
        this.change = Arrays.stream(change).map(int[]::clone).toArray(int[][]::new);
        this.leave = leave.clone();
        this.place = place.clone();
        check();
        List<List<Entry>> entries = new ArrayList<>();
        for (int c = 0; c < contexts; c++) {
            entries.add(new ArrayList<>());
        }
        for (int o = 0; o < operations; o++) {
            for (Mode mode : modes.get(o)) {
                entries.get(mode.context()).add(new Entry(o, set(mode.needs())));
            }
        }
        here = new int[contexts][];
        needs = new long[contexts][][];
        for (int c = 0; c < contexts; c++) {
            List<Entry> sorted = entries.get(c);
            sorted.sort((a, b) -> Integer.compare(count(a.needs), count(b.needs)));
            here[c] = sorted.stream().mapToInt(Entry::operation).toArray();
            needs[c] = sorted.stream().map(Entry::needs).toArray(long[][]::new);
        }
        metric = isMetric();
        if (!metric && Arrays.stream(here).anyMatch(list -> list.length > 1)) {
            throw new IllegalArgumentException("where going round can be cheaper, each operation needs a context of its own."
                    + " Maybe close the costs under shortest ways?");
        }
    }

    private record Entry(int operation, long[] needs) {}

    private void check() {
        if (leave.length != contexts || place.length != contexts || start < 0 || start >= contexts) {
            throw new IllegalArgumentException("costs, places and start must be of the same " + contexts + " contexts");
        }
        for (int[] row : change) {
            if (row.length != contexts || Arrays.stream(row).anyMatch(cost -> cost < 0 || cost > MOST)) {
                throw new IllegalArgumentException("a change must cost 0 to " + MOST + ", for every pair of contexts");
            }
        }
    }

    private long[] set(List<Integer> members) {
        long[] set = new long[words];
        for (int o : members) {
            set[o >> 6] |= 1L << o;
        }
        return set;
    }

    private boolean isMetric() {
        for (int via = 0; via < contexts; via++) {
            for (int a = 0; a < contexts; a++) {
                for (int b = 0; b < contexts; b++) {
                    if (change[a][via] + change[via][b] < change[a][b]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Does in a context all that can be done there; returns whether that was anything. */
    boolean close(long[] done, int context) {
        int[] list = here[context];
        long[][] need = needs[context];
        boolean any = false;
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < list.length; i++) {
                int o = list[i];
                if ((done[o >> 6] & 1L << o) == 0 && holds(done, need[i])) {
                    done[o >> 6] |= 1L << o;
                    again = true;
                    any = true;
                }
            }
        }
        return any;
    }

    /** Whether anything can be done in a context. */
    boolean anything(long[] done, int context) {
        int[] list = here[context];
        for (int i = 0; i < list.length; i++) {
            int o = list[i];
            if ((done[o >> 6] & 1L << o) == 0 && holds(done, needs[context][i])) {
                return true;
            }
        }
        return false;
    }

    static boolean holds(long[] done, long[] need) {
        long missing = 0;
        for (int w = 0; w < need.length; w++) {
            missing |= need[w] & ~done[w];
        }
        return missing == 0;
    }

    static int count(long[] set) {
        int count = 0;
        for (long word : set) {
            count += Long.bitCount(word);
        }
        return count;
    }
}
