package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A problem with fewer operations: all others count as done for nothing whenever they are needed. Contexts may be taken
 * together in groups within which one moves for nothing. The states, sets of operations done, are found as they are asked
 * for; what they cost is the business of {@link Pricing}.
 */
final class Projection {
    final Sequencing problem;
    final int groups;
    /** By context: its group. */
    final int[] group;

    private final long[] members;
    private final int[][] here;
    private final long[][][] needs;
    private final SetTable table;
    /** By state, where asked for, and group: the state after all is done there; -1 where unknown. */
    private final List<int[]> next = new ArrayList<>();

    private final Stands stands = new Stands(this);
    private final long[] scratch;
    private final long[] closing;
    private final int complete;

    Projection(Sequencing problem, long[] members, int[] group) {
        this.problem = problem;
        this.members = members.clone();
        this.group = group.clone();
        groups = Arrays.stream(group).max().orElse(0) + 1;
        here = new int[groups][];
        needs = new long[groups][][];
        fill();
        table = new SetTable(problem.words);
        scratch = new long[problem.words];
        closing = new long[problem.words];
        state(new long[problem.words]);
        complete = state(members);
    }

    private void fill() {
        for (int g = 0; g < groups; g++) {
            List<Integer> operations = new ArrayList<>();
            List<long[]> masks = new ArrayList<>();
            for (int c = 0; c < problem.contexts; c++) {
                for (int i = 0; group[c] == g && i < problem.here[c].length; i++) {
                    int o = problem.here[c][i];
                    if ((members[o >> 6] & 1L << o) != 0) {
                        operations.add(o);
                        long[] mask = problem.needs[c][i].clone();
                        retain(mask);
                        masks.add(mask);
                    }
                }
            }
            here[g] = operations.stream().mapToInt(Integer::intValue).toArray();
            needs[g] = masks.toArray(long[][]::new);
        }
    }

    private void retain(long[] set) {
        for (int w = 0; w < set.length; w++) {
            set[w] &= members[w];
        }
    }

    /** The state that a set of operations looks like from here, all being done that can be where one is. */
    int state(long[] done, int context) {
        System.arraycopy(done, 0, closing, 0, closing.length);
        retain(closing);
        close(closing, group[context]);
        return state(closing);
    }

    private int state(long[] done) {
        System.arraycopy(done, 0, scratch, 0, scratch.length);
        retain(scratch);
        int number = table.number(scratch, 0);
        if (number == next.size()) {
            next.add(new int[0]);
        }
        return number;
    }

    /** The state in which nothing is done. */
    int root() {
        return 0;
    }

    boolean isComplete(int state) {
        return state == complete;
    }

    int states() {
        return table.size();
    }

    /** The state after all is done in a group that can be; the state itself when that is nothing. */
    int next(int state, int g) {
        int[] known = next.get(state);
        if (known.length == 0) {
            known = new int[groups];
            Arrays.fill(known, -1);
            next.set(state, known);
        }
        if (known[g] < 0) {
            table.copy(state, closing);
            known[g] = close(closing, g) ? state(closing) : state;
        }
        return known[g];
    }

    Stands stands() {
        return stands;
    }

    private boolean close(long[] done, int g) {
        boolean any = false;
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < here[g].length; i++) {
                int o = here[g][i];
                if ((done[o >> 6] & 1L << o) == 0 && Sequencing.holds(done, needs[g][i])) {
                    done[o >> 6] |= 1L << o;
                    again = true;
                    any = true;
                }
            }
        }
        return any;
    }

    /** The states that come up from one, it first, those with more done later; empty when they are more than a number. */
    int[] from(int start, int most) {
        List<Integer> found = new ArrayList<>();
        boolean[] seen = new boolean[Math.max(table.size(), 16)];
        found.add(start);
        seen[start] = true;
        for (int i = 0; i < found.size(); i++) {
            for (int g = 0; g < groups; g++) {
                int after = next(found.get(i), g);
                if (after >= seen.length) {
                    seen = Arrays.copyOf(seen, Math.max(after + 1, 2 * seen.length));
                }
                if (!seen[after]) {
                    seen[after] = true;
                    found.add(after);
                }
            }
            if (found.size() > most) {
                return new int[0];
            }
        }
        long[] set = new long[problem.words];
        long[] keys = new long[found.size()];
        for (int i = 0; i < keys.length; i++) {
            table.copy(found.get(i), set);
            keys[i] = (long) Sequencing.count(set) << 32 | found.get(i);
        }
        Arrays.sort(keys);
        return Arrays.stream(keys).mapToInt(key -> (int) key).toArray();
    }
}
