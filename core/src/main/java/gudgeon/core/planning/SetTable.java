package gudgeon.core.planning;

import java.util.Arrays;

/** Numbers sets of operations, each with a tag, in the order in which they are first seen. Open addressing. */
final class SetTable {
    private final int words;
    private long[] sets;
    private int[] tags;
    private int[] slots;
    private int size;

    SetTable(int words) {
        this.words = words;
        sets = new long[words * 64];
        tags = new int[64];
        slots = new int[256];
        Arrays.fill(slots, -1);
    }

    int size() {
        return size;
    }

    /** The number of a set with a tag, a new one when it was not known: then it is the last of {@link #size()}. */
    int number(long[] set, int tag) {
        int slot = slot(set, tag);
        if (slots[slot] >= 0) {
            return slots[slot];
        }
        if (size == tags.length) {
            sets = Arrays.copyOf(sets, sets.length * 2);
            tags = Arrays.copyOf(tags, tags.length * 2);
        }
        System.arraycopy(set, 0, sets, size * words, words);
        tags[size] = tag;
        slots[slot] = size;
        size++;
        if (size * 3 > slots.length * 2) {
            spread();
        }
        return size - 1;
    }

    /** The number of a set with a tag, or -1. */
    int find(long[] set, int tag) {
        return slots[slot(set, tag)];
    }

    /** Copies a set out. */
    void copy(int number, long[] into) {
        System.arraycopy(sets, number * words, into, 0, words);
    }

    int tag(int number) {
        return tags[number];
    }

    private int slot(long[] set, int tag) {
        long hash = tag * 0x9E3779B97F4A7C15L;
        for (int w = 0; w < words; w++) {
            hash = mix(hash ^ set[w]);
        }
        int mask = slots.length - 1;
        int at = (int) hash & mask;
        while (slots[at] >= 0 && !equal(slots[at], set, tag)) {
            at = at + 1 & mask;
        }
        return at;
    }

    private static long mix(long bits) {
        long mixed = (bits ^ bits >>> 32) * 0xD6E8FEB86659FD93L;
        mixed = (mixed ^ mixed >>> 29) * 0x9E3779B97F4A7C15L;
        return mixed ^ mixed >>> 32;
    }

    private boolean equal(int number, long[] set, int tag) {
        if (tags[number] != tag) {
            return false;
        }
        for (int w = 0; w < words; w++) {
            if (sets[number * words + w] != set[w]) {
                return false;
            }
        }
        return true;
    }

    private void spread() {
        slots = new int[slots.length * 2];
        Arrays.fill(slots, -1);
        long[] set = new long[words];
        for (int i = 0; i < size; i++) {
            copy(i, set);
            slots[slot(set, tags[i])] = i;
        }
    }
}
