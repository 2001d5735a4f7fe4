package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Plain orders against all permutations, written from the definition. */
class SingleOrderTest {
    @Test
    void agreesWithAllPermutations() {
        for (int seed = 0; seed < 150; seed++) {
            Drawn drawn = Drawn.of(seed);
            long expected = drawn.least(new int[] {0}, 0);
            SingleOrder.Answer answer = SingleOrder.best(drawn.cost, drawn.precedes, seed, () -> false);
            assertThat(answer.cost()).as("seed %d", seed).isEqualTo(expected);
            assertThat(answer.lowerBound()).as("seed %d", seed).isEqualTo(expected);
            assertThat(drawn.costOf(answer.order())).as("seed %d", seed).isEqualTo(expected);
        }
    }

    @Test
    void boundsWhatItCannotProve() {
        int open = 0;
        for (int seed = 0; seed < 40; seed++) {
            Drawn drawn = Drawn.of(seed);
            long expected = drawn.least(new int[] {0}, 0);
            int[] asked = {0};
            SingleOrder.Answer answer = SingleOrder.best(drawn.cost, drawn.precedes, seed, () -> asked[0]++ >= 0);
            assertThat(answer.lowerBound()).as("seed %d", seed).isLessThanOrEqualTo(expected);
            assertThat(drawn.costOf(answer.order())).as("seed %d", seed).isEqualTo(answer.cost());
            open += answer.proven() ? 0 : 1;
        }
        assertThat(open).isPositive();
    }

    @Test
    void keepsABoundWhenLayersAreNarrow() {
        int below = 0;
        for (int seed = 0; seed < 80; seed++) {
            Drawn drawn = Drawn.of(seed);
            long expected = drawn.least(new int[] {0}, 0);
            OrderMatrix matrix = new OrderMatrix(drawn.cost, drawn.precedes);
            LayeredOrder.Found found = Objects.requireNonNull(
                    new LayeredOrder(matrix, new AssignmentBound(matrix)).run(Long.MAX_VALUE / 4, 2, () -> false));
            assertThat(found.lowerBound()).as("seed %d", seed).isLessThanOrEqualTo(expected);
            below += found.lowerBound() < expected ? 1 : 0;
        }
        assertThat(below).isPositive();
    }

    @Test
    void refusesACircle() {
        boolean[][] precedes = new boolean[4][4];
        precedes[1][2] = true;
        precedes[2][1] = true;
        assertThatThrownBy(() -> SingleOrder.best(new int[4][4], precedes, 1, () -> false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("before itself");
    }

    /** A random problem of 4 to 8 things, some pairs of which have an order. */
    private static final class Drawn {
        final int[][] cost;
        final boolean[][] precedes;
        private final int n;

        private Drawn(int n) {
            this.n = n;
            cost = new int[n][n];
            precedes = new boolean[n][n];
        }

        static Drawn of(int seed) {
            Random random = new Random(seed);
            Drawn drawn = new Drawn(4 + random.nextInt(5));
            for (int a = 0; a < drawn.n; a++) {
                for (int b = 0; b < drawn.n; b++) {
                    drawn.cost[a][b] = random.nextInt(30);
                    drawn.precedes[a][b] = a > 0 && a < b && b < drawn.n - 1 && random.nextInt(4) == 0;
                }
            }
            for (int a = 0; a < drawn.n; a++) {
                for (int b = 0; b < drawn.n; b++) {
                    drawn.cost[b][a] = drawn.precedes[a][b] ? -1 : drawn.cost[b][a];
                }
            }
            return drawn;
        }

        long costOf(List<Integer> order) {
            long sum = 0;
            for (int i = 0; i < order.size(); i++) {
                for (int j = i + 1; j < order.size(); j++) {
                    assertThat(precedes[order.get(j)][order.get(i)]).isFalse();
                }
                sum += i > 0 ? cost[order.get(i - 1)][order.get(i)] : 0;
            }
            assertThat(order.stream().distinct().count()).isEqualTo(n);
            return sum;
        }

        long least(int[] order, long sum) {
            int last = order[order.length - 1];
            if (order.length == n) {
                return last == n - 1 ? sum : Long.MAX_VALUE;
            }
            long least = Long.MAX_VALUE;
            for (int next = 1; next < n; next++) {
                int candidate = next;
                boolean known = Arrays.stream(order).anyMatch(o -> o == candidate);
                boolean ready = true;
                for (int before = 0; before < n; before++) {
                    int other = before;
                    ready &= !precedes[before][next] || Arrays.stream(order).anyMatch(o -> o == other);
                }
                if (!known && ready && (next < n - 1 || order.length == n - 1)) {
                    int[] longer = Arrays.copyOf(order, order.length + 1);
                    longer[order.length] = next;
                    least = Math.min(least, least(longer, sum + cost[last][next]));
                }
            }
            return least;
        }
    }
}
