package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The cheapest hitting set against trying every subset, on small random clauses. */
class HittingSetTest {
    private static final int ELEMENTS = 11;

    @Test
    void costsWhatTheBestOfAllSubsetsCosts() {
        for (int seed = 0; seed < 1500; seed++) {
            Random random = new Random(seed);
            long[] cost = random.longs(ELEMENTS, 0, 9).toArray();
            List<BitSet> clauses = new ArrayList<>();
            int count = random.nextInt(14);
            for (int c = 0; c < count; c++) {
                clauses.add(clause(random));
            }
            BitSet found = HittingSet.cheapest(clauses, cost);
            assertThat(clauses).as("seed %d", seed).allMatch(clause -> clause.intersects(found));
            assertThat(total(found, cost)).as("seed %d", seed).isEqualTo(bestOfAll(clauses, cost));
        }
    }

    private static BitSet clause(Random random) {
        BitSet clause = new BitSet();
        int size = 1 + random.nextInt(4);
        for (int k = 0; k < size; k++) {
            clause.set(random.nextInt(ELEMENTS));
        }
        return clause;
    }

    private static long bestOfAll(List<BitSet> clauses, long[] cost) {
        long best = Long.MAX_VALUE;
        for (long subset = 0; subset < 1L << ELEMENTS; subset++) {
            BitSet chosen = BitSet.valueOf(new long[] {subset});
            if (clauses.stream().allMatch(clause -> clause.intersects(chosen))) {
                best = Math.min(best, total(chosen, cost));
            }
        }
        return best;
    }

    private static long total(BitSet chosen, long[] cost) {
        return chosen.stream().mapToLong(element -> cost[element]).sum();
    }
}
