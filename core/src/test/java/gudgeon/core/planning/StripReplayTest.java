package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.Violation.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** One planted violation of each kind, each refused with its kind; the plan without it passes. */
class StripReplayTest {
    private static final StripRequest REQUEST = new StripRequest(
            new StripRequest.Target(List.of("head"), List.of("loom-box"), List.of("pulley-bolt"), List.of("deck")),
            List.of(),
            List.of(),
            List.of("manifold-nuts"),
            new StripRequest.Means(plover().workplace().waysOfLifting(), 0, 1000));

    private static final Set<Kind> PLANTED = EnumSet.noneOf(Kind.class);

    private static final String[] RIGHT = {
        "battery-off",
        "crack-pulley-bolt",
        "belt-clip",
        "+belt",
        "pulley-bolt",
        "+pulley",
        "warm-plug",
        "drain-sump",
        "hose-clip",
        "cowl-screws",
        "+cowl",
        "strap-up",
        "box-screws",
        "+loom-box",
        "manifold-nuts",
        "+manifold",
        "pins-in",
        "head-bolts",
        "+head"
    };

    /** An invented single with something of every rule. */
    private static Engine plover() {
        EngineBuilder b = new EngineBuilder("block");
        b.zone("underneath", 60, 40, "raised-machine");
        b.part("cowl", 1);
        b.part("head", 12).lift(EngineBuilder.away("manifold"));
        b.part("manifold", 4);
        b.part("belt", 0.5);
        b.part("pulley", 2);
        b.part("loom-box", 5);
        b.part("hose", 0.3);
        b.part("counterweight", 40);
        b.rigid("cowl-screws", 120, "cowl", "block").tools("key 6 mm").destroys("clip", 4, 0.25);
        b.rigid("manifold-nuts", 240, "manifold", "head")
                .tools("socket 12 mm")
                .state(Joint.EngineState.COLD)
                .destroys("gasket", 1, 6)
                .cut(600, List.of(new Spend("stud", 2, java.util.OptionalDouble.of(2))), "cut-off saw");
        b.rigid("belt-clip", 60, "belt", "block").tools("pliers");
        b.rigid("pulley-bolt", 90, "pulley", "block").tools("socket 19 mm").needs("crack-pulley-bolt");
        b.rigid("box-screws", 80, "loom-box", "head").tools("key 6 mm").access(EngineBuilder.away("cowl"));
        b.flexible("loom", 40, 3, "loom-box", "block").strap("strap-up");
        b.rigid("hose-stub", 30, "hose", "block").licensed();
        b.flexible("hose-clip", 30, 0, "hose", "head")
                .tools("pliers")
                .opens("coolant")
                .destroys("clip", 1, 0.25);
        b.rigid("head-bolts", 600, "head", "block")
                .tools("socket 14 mm")
                .access(EngineBuilder.away("cowl"))
                .needs("pins-in")
                .opens("coolant")
                .cautions("heavy");
        b.rigid("weight-bolt", 10, "counterweight", "block");
        b.rigid("sump-plug", 30, "counterweight", "block")
                .zone("underneath")
                .opens("coolant")
                .drains("coolant");
        b.ready("battery-off", ReadyKind.MAKE_SAFE, 60).tools("socket 10 mm");
        b.ready("drain-sump", ReadyKind.DRAIN, 300)
                .joint("sump-plug")
                .zone("underneath")
                .tools("socket 17 mm");
        b.ready("warm-plug", ReadyKind.RECORD, 30).state(Joint.EngineState.WARM);
        b.ready("strap-up", ReadyKind.STRAP, 60);
        b.ready("pins-in", ReadyKind.PIN, 60).access(EngineBuilder.away("belt"));
        b.ready("crack-pulley-bolt", ReadyKind.CRACK_LOOSE, 60)
                .joint("pulley-bolt")
                .tools("socket 19 mm")
                .hold("belt-clip");
        b.circuit("coolant", CircuitKind.COOLANT, List.of("battery-off"), List.of("drain-sump"), List.of("hot"));
        b.feature("deck", "block", EngineBuilder.anyOf(EngineBuilder.away("head")));
        b.before("pulley-bolt", "head-bolts");
        return b.build();
    }

    private static StripPlan written(String... words) {
        return WrittenPlan.write(new BruteModel(plover(), REQUEST), words);
    }

    private static Set<Kind> kinds(StripPlan plan) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        StripReplay.check(plover(), REQUEST, plan).forEach(violation -> kinds.add(violation.kind()));
        return kinds;
    }

    @Test
    void theRightPlanPasses() {
        assertThat(StripReplay.check(plover(), REQUEST, written(RIGHT))).isEmpty();
    }

    private static String[] without(String... words) {
        List<String> list = new ArrayList<>(List.of(RIGHT));
        list.removeAll(List.of(words));
        return list.toArray(String[]::new);
    }

    /** With {@code word} taken out and put in before {@code anchor}. */
    private static String[] moved(String word, String anchor) {
        List<String> list = new ArrayList<>(List.of(RIGHT));
        list.remove(word);
        list.add(list.indexOf(anchor), word);
        return list.toArray(String[]::new);
    }

    private static String[] replaced(String word, String... by) {
        List<String> list = new ArrayList<>(List.of(RIGHT));
        int at = list.indexOf(word);
        list.remove(word);
        list.addAll(at, List.of(by));
        return list.toArray(String[]::new);
    }

    private static DynamicTest refused(String name, Kind kind, String... words) {
        PLANTED.add(kind);
        return DynamicTest.dynamicTest(
                name, () -> assertThat(kinds(written(words))).contains(kind));
    }

    @TestFactory
    Stream<DynamicTest> wrongSequencesAreRefused() {
        return Stream.of(
                refused("drop the make-safe", Kind.CIRCUIT_NOT_READY, without("battery-off")),
                refused("drop the drain", Kind.CIRCUIT_NOT_READY, without("drain-sump")),
                refused("drop the pins", Kind.NEED_NOT_DONE, without("pins-in")),
                refused("drop the crack loose", Kind.NEED_NOT_DONE, without("crack-pulley-bolt")),
                refused("drop a joint that holds the target", Kind.TARGET_NOT_REACHED, without("hose-clip")),
                refused("drop the last lift", Kind.TARGET_NOT_REACHED, without("+head")),
                refused("drop the last lift, so it is loose", Kind.LOOSE_PIECE, without("+head")),
                refused("undo before there is access", Kind.NO_ACCESS, moved("head-bolts", "cowl-screws")),
                refused("pins before the belt is away", Kind.NO_ACCESS, moved("pins-in", "belt-clip")),
                refused("undo a licensed joint", Kind.LICENSED, replaced("hose-clip", "hose-clip", "hose-stub")),
                refused("lift too heavy", Kind.TOO_HEAVY, replaced("+head", "+head", "weight-bolt", "+counterweight")),
                refused("lift what is still bolted", Kind.NOT_WHOLE_PIECES, moved("+cowl", "cowl-screws")),
                refused("lift twice", Kind.NOT_WHOLE_PIECES, replaced("+cowl", "+cowl", "+cowl")),
                refused("lift against its condition", Kind.LIFT_CONDITION, moved("+head", "+manifold")),
                refused("drop the strap", Kind.WOULD_HANG, without("strap-up")),
                refused("strap after the lift", Kind.WOULD_HANG, moved("+loom-box", "strap-up")),
                refused("leave a loose piece", Kind.LOOSE_PIECE, moved("+cowl", "box-screws")),
                refused(
                        "crack loose after the holder left",
                        Kind.HOLD_BROKEN,
                        moved("crack-pulley-bolt", "pulley-bolt")),
                refused("swap a pair", Kind.BEFORE_BROKEN, moved("pulley-bolt", "+head")),
                refused("warm after a drain", Kind.ENGINE_STATE, moved("warm-plug", "hose-clip")),
                refused("warm after cold", Kind.ENGINE_STATE, moved("warm-plug", "pins-in")),
                refused("undo twice", Kind.DONE_TWICE, replaced("box-screws", "box-screws", "box-screws")),
                refused("make ready twice", Kind.DONE_TWICE, replaced("pins-in", "pins-in", "pins-in")));
    }

    private static int at(String id) {
        return List.of(RIGHT).indexOf(id);
    }

    private static StripPlan changed(int step, UnaryOperator<StripPlan.Operation> change) {
        StripPlan plan = written(RIGHT);
        List<StripPlan.Operation> operations = new ArrayList<>(plan.operations());
        operations.set(step, change.apply(operations.get(step)));
        return new StripPlan(operations, plan.opening(), plan.order(), plan.lifts(), plan.destroyed());
    }

    private static StripPlan.Operation with(
            StripPlan.Operation old, StripPlan.Kind kind, String id, StripPlan.Place place, StripPlan.After after) {
        return new StripPlan.Operation(
                old.number(),
                kind,
                id,
                old.pieces(),
                old.lift(),
                place,
                old.seconds(),
                old.destroys(),
                old.cautions(),
                old.why(),
                after);
    }

    private static StripPlan placed(String id, String zone, List<String> tools, String from, long change) {
        StripPlan.Place place = new StripPlan.Place(zone, tools, from, change);
        return changed(at(id), old -> with(old, old.kind(), old.id(), place, old.after()));
    }

    private static StripPlan retold(String id, int number, List<String> pieces, long seconds, boolean bare) {
        return changed(
                at(id),
                old -> new StripPlan.Operation(
                        number < 0 ? old.number() : number,
                        old.kind(),
                        old.id(),
                        pieces.isEmpty() ? old.pieces() : pieces,
                        old.lift(),
                        old.place(),
                        seconds < 0 ? old.seconds() : seconds,
                        bare ? List.of() : old.destroys(),
                        bare ? List.of() : old.cautions(),
                        old.why(),
                        old.after()));
    }

    private static DynamicTest refused(String name, Kind kind, StripPlan plan) {
        PLANTED.add(kind);
        return DynamicTest.dynamicTest(name, () -> assertThat(kinds(plan)).contains(kind));
    }

    @TestFactory
    Stream<DynamicTest> wrongStatementsAboutAStepAreRefused() {
        StripPlan.After nothing = new StripPlan.After(List.of(), List.of());
        StripPlan.Lift light = new StripPlan.Lift(1, "alone", false, List.of());
        StripPlan.Lift off = new StripPlan.Lift(5, "alone", false, List.of());
        StripPlan.Lift nobody = new StripPlan.Lift(12, "crane", false, List.of());
        return Stream.of(
                refused("zone", Kind.WRONG_ZONE, placed("drain-sump", "top", List.of("socket 17 mm"), "top", 20)),
                refused("tool", Kind.WRONG_TOOLS, placed("belt-clip", "top", List.of("hammer"), "top", 20)),
                refused("from", Kind.WRONG_FROM_ZONE, placed("belt-clip", "top", List.of("pliers"), "bench", 20)),
                refused("changeover", Kind.WRONG_CHANGEOVER, placed("belt-clip", "top", List.of("pliers"), "top", 21)),
                refused("changeover of a lift", Kind.WRONG_CHANGEOVER, placed("+belt", "top", List.of(), "top", 5)),
                refused("seconds", Kind.WRONG_SECONDS, retold("belt-clip", -1, List.of(), 61, false)),
                refused("destroys", Kind.WRONG_DESTROYS, retold("cowl-screws", -1, List.of(), -1, true)),
                refused("caution of a joint", Kind.MISSING_CAUTION, retold("head-bolts", -1, List.of(), -1, true)),
                refused("caution of a zone", Kind.MISSING_CAUTION, retold("drain-sump", -1, List.of(), -1, true)),
                refused("caution of a circuit", Kind.MISSING_CAUTION, retold("hose-clip", -1, List.of(), -1, true)),
                refused("number", Kind.WRONG_NUMBER, retold("belt-clip", 9, List.of(), -1, false)),
                refused("parts", Kind.WRONG_PARTS, retold("belt-clip", -1, List.of("belt", "head"), -1, false)),
                refused(
                        "lift of half a thing",
                        Kind.NOT_WHOLE_PIECES,
                        retold("+head", -1, List.of("block"), -1, false)),
                refused(
                        "state",
                        Kind.WRONG_STATE_AFTER,
                        changed(at("+belt"), old -> with(old, old.kind(), old.id(), old.place(), nothing))),
                refused(
                        "cut told as undo",
                        Kind.WRONG_KIND,
                        changed(
                                at("manifold-nuts"),
                                old -> with(old, StripPlan.Kind.UNDO, old.id(), old.place(), old.after()))),
                refused(
                        "drain told as pin",
                        Kind.WRONG_KIND,
                        changed(
                                at("drain-sump"),
                                old -> with(old, StripPlan.Kind.PIN, old.id(), old.place(), old.after()))),
                refused(
                        "unknown",
                        Kind.UNKNOWN_OPERATION,
                        changed(at("belt-clip"), old -> with(old, old.kind(), "no-such", old.place(), old.after()))),
                refused("mass of a lift", Kind.WRONG_LIFT_DATA, lifted("+head", light)),
                refused("aside told as off", Kind.WRONG_LIFT_DATA, lifted("+loom-box", off)),
                refused("way that nobody has", Kind.WRONG_LIFT_DATA, lifted("+head", nobody)),
                refused("lift without data", Kind.WRONG_LIFT_DATA, lifted("+head", null)));
    }

    private static StripPlan lifted(String id, StripPlan.@org.jspecify.annotations.Nullable Lift lift) {
        return changed(
                at(id),
                old -> new StripPlan.Operation(
                        old.number(),
                        old.kind(),
                        old.id(),
                        old.pieces(),
                        lift,
                        old.place(),
                        old.seconds(),
                        old.destroys(),
                        old.cautions(),
                        old.why(),
                        old.after()));
    }

    private static StripPlan.Opening opening(StripPlan.Opening o, long cost, long bound, long joints, boolean known) {
        List<String> chosen =
                known ? o.chosen() : o.chosen().subList(1, o.chosen().size());
        return new StripPlan.Opening(chosen, cost, bound, true, joints, o.readySeconds(), o.money(), List.of());
    }

    @TestFactory
    Stream<DynamicTest> wrongTotalsAreRefused() {
        StripPlan p = written(RIGHT);
        StripPlan.Opening o = p.opening();
        StripPlan.Order dearer = new StripPlan.Order(p.order().changeoverSeconds() + 1, 0, "", 0);
        StripPlan.Lifts lifts = new StripPlan.Lifts(p.lifts().count(), p.lifts().seconds() + 60);
        long cost = o.costSeconds();
        long joints = o.jointsSeconds();
        StripPlan.Opening cheap = opening(o, cost - 1, cost - 1, joints, true);
        StripPlan.Opening loose = opening(o, cost, cost - 1, joints, true);
        StripPlan.Opening short1 = opening(o, cost, cost, joints - 1, true);
        StripPlan.Opening fewer = opening(o, cost, cost, joints, false);
        return Stream.of(
                refused("cost", Kind.WRONG_OPENING, total(p, cheap, p.order(), p.lifts(), p.destroyed())),
                refused("bound", Kind.WRONG_OPENING, total(p, loose, p.order(), p.lifts(), p.destroyed())),
                refused("joints", Kind.WRONG_OPENING, total(p, short1, p.order(), p.lifts(), p.destroyed())),
                refused("chosen", Kind.WRONG_CHOSEN, total(p, fewer, p.order(), p.lifts(), p.destroyed())),
                refused("way back", Kind.WRONG_ORDER_TOTAL, total(p, o, dearer, p.lifts(), p.destroyed())),
                refused("lifts", Kind.WRONG_LIFTS_TOTAL, total(p, o, p.order(), lifts, p.destroyed())),
                refused("total", Kind.WRONG_TOTAL, total(p, o, dearer, p.lifts(), p.destroyed())),
                refused("destroyed", Kind.WRONG_DESTROYED_LIST, total(p, o, p.order(), p.lifts(), List.of())));
    }

    private static StripPlan total(
            StripPlan plan, StripPlan.Opening o, StripPlan.Order order, StripPlan.Lifts lifts, List<Spend> destroyed) {
        return new StripPlan(plan.operations(), o, order, lifts, destroyed);
    }

    @Test
    void aJointThatWillNotComeIsRefusedWithoutACut() {
        EngineBuilder b = new EngineBuilder("block");
        b.part("cowl", 1);
        b.rigid("screws", 10, "cowl", "block");
        Engine engine = b.build();
        StripRequest request = new StripRequest(
                StripRequest.Target.off("cowl"), List.of(), List.of(), List.of("screws"), REQUEST.means());
        StripPlan plan = WrittenPlan.write(new BruteModel(engine, request), "screws", "+cowl");
        assertThat(StripReplay.check(engine, request, plan))
                .extracting(Violation::kind)
                .contains(Kind.WILL_NOT_COME);
    }

    @Test
    void everyKindHasItsPlantedViolation() {
        PLANTED.add(Kind.WILL_NOT_COME);
        assertThat(wrongSequencesAreRefused().count()).isPositive();
        assertThat(wrongStatementsAboutAStepAreRefused().count()).isPositive();
        assertThat(wrongTotalsAreRefused().count()).isPositive();
        assertThat(PLANTED).containsExactlyInAnyOrder(Kind.values());
    }
}
