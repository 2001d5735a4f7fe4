package gudgeon.core.planning;

import java.util.Arrays;

/**
 * A {@link Projection} with a share of every cost, and what the rest of it then costs at least. Pricings whose shares add up
 * to no more than the costs may be added. Cost of a value: groups with something to do; each is found once.
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
    /** By stand of the projection: what is left; known for the first ones. */
    private int[] values = new int[0];

    private int known;

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
        known = 0;
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
        return value(projection.stands().of(state, projection.group[context]));
    }

    private int value(int stand) {
        if (stand >= known) {
            room(stand);
            while (known <= stand) {
                evaluate(known++);
            }
        }
        return values[stand];
    }

    /** Works out these stands only, each after those it leads to; others keep what they were worth before. */
    void evaluate(int[] stands) {
        room(stands[stands.length - 1]);
        for (int stand : stands) {
            evaluate(stand);
        }
    }

    /** What a stand is worth, just worked out by {@link #evaluate(int[])}. */
    int evaluated(int stand) {
        return values[stand];
    }

    private void room(int stand) {
        if (stand >= values.length) {
            values = Arrays.copyOf(values, Math.max(projection.stands().count(), 2 * stand + 2));
        }
    }

    private void evaluate(int stand) {
        Stands stands = projection.stands();
        int g = stands.group(stand);
        int from = stands.from(stand);
        int to = stands.from(stand + 1);
        int least = from == to ? out[g] : FAR;
        int row = g * groups;
        for (int e = from; e < to; e++) {
            int next = stands.next(e);
            least = Math.min(least, between[row + stands.group(next)] + values[next]);
        }
        values[stand] = least;
    }

    /**
     * Counts the changes of one cheapest way from a stand to the end: what a higher share of them would add. The stands on
     * the way must have been worked out.
     */
    void count(int start, int[][] changes, int[] leaves) {
        Stands stands = projection.stands();
        int stand = start;
        while (stands.from(stand) < stands.from(stand + 1)) {
            int best = cheapestFrom(stand);
            count(stands.group(stand), stands.group(best), changes);
            stand = best;
        }
        int g = stands.group(stand);
        count(g, exit[g], changes);
        leaves[cheapestLeave[exit[g]]]++;
    }

    private int cheapestFrom(int stand) {
        Stands stands = projection.stands();
        int row = stands.group(stand) * groups;
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int e = stands.from(stand); e < stands.from(stand + 1); e++) {
            int next = stands.next(e);
            int through = between[row + stands.group(next)] + values[next];
            if (through < least) {
                least = through;
                best = next;
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
