package gudgeon.core.fitting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Every row gets a column of its own so that the largest single cost is as small as possible; among those, the least total.
 *
 * <p>Halving over the sorted costs, each time a largest matching; then {@link Assignment} with the dearer pairs forbidden. Positive
 * infinity forbids a pair.
 *
 * @param columnOf by row, its column
 * @param largest the largest cost of a pair
 * @param total the sum of costs
 */
public record BottleneckAssignment(List<Integer> columnOf, double largest, double total) {
    public BottleneckAssignment {
        columnOf = List.copyOf(columnOf);
    }

    /** The best such assignment; empty when what is allowed cannot give every row a column. */
    public static Optional<BottleneckAssignment> best(double[][] cost) {
        Assignment.check(cost);
        double[] steps = Arrays.stream(cost)
                .flatMapToDouble(Arrays::stream)
                .filter(each -> each < Double.POSITIVE_INFINITY)
                .distinct()
                .sorted()
                .toArray();
        if (steps.length == 0 || !fits(cost, steps[steps.length - 1])) {
            return cost.length == 0 ? Optional.of(new BottleneckAssignment(List.of(), 0, 0)) : Optional.empty();
        }
        int low = 0;
        int high = steps.length - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (fits(cost, steps[middle])) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        double largest = steps[low];
        double[][] allowed = Arrays.stream(cost)
                .map(row -> Arrays.stream(row)
                        .map(each -> each <= largest ? each : Double.POSITIVE_INFINITY)
                        .toArray())
                .toArray(double[][]::new);
        return Assignment.cheapest(allowed)
                .map(found -> new BottleneckAssignment(found.columnOf(), largest, found.total()));
    }

    private static boolean fits(double[][] cost, double most) {
        int[] rowOf = new int[cost[0].length];
        Arrays.fill(rowOf, -1);
        for (int row = 0; row < cost.length; row++) {
            if (!augment(cost, most, row, rowOf, new boolean[rowOf.length])) {
                return false;
            }
        }
        return true;
    }

    private static boolean augment(double[][] cost, double most, int row, int[] rowOf, boolean[] seen) {
        for (int column = 0; column < rowOf.length; column++) {
            if (!seen[column] && cost[row][column] <= most) {
                seen[column] = true;
                if (rowOf[column] < 0 || augment(cost, most, rowOf[column], rowOf, seen)) {
                    rowOf[column] = row;
                    return true;
                }
            }
        }
        return false;
    }
}
