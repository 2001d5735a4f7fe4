package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Geometry;
import gudgeon.core.engine.Level;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Part;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The Tern 16 is as large as a real twin-cam four across a car, and plans as a mechanic would expect (common practice). */
class TernTest {
    /** Enough for the proof of the order to the head. */
    private static final long TO_THE_PROOF = 400_000;

    /** Enough for a good order; question 1 is exact all the same. */
    private static final long A_FEW = 50;

    private static final double REACHED_OVER_KG = 15;

    private final Reading.Sound reading = read();
    private final Engine engine = reading.engine();

    /** A full strip of a twin-cam four touches about 170 to 300 threaded fasteners (common practice). */
    @Test
    void isAsLargeAsARealEngine() {
        long threaded = engine.joints().stream()
                .flatMap(joint -> joint.makeup().fasteners().stream())
                .filter(fastener -> fastener.kind().threaded())
                .count();
        assertThat(threaded).isBetween(200L, 300L);
        assertThat(engine.parts()).hasSizeBetween(150, 210);
        assertThat(engine.joints()).hasSizeGreaterThanOrEqualTo(200);
        assertThat(engine.circuits()).hasSizeGreaterThanOrEqualTo(10);
        assertThat(engine.workplace().zones()).hasSizeGreaterThanOrEqualTo(8);
        assertThat(kinds(FastenerKind.SPARK_PLUG)).isEqualTo(4);
        assertThat(kinds(FastenerKind.COLLETS)).isEqualTo(32);
    }

    @Test
    void onlyTheRefrigerantSideIsLeftToLicensedPractice() {
        assertThat(reading.remarks())
                .extracting(Problem::what)
                .containsExactlyInAnyOrder(
                        "the part condenser comes off only by licensed practice",
                        "the part compressor comes off only by licensed practice",
                        "the part suction-line comes off only by licensed practice",
                        "the part discharge-line comes off only by licensed practice");
    }

    /** Swept volume by hand: a quarter of pi times bore squared, times stroke, times four. */
    @Test
    void isASixteenHundredByItsBoreAndStroke() {
        Geometry shape = engine.identity().geometry();
        double bore_cm = shape.bore().orElseThrow().millimetres() / 10;
        double stroke_cm = shape.stroke().orElseThrow().millimetres() / 10;
        assertThat(Math.PI / 4 * bore_cm * bore_cm * stroke_cm * 4).isCloseTo(1600, offset(5.0));
        assertThat(shape.typical()).isTrue();
        assertThat(shape.compressionRatio().orElseThrow()).isBetween(9.0, 11.5);
        assertThat(shape.valves().intakeCloses().orElseThrow().degrees()).isBetween(40.0, 60.0);
        assertThat(shape.teeth())
                .hasToString("Teeth[crank=OptionalInt[22], cam=OptionalInt[44], belt=OptionalInt[137]]");
        assertThat(engine.identity().facts()).containsEntry("firing", "1-3-4-2");
    }

    @Test
    void levelsLeadFromTheCoversToTheBottomEnd() {
        assertThat(engine.rules().levels())
                .extracting(Level::depth)
                .containsExactly(Level.Depth.COVERS, Level.Depth.HEAD_OFF, Level.Depth.BOTTOM_END);
        List<Long> costs = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (Level level : engine.rules().levels()) {
            parts.addAll(level.parts());
            costs.add(planned("hoist", A_FEW, StripRequest.Target.off(parts.toArray(String[]::new)))
                    .opening()
                    .costSeconds());
        }
        assertThat(costs).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void helperLiftsTheHeadWithCamsAndManifoldByAProvenPlan() {
        StripPlan plan = planned("helper", TO_THE_PROOF, StripRequest.Target.off("head"));
        assertThat(plan.opening().proven()).isTrue();
        assertThat(plan.order().proven()).isTrue();
        StripPlan.Operation last = plan.operations().getLast();
        assertThat(last.pieces()).contains("head", "exhaust-manifold", "intake-camshaft", "exhaust-camshaft");
        assertThat(plan.opening().chosen())
                .contains("downpipe-manifold", "timing-belt-on", "fuel-hose-rail", "drain-block-plug")
                .doesNotContain(
                        "exhaust-manifold-nuts", "intake-cam-cap-bolts", "compressor-bolts", "spark-plug-thread-1");
        List<String> order = ids(plan);
        assertThat(order)
                .containsSubsequence("fuel-pressure-off", "battery-off", "fuel-hose-rail", "head-bolts")
                .containsSubsequence("release-tank-cap", "drain-radiator-tap", "degas-housing", "head-bolts")
                .containsSubsequence("drain-block-plug", "head-bolts")
                .containsSubsequence("read-codes", "battery-off", "injector-plug-1", "intake-manifold-bolts")
                .containsSubsequence(
                        "crack-crank-pulley-bolt", "timing-pins", "crank-pulley-bolt", "timing-belt-on", "head-bolts")
                .containsSubsequence("carry-engine", "right-mount-body", "timing-belt-on");
    }

    /** The bare head is a lift for one person over a wing; with cams and manifold on it is not: so alone they come off first. */
    @Test
    void aloneTheCamsComeOutFirstAndTheHeadIsLightEnough() {
        StripPlan plan = planned("alone", A_FEW, StripRequest.Target.off("head"));
        assertThat(plan.opening().proven()).isTrue();
        assertThat(Stream.ofNullable(plan.operations().getLast().lift()))
                .hasSize(1)
                .allMatch(lift -> lift.massKilograms() <= REACHED_OVER_KG);
        assertThat(ids(plan))
                .containsSubsequence("timing-belt-on", "quarter-turn-back", "intake-cam-cap-bolts", "head-bolts")
                .contains("exhaust-cam-cap-bolts", "exhaust-manifold-nuts");
    }

    @Test
    void bareHeadIsAboutThirteenKilograms() {
        double bare = engine.parts().stream()
                .map(Part::id)
                .filter(id ->
                        id.equals("head") || id.matches("(intake|exhaust)-(valve|bucket|shim)-\\d|spark-plug-\\d"))
                .mapToDouble(id -> engine.part(id).massKilograms())
                .sum();
        assertThat(bare).isCloseTo(13.3, offset(0.05));
    }

    @Test
    void valvesAreReachedOnTheBenchOneCompressorStrokeEach() {
        List<String> collets = IntStream.rangeClosed(1, 8)
                .boxed()
                .flatMap(i -> Stream.of("intake-valve-collets-" + i, "exhaust-valve-collets-" + i))
                .toList();
        StripRequest.Target target = new StripRequest.Target(List.of(), List.of(), collets, List.of());
        StripPlan plan = planned("helper", A_FEW, target);
        List<String> order = ids(plan);
        assertThat(order).containsAll(collets);
        assertThat(order.indexOf("head-bolts")).isGreaterThan(order.indexOf("exhaust-cam-cap-bolts"));
        assertThat(collets).allMatch(id -> order.indexOf(id) > order.indexOf("head-bolts"));
        assertThat(plan.operations())
                .filteredOn(step -> collets.contains(step.id()))
                .allMatch(step -> step.place().zone().equals("bench"));
    }

    @Test
    void pistonsComeOutThroughTheTopWithTheEngineInTheCar() {
        StripPlan plan =
                planned("helper", A_FEW, StripRequest.Target.off("piston-1", "piston-2", "piston-3", "piston-4"));
        assertThat(plan.opening().proven()).isTrue();
        assertThat(ids(plan))
                .containsSubsequence("drain-sump-plug", "sump-bolts", "rod-bolts-1", "piston-bore-1")
                .containsSubsequence("head-bolts", "piston-bore-1")
                .contains("sump-gearbox-bolts", "downpipe-stay")
                .doesNotContain("sling-engine", "bell-housing-bolts");
    }

    /** Common practice: whole on the crane, gearbox and flywheel off, then the stand; upside down the head may stay on. */
    @Test
    void crankAsksForTheEngineOutAndLeavesTheHeadOn() {
        StripAnswer without = answer("helper", A_FEW, StripRequest.Target.off("crankshaft"));
        assertThat(without).isInstanceOf(Blocked.class);
        StripPlan plan = planned("hoist", A_FEW, StripRequest.Target.off("crankshaft"));
        assertThat(plan.opening().chosen())
                .contains("hang-compressor", "main-bolts")
                .doesNotContain("head-bolts", "suction-line-body", "discharge-line-body", "condenser-lines");
        assertThat(ids(plan))
                .containsSubsequence(
                        "carry-engine", "sling-engine", "bell-housing-bolts", "flywheel-bolts", "engine-on-stand")
                .containsSubsequence("engine-on-stand", "sump-bolts", "rod-bolts-1", "main-bolts");
        List<StripPlan.Operation> out = plan.operations().stream()
                .filter(step -> step.lift() != null && step.pieces().contains("block"))
                .toList();
        assertThat(out).hasSize(1);
        assertThat(out.getFirst().pieces())
                .contains("head", "gearbox", "sump")
                .doesNotContain("radiator", "compressor");
    }

    /** Every part alone, of copies the first and the last, with all ways of lifting: planned, or blocked with a reason. */
    @Test
    void everyPartHasAPlanOrAReason() {
        List<String> blocked = new ArrayList<>();
        List<String> between = engine.parts().stream()
                .map(Part::id)
                .filter(id ->
                        id.matches(".*-[2-7]") && engine.findPart(next(id)).isPresent())
                .toList();
        for (Part part : engine.parts()) {
            if (part.id().equals(engine.workplace().base()) || between.contains(part.id())) {
                continue;
            }
            switch (answer("hoist", 1, StripRequest.Target.off(part.id()))) {
                case StripPlan plan ->
                    assertThat(plan.opening().proven()).as(part.id()).isTrue();
                case Blocked why -> {
                    assertThat(why.reasons()).as(part.id()).isNotEmpty();
                    blocked.add(part.id());
                }
            }
        }
        assertThat(blocked).containsExactlyInAnyOrder("condenser", "compressor", "suction-line", "discharge-line");
    }

    /** The copy after this one: valve-3 after valve-2. */
    private static String next(String id) {
        int last = id.length() - 1;
        return id.substring(0, last) + (char) (id.charAt(last) + 1);
    }

    private long kinds(FastenerKind kind) {
        return engine.joints().stream()
                .flatMap(joint -> joint.makeup().fasteners().stream())
                .filter(fastener -> fastener.kind() == kind)
                .count();
    }

    private static List<String> ids(StripPlan plan) {
        return plan.operations().stream().map(StripPlan.Operation::id).toList();
    }

    private StripPlan planned(String upTo, long states, StripRequest.Target target) {
        StripAnswer answer = answer(upTo, states, target);
        assertThat(answer).isInstanceOf(StripPlan.class);
        return (StripPlan) answer;
    }

    private StripAnswer answer(String upTo, long states, StripRequest.Target target) {
        List<LiftingWay> all = engine.workplace().waysOfLifting();
        List<String> names = all.stream().map(LiftingWay::name).toList();
        return StripPlanner.plan(
                engine,
                new StripRequest(
                        target,
                        List.of(),
                        List.of(),
                        List.of(),
                        new StripRequest.Means(all.subList(0, names.indexOf(upTo) + 1), 0, states)));
    }

    private static Reading.Sound read() {
        Reading reading = EngineFile.read(ShippedEngines.find("tern-16").orElseThrow());
        assertThat(reading).isInstanceOf(Reading.Sound.class);
        return (Reading.Sound) reading;
    }
}
