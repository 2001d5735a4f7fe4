package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The search over numbers against a table over all subsets of operations, written from the definition: the cheapest way to
 * have done a set and stand where its last operation was done (the recursion of Bellman, 1962, and of Held and Karp, 1962).
 */
class SequencingTest {
    private static final int FAR = 1 << 28;

    @Test
    void agreesWithATableOverAllSubsets() {
        int solved = 0;
        for (int seed = 0; seed < 400; seed++) {
            Drawn drawn = new Drawn(seed);
            int expected = drawn.table()[0][0];
            SequencingSearch.Found found = new SequencingSearch(
                            drawn.problem(), new SequencingBound(drawn.problem()), 1_000_000)
                    .run();
            if (expected >= FAR) {
                assertThat(found.lowerBound()).as("seed %d", seed).isEqualTo(Integer.MAX_VALUE);
                assertThat(found.contexts()).as("seed %d", seed).isEmpty();
            } else {
                solved++;
                assertThat(found.cost()).as("seed %d", seed).isEqualTo(expected);
                assertThat(found.lowerBound()).as("seed %d", seed).isEqualTo(expected);
                assertThat(drawn.costOf(found.contexts())).as("seed %d", seed).isEqualTo(expected);
            }
        }
        assertThat(solved).isGreaterThan(200);
    }

    @Test
    void neverBoundsAboveWhatIsLeft() {
        int above = 0;
        int compared = 0;
        for (int seed = 0; seed < 60; seed++) {
            Drawn drawn = new Drawn(seed);
            SequencingBound bound = new SequencingBound(drawn.problem());
            bound.improve(new long[1], 0, 500, 40, false);
            int[][] left = drawn.table();
            for (int done = 0; done < left.length; done++) {
                for (int context = 0; context < drawn.k; context++) {
                    compared++;
                    above += bound.remaining(new long[] {done}, context) > left[done][context] ? 1 : 0;
                }
            }
        }
        assertThat(above).isZero();
        assertThat(compared).isGreaterThan(10_000);
    }

    @Test
    void refusesANegativeCost() {
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> new Sequencing(List.of(), new int[][] {{-1}}, new int[] {0}, new int[] {0}, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 to");
    }

    /** A random problem of up to ten operations at up to three places, some with two modes. */
    private static final class Drawn {
        final int n;
        final int k;
        final int[][] change;
        final int[] leave;
        final List<List<Sequencing.Mode>> modes = new ArrayList<>();
        private final int[] place;

        Drawn(int seed) {
            Random random = new Random(seed);
            n = 3 + random.nextInt(8);
            boolean metric = random.nextInt(4) > 0;
            k = metric ? 2 + random.nextInt(5) : n + 1;
            place = new int[k];
            int[] tool = new int[k];
            for (int c = 1; c < k; c++) {
                place[c] = random.nextInt(3);
                tool[c] = random.nextInt(3);
            }
            change = new int[k][k];
            leave = new int[k];
            for (int a = 0; a < k; a++) {
                for (int b = 0; b < k; b++) {
                    int together = (place[a] == place[b] ? 0 : 30 + 10 * place[a]) + (tool[a] == tool[b] ? 0 : 10);
                    change[a][b] = a == b ? 0 : metric ? together : random.nextInt(50);
                }
                leave[a] = place[a] * 10;
            }
            for (int o = 0; o < n; o++) {
                List<Sequencing.Mode> own = new ArrayList<>();
                for (int m = 0; m <= (metric ? random.nextInt(8) / 6 : 0); m++) {
                    own.add(new Sequencing.Mode(metric ? random.nextInt(k) : o + 1, closed(random, o)));
                }
                modes.add(own);
            }
        }

        /** Some operations before one, with all that their first modes need in turn. */
        private List<Integer> closed(Random random, int operation) {
            BitSet needs = new BitSet();
            for (int p = 0; p < operation; p++) {
                if (random.nextInt(operation + 1) == 0) {
                    needs.set(p);
                    modes.get(p).getFirst().needs().forEach(needs::set);
                }
            }
            return needs.stream().boxed().toList();
        }

        Sequencing problem() {
            return new Sequencing(modes, change, leave, place, 0);
        }

        /** By set done and context: the least that is left. */
        int[][] table() {
            int[][] left = new int[1 << n][k];
            for (int done = (1 << n) - 1; done >= 0; done--) {
                Arrays.fill(left[done], FAR);
                for (int at = 0; at < k; at++) {
                    if (done == (1 << n) - 1) {
                        left[done][at] = leave[at];
                    }
                    for (int o = 0; o < n; o++) {
                        for (Sequencing.Mode mode : (done >> o & 1) == 0 ? modes.get(o) : List.<Sequencing.Mode>of()) {
                            int needs = mode.needs().stream().mapToInt(p -> 1 << p).sum();
                            if ((needs & ~done) == 0) {
                                int via = change[at][mode.context()] + left[done | 1 << o][mode.context()];
                                left[done][at] = Math.min(left[done][at], via);
                            }
                        }
                    }
                }
            }
            return left;
        }

        /** What a sequence of contexts costs when each is used for all that can be done there; FAR when something is left. */
        int costOf(int[] contexts) {
            int done = 0;
            int cost = 0;
            int at = 0;
            for (int context : contexts) {
                cost += change[at][context];
                at = context;
                for (int again = 0; again < n; again++) {
                    for (int o = 0; o < n; o++) {
                        for (Sequencing.Mode mode : modes.get(o)) {
                            int needs = mode.needs().stream().mapToInt(p -> 1 << p).sum();
                            done |= mode.context() == context && (needs & ~done) == 0 ? 1 << o : 0;
                        }
                    }
                }
            }
            return done == (1 << n) - 1 ? cost + leave[at] : FAR;
        }
    }
}
