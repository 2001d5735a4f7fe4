package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Orders of one, two, three ... things, those with the same things and the same last one taken together, and of each length
 * at most a number of them kept: those that cost least with what is left at least. What is dropped is remembered by its
 * bound, so that the answer has one too; when nothing had to be dropped the order is the best.
 *
 * <p>Source: [HK1962] for the table over sets; the bound of what is left is that of {@link AssignmentBound}.
 */
final class LayeredOrder {
    private final OrderMatrix problem;
    private final AssignmentBound bound;
    private final long[] mark;
    private long work;

    /**
     * @param order empty when none below the limit was found
     * @param lowerBound no order costs less
     */
    record Found(int[] order, long lowerBound) {}

    private long dropped;
    private long limit;

    LayeredOrder(OrderMatrix problem, AssignmentBound bound) {
        this.problem = problem;
        this.bound = bound;
        Random random = new Random(20);
        mark = random.longs(problem.size).toArray();
    }

    long work() {
        return work;
    }

    /** The best order below a limit, keeping so many at each length; null when it was stopped. */
    @Nullable Found run(long below, int width, BooleanSupplier stop) {
        limit = below;
        dropped = Long.MAX_VALUE;
        List<OrderLayer> layers = new ArrayList<>();
        OrderLayer first = new OrderLayer(problem.words, width);
        long[] set = new long[problem.words];
        set[0] = 1;
        first.put(set, mark[0], 0, 0, -1, bound.whole());
        layers.add(first);
        for (int length = 1; length < problem.size; length++) {
            OrderLayer next = new OrderLayer(problem.words, width);
            if (!extend(layers.getLast(), next, stop)) {
                return null;
            }
            next.trim();
            dropped = Math.min(dropped, next.dropped());
            layers.getLast().forgetSets();
            layers.add(next);
        }
        OrderLayer last = layers.getLast();
        if (last.size() == 0) {
            return new Found(new int[0], Math.min(dropped, below));
        }
        return new Found(path(layers), Math.min(dropped, last.cost(0)));
    }

    private boolean extend(OrderLayer from, OrderLayer to, BooleanSupplier stop) {
        long[] set = new long[problem.words];
        for (int s = 0; s < from.size(); s++) {
            if ((s & 127) == 127 && stop.getAsBoolean()) {
                return false;
            }
            from.copySet(s, set);
            int last = from.last(s);
            // what is left at least without the way out of the last one
            long left = from.bound(s) - from.cost(s) - bound.leaving[last];
            for (int o = 1; o < problem.size; o++) {
                int step = problem.cost[last][o];
                if ((set[o >> 6] & 1L << o) != 0 || step == OrderMatrix.NEVER) {
                    continue;
                }
                work += problem.words;
                long cost = from.cost(s) + step;
                long least = cost + left - bound.arriving[o];
                if (least < limit && Sequencing.holds(set, problem.before[o])) {
                    set[o >> 6] |= 1L << o;
                    to.put(set, from.hash(s) ^ mark[o], o, cost, s, least);
                    set[o >> 6] &= ~(1L << o);
                    work += 20;
                }
            }
        }
        return true;
    }

    private int[] path(List<OrderLayer> layers) {
        int[] order = new int[problem.size];
        int at = 0;
        for (int length = problem.size - 1; length >= 0; length--) {
            order[length] = layers.get(length).last(at);
            at = layers.get(length).parent(at);
        }
        return order;
    }

    /** Memory that one order kept takes, so that the caller can choose a width: bytes, about. */
    static long bytes(OrderMatrix problem) {
        return 24L * problem.size;
    }
}
