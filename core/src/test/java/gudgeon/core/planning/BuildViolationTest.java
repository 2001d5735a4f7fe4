package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildReplay.Rule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The replay refuses planted faults of every kind: each is planted wherever it fits in the ways back of random engines (up to
 * {@value #ENOUGH} times), and every single one must be noticed under its own rule.
 */
class BuildViolationTest {
    private static final int ENOUGH = 100;
    private static final List<WayBack> CASES = new ArrayList<>();

    private static synchronized List<WayBack> cases() {
        for (long seed = 1001; CASES.size() < 200; seed++) {
            Engine engine = BuildEngines.random(seed);
            BuildRequest request =
                    new BuildRequest(RandomStrip.careful(engine, seed), BuildEngines.WAYS, List.of(), List.of());
            CASES.add(new WayBack(engine, request, BuildPlanner.plan(engine, request)));
        }
        return CASES;
    }

    @ParameterizedTest
    @EnumSource(PlantedFault.class)
    void isNoticed(PlantedFault fault) {
        Map<String, List<BuildReplay.Fault>> passed = new LinkedHashMap<>();
        int planted = 0;
        int number = 0;
        for (WayBack way : cases()) {
            number++;
            for (int i = 0; planted < ENOUGH && i < way.steps().size(); i++) {
                Operation step = way.steps().get(i);
                Optional<BuildPlan> plan = fault.plant.at(way, i, step);
                if (plan.isEmpty()) {
                    continue;
                }
                planted++;
                List<BuildReplay.Fault> found = BuildReplay.faults(way.engine(), way.request(), plan.get());
                if (found.stream().noneMatch(one -> one.rule() == fault.rule)) {
                    passed.put("case " + number + " " + step.id(), found);
                }
            }
        }
        assertThat(passed).isEmpty();
        assertThat(planted).isGreaterThan(4);
    }

    @Test
    void refusesAMassThatNoWayCarries() {
        int planted = 0;
        for (WayBack way : cases()) {
            BuildRequest weaker = new BuildRequest(
                    way.request().steps(), List.of(new LiftingWay("alone", 4, 60, "")), List.of(), List.of());
            boolean heavy = way.steps().stream()
                    .anyMatch(step -> step.handling() != null && step.handling().massKilograms() > 4);
            List<BuildReplay.Fault> found = BuildReplay.faults(way.engine(), weaker, way.plan());
            assertThat(found.stream().anyMatch(one -> one.rule() == Rule.MASS))
                    .isEqualTo(heavy
                            || way.steps().stream()
                                    .anyMatch(step -> step.kind() == Kind.PLACE
                                            && !java.util.Objects.requireNonNull(step.handling())
                                                    .way()
                                                    .equals("alone")));
            planted += heavy ? 1 : 0;
            BuildPlan honest = BuildPlanner.plan(way.engine(), weaker);
            assertThat(BuildReplay.faults(way.engine(), weaker, honest)).isEmpty();
        }
        assertThat(planted).isGreaterThan(50);
    }

    @Test
    void refusesAnAccountThatIsMissing() {
        int planted = 0;
        for (WayBack way : cases()) {
            for (int a = 0; a < way.plan().accounts().size(); a++) {
                List<BuildPlan.Account> fewer = new ArrayList<>(way.plan().accounts());
                fewer.remove(a);
                BuildPlan plan = new BuildPlan(
                        way.steps(),
                        way.plan().totals(),
                        fewer,
                        way.plan().corrections(),
                        way.plan().cures());
                assertThat(BuildReplay.faults(way.engine(), way.request(), plan))
                        .extracting(BuildReplay.Fault::rule)
                        .containsExactly(Rule.ACCOUNT);
                planted++;
                break;
            }
        }
        assertThat(planted).isGreaterThan(150);
    }

    @Test
    void acceptsThemWithoutAFault() {
        for (WayBack way : cases()) {
            assertThat(BuildReplay.faults(way.engine(), way.request(), way.plan()))
                    .isEmpty();
            assertThat(BuildReplay.faults(
                            way.engine(), way.request(), way.edit().plan()))
                    .isEmpty();
        }
    }
}
