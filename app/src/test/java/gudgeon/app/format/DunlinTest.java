package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Part;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripCautions;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The Dunlin 22D is as large as a real engine of its kind and plans as a mechanic would expect (common practice). */
class DunlinTest {
    /** Enough for the proof of the order to the head. */
    private static final long TO_THE_PROOF = 400_000;

    /** Enough for a good order; question 1 is exact all the same. */
    private static final long A_FEW = 50;

    private static final double REACHED_OVER_KG = 15;

    /** The one line that asks for the compressor on the way to the head. */
    private static final String COMPRESSOR_CONDITION = "(?m)^      - compressor +#.*\n";

    private final String text = shipped();
    private final Engine engine = read(text);

    @Test
    void isAsLargeAsARealEngine() {
        assertThat(engine.parts()).hasSizeGreaterThanOrEqualTo(110);
        assertThat(engine.joints()).hasSizeGreaterThanOrEqualTo(170);
        assertThat(fasteners().filter(FastenerKind::threaded).count()).isGreaterThanOrEqualTo(250);
        assertThat(engine.circuits()).hasSizeGreaterThanOrEqualTo(9);
        assertThat(engine.workplace().zones()).hasSizeGreaterThanOrEqualTo(8);
        assertThat(engine.parts()).filteredOn(part -> isHoseOrPipe(part.name())).hasSizeGreaterThanOrEqualTo(20);
        assertThat(engine.joints()).filteredOn(joint -> joint.between().size() > 2).hasSizeGreaterThanOrEqualTo(8);
    }

    /** Nothing is live once the battery is off: common practice. */
    @Test
    void whichTerminalComesFirstIsToldAtTheBatteryOnly() {
        assertThat(engine.ready())
                .filteredOn(ready -> ready.effect().cautions().contains("battery-earth-first"))
                .extracting(ready -> ready.id())
                .containsExactly("battery-off");
        assertThat(engine.joints()).noneMatch(joint ->
                StripCautions.undoing(engine, joint).contains("battery-earth-first"));
    }

    @Test
    void isSoundAndOnlyTheRefrigerantSideIsLeftToLicensedPractice() {
        Reading.Sound reading = (Reading.Sound) EngineFile.read("dunlin-22d.yaml", text.getBytes(StandardCharsets.UTF_8));
        assertThat(reading.remarks())
                .extracting(Problem::what)
                .containsExactlyInAnyOrder(
                        "the part condenser comes off only by licensed practice",
                        "the part compressor comes off only by licensed practice",
                        "the part suction-line comes off only by licensed practice",
                        "the part discharge-line comes off only by licensed practice");
    }

    @Test
    void bareHeadWeighsTwentyTwoKilogramsAndThirtyOneWithManifoldAndTurbo() {
        double bare = engine.parts().stream()
                .map(Part::id)
                .filter(id -> id.equals("head") || id.matches("(intake|exhaust)-(valve|follower)-\\d|glow-plug-\\d"))
                .mapToDouble(id -> engine.part(id).massKilograms())
                .sum();
        double manifoldAndTurbo = engine.part("exhaust-manifold").massKilograms() + engine.part("turbo").massKilograms();
        assertThat(bare).isCloseTo(22, offset(0.01));
        assertThat(bare + manifoldAndTurbo).isCloseTo(31, offset(0.01));
    }

    @Test
    void helperReachesTheHeadByAProvenPlan() {
        StripPlan plan = planned(engine, "helper", TO_THE_PROOF, "head");
        assertThat(plan.opening().proven()).isTrue();
        assertThat(plan.order().proven()).isTrue();
        assertThat(plan.opening().chosen()).hasSizeBetween(75, 110);
        StripPlan.Operation last = plan.operations().getLast();
        assertThat(last.pieces()).contains("head", "exhaust-manifold", "turbo");
        assertThat(plan.opening().chosen()).doesNotContain("exhaust-manifold-nuts", "turbo-manifold-nuts");
        assertThat(lifts(plan).filter(lift -> lift.massKilograms() > REACHED_OVER_KG)).hasSize(1);
        assertThat(lifts(plan).map(StripPlan.Lift::massKilograms)).contains(14.5);
    }

    @Test
    void compressorIsSetAsideWithItsLinesOn() {
        StripPlan plan = planned(engine, "helper", A_FEW, "head");
        List<StripPlan.Lift> lifts = plan.operations().stream()
                .filter(step -> step.pieces().equals(List.of("compressor")))
                .map(StripPlan.Operation::lift)
                .flatMap(Stream::ofNullable)
                .toList();
        assertThat(lifts).hasSize(1);
        assertThat(lifts.getFirst().aside()).isTrue();
        assertThat(plan.opening().chosen())
                .contains("hang-compressor", "compressor-bolts")
                .doesNotContain("suction-line-compressor", "discharge-line-compressor");
    }

    @Test
    void compressorStaysWhereItIsWithoutTheOneConditionThatAsksForIt() {
        String shorter = text.replaceAll(COMPRESSOR_CONDITION, "");
        assertThat(text.lines().filter(line -> (line + "\n").matches(COMPRESSOR_CONDITION))).hasSize(1);
        StripPlan plan = planned(read(shorter), "helper", A_FEW, "head");
        assertThat(plan.opening().chosen()).doesNotContain("hang-compressor", "compressor-bolts");
        assertThat(plan.operations()).noneMatch(step -> step.kind() == StripPlan.Kind.LIFT
                && step.pieces().contains("compressor"));
    }

    @Test
    void aloneOnlyTheHeadsMassStandsInTheWay() {
        StripAnswer answer = StripPlanner.plan(engine, request(engine, "alone", A_FEW, "head"));
        assertThat(answer).isInstanceOf(Blocked.class);
        Blocked.Reason reason = ((Blocked) answer).reasons().getFirst();
        assertThat(reason.kind()).isEqualTo(Blocked.Kind.TOO_HEAVY);
        assertThat(reason.about()).contains("head");
        assertThat(reason.massKilograms()).isGreaterThan(REACHED_OVER_KG);
        assertThat(reason.unblockedBy()).containsExactly("helper", "hoist");
    }

    @Test
    void crankIsFarDearerThanTheHead() {
        StripPlan head = planned(engine, "helper", A_FEW, "head");
        StripPlan crank = planned(engine, "hoist", A_FEW, "crankshaft");
        assertThat(crank.totalSeconds()).isGreaterThan(head.totalSeconds() * 7 / 4);
        assertThat(crank.opening().chosen())
                .contains("sling-engine", "sump-bolts", "bell-housing-bolts", "flywheel-bolts", "head-bolts", "main-bolts")
                .contains("engine-on-stand", "earth-strap-body", "lock-carrier-bolts", "condenser-radiator-screws")
                .doesNotContain("suction-line-body", "discharge-line-body", "condenser-lines");
        assertThat(StripPlanner.plan(engine, request(engine, "helper", A_FEW, "crankshaft"))).isInstanceOf(Blocked.class);
    }

    /** Common practice: a whole engine on the crane, then the flywheel, then the stand, and only there head and sump. */
    @Test
    void engineLeavesWholeAndIsStrippedOnItsStand() {
        List<StripPlan.Operation> steps = planned(engine, "hoist", A_FEW, "crankshaft").operations();
        assertThat(steps)
                .extracting(StripPlan.Operation::id)
                .containsSubsequence("sling-engine", "bell-housing-bolts", "flywheel-bolts", "engine-on-stand", "head-bolts")
                .containsSubsequence("engine-on-stand", "sump-bolts", "rod-bolts-1", "piston-bore-1", "main-bolts");
        List<StripPlan.Operation> out = steps.stream()
                .filter(step -> step.lift() != null && step.pieces().contains("block"))
                .toList();
        assertThat(out).hasSize(1);
        assertThat(out.getFirst().pieces()).contains("head", "sump").doesNotContain("radiator", "compressor", "steering-pump");
    }

    @Test
    void holdingAndOrderAreKept() {
        List<String> order = planned(engine, "helper", A_FEW, "head").operations().stream()
                .map(StripPlan.Operation::id)
                .toList();
        assertThat(order).containsSubsequence("crack-crank-pulley-bolt", "timing-pins", "crank-pulley-bolt", "timing-belt-on");
        assertThat(order).containsSubsequence("crack-steering-pulley-bolts", "drive-belt-on", "steering-pulley-bolts");
        assertThat(order).containsSubsequence("rail-at-zero", "battery-off", "injector-pipe-rail-1");
        assertThat(order).containsSubsequence("drain-block-plug", "head-bolts");
    }

    private Stream<FastenerKind> fasteners() {
        return engine.joints().stream()
                .flatMap(joint -> joint.makeup().fasteners().stream())
                .map(fastener -> fastener.kind());
    }

    private static boolean isHoseOrPipe(String name) {
        Set<String> words = Set.of(name.toLowerCase(Locale.ROOT).split(" "));
        return Stream.of("hose", "pipe", "line").anyMatch(words::contains);
    }

    private static Stream<StripPlan.Lift> lifts(StripPlan plan) {
        return plan.operations().stream().map(StripPlan.Operation::lift).flatMap(Stream::ofNullable);
    }

    private static StripPlan planned(Engine engine, String upTo, long states, String part) {
        StripAnswer answer = StripPlanner.plan(engine, request(engine, upTo, states, part));
        assertThat(answer).isInstanceOf(StripPlan.class);
        return (StripPlan) answer;
    }

    private static StripRequest request(Engine engine, String upTo, long states, String part) {
        List<LiftingWay> all = engine.workplace().waysOfLifting();
        List<String> names = all.stream().map(LiftingWay::name).toList();
        return new StripRequest(
                StripRequest.Target.off(part),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(all.subList(0, names.indexOf(upTo) + 1), 0, states));
    }

    private static String shipped() {
        try {
            return Files.readString(ShippedEngines.find("dunlin-22d").orElseThrow());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Engine read(String text) {
        Reading reading = EngineFile.read("dunlin-22d.yaml", text.getBytes(StandardCharsets.UTF_8));
        assertThat(reading).isInstanceOf(Reading.Sound.class);
        return ((Reading.Sound) reading).engine();
    }
}
