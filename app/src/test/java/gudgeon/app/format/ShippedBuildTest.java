package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlanner;
import gudgeon.core.planning.BuildReplay;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ways back of the shipped engines keep every rule of docs/build.md, as the independent replay sees it. */
class ShippedBuildTest {
    @ParameterizedTest
    @CsvSource({
        "wren-160, head, alone",
        "wren-160, piston, alone",
        "wren-160, crankshaft, alone",
        "dunlin-22d, head, helper",
        "dunlin-22d, crankshaft, hoist",
        "tern-16, head, helper",
        "tern-16, head, alone",
        "tern-16, piston-1, helper",
        "tern-16, crankshaft, hoist"
    })
    void keepsEveryRule(String id, String part, String strongest) {
        Engine engine = engine(id);
        List<LiftingWay> ways = upTo(engine, strongest);
        StripRequest request = new StripRequest(
                StripRequest.Target.off(part),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(ways, 0, 20_000));
        StripAnswer answer = StripPlanner.plan(engine, request);
        assertThat(answer).isInstanceOf(StripPlan.class);
        StripPlan strip = (StripPlan) answer;
        BuildRequest back = BuildRequest.after(strip, ways);
        BuildPlan plan = BuildPlanner.plan(engine, strip, back);
        assertThat(BuildReplay.faults(engine, back, plan)).isEmpty();
        assertThat(plan.corrections()).isEmpty();
        assertThat(plan.operations()).hasSizeGreaterThan(strip.operations().size() / 2);
    }

    private static Engine engine(String id) {
        Reading reading = EngineFile.read(ShippedEngines.find(id).orElseThrow());
        assertThat(reading).isInstanceOf(Reading.Sound.class);
        return ((Reading.Sound) reading).engine();
    }

    private static List<LiftingWay> upTo(Engine engine, String strongest) {
        List<LiftingWay> all = engine.workplace().waysOfLifting();
        double limit = all.stream()
                .filter(way -> way.name().equals(strongest))
                .findFirst()
                .orElseThrow()
                .limitKilograms();
        return all.stream().filter(way -> way.limitKilograms() <= limit).toList();
    }
}
