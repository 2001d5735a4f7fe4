package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The opening cost against a general constraint solver, on engines too large to try everything. */
class PlannerAgainstGeneralSolverTest {
    @Test
    void theModelAgreesWithTryingEverything() {
        int planned = 0;
        for (long seed = 1; seed <= 100; seed++) {
            RandomEngines.Case drawn = MidSizeEngines.tiny(seed);
            BruteForce brute = new BruteForce(new BruteModel(drawn.engine(), drawn.request()));
            long cost = brute.opening().costSeconds();
            assertThat(ChocoOpening.cost(drawn.engine(), drawn.request()))
                    .as("seed %d", seed)
                    .isEqualTo(cost);
            planned += cost >= 0 ? 1 : 0;
        }
        assertThat(planned).isGreaterThan(50);
    }

    @Test
    void thePlannerAgreesWithTheModel() {
        int planned = 0;
        int joints = 0;
        for (long seed = 1; seed <= 60; seed++) {
            RandomEngines.Case drawn = MidSizeEngines.midSize(seed);
            long cost = ChocoOpening.cost(drawn.engine(), drawn.request());
            StripAnswer answer = StripPlanner.plan(drawn.engine(), drawn.request());
            switch (answer) {
                case StripPlan plan -> {
                    assertThat(plan.opening().costSeconds()).as("seed %d", seed).isEqualTo(cost);
                    assertThat(plan.opening().proven()).as("seed %d", seed).isTrue();
                    assertThat(StripReplay.check(drawn.engine(), drawn.request(), plan))
                            .as("seed %d", seed)
                            .isEmpty();
                    planned++;
                }
                case Blocked blocked ->
                    assertThat(cost).as("seed %d: %s", seed, blocked.reasons()).isEqualTo(-1);
            }
            joints += drawn.engine().joints().size();
        }
        System.out.printf("planner against a general solver: 60 engines, %d planned, %d joints%n", planned, joints);
        assertThat(planned).isGreaterThan(30);
    }
}
