package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The independent replay accepts the way back of random engines after random strips. */
class BuildRandomTest {
    @Test
    void keepsEveryRuleAfterRandomStrips() {
        List<String> faults = new ArrayList<>();
        int placings = 0;
        int sealed = 0;
        int held = 0;
        for (long seed = 1; seed <= 500; seed++) {
            Engine engine = BuildEngines.random(seed);
            BuildRequest request = new BuildRequest(
                    RandomStrip.careful(engine, seed), BuildEngines.WAYS, List.of("gasket j2"), List.of());
            BuildPlan plan = BuildPlanner.plan(engine, request);
            faults.addAll(named(seed, BuildReplay.faults(engine, request, plan)));
            assertThat(plan.corrections()).as("seed %d", seed).isEmpty();
            placings += (int) count(plan, BuildPlan.Kind.PLACE);
            sealed += (int) count(plan, BuildPlan.Kind.SEAL);
            held += plan.blocked().size();
        }
        assertThat(faults).isEmpty();
        assertThat(placings).isGreaterThan(500);
        assertThat(sealed).isGreaterThan(200);
        assertThat(held).isGreaterThan(100);
    }

    @Test
    void keepsWhatTheStripDidNotContradict() {
        List<String> faults = new ArrayList<>();
        int corrected = 0;
        for (long seed = 1; seed <= 300; seed++) {
            Engine engine = BuildEngines.random(seed);
            BuildRequest request =
                    new BuildRequest(RandomStrip.wild(engine, seed), BuildEngines.WAYS, List.of(), List.of());
            BuildPlan plan = BuildPlanner.plan(engine, request);
            faults.addAll(named(seed, BuildReplay.faults(engine, request, plan)));
            corrected += plan.corrections().size();
        }
        assertThat(faults).isEmpty();
        assertThat(corrected).isGreaterThan(300);
    }

    private static List<String> named(long seed, List<BuildReplay.Fault> faults) {
        return faults.stream().map(fault -> "seed " + seed + ": " + fault).toList();
    }

    private static long count(BuildPlan plan, BuildPlan.Kind kind) {
        return plan.operations().stream().filter(step -> step.kind() == kind).count();
    }
}
