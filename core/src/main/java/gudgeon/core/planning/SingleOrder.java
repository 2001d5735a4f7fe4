package gudgeon.core.planning;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The best order of things with arbitrary changeovers between them and plain precedences: the sequential ordering problem,
 * question 2 without places and tools. A search by exchanges finds good orders; layers of growing width prove how good they
 * are. It answers at any time; nothing here is chased at the cost of {@link Sequencing}.
 */
public final class SingleOrder {
    private static final int SHAKES = 50;
    private static final int FIRST_WIDTH = 64;
    /** Bytes that all layers together may take. */
    private static final long ROOM = 200_000_000;

    private final OrderMatrix problem;
    private final LayeredOrder layers;
    private final SegmentExchange exchange;
    private final BooleanSupplier stop;
    private long floor;

    private SingleOrder(OrderMatrix problem, long seed, BooleanSupplier stop) {
        this.problem = problem;
        this.stop = stop;
        AssignmentBound bound = new AssignmentBound(problem);
        layers = new LayeredOrder(problem, bound);
        exchange = new SegmentExchange(problem, problem.greedy(), seed);
        floor = bound.whole();
    }

    /**
     * What is known about the best order.
     *
     * @param order the numbers of the things
     * @param cost what it costs
     * @param lowerBound no order costs less
     */
    public record Answer(List<Integer> order, long cost, long lowerBound) {
        public Answer {
            order = List.copyOf(order);
        }

        /** Whether the order is proven to be the best. */
        public boolean proven() {
            return cost == lowerBound;
        }
    }

    /**
     * The best order.
     *
     * @param cost by pair: what the second one costs right after the first; below zero where that cannot be
     * @param precedes by pair: whether the first must come before the second; the first thing comes before and the last one
     *     after all others anyway
     * @param seed of the shaking
     * @param stop asked often: whether it is time to answer
     * @throws IllegalArgumentException when the shapes differ or the precedences run in a circle
     */
    public static Answer best(int[][] cost, boolean[][] precedes, long seed, BooleanSupplier stop) {
        return new SingleOrder(new OrderMatrix(cost, precedes), seed, stop).run();
    }

    private Answer run() {
        int most = (int) Math.min(1_000_000, ROOM / LayeredOrder.bytes(problem));
        int width = Math.min(FIRST_WIDTH, most);
        boolean widest = false;
        while (floor < exchange.value() && !stop.getAsBoolean()) {
            if (widest) {
                exchange.shake(SHAKES);
                continue;
            }
            LayeredOrder.Found found = layers.run(exchange.value(), width, stop);
            if (found == null) {
                break;
            }
            floor = Math.max(floor, Math.min(found.lowerBound(), exchange.value()));
            if (found.order().length > 0) {
                improve(found.order());
            }
            while (exchange.work() < layers.work() && floor < exchange.value() && !stop.getAsBoolean()) {
                exchange.shake(SHAKES);
            }
            widest = width == most;
            width = Math.min(most, 4 * width);
        }
        int[] order = exchange.order();
        long value = problem.costOf(order);
        return new Answer(Arrays.stream(order).boxed().toList(), value, Math.min(floor, value));
    }

    private void improve(int[] order) {
        int[] before = exchange.order();
        long value = exchange.value();
        exchange.restart(order);
        if (exchange.value() > value) {
            exchange.restart(before);
        }
    }
}
