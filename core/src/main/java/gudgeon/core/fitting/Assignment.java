package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Every row gets a column of its own at the least total cost. A cost of positive infinity forbids a pair; there may be more
 * columns than rows.
 *
 * <p>Shortest augmenting paths with potentials: rows squared times columns steps. Exact for whole numbers up to 2^53. The next best
 * assignments are found by forbidding and fixing pairs of the best one. Of equally cheap assignments always the same one is
 * taken.
 *
 * <p>Source: [KUHN1955] the method; [MURTY1968] the ranking, from memory.
 *
 * @param columnOf by row, its column
 * @param total sum of the costs of the pairs
 */
public record Assignment(List<Integer> columnOf, double total) {
    public Assignment {
        columnOf = List.copyOf(columnOf);
    }

    /**
     * The cheapest assignment; empty when what is allowed cannot give every row a column.
     *
     * @param cost rows of equal length, none longer list of rows than of columns; no NaN, no negative infinity
     */
    public static Optional<Assignment> cheapest(double[][] cost) {
        check(cost);
        return solve(cost);
    }

    /** The dearest assignment; pairs of negative infinity are forbidden. */
    public static Optional<Assignment> dearest(double[][] worth) {
        double[][] cost = Arrays.stream(worth)
                .map(row -> Arrays.stream(row).map(each -> 0 - each).toArray())
                .toArray(double[][]::new);
        return cheapest(cost).map(found -> new Assignment(found.columnOf(), 0 - found.total()));
    }

    /** Up to so many cheapest assignments, the cheapest first; equally cheap ones in the order of their columns. */
    public static List<Assignment> ranked(double[][] cost, int most) {
        check(cost);
        List<Assignment> ranked = new ArrayList<>();
        PriorityQueue<Node> open = new PriorityQueue<>(Node.ORDER);
        solve(cost).ifPresent(best -> open.add(new Node(cost, 0, best)));
        while (!open.isEmpty() && ranked.size() < most) {
            Node node = open.poll();
            ranked.add(node.best());
            double[][] rest = copy(node.cost());
            for (int row = node.fixed(); row < cost.length; row++) {
                int taken = node.best().columnOf().get(row);
                double[][] without = copy(rest);
                without[row][taken] = Double.POSITIVE_INFINITY;
                int fixed = row;
                solve(without).ifPresent(next -> open.add(new Node(without, fixed, next)));
                fix(rest, row, taken);
            }
        }
        return ranked;
    }

    /** A part of all assignments: those that the cost still allows; rows before {@code fixed} have one column left. */
    private record Node(double[][] cost, int fixed, Assignment best) {
        static final Comparator<Node> ORDER = Comparator.comparingDouble(
                        (Node node) -> node.best().total())
                .thenComparing(node -> node.best().columnOf(), Node::byColumns);

        private static int byColumns(List<Integer> first, List<Integer> second) {
            for (int row = 0; row < first.size(); row++) {
                int order = Integer.compare(first.get(row), second.get(row));
                if (order != 0) {
                    return order;
                }
            }
            return 0;
        }
    }

    private static void fix(double[][] cost, int row, int column) {
        for (int other = 0; other < cost[row].length; other++) {
            if (other != column) {
                cost[row][other] = Double.POSITIVE_INFINITY;
            }
        }
    }

    private static double[][] copy(double[][] cost) {
        return Arrays.stream(cost).map(double[]::clone).toArray(double[][]::new);
    }

    static void check(double[][] cost) {
        int columns = cost.length == 0 ? 0 : cost[0].length;
        if (cost.length > columns) {
            throw new IllegalArgumentException(cost.length + " rows need as many columns, not " + columns);
        }
        for (double[] row : cost) {
            if (row.length != columns) {
                throw new IllegalArgumentException("rows of a cost table are equally long");
            }
            for (double each : row) {
                if (Double.isNaN(each) || each == Double.NEGATIVE_INFINITY) {
                    throw new IllegalArgumentException("a cost is a number or positive infinity, not " + each);
                }
            }
        }
    }

    private static Optional<Assignment> solve(double[][] cost) {
        int columns = cost.length == 0 ? 0 : cost[0].length;
        AugmentingPaths paths = new AugmentingPaths(cost, columns);
        for (int row = 0; row < cost.length; row++) {
            if (!paths.assign(row)) {
                return Optional.empty();
            }
        }
        int[] columnOf = paths.columnOf(cost.length);
        double total = 0;
        for (int row = 0; row < cost.length; row++) {
            total += cost[row][columnOf[row]];
        }
        return Optional.of(new Assignment(Arrays.stream(columnOf).boxed().toList(), total));
    }
}
