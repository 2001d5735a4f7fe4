package gudgeon.bench.ordering;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.SequencingAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Contexts seen in small problems that were made of contexts, and the two searches against each other. */
class SharedContextsTest {
    @Test
    void findsTheContextsAProblemWasMadeOf() {
        Made made = new Made(1, 12, 2, 2);
        SharedContexts shared = SharedContexts.find(made.instance()).orElseThrow();
        assertThat(shared.members()).hasSizeLessThanOrEqualTo(5);
        for (List<Integer> context : shared.members().subList(1, shared.members().size())) {
            assertThat(context.stream().map(node -> made.context[node]).distinct()).hasSize(1);
        }
    }

    @Test
    void seesNoneInArbitraryCosts() {
        Random random = new Random(3);
        int[][] entries = new int[10][10];
        for (int[] row : entries) {
            java.util.Arrays.setAll(row, i -> 1 + random.nextInt(50));
        }
        assertThat(SharedContexts.find(new SopInstance("plain", entries))).isEmpty();
    }

    @Test
    void seesNoneWhereGoingRoundIsCheaper() {
        Made made = new Made(5, 14, 3, 1);
        int[][] entries = made.instance().entries();
        for (int a = 1; a < entries.length - 1; a++) {
            for (int b = 1; b < entries.length - 1; b++) {
                if (made.context[a] == 0 && made.context[b] == 1 && entries[a][b] > 0) {
                    entries[a][b] = 100;
                }
            }
        }
        assertThat(SharedContexts.find(new SopInstance("round", entries))).isEmpty();
    }

    @Test
    void bothSearchesAgree() {
        int compared = 0;
        for (int seed = 0; seed < 25; seed++) {
            Made made = new Made(seed, 14, 2, 2);
            SopInstance instance = made.instance();
            SharedContexts shared = SharedContexts.find(instance).orElse(null);
            if (shared == null) {
                continue;
            }
            compared++;
            SequencingAnswer inContexts = Sequencer.best(shared.numbers().problem(), 100_000);
            List<Integer> order = shared.order(inContexts.contexts(), instance.size());
            OrderReplay.Verdict verdict = OrderReplay.replay(instance, order);
            assertThat(inContexts.proven()).as("seed %d", seed).isTrue();
            assertThat(verdict.faults()).as("seed %d", seed).isEmpty();
            assertThat(verdict.cost()).as("seed %d", seed).isEqualTo(inContexts.cost());
            var plain = gudgeon.core.planning.SingleOrder.best(
                    instance.entries(), instance.precedes(), seed, () -> false);
            assertThat(plain.proven()).as("seed %d", seed).isTrue();
            assertThat(plain.cost()).as("seed %d", seed).isEqualTo(inContexts.cost());
        }
        assertThat(compared).isGreaterThan(15);
    }

    /** A problem of tools and sides: changing the tool costs 1, the side 5. */
    private static final class Made {
        final int[] context;
        private final int n;
        private final int sides;
        private final boolean[][] before;

        Made(int seed, int operations, int tools, int sides) {
            Random random = new Random(seed);
            this.sides = sides;
            n = operations + 2;
            context = new int[n];
            before = new boolean[n][n];
            for (int o = 1; o < n - 1; o++) {
                context[o] = o <= tools * sides ? o - 1 : random.nextInt(tools * sides);
                for (int p = 1; p < o; p++) {
                    before[p][o] = random.nextInt(6) == 0;
                }
            }
        }

        SopInstance instance() {
            int[][] entries = new int[n][n];
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    boolean edge = a == 0 || b == n - 1;
                    int cost = (context[a] / sides == context[b] / sides ? 0 : 1)
                            + (context[a] % sides == context[b] % sides ? 0 : 5);
                    boolean never = a != b && (b == 0 || a == n - 1 || before[b][a]);
                    entries[a][b] = never ? -1 : edge ? 0 : cost;
                }
            }
            return new SopInstance("made", entries);
        }
    }
}
