package gudgeon.core.planning;

import java.util.Arrays;

/**
 * Partial orders of one length: a table by set and last thing, of which at most twice a width are held at a time and a width
 * is kept: the ones with the least bounds, the earlier of equals.
 */
final class OrderLayer {
    private final int words;
    private final int width;
    private long[] sets;
    private long[] hashes;
    private int[] lasts;
    private int[] parents;
    private long[] costs;
    private long[] bounds;
    private int[] slots;
    private int size;
    /** What is at or above it is not taken up any more. */
    private long ceiling = Long.MAX_VALUE;

    private long dropped = Long.MAX_VALUE;

    OrderLayer(int words, int width) {
        this.words = words;
        this.width = width;
        int room = 64;
        sets = new long[room * words];
        hashes = new long[room];
        lasts = new int[room];
        parents = new int[room];
        costs = new long[room];
        bounds = new long[room];
        slots = new int[256];
        Arrays.fill(slots, -1);
    }

    int size() {
        return size;
    }

    int last(int s) {
        return lasts[s];
    }

    int parent(int s) {
        return parents[s];
    }

    long cost(int s) {
        return costs[s];
    }

    long bound(int s) {
        return bounds[s];
    }

    long hash(int s) {
        return hashes[s];
    }

    /** The least bound among what was dropped. */
    long dropped() {
        return dropped;
    }

    void copySet(int s, long[] into) {
        System.arraycopy(sets, s * words, into, 0, words);
    }

    /** Takes a partial order up, unless one with the same things and the same last one costs no more. */
    void put(long[] set, long hash, int last, long cost, int parent, long bound) {
        int slot = slot(set, hash, last);
        int known = slots[slot];
        if (known >= 0) {
            if (cost < costs[known]) {
                costs[known] = cost;
                bounds[known] = bound;
                parents[known] = parent;
            }
            return;
        }
        if (bound >= ceiling) {
            dropped = Math.min(dropped, bound);
            return;
        }
        if (size == lasts.length) {
            grow();
        }
        System.arraycopy(set, 0, sets, size * words, words);
        hashes[size] = hash;
        lasts[size] = last;
        costs[size] = cost;
        bounds[size] = bound;
        parents[size] = parent;
        slots[slot] = size++;
        if (size >= 2 * width) {
            trim();
        } else if (2 * size > slots.length) {
            rehash(2 * slots.length);
        }
    }

    private int slot(long[] set, long hash, int last) {
        long mixed = (hash + last) * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 40) & slots.length - 1;
        while (slots[slot] >= 0 && !same(slots[slot], set, last)) {
            slot = slot + 1 & slots.length - 1;
        }
        return slot;
    }

    private boolean same(int s, long[] set, int last) {
        if (lasts[s] != last) {
            return false;
        }
        for (int w = 0; w < words; w++) {
            if (sets[s * words + w] != set[w]) {
                return false;
            }
        }
        return true;
    }

    private void grow() {
        int room = 2 * lasts.length;
        sets = Arrays.copyOf(sets, room * words);
        hashes = Arrays.copyOf(hashes, room);
        lasts = Arrays.copyOf(lasts, room);
        parents = Arrays.copyOf(parents, room);
        costs = Arrays.copyOf(costs, room);
        bounds = Arrays.copyOf(bounds, room);
    }

    private void rehash(int room) {
        slots = new int[room];
        Arrays.fill(slots, -1);
        long[] set = new long[words];
        for (int s = 0; s < size; s++) {
            copySet(s, set);
            slots[slot(set, hashes[s], lasts[s])] = s;
        }
    }

    /** Keeps no more than the width. */
    void trim() {
        if (size <= width) {
            return;
        }
        long[] sorted = Arrays.copyOf(bounds, size);
        Arrays.sort(sorted);
        long worst = sorted[width - 1];
        int equals = 0;
        for (int i = width - 1; i >= 0 && sorted[i] == worst; i--) {
            equals++;
        }
        int kept = 0;
        for (int s = 0; s < size; s++) {
            boolean keep = bounds[s] < worst || (bounds[s] == worst && equals-- > 0);
            if (keep) {
                move(s, kept++);
            } else {
                dropped = Math.min(dropped, bounds[s]);
            }
        }
        size = kept;
        ceiling = worst;
        rehash(slots.length);
    }

    private void move(int from, int to) {
        System.arraycopy(sets, from * words, sets, to * words, words);
        hashes[to] = hashes[from];
        lasts[to] = lasts[from];
        parents[to] = parents[from];
        costs[to] = costs[from];
        bounds[to] = bounds[from];
    }

    /** Keeps only what is needed to follow an order back. */
    void forgetSets() {
        sets = new long[0];
        hashes = new long[0];
        slots = new int[0];
        bounds = new long[0];
        costs = new long[0];
        lasts = Arrays.copyOf(lasts, size);
        parents = Arrays.copyOf(parents, size);
    }
}
