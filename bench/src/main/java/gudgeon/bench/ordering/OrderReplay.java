package gudgeon.bench.ordering;

import java.util.ArrayList;
import java.util.List;

/**
 * Goes through an order entry by entry of the published matrix: what it costs, and what is wrong with it. Written from the
 * meaning of the file alone; it uses nothing of the search.
 */
public final class OrderReplay {
    private OrderReplay() {}

    /**
     * @param cost sum of the entries from each node to the next
     * @param faults what is wrong; empty when the order is one
     */
    public record Verdict(long cost, List<String> faults) {
        public Verdict {
            faults = List.copyOf(faults);
        }

        public boolean sound() {
            return faults.isEmpty();
        }
    }

    /** Replays an order of all nodes. */
    public static Verdict replay(SopInstance instance, List<Integer> order) {
        int n = instance.size();
        List<String> faults = new ArrayList<>();
        boolean[] seen = new boolean[n];
        for (int node : order) {
            if (node < 0 || node >= n || seen[node]) {
                faults.add("node " + node + " is unknown or stands twice");
                return new Verdict(0, faults);
            }
            seen[node] = true;
        }
        if (order.size() != n) {
            faults.add(order.size() + " of " + n + " nodes stand in the order");
            return new Verdict(0, faults);
        }
        if (order.getFirst() != 0 || order.getLast() != n - 1) {
            faults.add("the order begins with " + order.getFirst() + " and ends with " + order.getLast());
        }
        long cost = 0;
        for (int i = 0; i < n; i++) {
            for (int later = i + 1; later < n; later++) {
                if (instance.entries()[order.get(i)][order.get(later)] == -1) {
                    faults.add("node " + order.get(later) + " must come before node " + order.get(i));
                }
            }
            cost += i + 1 < n ? instance.entries()[order.get(i)][order.get(i + 1)] : 0;
        }
        return new Verdict(cost, faults);
    }
}
