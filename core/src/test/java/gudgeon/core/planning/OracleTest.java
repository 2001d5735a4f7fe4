package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The checks check each other, and what docs/planning.md says about itself, before they judge the planner. */
class OracleTest {
    private static BruteForce brute(RandomEngines.Case drawn) {
        return new BruteForce(new BruteModel(drawn.engine(), drawn.request()));
    }

    @Test
    void theReplayPassesEveryPlanOfTheBruteForce() {
        int planned = 0;
        int blocked = 0;
        int noOrder = 0;
        int operations = 0;
        for (long seed = 1; seed <= 1000; seed++) {
            RandomEngines.Case drawn = RandomEngines.small(seed);
            BruteForce brute = brute(drawn);
            BruteForce.Opening opening = brute.opening();
            if (opening.costSeconds() < 0) {
                blocked++;
                continue;
            }
            Optional<BruteForce.Tour> tour = brute.order(opening.sets().getFirst(), BruteForce.Habit.NONE);
            if (tour.isEmpty()) {
                noOrder++;
                continue;
            }
            planned++;
            StripPlan plan = WrittenPlan.write(brute.model, tour.get().steps());
            operations += plan.opening().chosen().size();
            assertThat(plan.opening().costSeconds()).as("seed %d", seed).isEqualTo(opening.costSeconds());
            assertThat(plan.order().changeoverSeconds())
                    .as("seed %d", seed)
                    .isEqualTo(tour.get().changeoverSeconds());
            assertThat(StripReplay.check(drawn.engine(), drawn.request(), plan))
                    .as("seed %d: %s", seed, plan.opening().chosen())
                    .isEmpty();
        }
        System.out.printf(
                "small random engines: %d planned, %d out of reach, %d without an order; %.1f operations a plan%n",
                planned, blocked, noOrder, (double) operations / planned);
        assertThat(planned).isGreaterThan(400);
        assertThat(noOrder).isPositive();
    }

    @Test
    void takingTheClosureAtOnceNeverMakesTheOpeningDearer() {
        for (long seed = 1; seed <= 300; seed++) {
            BruteForce brute = brute(RandomEngines.small(seed));
            assertThat(brute.opening().costSeconds()).as("seed %d", seed).isEqualTo(brute.openingWithEveryLift());
        }
    }

    /** "All of free, moved, off, reached is monotone": on arbitrary nested sets, reachable or not. */
    @Test
    void freedomAndTheClosureAreMonotone() {
        int brokenBySinglePieces = 0;
        for (long seed = 1; seed <= 3000; seed++) {
            BruteModel model = brute(RandomEngines.small(seed)).model;
            Random random = new Random(seed);
            boolean broken = false;
            for (int pair = 0; pair < 8; pair++) {
                long half = random.nextLong();
                long small = half & random.nextLong() & ((1L << model.ops) - 1);
                long large = small | random.nextLong() & ((1L << model.ops) - 1);
                long movedSmall = model.closure(small, 0, false);
                long movedLarge = model.closure(large, 0, false);
                assertThat(movedSmall & ~movedLarge).as("moved, seed %d", seed).isZero();
                assertThat(model.off(small) & ~model.off(large))
                        .as("off, seed %d", seed)
                        .isZero();
                assertThat(model.reached(small, movedSmall) && !model.reached(large, movedLarge))
                        .as("reached, seed %d", seed)
                        .isFalse();
                for (int o = 0; o < model.ops; o++) {
                    assertThat(model.free(o, small, movedSmall) && !model.free(o, large, movedLarge))
                            .as("free, seed %d, %s", seed, model.id(o))
                            .isFalse();
                }
                broken |= (model.closure(small, 0, true) & ~model.closure(large, 0, true)) != 0;
            }
            brokenBySinglePieces += broken ? 1 : 0;
        }
        System.out.printf("judging single pieces broke monotonicity in %d of 3000 engines%n", brokenBySinglePieces);
        assertThat(brokenBySinglePieces).isPositive();
    }

    @Test
    void theSameSeedGivesTheSameEngine() {
        for (long seed : List.of(1L, 77L, 2999L)) {
            assertThat(RandomEngines.small(seed)).isEqualTo(RandomEngines.small(seed));
        }
    }
}
