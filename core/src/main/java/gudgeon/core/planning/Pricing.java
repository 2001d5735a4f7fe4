package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A {@link Projection} with a share of every cost, and what the rest of it then costs at least. Pricings whose shares add up
 * to no more than the costs may be added. Cost of a value: contexts with something to do; each is found once.
 */
final class Pricing {
    private static final int FAR = 1 << 29;

    final Projection projection;
    /** Shares of the costs, by context and context. */
    final int[][] change;

    final int[] leave;

    private final int groups;
    private final int[] between;
    private final int[] via;
    private final int[] out;
    private final int[] exit;
    /** By groups: the contexts whose change is the cheapest between them. */
    private final int[] cheapest;

    private final int[] cheapestLeave;
    /** By state, where asked for, and group: what is left; -1 where unknown. */
    private final List<int @Nullable []> rows = new ArrayList<>();

    Pricing(Projection projection, int[][] change, int[] leave) {
        this.projection = projection;
        this.change = change;
        this.leave = leave;
        groups = projection.groups;
        between = new int[groups * groups];
        via = new int[groups * groups];
        cheapest = new int[groups * groups];
        out = new int[groups];
        exit = new int[groups];
        cheapestLeave = new int[groups];
        price();
    }

    /** Takes changed shares into account and forgets what was known. */
    void price() {
        for (int[] row : rows) {
            if (row != null) {
                Arrays.fill(row, -1);
            }
        }
        Arrays.fill(between, FAR);
        Arrays.fill(via, -1);
        Arrays.fill(out, FAR);
        int[] group = projection.group;
        int k = change.length;
        for (int c = 0; c < k; c++) {
            for (int d = 0; d < k; d++) {
                int at = group[c] * groups + group[d];
                if (group[c] == group[d]) {
                    between[at] = 0;
                } else if (change[c][d] < between[at]) {
                    between[at] = change[c][d];
                    cheapest[at] = c * k + d;
                }
            }
            if (leave[c] < out[group[c]]) {
                out[group[c]] = leave[c];
                cheapestLeave[group[c]] = c;
            }
        }
        shorten();
    }

    private void shorten() {
        for (int v = 0; v < groups; v++) {
            for (int a = 0; a < groups; a++) {
                int first = between[a * groups + v];
                for (int b = 0; b < groups; b++) {
                    int through = first + between[v * groups + b];
                    if (through < between[a * groups + b]) {
                        between[a * groups + b] = through;
                        via[a * groups + b] = v;
                    }
                }
            }
        }
        int[] direct = out.clone();
        for (int a = 0; a < groups; a++) {
            exit[a] = a;
            for (int b = 0; b < groups; b++) {
                if (between[a * groups + b] + direct[b] < out[a]) {
                    out[a] = between[a * groups + b] + direct[b];
                    exit[a] = b;
                }
            }
        }
    }

    /** What is left at least in a state, when one is in a context. */
    int remaining(int state, int context) {
        return value(state, projection.group[context]);
    }

    private int value(int state, int g) {
        int[] known = row(state);
        if (known[g] >= 0) {
            return known[g];
        }
        int least = FAR;
        int here = projection.next(state, g);
        if (projection.isComplete(state)) {
            least = out[g];
        } else if (here != state) {
            least = value(here, g);
        } else {
            for (int t = 0; t < groups; t++) {
                if (t != g && between[g * groups + t] < least) {
                    int next = projection.next(state, t);
                    least = next == state ? least : Math.min(least, between[g * groups + t] + value(next, t));
                }
            }
        }
        known[g] = least;
        return least;
    }

    private int[] row(int state) {
        while (rows.size() <= state) {
            rows.add(null);
        }
        int[] row = rows.get(state);
        if (row == null) {
            row = new int[groups];
            Arrays.fill(row, -1);
            rows.set(state, row);
        }
        return row;
    }

    /** Counts the changes of one cheapest way from a state to the end: what a higher share of them would add. */
    void count(int state, int context, int[][] changes, int[] leaves) {
        int s = state;
        int g = projection.group[context];
        while (!projection.isComplete(s)) {
            int best = g;
            if (projection.next(s, g) == s) {
                best = cheapest(s, g);
            }
            count(g, best, changes);
            s = projection.next(s, best);
            g = best;
        }
        count(g, exit[g], changes);
        leaves[cheapestLeave[exit[g]]]++;
    }

    private int cheapest(int state, int g) {
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int t = 0; t < groups; t++) {
            int next = projection.next(state, t);
            if (next != state && between[g * groups + t] + value(next, t) < least) {
                least = between[g * groups + t] + value(next, t);
                best = t;
            }
        }
        return best;
    }

    private void count(int from, int to, int[][] changes) {
        if (from == to) {
            return;
        }
        int through = via[from * groups + to];
        if (through >= 0) {
            count(from, through, changes);
            count(through, to, changes);
        } else {
            int pair = cheapest[from * groups + to];
            changes[pair / change.length][pair % change.length]++;
        }
    }
}
