package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.Violation.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Does a plan again, step by step, on the engine and the request it answers, and lists everything that docs/planning.md
 * forbids or that the plan states wrongly. Written from that page; it shares no code with the planner.
 *
 * <p>Readings of the page: the plan starts with nothing moved; a piece that hangs loose in the untouched state (a loom
 * between two flexible joints) has not <em>become</em> loose and may stay; several lifts may follow one operation, in any
 * order, before the next operation; what a step states as off or aside afterwards has been moved.
 */
final class StripReplay {
    private final Engine engine;
    private final StripRequest request;
    private final StripPlan plan;
    private final ReplayState state;
    private final Set<String> looseFromTheStart;
    private final List<Violation> violations = new ArrayList<>();
    private String zone;
    private List<String> hand = List.of();
    private int step;

    private StripReplay(Engine engine, StripRequest request, StripPlan plan) {
        this.engine = engine;
        this.request = request;
        this.plan = plan;
        this.state = new ReplayState(engine, request.undone(), request.done());
        this.looseFromTheStart = state.loose();
        this.zone = engine.workplace().startZone();
    }

    /** Everything wrong with the plan; empty when it is right. */
    static List<Violation> check(Engine engine, StripRequest request, StripPlan plan) {
        StripReplay replay = new StripReplay(engine, request, plan);
        replay.run();
        return replay.violations;
    }

    private void refuse(Kind kind, String text) {
        violations.add(new Violation(kind, step, text));
    }

    private void expect(boolean right, Kind kind, String text) {
        if (!right) {
            refuse(kind, text);
        }
    }

    private void run() {
        for (StripPlan.Operation operation : plan.operations()) {
            step++;
            expect(operation.number() == step, Kind.WRONG_NUMBER, operation.number() + " is step " + step);
            if (operation.kind() == StripPlan.Kind.LIFT) {
                lift(operation);
            } else {
                noLoosePiece();
                Optional<Joint> joint = engine.findJoint(operation.id());
                Optional<Ready> ready = engine.findReady(operation.id());
                joint.ifPresent(found -> undo(operation, found));
                ready.ifPresent(found -> makeReady(operation, found));
                expect(joint.isPresent() || ready.isPresent(), Kind.UNKNOWN_OPERATION, operation.id());
            }
            stateAfter(operation);
        }
        step = 0;
        noLoosePiece();
        expect(
                state.reached(request.target()),
                Kind.TARGET_NOT_REACHED,
                request.target().toString());
        violations.addAll(ReplayTotals.check(engine, request, plan, Travel.between(engine, zone, start())));
    }

    private String start() {
        return engine.workplace().startZone();
    }

    private void noLoosePiece() {
        Set<String> loose = state.loose();
        loose.removeAll(looseFromTheStart);
        expect(loose.isEmpty(), Kind.LOOSE_PIECE, "left loose: " + loose);
    }

    private void undo(StripPlan.Operation operation, Joint joint) {
        boolean cut = request.willNotCome().contains(joint.id());
        expect(!cut || joint.work().cut().isPresent(), Kind.WILL_NOT_COME, joint.id());
        StripPlan.Kind right = cut ? StripPlan.Kind.CUT : StripPlan.Kind.UNDO;
        expect(operation.kind() == right, Kind.WRONG_KIND, operation.kind() + " of " + joint.id());
        expect(!state.undone.contains(joint.id()), Kind.DONE_TWICE, joint.id());
        expect(!joint.freedom().licensed(), Kind.LICENSED, joint.id());
        boolean access = state.access(joint.freedom().access(), joint.between());
        expect(access, Kind.NO_ACCESS, joint.id());
        for (String circuit : joint.freedom().opens()) {
            boolean exempt = joint.freedom().drains().contains(circuit);
            expect(exempt || state.circuitReady(engine.circuit(circuit)), Kind.CIRCUIT_NOT_READY, circuit);
        }
        expect(state.done.containsAll(joint.freedom().needs()), Kind.NEED_NOT_DONE, joint.id());
        expect(state.holds(joint.freedom().hold()), Kind.HOLD_BROKEN, joint.id());
        expect(
                operation.pieces().equals(joint.between()),
                Kind.WRONG_PARTS,
                operation.pieces().toString());
        order(joint.id(), joint.freedom().engineState(), false);
        List<String> cutTools = joint.work().cut().map(Joint.Cut::tools).orElse(List.of());
        place(
                operation,
                joint.work().zone(),
                joint.between(),
                cut ? cutTools : joint.work().tools());
        cautions(operation, joint);
        state.undone.add(joint.id());
    }

    private void makeReady(StripPlan.Operation operation, Ready ready) {
        String kind = ready.kind().name();
        expect(operation.kind().name().equals(kind), Kind.WRONG_KIND, operation.kind() + " of " + ready.id());
        expect(!state.done.contains(ready.id()), Kind.DONE_TWICE, ready.id());
        expect(state.access(ready), Kind.NO_ACCESS, ready.id());
        expect(state.done.containsAll(ready.needs()), Kind.NEED_NOT_DONE, ready.id());
        expect(state.holds(ready.effect().hold()), Kind.HOLD_BROKEN, ready.id());
        order(ready.id(), ready.effect().engineState(), ready.kind() == ReadyKind.DRAIN);
        List<String> between =
                ready.joint().map(id -> engine.joint(id).between()).orElse(List.of());
        place(operation, ready.zone(), between, ready.tools());
        boolean said = operation.cautions().containsAll(ready.effect().cautions());
        expect(said, Kind.MISSING_CAUTION, ready.effect().cautions().toString());
        state.done.add(ready.id());
    }

    /** Written pairs, and warm before cold and before drains (a warm drain is no reason against another one). */
    private void order(String id, Joint.EngineState engineState, boolean drain) {
        Set<String> before = new LinkedHashSet<>(planned());
        before.removeAll(ahead());
        for (Precedence pair : engine.rules().precedences()) {
            boolean broken = pair.first().equals(id) && before.contains(pair.then());
            expect(!broken, Kind.BEFORE_BROKEN, pair.first() + " comes after " + pair.then());
        }
        if (engineState == Joint.EngineState.WARM) {
            for (String earlier : before) {
                Joint.EngineState other = engineState(earlier);
                boolean drained = engine.findReady(earlier)
                        .filter(ready -> ready.kind() == ReadyKind.DRAIN)
                        .isPresent();
                boolean broken = other == Joint.EngineState.COLD || (drained && !drain);
                expect(!broken, Kind.ENGINE_STATE, "warm " + id + " comes after " + earlier);
            }
        }
    }

    private Joint.EngineState engineState(String id) {
        Optional<Joint> joint = engine.findJoint(id);
        if (joint.isPresent()) {
            return joint.get().freedom().engineState();
        }
        return engine.findReady(id).map(ready -> ready.effect().engineState()).orElse(Joint.EngineState.ANY);
    }

    private List<String> planned() {
        return plan.operations().stream().map(StripPlan.Operation::id).toList();
    }

    private List<String> ahead() {
        return planned().subList(step - 1, planned().size());
    }

    private void place(StripPlan.Operation operation, String ownZone, List<String> between, List<String> tools) {
        boolean onBench = !between.isEmpty() && state.moved.containsAll(between);
        String right = onBench ? Zone.BENCH : ownZone;
        StripPlan.Place place = operation.place();
        expect(place.zone().equals(right), Kind.WRONG_ZONE, place.zone() + " should be " + right);
        Set<String> told = new LinkedHashSet<>(place.tools());
        expect(told.equals(new LinkedHashSet<>(tools)), Kind.WRONG_TOOLS, told + " should be " + tools);
        expect(place.fromZone().equals(zone), Kind.WRONG_FROM_ZONE, place.fromZone() + " should be " + zone);
        Set<String> taken = new LinkedHashSet<>(tools);
        taken.removeAll(new LinkedHashSet<>(hand));
        long changeover =
                Travel.between(engine, zone, right) + engine.workplace().toolChangeSeconds() * taken.size();
        String text = place.changeoverSeconds() + " should be " + changeover;
        expect(place.changeoverSeconds() == changeover, Kind.WRONG_CHANGEOVER, text);
        if (!zone.equals(right)) {
            List<String> arriving = engine.zone(right).cautions();
            expect(operation.cautions().containsAll(arriving), Kind.MISSING_CAUTION, arriving.toString());
        }
        zone = right;
        hand = tools;
    }

    private void cautions(StripPlan.Operation operation, Joint joint) {
        Set<String> right = new LinkedHashSet<>(joint.work().cautions());
        for (String circuit : joint.freedom().opens()) {
            right.addAll(engine.circuit(circuit).hazards());
        }
        expect(operation.cautions().containsAll(right), Kind.MISSING_CAUTION, right.toString());
    }

    private void lift(StripPlan.Operation operation) {
        Set<String> set = new LinkedHashSet<>(operation.pieces());
        StripPlan.Lift lift = operation.lift();
        expect(state.wholePieces(set), Kind.NOT_WHOLE_PIECES, set.toString());
        double mass = state.mass(set);
        double limit = request.means().ways().stream()
                .mapToDouble(LiftingWay::limitKilograms)
                .max()
                .orElse(0);
        expect(mass <= limit, Kind.TOO_HEAVY, mass + " kg with " + limit + " kg");
        List<String> conditions = state.badLiftConditions(set);
        expect(conditions.isEmpty(), Kind.LIFT_CONDITION, conditions.toString());
        List<String> hangers = state.badHangers(set);
        expect(hangers.isEmpty(), Kind.WOULD_HANG, hangers.toString());
        if (lift == null) {
            refuse(Kind.WRONG_LIFT_DATA, "a lift must say how");
        } else {
            liftData(operation, lift, set, mass);
        }
        StripPlan.Place place = operation.place();
        expect(place.zone().equals(zone), Kind.WRONG_ZONE, place.zone() + " should be " + zone);
        expect(place.fromZone().equals(zone), Kind.WRONG_FROM_ZONE, place.fromZone() + " should be " + zone);
        expect(place.changeoverSeconds() == 0, Kind.WRONG_CHANGEOVER, "a lift has none");
        state.moved.addAll(set);
    }

    private void liftData(StripPlan.Operation operation, StripPlan.Lift lift, Set<String> set, double mass) {
        expect(Math.abs(lift.massKilograms() - mass) < 1e-9, Kind.WRONG_LIFT_DATA, "mass " + lift.massKilograms());
        boolean able = request.means().ways().stream()
                .anyMatch(way -> way.name().equals(lift.way())
                        && way.limitKilograms() >= mass
                        && way.seconds() == operation.seconds());
        expect(able, Kind.WRONG_LIFT_DATA, lift.way() + " in " + operation.seconds() + " s for " + mass + " kg");
        boolean anyOff = set.stream().anyMatch(state::off);
        boolean allOff = set.stream().allMatch(state::off);
        expect(lift.aside() ? !allOff : anyOff, Kind.WRONG_LIFT_DATA, "aside is " + lift.aside());
        List<String> hangers = state.hangers(set).stream().map(Joint::id).toList();
        boolean told = lift.hangsOn().containsAll(hangers);
        expect(told, Kind.WRONG_LIFT_DATA, "hangs on " + lift.hangsOn() + " should have " + hangers);
    }

    private void stateAfter(StripPlan.Operation operation) {
        List<String> off = new ArrayList<>();
        List<String> aside = new ArrayList<>();
        for (Part part : engine.parts()) {
            if (state.moved.contains(part.id())) {
                (state.off(part.id()) ? off : aside).add(part.id());
            }
        }
        expect(
                operation.after().off().equals(off),
                Kind.WRONG_STATE_AFTER,
                operation.after() + " off should be " + off);
        boolean right = operation.after().aside().equals(aside);
        expect(right, Kind.WRONG_STATE_AFTER, operation.after() + " aside should be " + aside);
    }
}
