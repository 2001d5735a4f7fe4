package gudgeon.core.planning;

import java.util.Arrays;

/** States by estimate, among equals those with least left to do, then those added last. A binary heap. */
final class StateQueue {
    private long[] keys = new long[1024];
    private int[] nodes = new int[1024];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    void clear() {
        size = 0;
    }

    /** @param left operations left, less than 65,536 */
    void add(int estimate, int left, int node) {
        if (size == nodes.length) {
            keys = Arrays.copyOf(keys, 2 * size);
            nodes = Arrays.copyOf(nodes, 2 * size);
        }
        long key = (long) estimate << 16 | left;
        int at = size++;
        while (at > 0 && key <= keys[at - 1 >> 1]) {
            keys[at] = keys[at - 1 >> 1];
            nodes[at] = nodes[at - 1 >> 1];
            at = at - 1 >> 1;
        }
        keys[at] = key;
        nodes[at] = node;
    }

    /** The first state, taken out. */
    int remove() {
        int first = nodes[0];
        size--;
        long key = keys[size];
        int node = nodes[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            if (child + 1 < size && keys[child + 1] < keys[child]) {
                child++;
            }
            if (key <= keys[child]) {
                break;
            }
            keys[at] = keys[child];
            nodes[at] = nodes[child];
            at = child;
        }
        keys[at] = key;
        nodes[at] = node;
        return first;
    }
}
