package gudgeon.core.ordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.UndoTime;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.quantity.Mass;
import gudgeon.core.quantity.Torque;
import gudgeon.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class OrderListTest {
    private static final Spend WASHER = new Spend("copper washer 14 x 20 x 1.5", 2, OptionalDouble.of(0.5));
    private static final Spend GASKET = new Spend("head gasket", 1, OptionalDouble.of(18));
    private static final Spend BOLT = new Spend("bolt M10x1.25 x 90 stretch", 4, OptionalDouble.empty());

    @Test
    void mergesOneSpecificationOverAllJointsAndSaysWhatItIsFor() {
        OrderList list = OrderList.of(engine(), plan());

        OrderLine washers = line(list, WASHER.spec());
        assertThat(washers.amount()).isEqualTo(new Amount.Pieces(5));
        assertThat(washers.price().known()).isEqualTo(2.5);
        assertThat(washers.price().each()).hasValue(0.5);
        assertThat(washers.uses())
                .extracting(OrderLine.Use::id)
                .containsExactlyInAnyOrder("drain-plug", "feed", "return");
    }

    @Test
    void countsEveryPieceThatThePlanDestroys() {
        StripPlan plan = plan();
        OrderList list = OrderList.of(engine(), plan);

        int destroyed = plan.destroyed().stream().mapToInt(Spend::count).sum();
        assertThat(destroyed).isEqualTo(10);
        assertThat(list.totals().pieces()).isEqualTo(destroyed);
        assertThat(list.totals().knownPrice()).isEqualTo(plan.opening().money().orElseThrow());
        assertThat(line(list, BOLT.spec()).price().unpriced()).isEqualTo(4);
    }

    @Test
    void sectionsStandInOneOrderAndHoldWhatTheirNameSays() {
        assertThat(OrderList.of(engine(), plan()).sections())
                .extracting(OrderList.Section::kind)
                .containsExactly(
                        SectionKind.GASKETS,
                        SectionKind.WASHERS,
                        SectionKind.FASTENERS,
                        SectionKind.FLUIDS,
                        SectionKind.SEALANTS);
        assertThat(SectionKind.ofPiece("sealing washer 10 mm")).isEqualTo(SectionKind.WASHERS);
        assertThat(SectionKind.ofPiece("hose clip 40 mm")).isEqualTo(SectionKind.CLIPS);
        assertThat(SectionKind.ofPiece("high-pressure pipe, rail to injector")).isEqualTo(SectionKind.PIPES);
        assertThat(SectionKind.ofPiece("nutmeg grater")).isEqualTo(SectionKind.OTHER);
    }

    @Test
    void addsTheSameFluidOfSeveralCircuitsBeforeRounding() {
        OrderLine oil = line(OrderList.of(engine(), plan()), "engine oil");

        assertThat(oil.amount()).isEqualTo(new Amount.Litres(1.1, 1.5, true));
        assertThat(oil.uses()).extracting(OrderLine.Use::id).containsExactlyInAnyOrder("oil", "cooler-oil");
    }

    @Test
    void roundsUpByTenthsBelowALitreAndByHalvesFromThere() {
        assertThat(Amount.rounded(0.6, true).buy_l()).isEqualTo(0.6);
        assertThat(Amount.rounded(0.61, true).buy_l()).isEqualTo(0.7);
        assertThat(Amount.rounded(5.2, true).buy_l()).isEqualTo(5.5);
        assertThat(Amount.rounded(6, true).buy_l()).isEqualTo(6);
        assertThatThrownBy(() -> Amount.rounded(0, true)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void listsTheCompoundOfAJointWithLockedThreads() {
        OrderLine compound = line(OrderList.of(engine(), plan()), "thread-locking compound");

        assertThat(compound.amount()).isEqualTo(new Amount.AsNeeded(1));
        assertThat(compound.uses().getFirst().id()).isEqualTo("feed");
    }

    private static OrderLine line(OrderList list, String spec) {
        return list.lines().stream()
                .filter(line -> line.spec().equals(spec))
                .findFirst()
                .orElseThrow();
    }

    private static StripPlan plan() {
        StripRequest request = new StripRequest(
                StripRequest.Target.off("head"),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(engine().workplace().waysOfLifting(), 0, 2_000));
        return (StripPlan) StripPlanner.plan(engine(), request);
    }

    private static Engine engine() {
        List<Part> parts =
                List.of(part("block", 30), part("head", 8), part("feed-pipe", 0.2), part("return-pipe", 0.2));
        List<Joint> joints = List.of(
                joint("head-bolts", List.of("head", "block"), List.of(GASKET, BOLT), List.of("oil"), ""),
                joint("feed", List.of("feed-pipe", "head"), List.of(WASHER), List.of("oil", "cooler-oil"), "locked"),
                joint("feed-low", List.of("feed-pipe", "block"), List.of(), List.of(), ""),
                joint("return", List.of("return-pipe", "head"), List.of(WASHER), List.of("oil"), "dry"),
                joint("return-low", List.of("return-pipe", "block"), List.of(), List.of(), ""));
        Ready drain = new Ready(
                "drain-plug",
                "drain the oil",
                ReadyKind.DRAIN,
                300,
                "top",
                List.of(),
                Condition.ALWAYS,
                List.of(),
                Optional.empty(),
                new Ready.Effect(
                        OptionalDouble.empty(),
                        List.of(),
                        Joint.Hold.NONE,
                        Joint.EngineState.ANY,
                        "",
                        List.of(new Spend(WASHER.spec(), 1, WASHER.priceEach())),
                        List.of(),
                        ""));
        List<Circuit> circuits = List.of(oil("oil", 0.6, List.of("drain-plug")), oil("cooler-oil", 0.5, List.of()));
        return new Engine(
                new Engine.Identity("snipe", "Snipe", 1, "", 1, Map.of()),
                new Engine.Workplace(
                        "block",
                        "top",
                        20,
                        List.of(
                                new Zone("top", "Top", 0, 0, List.of()),
                                new Zone(Zone.BENCH, "Bench", 30, 30, List.of())),
                        List.of(new LiftingWay("alone", 25, 60, ""))),
                parts,
                joints,
                circuits,
                List.of(drain),
                List.of(),
                new Engine.BuildRules(List.of(), List.of()));
    }

    private static Circuit oil(String id, double litres, List<String> drains) {
        return new Circuit(
                id,
                id,
                CircuitKind.OIL,
                "engine oil",
                Optional.of(Volume.ofLitres(litres)),
                List.of(),
                drains,
                List.of(),
                "");
    }

    private static Part part(String id, double kilograms) {
        return new Part(id, id, "", Optional.of(Mass.ofKilograms(kilograms)), Condition.ALWAYS, Part.Care.NONE);
    }

    private static Joint joint(String id, List<String> between, List<Spend> spends, List<String> opens, String thread) {
        List<Fastener> fasteners = new ArrayList<>();
        fasteners.add(new Fastener(
                id + "/1",
                FastenerKind.BOLT,
                "M8x1.25",
                Optional.empty(),
                "hexagon 13 mm",
                Fastener.Place.UNKNOWN,
                List.of(),
                "",
                "",
                ""));
        List<Makeup.Stage> stages = thread.isEmpty()
                ? List.of()
                : List.of(
                        new Makeup.Stage(Optional.of(Torque.ofNewtonMetres(20)), Optional.empty(), thread, List.of()));
        return new Joint(
                id,
                id,
                JointKind.BOLTED,
                between,
                Optional.empty(),
                new Joint.Freedom(
                        Condition.ALWAYS,
                        Condition.ALWAYS,
                        List.of(),
                        opens,
                        List.of(),
                        false,
                        Joint.EngineState.ANY,
                        Joint.Hold.NONE,
                        true),
                new Joint.Work(
                        "top",
                        List.of("socket 13 mm"),
                        new UndoTime(id.endsWith("-low") ? 90 : 50, 0, 0, ""),
                        60,
                        Optional.empty(),
                        List.of(),
                        "",
                        false),
                new Makeup(
                        fasteners,
                        spends,
                        stages,
                        List.of(),
                        new Makeup.Loosen(1, List.of()),
                        Optional.empty(),
                        List.of()));
    }
}
