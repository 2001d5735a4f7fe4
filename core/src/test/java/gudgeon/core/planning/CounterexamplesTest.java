package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.ReadyKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Small engines on which a plausible rule goes wrong. Each shows the effect by brute force with the rule and without it, and
 * asks the planner for the right answer.
 */
class CounterexamplesTest {
    private static StripRequest request(Engine engine, StripRequest.Target target, List<String> undone) {
        StripRequest.Means means = new StripRequest.Means(engine.workplace().waysOfLifting(), 0, 100_000);
        return new StripRequest(target, undone, List.of(), List.of(), means);
    }

    private static StripRequest.Target open(String... joints) {
        return new StripRequest.Target(List.of(), List.of(), List.of(joints), List.of());
    }

    private static BruteForce brute(Engine engine, StripRequest request) {
        return new BruteForce(new BruteModel(engine, request));
    }

    /** The planner's plan, which must have this opening cost and pass the replay. */
    private static StripPlan planned(Engine engine, StripRequest request, long openingSeconds) {
        StripAnswer answer = StripPlanner.plan(engine, request);
        assertThat(answer).isInstanceOf(StripPlan.class);
        StripPlan plan = (StripPlan) answer;
        assertThat(StripReplay.check(engine, request, plan)).isEmpty();
        assertThat(plan.opening().costSeconds()).isEqualTo(openingSeconds);
        assertThat(plan.opening().proven()).isTrue();
        assertThat(brute(engine, request).opening().costSeconds()).isEqualTo(openingSeconds);
        return plan;
    }

    /** The habit costs {@code dearer}, the free choice {@code right}, and the planner finds the latter. */
    private static void habitIsDearer(
            Engine engine, StripRequest request, BruteForce.Habit habit, long dearer, long right) {
        BruteForce brute = brute(engine, request);
        BruteForce.Opening opening = brute.opening();
        assertThat(opening.sets()).hasSize(1);
        long set = opening.sets().getFirst();
        assertThat(brute.order(set, habit).orElseThrow().changeoverSeconds()).isEqualTo(dearer);
        assertThat(brute.order(set, BruteForce.Habit.NONE).orElseThrow().changeoverSeconds())
                .isEqualTo(right);
        StripPlan plan = planned(engine, request, opening.costSeconds());
        assertThat(plan.order().changeoverSeconds()).isEqualTo(right);
        assertThat(plan.order().proven()).isTrue();
    }

    /** Carrier and cover each ask for the other to be moved: together they go, one by one neither does. */
    private static Engine interlocked() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("carrier", 3).lift(EngineBuilder.away("cover"));
        b.part("cover", 2).lift(EngineBuilder.away("carrier"));
        b.part("sprocket", 1);
        b.rigid("carrier-bolts", 100, "carrier", "block").rests();
        b.rigid("cover-screws", 30, "carrier", "cover").rests();
        b.rigid("sprocket-nut", 40, "sprocket", "block").access(EngineBuilder.away("carrier"));
        return b.build();
    }

    @Test
    void judgingSinglePiecesLosesWhatMoreUndoingShouldKeep() {
        Engine engine = interlocked();
        BruteModel model = brute(engine, request(engine, open("sprocket-nut"), List.of())).model;
        long both = model.partsOf(List.of("carrier", "cover"));
        long bolts = model.opsOf(List.of("carrier-bolts"));
        long more = bolts | model.opsOf(List.of("cover-screws"));
        assertThat(model.closure(bolts, 0, true)).isEqualTo(both);
        assertThat(model.closure(more, 0, true)).isZero();
        assertThat(model.closure(more, 0, false)).isEqualTo(both);
        planned(engine, request(engine, open("sprocket-nut"), List.of()), 140);
        StripPlan plan = planned(engine, request(engine, open("sprocket-nut"), List.of("cover-screws")), 140);
        assertThat(plan.operations())
                .filteredOn(operation -> operation.kind() == StripPlan.Kind.LIFT)
                .anySatisfy(lift -> assertThat(lift.pieces()).containsExactlyInAnyOrder("carrier", "cover"));
    }

    @Test
    void theCheapestWayInMayLeaveAPieceLoose() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("gearbox", 60);
        b.part("starter", 4);
        b.part("pump", 2);
        b.rigid("gearbox-bolts", 10, "gearbox", "block");
        b.rigid("starter-bolts", 50, "starter", "block");
        b.rigid("pump-screws", 20, "pump", "block")
                .access(EngineBuilder.undone("gearbox-bolts"), EngineBuilder.undone("starter-bolts"));
        Engine engine = b.build();
        StripRequest request = request(engine, open("pump-screws"), List.of());
        BruteModel model = brute(engine, request).model;
        long cheap = model.opsOf(List.of("gearbox-bolts", "pump-screws"));
        long moved = model.closure(cheap, 0, false);
        assertThat(model.reached(cheap, moved)).isTrue();
        assertThat(model.loose(cheap, moved)).isEqualTo(model.partsOf(List.of("gearbox")));
        assertThat(planned(engine, request, 70).opening().chosen()).containsExactly("starter-bolts", "pump-screws");
    }

    @Test
    void aSupportMayBeCheaperThanTheWayRound() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("gearbox", 60);
        b.part("starter", 4);
        b.rigid("gearbox-bolts", 10, "gearbox", "block");
        b.rigid("starter-bolts", 50, "starter", "block");
        b.ready("jack", ReadyKind.SUPPORT, 15).carries("gearbox");
        b.part("pump", 2);
        b.rigid("pump-screws", 20, "pump", "block")
                .access(EngineBuilder.undone("gearbox-bolts"), EngineBuilder.undone("starter-bolts"));
        Engine engine = b.build();
        StripPlan plan = planned(engine, request(engine, open("pump-screws"), List.of()), 45);
        assertThat(plan.opening().chosen()).containsExactlyInAnyOrder("jack", "gearbox-bolts", "pump-screws");
    }

    /** One part that stays and takes the joints, so that only the order matters. */
    private static EngineBuilder frame() {
        EngineBuilder b = new EngineBuilder("block");
        b.zone("underneath", 60, 40);
        b.part("frame", 3);
        b.rigid("keeps-it", 5, "frame", "block");
        return b;
    }

    @Test
    void doingWhatTheToolsInHandAllowIsDearer() {
        EngineBuilder b = frame();
        b.rigid("a", 10, "frame", "block").tools("10", "13");
        b.rigid("b", 10, "frame", "block").tools("10").access(EngineBuilder.undone("a"));
        b.rigid("c", 10, "frame", "block").tools("13", "17").access(EngineBuilder.undone("a"));
        b.rigid("d", 10, "frame", "block").tools("10", "19").access(EngineBuilder.undone("c"));
        Engine engine = b.build();
        StripRequest request = request(engine, open("a", "b", "c", "d"), List.of());
        habitIsDearer(engine, request, BruteForce.Habit.TOOLS_IN_HAND, 120, 100);
    }

    @Test
    void finishingTheZoneFirstIsDearer() {
        EngineBuilder b = frame();
        b.rigid("a", 10, "frame", "block").tools("10");
        b.rigid("b", 10, "frame", "block").tools("13").access(EngineBuilder.undone("a"));
        b.rigid("c", 10, "frame", "block").tools("10").zone("underneath").access(EngineBuilder.undone("a"));
        b.rigid("d", 10, "frame", "block").tools("13").access(EngineBuilder.undone("c"));
        Engine engine = b.build();
        StripRequest request = request(engine, open("a", "b", "c", "d"), List.of());
        habitIsDearer(engine, request, BruteForce.Habit.SAME_ZONE, 180, 140);
    }

    @Test
    void doingTheSameToolAtOnceAcrossTheMoveToTheBenchIsDearer() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("bracket", 2);
        b.part("pump", 2);
        b.part("cover", 1);
        b.rigid("cover-screws", 10, "cover", "block").tools("10").rests();
        b.rigid("bracket-bolts", 10, "bracket", "block").tools("10").access(EngineBuilder.undone("cover-screws"));
        b.rigid("pump-bolts", 10, "bracket", "pump").tools("13").access(EngineBuilder.undone("cover-screws"));
        Engine engine = b.build();
        StripRequest request = request(engine, open("cover-screws", "bracket-bolts", "pump-bolts"), List.of());
        habitIsDearer(engine, request, BruteForce.Habit.SAME_TOOLS, 100, 60);
    }

    @Test
    void liftingWhateverCanBeLiftedIsDearer() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("bracket", 2);
        b.part("pump", 2);
        b.rigid("bracket-bolts", 10, "bracket", "block").tools("10").rests();
        b.rigid("pump-bolts", 10, "bracket", "pump").tools("10").access(EngineBuilder.undone("bracket-bolts"));
        Engine engine = b.build();
        StripRequest request = request(engine, open("bracket-bolts", "pump-bolts"), List.of());
        habitIsDearer(engine, request, BruteForce.Habit.LIFTS, 80, 20);
    }

    @Test
    void liftingEarlyMayAlsoBeCheaper() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("bracket", 2);
        b.part("pump", 2);
        b.zone("underneath", 60, 40);
        b.rigid("bracket-bolts", 10, "bracket", "block").tools("10").rests();
        b.rigid("pump-bolts", 10, "bracket", "pump")
                .tools("10")
                .zone("underneath")
                .access(EngineBuilder.undone("bracket-bolts"));
        Engine engine = b.build();
        StripRequest request = request(engine, open("bracket-bolts", "pump-bolts"), List.of());
        habitIsDearer(engine, request, BruteForce.Habit.LIFTS, 80, 80);
    }

    @Test
    void aPairThatNoOrderKeepsIsNamed() {
        EngineBuilder b = frame();
        b.rigid("a", 10, "frame", "block");
        b.rigid("b", 10, "frame", "block").access(EngineBuilder.undone("a"));
        b.before("b", "a");
        Engine engine = b.build();
        StripAnswer answer = StripPlanner.plan(engine, request(engine, open("b"), List.of()));
        assertThat(answer).isInstanceOf(Blocked.class);
        assertThat(((Blocked) answer).reasons()).anySatisfy(reason -> {
            assertThat(reason.kind()).isEqualTo(Blocked.Kind.ORDER);
            assertThat(reason.about()).containsExactlyInAnyOrder("a", "b");
        });
    }

    /** The holder must go before there is access to crack loose what it holds. */
    @Test
    void aHoldThatNoOrderKeepsBlocks() {
        EngineBuilder b = frame();
        b.part("belt", 1);
        b.rigid("belt-clip", 10, "belt", "block");
        b.rigid("nut", 10, "frame", "block").hold("belt-clip").access(EngineBuilder.away("belt"));
        Engine engine = b.build();
        StripAnswer answer = StripPlanner.plan(engine, request(engine, open("nut"), List.of()));
        assertThat(answer).isInstanceOf(Blocked.class);
        assertThat(((Blocked) answer).reasons())
                .anySatisfy(reason -> assertThat(reason.kind()).isEqualTo(Blocked.Kind.ORDER));
    }
}
