package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.ReadyKind;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The smallest engines on which the planner and the brute force were once seen to differ. */
class SmallestDifferencesTest {
    private static StripAnswer plan(Engine engine, List<String> open, List<String> off, List<String> stuck) {
        StripRequest request = request(engine, open, off, stuck);
        return assertTimeoutPreemptively(Duration.ofSeconds(10), () -> StripPlanner.plan(engine, request));
    }

    private static StripRequest request(Engine engine, List<String> open, List<String> off, List<String> stuck) {
        StripRequest.Target target = new StripRequest.Target(off, List.of(), open, List.of());
        StripRequest.Means means = new StripRequest.Means(engine.workplace().waysOfLifting(), 0, 10_000);
        return new StripRequest(target, List.of(), List.of(), stuck, means);
    }

    @Test
    void aCutIsDoneWithTheToolsOfTheCut() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("cover", 1);
        b.rigid("screws", 10, "cover", "block").tools("key 6 mm", "pliers").cut(50, List.of(), "saw");
        StripPlan plan = (StripPlan) plan(b.build(), List.of("screws"), List.of(), List.of("screws"));
        assertThat(plan.operations().getFirst().place().tools()).containsExactly("saw");
        assertThat(plan.order().changeoverSeconds()).isEqualTo(20);
    }

    /** The hose hangs loose in the untouched engine; nothing asks for it to be lifted to the bench first. */
    @Test
    void whatHangsFromTheStartNeedNotBeLifted() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("hose", 1);
        b.part("box", 1);
        b.flexible("hose-end", 10, 3, "hose", "block");
        b.flexible("hose-clip", 10, 3, "hose", "box");
        Engine engine = b.build();
        StripPlan plan = (StripPlan) plan(engine, List.of("hose-clip"), List.of(), List.of());
        StripRequest request = request(engine, List.of("hose-clip"), List.of(), List.of());
        BruteForce brute = new BruteForce(new BruteModel(engine, request));
        long best = brute.order(brute.opening().sets().getFirst(), BruteForce.Habit.NONE)
                .orElseThrow()
                .changeoverSeconds();
        assertThat(best).isZero();
        assertThat(plan.order().changeoverSeconds()).isZero();
    }

    /** Too heavy to lift, but safe once the strut that leaves it resting is undone as well. */
    @Test
    void aPieceMayBeSettledByUndoingWhatRests() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("gearbox", 60);
        b.rigid("bolts", 100, "gearbox", "block");
        b.flexible("strut", 50, 100, "gearbox", "block").rests();
        Engine engine = b.build();
        StripRequest request = request(engine, List.of("bolts"), List.of(), List.of());
        BruteForce brute = new BruteForce(new BruteModel(engine, request));
        assertThat(brute.opening().costSeconds()).isEqualTo(150);
        StripAnswer answer = plan(engine, List.of("bolts"), List.of(), List.of());
        assertThat(answer).isInstanceOf(StripPlan.class);
        assertThat(((StripPlan) answer).opening().costSeconds()).isEqualTo(150);
    }

    /** The plug is warm and opens what must be drained; drains come after whatever is warm. */
    @Test
    void anOrderThatCannotBeIsNamedAndNotSearchedForEver() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("housing", 8);
        b.part("pipe", 2);
        b.part("cover", 1);
        b.rigid("cover-screws", 10, "cover", "block").zone("bench").opens("coolant");
        b.rigid("pipe-bolts", 10, "pipe", "block")
                .access(EngineBuilder.undone("cover-screws"))
                .tools("10");
        b.rigid("housing-bolts", 10, "housing", "block")
                .state(Joint.EngineState.WARM)
                .opens("coolant")
                .access(EngineBuilder.undone("pipe-bolts"))
                .tools("13");
        b.ready("cap-off", ReadyKind.MAKE_SAFE, 10);
        b.ready("tap", ReadyKind.DRAIN, 10).tools("17");
        b.circuit("coolant", CircuitKind.COOLANT, List.of("cap-off"), List.of("tap"));
        StripAnswer answer = plan(b.build(), List.of(), List.of("housing"), List.of());
        assertThat(answer).isInstanceOf(Blocked.class);
        assertThat(((Blocked) answer).reasons())
                .anySatisfy(reason -> assertThat(reason.kind()).isEqualTo(Blocked.Kind.ORDER));
    }

    /** Held by one or the other, and neither may be left: with states to search it is proven, with none it is not claimed. */
    @Test
    void aSearchThatWasNotAllowedToLookClaimsNothing() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("cover", 1);
        b.part("lid", 1);
        b.part("plate", 1);
        b.rigid("cap", 10, "lid", "block");
        b.rigid("stay", 10, "plate", "block");
        b.rigid("screws", 10, "cover", "block")
                .access(EngineBuilder.undone("cap"))
                .access(EngineBuilder.undone("stay"))
                .hold("cap")
                .hold("stay");
        Engine engine = b.build();
        assertThat(StripPlanner.plan(engine, request(engine, List.of(), List.of("cover"), List.of())))
                .isInstanceOfSatisfying(Blocked.class, blocked -> assertThat(blocked.reasons())
                        .extracting(Blocked.Reason::kind)
                        .containsExactly(Blocked.Kind.ORDER));
        StripRequest hasty = new StripRequest(
                StripRequest.Target.off("cover"),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(engine.workplace().waysOfLifting(), 0, 0));
        assertThat(StripPlanner.plan(engine, hasty))
                .isInstanceOfSatisfying(Blocked.class, blocked -> assertThat(blocked.reasons())
                        .extracting(Blocked.Reason::kind)
                        .containsExactly(Blocked.Kind.UNDECIDED));
    }

    /**
     * Same zone, same (no) tools, nothing lifted by it: still the mount must not go first, or undoing the stay drops both parts
     * and the clamp moves to the bench.
     */
    @Test
    void evenTheSameZoneAndToolsAreNotAlwaysTakenAtOnce() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("pump", 2);
        b.part("bracket", 0.5);
        b.rigid("mount", 10, "pump", "block");
        b.rigid("clamp", 20, "bracket", "pump").tools("13").access(EngineBuilder.undone("stay"));
        b.rigid("stay", 30, "bracket", "block").tools("10");
        Engine engine = b.build();
        StripRequest request = request(engine, List.of("mount", "clamp", "stay"), List.of(), List.of());
        BruteForce brute = new BruteForce(new BruteModel(engine, request));
        long set = brute.opening().sets().getFirst();
        assertThat(brute.order(set, BruteForce.Habit.NONE).orElseThrow().changeoverSeconds())
                .isEqualTo(40);
        StripPlan plan = (StripPlan) plan(engine, List.of("mount", "clamp", "stay"), List.of(), List.of());
        assertThat(plan.order().changeoverSeconds()).isEqualTo(40);
    }
}
