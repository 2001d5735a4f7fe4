package gudgeon.core.planning;

import java.util.Arrays;

/**
 * Where one can stand in a {@link Projection}: a state in which nothing more can be done in one's own group, and that group.
 * Each leads to the stands after going to another group with something to do; the end leads nowhere. Numbers are given when
 * a stand is first asked for, higher than those of all it leads to: counting up visits each after what it needs.
 */
final class Stands {
    private final Projection projection;
    /** By state and group: the number of the stand, one more; 0 where unknown. */
    private int[] numbers = new int[64];

    private int[] group = new int[64];
    private int[] from = new int[65];
    private int[] next = new int[256];
    private int count;

    Stands(Projection projection) {
        this.projection = projection;
    }

    /** The stand that one comes to who is in a state and a group. */
    int of(int state, int g) {
        int known = known(state, g);
        if (known > 0) {
            return known - 1;
        }
        int after = projection.isComplete(state) ? state : projection.next(state, g);
        int stand = after == state ? add(state, g) : of(after, g);
        remember(state, g, stand);
        return stand;
    }

    private int add(int state, int g) {
        int[] leads = new int[projection.groups];
        int many = 0;
        if (!projection.isComplete(state)) {
            for (int t = 0; t < projection.groups; t++) {
                int after = t == g ? state : projection.next(state, t);
                if (after != state) {
                    leads[many++] = of(after, t);
                }
            }
        }
        if (count == group.length) {
            group = Arrays.copyOf(group, 2 * count);
            from = Arrays.copyOf(from, 2 * count + 1);
        }
        int end = from[count] + many;
        if (end > next.length) {
            next = Arrays.copyOf(next, Math.max(end, 2 * next.length));
        }
        System.arraycopy(leads, 0, next, from[count], many);
        group[count] = g;
        from[count + 1] = end;
        return count++;
    }

    private int known(int state, int g) {
        int at = state * projection.groups + g;
        return at < numbers.length ? numbers[at] : 0;
    }

    private void remember(int state, int g, int stand) {
        int at = state * projection.groups + g;
        if (at >= numbers.length) {
            numbers = Arrays.copyOf(numbers, Math.max(at + 1, 2 * numbers.length));
        }
        numbers[at] = stand + 1;
    }

    int count() {
        return count;
    }

    int group(int stand) {
        return group[stand];
    }

    /** Where the leads of a stand begin; those of the next one are where they end. */
    int from(int stand) {
        return from[stand];
    }

    /** The stand that a lead leads to. */
    int next(int lead) {
        return next[lead];
    }

    /** A stand and all that can come after it, lowest number first. */
    int[] after(int stand) {
        boolean[] seen = new boolean[stand + 1];
        seen[stand] = true;
        int many = 0;
        for (int s = stand; s >= 0; s--) {
            if (seen[s]) {
                many++;
                for (int e = from[s]; e < from[s + 1]; e++) {
                    seen[next[e]] = true;
                }
            }
        }
        int[] result = new int[many];
        for (int s = 0, k = 0; s <= stand; s++) {
            if (seen[s]) {
                result[k++] = s;
            }
        }
        return result;
    }
}
