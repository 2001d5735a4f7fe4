package gudgeon.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;

/** Assignments against brute force, a graph library and a published instance. */
class AssignmentTest {
    /** OR-Library assign100: 305; bottleneck 5 worked out by others with a threshold and a maximum matching. */
    @Test
    void aPublishedInstance() throws IOException {
        double[][] cost = read("assignment-100.txt");
        Assignment best = Assignment.cheapest(cost).orElseThrow();
        assertThat(best.total()).isEqualTo(305);
        assertThat(best.columnOf()).doesNotHaveDuplicates().hasSize(100);
        BottleneckAssignment flat = BottleneckAssignment.best(cost).orElseThrow();
        assertThat(flat.largest()).isEqualTo(5);
        for (int row = 0; row < 100; row++) {
            assertThat(cost[row][flat.columnOf().get(row)]).isLessThanOrEqualTo(5);
        }
    }

    private static double[][] read(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(AssignmentTest.class.getResourceAsStream(name))) {
            List<Double> numbers = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .flatMap(line -> Arrays.stream(line.strip().split("\\s+", -1)))
                    .filter(word -> !word.isEmpty())
                    .map(Double::valueOf)
                    .toList();
            int size = numbers.getFirst().intValue();
            double[][] cost = new double[size][size];
            for (int entry = 0; entry < size * size; entry++) {
                cost[entry / size][entry % size] = numbers.get(entry + 1);
            }
            return cost;
        }
    }

    @Test
    void agreesWithBruteForce() {
        Random random = new Random(2024);
        for (int run = 0; run < 1000; run++) {
            int rows = 1 + random.nextInt(5);
            int columns = rows + random.nextInt(3);
            double[][] cost = new double[rows][columns];
            for (double[] row : cost) {
                Arrays.setAll(row, c -> random.nextInt(7) == 0 ? Double.POSITIVE_INFINITY : random.nextInt(20) - 4);
            }
            List<Assignment> all = new ArrayList<>();
            every(cost, new ArrayList<>(), all);
            all.sort(java.util.Comparator.comparingDouble(Assignment::total));
            String said = "seed 2024, run " + run;
            if (all.isEmpty()) {
                assertThat(Assignment.cheapest(cost)).as(said).isEmpty();
                assertThat(BottleneckAssignment.best(cost)).as(said).isEmpty();
                continue;
            }
            assertThat(Assignment.cheapest(cost).orElseThrow().total())
                    .as(said)
                    .isEqualTo(all.getFirst().total());
            assertThat(Assignment.ranked(cost, 6).stream().map(Assignment::total))
                    .as(said)
                    .containsExactlyElementsOf(
                            all.stream().limit(6).map(Assignment::total).toList());
            BottleneckAssignment flat = BottleneckAssignment.best(cost).orElseThrow();
            double least =
                    all.stream().mapToDouble(each -> largest(cost, each)).min().orElseThrow();
            assertThat(flat.largest()).as(said).isEqualTo(least);
            assertThat(flat.total())
                    .as(said)
                    .isEqualTo(all.stream()
                            .filter(each -> largest(cost, each) <= least)
                            .mapToDouble(Assignment::total)
                            .min()
                            .orElseThrow());
        }
    }

    private static double largest(double[][] cost, Assignment each) {
        return IntStream.range(0, cost.length)
                .mapToDouble(row -> cost[row][each.columnOf().get(row)])
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private static void every(double[][] cost, List<Integer> taken, List<Assignment> all) {
        if (taken.size() == cost.length) {
            double total = IntStream.range(0, cost.length)
                    .mapToDouble(row -> cost[row][taken.get(row)])
                    .sum();
            all.add(new Assignment(taken, total));
            return;
        }
        for (int column = 0; column < cost[0].length; column++) {
            if (!taken.contains(column) && cost[taken.size()][column] < Double.POSITIVE_INFINITY) {
                taken.add(column);
                every(cost, taken, all);
                taken.removeLast();
            }
        }
    }

    @Test
    void agreesWithAGraphLibrary() {
        Random random = new Random(5);
        for (int run = 0; run < 20; run++) {
            int size = 10 + random.nextInt(15);
            double[][] cost = new double[size][size];
            SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
                    new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
            IntStream.range(0, 2 * size).forEach(graph::addVertex);
            for (int row = 0; row < size; row++) {
                for (int column = 0; column < size; column++) {
                    cost[row][column] = random.nextDouble() * 100;
                    graph.setEdgeWeight(graph.addEdge(row, size + column), cost[row][column]);
                }
            }
            double library = new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(
                            graph,
                            IntStream.range(0, size).boxed().collect(Collectors.toSet()),
                            IntStream.range(size, 2 * size).boxed().collect(Collectors.toSet()))
                    .getMatching()
                    .getWeight();
            assertThat(Assignment.cheapest(cost).orElseThrow().total())
                    .as("seed 5, run %d", run)
                    .isCloseTo(library, within(1e-9));
        }
    }

    @Test
    void sharingOutAgreesWithBruteForce() {
        Random random = new Random(99);
        for (int run = 0; run < 1000; run++) {
            int sets = 1 + random.nextInt(3);
            double[] numbers =
                    random.doubles(1 + random.nextInt(7), 0, 50).map(Math::rint).toArray();
            Partition best = Partition.best(numbers, sets);
            double least = Double.POSITIVE_INFINITY;
            for (int code = 0; code < Math.pow(sets, numbers.length); code++) {
                double[] sums = new double[sets];
                int rest = code;
                for (double number : numbers) {
                    sums[rest % sets] += number;
                    rest /= sets;
                }
                Arrays.sort(sums);
                least = Math.min(least, sums[sets - 1] - sums[0]);
            }
            assertThat(best.spread()).as("seed 99, run %d", run).isEqualTo(least);
            assertThat(best.proven()).isTrue();
            assertThat(best.sets().stream().flatMap(List::stream).sorted().toList())
                    .isEqualTo(IntStream.range(0, numbers.length).boxed().toList());
            assertThat(Partition.differenced(numbers, sets).spread()).isGreaterThanOrEqualTo(best.spread());
        }
    }

    @Test
    void whatIsNoTableIsSaid() {
        assertThatThrownBy(() -> Assignment.cheapest(new double[][] {{1}, {2}}))
                .hasMessageContaining("as many columns");
        assertThatThrownBy(() -> Assignment.cheapest(new double[][] {{Double.NaN}}))
                .hasMessageContaining("NaN");
        assertThat(Assignment.cheapest(new double[0][]).orElseThrow().total()).isZero();
        assertThat(Assignment.dearest(new double[][] {{1, 9}, {2, 3}})
                        .orElseThrow()
                        .columnOf())
                .containsExactly(1, 0);
    }
}
