package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.BuildPlan.Account;
import gudgeon.core.planning.BuildPlan.AccountKind;
import gudgeon.core.planning.BuildPlan.Input;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.LackKind;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildPlan.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Walks a way back step by step and says which rule of docs/build.md it breaks where. Written from that page; it shares no
 * code with the planner.
 */
public final class BuildReplay {
    /** The rules. */
    public enum Rule {
        MASS,
        LIFT,
        HANGS,
        PARTS_LEFT_OVER,
        JOINT_LEFT_OPEN,
        MEETS,
        ROOM,
        NEEDS,
        HOLD,
        STAGES,
        FASTENERS,
        THREAD_STATE,
        LOOSE,
        SEALANT,
        OPEN_TIME,
        CURE,
        MARK,
        CHECK,
        GATE,
        FILL,
        TAKEN_BACK_EARLY,
        LEFT_IN,
        ELECTRIC_LAST,
        INPUT,
        ACCOUNT,
        CLOCK,
        DEPENDS,
        UNKNOWN_STEP
    }

    /** One broken rule. */
    public record Fault(Rule rule, String step, String text) {}

    /** What was so when a joint was undone or a ready operation done; {@code ready} is what had been done by then. */
    private record Undone(
            Set<String> away,
            Set<String> ready,
            Set<Condition.Clause> dropped,
            Set<String> droppedNeeds,
            List<List<String>> holds) {}

    private final Engine engine;
    private final BuildRequest request;
    private final BuildPlan plan;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, Undone> history = new LinkedHashMap<>();
    private final Set<String> cut = new HashSet<>();
    private final List<Set<String>> lifts = new ArrayList<>();
    private final Map<Set<String>, Set<String>> readyAtLift = new HashMap<>();
    private final Set<String> droppedLifts = new HashSet<>();
    private final Set<String> droppedHangs = new HashSet<>();
    private final BuildWorld world;
    private final Set<String> tolerated;
    private final Map<String, Integer> index = new HashMap<>();
    private final Map<String, Set<String>> ancestors = new HashMap<>();

    private BuildReplay(Engine engine, BuildRequest request, BuildPlan plan) {
        this.engine = engine;
        this.request = request;
        this.plan = plan;
        world = new BuildWorld(engine);
        request.steps().forEach(this::strip);
        tolerated = world.loose();
        for (int i = 0; i < plan.operations().size(); i++) {
            index.put(plan.operations().get(i).id(), i);
        }
    }

    /** Every rule that a plan breaks; empty when it keeps them all. */
    public static List<Fault> faults(Engine engine, BuildRequest request, BuildPlan plan) {
        BuildReplay replay = new BuildReplay(engine, request, plan);
        replay.walk();
        return replay.faults;
    }

    private void strip(BuildRequest.Step step) {
        if (step.kind() == StripPlan.Kind.LIFT) {
            stripLift(step);
            return;
        }
        if (history.containsKey(step.id())) {
            return;
        }
        Optional<Joint> joint = engine.findJoint(step.id());
        Set<Condition.Clause> dropped = new HashSet<>();
        Set<String> droppedNeeds = new HashSet<>();
        List<List<String>> holds;
        if (joint.isPresent()) {
            Joint.Freedom freedom = joint.get().freedom();
            drop(freedom.access(), joint.get().between(), dropped);
            droppedNeeds.addAll(freedom.needs());
            freedom.opens().forEach(id -> droppedNeeds.addAll(engine.circuit(id).makeSafe()));
            holds = freedom.hold().alternatives();
            if (step.kind() == StripPlan.Kind.CUT) {
                cut.add(step.id());
            }
        } else {
            Ready ready = engine.ready(step.id());
            List<String> judge =
                    ready.joint().map(id -> engine.joint(id).between()).orElse(null);
            for (Condition.Clause clause : ready.access().clauses()) {
                if (!world.clauseHolds(clause, judge)) {
                    dropped.add(clause);
                }
            }
            droppedNeeds.addAll(ready.needs());
            holds = ready.effect().hold().alternatives();
        }
        droppedNeeds.removeAll(world.ready);
        List<List<String>> held = holds.stream()
                .filter(a -> a.stream().noneMatch(world.open::contains))
                .toList();
        history.put(
                step.id(),
                new Undone(new HashSet<>(world.away), new HashSet<>(world.ready), dropped, droppedNeeds, held));
        (joint.isPresent() ? world.open : world.ready).add(step.id());
    }

    private void drop(Condition condition, List<String> judge, Set<Condition.Clause> dropped) {
        condition.clauses().stream()
                .filter(clause -> !world.clauseHolds(clause, judge))
                .forEach(dropped::add);
    }

    private void stripLift(BuildRequest.Step step) {
        Set<String> set = new LinkedHashSet<>();
        for (String part : step.parts()) {
            Set<String> piece = world.piece(part);
            if (!piece.contains(engine.workplace().base()) && !world.away.contains(part)) {
                set.addAll(piece);
            }
        }
        if (set.isEmpty()) {
            return;
        }
        for (String part : set) {
            int number = 0;
            for (Condition.Clause clause : engine.part(part).lift().clauses()) {
                if (!world.liftClause(clause, set)) {
                    droppedLifts.add(part + "#" + number);
                }
                number++;
            }
        }
        engine.joints().stream()
                .filter(joint -> !world.carries(joint, set))
                .forEach(joint -> droppedHangs.add(lifts.size() + "#" + joint.id()));
        lifts.add(set);
        readyAtLift.put(set, new HashSet<>(world.ready));
        world.away.addAll(set);
    }

    private void fault(Rule rule, Operation step, String text) {
        Set<LackKind> excuses = switch (rule) {
            case MASS -> Set.of(LackKind.TOO_HEAVY);
            case ROOM -> Set.of(LackKind.NO_ROOM, LackKind.ORDER);
            case MARK, CHECK, GATE -> Set.of(LackKind.ORDER);
            case LOOSE -> Set.of(LackKind.LOOSE);
            case OPEN_TIME -> Set.of(LackKind.OPEN_TIME);
            default -> Set.of();
        };
        if (step.holdUp().blockedBy().stream().noneMatch(lack -> excuses.contains(lack.kind()))) {
            faults.add(new Fault(rule, step.id(), text));
        }
    }

    private void lacks(Operation step, LackKind kind, boolean lacking, Rule rule) {
        boolean said = step.holdUp().blockedBy().stream().anyMatch(lack -> lack.kind() == kind);
        if (said != lacking) {
            faults.add(new Fault(rule, step.id(), lacking ? "does not say that it lacks " + kind : "lacks no " + kind));
        }
    }

    private void walk() {
        dependencies();
        long clock = 0;
        String zone = engine.workplace().startZone();
        List<String> tools = List.of();
        long changeover = 0;
        long waited = 0;
        long worked = 0;
        for (Operation step : plan.operations()) {
            boolean moves = !Set.of(Kind.PLACE, Kind.SEAL, Kind.WAIT).contains(step.kind());
            long cost = moves ? changeover(zone, tools, step) : 0;
            if (step.place().changeoverSeconds() != cost
                    || step.clock().startSeconds() != clock + cost
                    || (moves && !step.place().fromZone().equals(zone))) {
                fault(Rule.CLOCK, step, "changeover or start is wrong");
            }
            clock = step.clock().startSeconds() + step.clock().seconds();
            changeover += cost;
            if (step.kind() == Kind.WAIT) {
                waited += step.clock().seconds();
            } else {
                worked += step.clock().seconds();
            }
            if (moves) {
                zone = step.place().zone();
                tools = step.place().tools();
            }
            perform(step);
        }
        changeover += travel(zone, engine.workplace().startZone());
        BuildPlan.Totals totals = plan.totals();
        if (totals.changeoverSeconds() != changeover
                || totals.waitSeconds() != waited
                || totals.workSeconds() != worked
                || totals.changeoverLowerBoundSeconds() > changeover) {
            faults.add(new Fault(Rule.CLOCK, "", "the totals are wrong"));
        }
        leftOver();
        stages();
        sealants();
        marks();
        checks();
        fills();
        takenBack();
        electricLast();
        inputs();
        accounts();
    }

    private long travel(String from, String to) {
        return from.equals(to)
                ? 0
                : engine.zone(from).backSeconds() + engine.zone(to).goSeconds();
    }

    private long changeover(String zone, List<String> tools, Operation step) {
        long taken = step.place().tools().stream()
                .distinct()
                .filter(tool -> !tools.contains(tool))
                .count();
        return travel(zone, step.place().zone()) + taken * engine.workplace().toolChangeSeconds();
    }

    private void dependencies() {
        Set<String> blocked = new LinkedHashSet<>();
        Set<String> seen = new HashSet<>();
        int number = 0;
        for (Operation step : plan.operations()) {
            number++;
            if (!seen.add(step.id()) || step.number() != number) {
                fault(Rule.UNKNOWN_STEP, step, "its number or id is wrong");
            }
            Set<String> all = new LinkedHashSet<>();
            for (String before : step.order().after()) {
                if (!ancestors.containsKey(before)) {
                    fault(Rule.DEPENDS, step, "it comes before " + before);
                    continue;
                }
                all.add(before);
                all.addAll(ancestors.get(before));
            }
            ancestors.put(step.id(), all);
            Set<String> waits = new LinkedHashSet<>(blocked);
            waits.retainAll(all);
            if (!waits.equals(new LinkedHashSet<>(step.holdUp().waitsFor()))) {
                fault(Rule.DEPENDS, step, "it does not say what it waits for");
            }
            if (!step.holdUp().blockedBy().isEmpty()) {
                blocked.add(step.id());
            }
        }
    }

    private void perform(Operation step) {
        Set<String> looseBefore = looseNow();
        if (!looseBefore.isEmpty() && !holdsStill(step, looseBefore)) {
            fault(Rule.LOOSE, step, "loose meanwhile: " + looseBefore);
        }
        switch (step.kind()) {
            case PLACE -> place(step);
            case SNUG -> snug(step);
            case TIGHTEN, STAGE, ANGLE -> turn(step);
            case RESTORE -> restore(step);
            case SEAL, FILL, BLEED, CHECK, WAIT -> {}
        }
        if (step.holdUp().blockedBy().stream()
                .anyMatch(lack -> lack.kind() == LackKind.LOOSE || lack.kind() == LackKind.OPEN_TIME)) {
            tolerated.addAll(world.loose());
        }
    }

    private Set<String> looseNow() {
        Set<String> loose = world.loose();
        loose.removeAll(tolerated);
        return loose;
    }

    private boolean holdsStill(Operation step, Set<String> loose) {
        return switch (step.kind()) {
            case PLACE, SEAL, WAIT -> true;
            case SNUG -> step.subject().parts().stream().anyMatch(loose::contains);
            case TIGHTEN, STAGE, ANGLE, RESTORE, FILL, BLEED, CHECK -> false;
        };
    }

    private void place(Operation step) {
        Set<String> set = new LinkedHashSet<>(step.subject().parts());
        int lift = lifts.indexOf(set);
        if (lift < 0 || !world.away.containsAll(set)) {
            fault(Rule.LIFT, step, "it is no lift of the strip, or is in place already");
            return;
        }
        if (!world.isWhole(set)) {
            fault(Rule.LIFT, step, "it is not whole");
        }
        world.away.removeAll(set);
        for (String part : set) {
            int number = 0;
            for (Condition.Clause clause : engine.part(part).lift().clauses()) {
                if (!world.liftClause(clause, set) && !droppedLifts.contains(part + "#" + number)) {
                    fault(Rule.LIFT, step, "it could not be lifted again: " + part);
                }
                number++;
            }
        }
        for (Joint joint : engine.joints()) {
            if (!world.carries(joint, set) && !droppedHangs.contains(lift + "#" + joint.id())) {
                fault(Rule.HANGS, step, "it would hang on " + joint.id());
            }
        }
        BuildPlan.Handling handling = step.handling();
        Optional<LiftingWay> way = handling == null
                ? Optional.empty()
                : request.ways().stream()
                        .filter(w -> w.name().equals(handling.way()))
                        .findFirst();
        if (handling == null || way.isEmpty() || !world.liftedBy(set, way.get())) {
            fault(Rule.MASS, step, "no way of lifting carries " + world.mass(set) + " kg");
        } else if (Math.abs(handling.massKilograms() - world.mass(set)) > 1e-5) {
            fault(Rule.MASS, step, "its mass is " + world.mass(set));
        }
        lacks(step, LackKind.TOO_HEAVY, request.ways().stream().noneMatch(w -> world.liftedBy(set, w)), Rule.MASS);
    }

    private Optional<Ready> cracking(Joint joint) {
        return engine.ready().stream()
                .filter(ready -> ready.kind() == ReadyKind.CRACK_LOOSE
                        && ready.joint().equals(Optional.of(joint.id()))
                        && history.containsKey(ready.id()))
                .findFirst();
    }

    private void snug(Operation step) {
        Joint joint = engine.joint(step.subject().ref());
        if (!world.open.remove(joint.id())) {
            fault(Rule.STAGES, step, "it is put together twice, or was not undone");
            return;
        }
        Undone undone = Optional.ofNullable(history.get(joint.id())).orElseThrow();
        meets(step, joint, undone);
        room(step, joint.freedom().access(), joint, undone);
        standing(step, joint, undone, undone.ready());
        if (joint.makeup().stages().isEmpty() && cracking(joint).isEmpty()) {
            buildRoom(step, joint);
        }
        fasteners(step, joint);
    }

    private void turn(Operation step) {
        Joint joint = engine.joint(step.subject().ref());
        if (world.open.contains(joint.id())) {
            fault(Rule.STAGES, step, "it is not put together");
        }
        Undone undone = Optional.ofNullable(history.get(joint.id())).orElseThrow();
        Optional<Ready> cracking = cracking(joint);
        Undone then = cracking.map(ready -> history.get(ready.id())).orElse(undone);
        meets(step, joint, then);
        room(step, cracking.map(Ready::access).orElse(joint.freedom().access()), joint, then);
        standing(step, joint, undone, then.ready());
        cracking.ifPresent(ready -> {
            Set<String> needed = new LinkedHashSet<>(ready.needs());
            needed.removeAll(then.droppedNeeds());
            if (!world.ready.containsAll(stillThere(needed))) {
                fault(Rule.NEEDS, step, "its cracking needs " + needed);
            }
            held(step, then);
        });
        held(step, undone);
        buildRoom(step, joint);
        fasteners(step, joint);
        if (step.kind() != Kind.TIGHTEN) {
            boolean unknown = step.tightening() == null
                    || joint.makeup()
                            .stages()
                            .get(step.tightening().stage() - 1)
                            .threadState()
                            .isEmpty();
            lacks(step, LackKind.THREAD_STATE, unknown, Rule.THREAD_STATE);
        }
    }

    private void meets(Operation step, Joint joint, Undone then) {
        for (String part : joint.between()) {
            if (world.away.contains(part) != then.away().contains(part)) {
                fault(
                        Rule.MEETS,
                        step,
                        part + (world.away.contains(part) ? " is not in place" : " is in place already"));
            }
        }
    }

    private void room(Operation step, Condition access, Joint joint, Undone then) {
        for (Condition.Clause clause : access.clauses()) {
            if (!then.dropped().contains(clause) && !world.clauseHolds(clause, joint.between())) {
                fault(Rule.ROOM, step, "no access: " + clause);
            }
        }
    }

    private void buildRoom(Operation step, Joint joint) {
        if (!world.holds(joint.freedom().accessBuild(), joint.between())) {
            fault(Rule.ROOM, step, "no room to tighten: " + joint.freedom().accessBuild());
        }
    }

    /** What a joint needs as long as it is not tight, of what had been done when it was undone or cracked. */
    private void standing(Operation step, Joint joint, Undone undone, Set<String> done) {
        Set<String> needed = new LinkedHashSet<>(joint.freedom().needs());
        joint.freedom().opens().stream()
                .filter(id -> !joint.freedom().drains().contains(id))
                .forEach(id -> needed.addAll(engine.circuit(id).makeSafe()));
        needed.removeAll(undone.droppedNeeds());
        needed.retainAll(done);
        if (!world.ready.containsAll(stillThere(needed))) {
            fault(Rule.NEEDS, step, "it needs " + needed);
        }
    }

    private Set<String> stillThere(Set<String> needed) {
        Set<String> result = new LinkedHashSet<>(needed);
        result.retainAll(history.keySet());
        return result;
    }

    private void held(Operation step, Undone then) {
        if (!then.holds().isEmpty()
                && then.holds().stream().noneMatch(joints -> joints.stream().noneMatch(world.open::contains))) {
            fault(Rule.HOLD, step, "nothing holds it: " + then.holds());
        }
    }

    private void fasteners(Operation step, Joint joint) {
        List<String> order =
                joint.makeup().fasteners().stream().map(Fastener::id).toList();
        List<Integer> pattern = joint.makeup().pattern();
        if (!pattern.isEmpty()) {
            List<String> all = order;
            order = pattern.stream().map(position -> all.get(position - 1)).toList();
        }
        BuildPlan.Tightening tightening = step.tightening();
        if (tightening == null || !tightening.fasteners().equals(order)) {
            fault(Rule.FASTENERS, step, "the fasteners are not " + order);
            return;
        }
        if (tightening.stage() > 0) {
            Makeup.Stage stage = joint.makeup().stages().get(tightening.stage() - 1);
            if (!Optional.ofNullable(tightening.torque()).equals(stage.torque())
                    || !Optional.ofNullable(tightening.angle()).equals(stage.angle())
                    || !tightening.threadState().equals(stage.threadState())) {
                fault(Rule.STAGES, step, "it is not stage " + tightening.stage());
            }
        }
    }

    private void restore(Operation step) {
        Ready ready = engine.ready(step.subject().ref());
        if (!world.ready.remove(ready.id())) {
            fault(Rule.TAKEN_BACK_EARLY, step, "it was not there");
            return;
        }
        Undone then = Optional.ofNullable(history.get(ready.id())).orElseThrow();
        for (Condition.Clause clause : ready.access().clauses()) {
            if (!then.dropped().contains(clause) && !world.clauseHolds(clause, null)) {
                fault(Rule.ROOM, step, "no access: " + clause);
            }
        }
        Set<String> needed = new LinkedHashSet<>(ready.needs());
        needed.removeAll(then.droppedNeeds());
        if (!world.ready.containsAll(stillThere(needed))) {
            fault(Rule.NEEDS, step, "it needs " + needed);
        }
        for (Joint joint : engine.joints()) {
            boolean strapped = joint.hang().flatMap(Joint.Hang::strap).equals(Optional.of(ready.id()));
            if (strapped
                    && !world.open.contains(joint.id())
                    && joint.between().stream().anyMatch(world.away::contains)
                    && joint.between().stream().anyMatch(part -> !world.away.contains(part))
                    && hangsToo(joint)) {
                fault(Rule.TAKEN_BACK_EARLY, step, "something hangs on " + joint.id());
            }
        }
        if (ready.kind() == ReadyKind.SUPPORT) {
            BuildWorld strict = world.copy();
            for (String id : history.keySet()) {
                if (engine.findJoint(id).isPresent() && !isTight(id, step)) {
                    strict.open.add(id);
                }
            }
            Set<String> loose = strict.loose();
            loose.removeAll(tolerated);
            if (!loose.isEmpty()) {
                fault(Rule.LOOSE, step, "loose without it: " + loose);
            }
        }
    }

    /** Whether what is away on a flexible joint is more than it holds by itself. */
    private boolean hangsToo(Joint joint) {
        String strap = joint.hang().flatMap(Joint.Hang::strap).orElse("");
        return lifts.stream()
                .filter(set -> set.stream().anyMatch(world.away::contains))
                .filter(set -> Optional.ofNullable(readyAtLift.get(set))
                        .orElse(Set.of())
                        .contains(strap))
                .filter(set -> joint.between().stream().anyMatch(set::contains))
                .anyMatch(set -> world.mass(set) > joint.hang().orElseThrow().holdsKilograms() + 1e-9);
    }

    private boolean isTight(String joint, Operation now) {
        return last(joint).map(this::at).orElse(Integer.MAX_VALUE) < at(now);
    }

    private int at(Operation step) {
        return index.getOrDefault(step.id(), Integer.MAX_VALUE);
    }

    private Optional<Operation> find(String id) {
        return Optional.ofNullable(index.get(id)).map(plan.operations()::get);
    }

    /** The step that makes a joint tight. */
    private Optional<Operation> last(String id) {
        Joint joint = engine.joint(id);
        if (!joint.makeup().stages().isEmpty()) {
            return find(id + "/" + joint.makeup().stages().size());
        }
        return find(id + (cracking(joint).isPresent() ? "/tight" : "/snug"));
    }

    private void leftOver() {
        if (!world.away.isEmpty()) {
            faults.add(new Fault(Rule.PARTS_LEFT_OVER, "", "left over: " + world.away));
        }
        if (!world.open.isEmpty()) {
            faults.add(new Fault(Rule.JOINT_LEFT_OPEN, "", "left open: " + world.open));
        }
        for (String id : world.ready) {
            Ready ready = engine.ready(id);
            boolean takenBack = Set.of(ReadyKind.SUPPORT, ReadyKind.STRAP, ReadyKind.PIN, ReadyKind.HOLDING_TOOL)
                            .contains(ready.kind())
                    || (Set.of(ReadyKind.MAKE_SAFE, ReadyKind.RECORD).contains(ready.kind())
                            && !ready.effect().restore().isEmpty());
            if (takenBack) {
                faults.add(new Fault(Rule.LEFT_IN, id, "it is still in"));
            }
        }
    }

    private Stream<Joint> undone() {
        return engine.joints().stream().filter(joint -> history.containsKey(joint.id()));
    }

    private void stages() {
        undone().forEach(joint -> {
            List<Operation> turned = plan.operations().stream()
                    .filter(step -> Set.of(Kind.SNUG, Kind.TIGHTEN, Kind.STAGE, Kind.ANGLE)
                            .contains(step.kind()))
                    .filter(step -> step.subject().ref().equals(joint.id()))
                    .toList();
            List<String> ids = new ArrayList<>(List.of(joint.id() + "/snug"));
            for (int s = 1; s <= joint.makeup().stages().size(); s++) {
                ids.add(joint.id() + "/" + s);
            }
            if (joint.makeup().stages().isEmpty() && cracking(joint).isPresent()) {
                ids.add(joint.id() + "/tight");
            }
            if (!turned.stream().map(Operation::id).toList().equals(ids)) {
                faults.add(new Fault(Rule.STAGES, joint.id(), "its steps are not " + ids));
            }
            long whole =
                    turned.stream().mapToLong(step -> step.clock().seconds()).sum();
            if (whole != joint.work().buildSeconds()) {
                faults.add(new Fault(Rule.CLOCK, joint.id(), "its steps take " + whole));
            }
            for (Operation step : turned) {
                boolean bench = joint.between().stream().allMatch(part -> awayAt(part, step));
                String zone = bench ? Zone.BENCH : joint.work().zone();
                if (!step.place().zone().equals(zone)
                        || !step.place().tools().equals(joint.work().tools())) {
                    fault(Rule.CLOCK, step, "its zone is " + zone);
                }
                boolean licensed = joint.freedom().licensed();
                if (licensed) {
                    lacks(
                            step,
                            LackKind.LICENSED,
                            step == turned.getFirst()
                                    || step == turned.getLast()
                                    || step.holdUp().blockedBy().stream().anyMatch(l -> l.kind() == LackKind.LICENSED),
                            Rule.INPUT);
                }
            }
        });
    }

    private boolean awayAt(String part, Operation step) {
        return lifts.stream().anyMatch(set -> set.contains(part))
                && placing(part).map(this::at).orElse(0) > at(step);
    }

    private Optional<Operation> placing(String part) {
        return plan.operations().stream()
                .filter(step ->
                        step.kind() == Kind.PLACE && step.subject().parts().contains(part))
                .findFirst();
    }

    /** The placing that closes a joint. */
    private Optional<Operation> closing(Joint joint) {
        Set<String> awayThen =
                Optional.ofNullable(history.get(joint.id())).orElseThrow().away();
        for (Set<String> set : lifts) {
            if (joint.between().stream().anyMatch(part -> set.contains(part) && !awayThen.contains(part))) {
                return placing(set.iterator().next());
            }
        }
        return Optional.empty();
    }

    private boolean onThread(Joint joint) {
        return !joint.makeup().stages().isEmpty()
                && joint.makeup().stages().stream()
                        .allMatch(stage -> Set.of("locked", "sealed").contains(stage.threadState()));
    }

    private void sealants() {
        undone().filter(joint -> joint.makeup().sealant().isPresent()).forEach(joint -> {
            Makeup.Sealant sealant = joint.makeup().sealant().orElseThrow();
            Optional<Operation> seal = find(joint.id() + "/seal");
            Optional<Operation> snug = find(joint.id() + "/snug");
            if (seal.isEmpty() || snug.isEmpty() || at(seal.get()) > at(snug.get())) {
                faults.add(new Fault(Rule.SEALANT, joint.id(), "no sealant goes on before it is put together"));
                return;
            }
            long open = snug.get().clock().startSeconds() - seal.get().clock().endSeconds();
            if (sealant.openSeconds() > 0 && open > sealant.openSeconds()) {
                fault(Rule.OPEN_TIME, snug.get(), "the sealant is open for " + open + " s");
            }
            Optional<Operation> closing = closing(joint);
            for (String part : joint.between()) {
                Optional<Operation> placing = awayThen(joint, part) ? Optional.empty() : placing(part);
                if (placing.isEmpty()) {
                    continue;
                }
                boolean after = onThread(joint) || !placing.equals(closing);
                if (after != at(placing.get()) < at(seal.get())) {
                    fault(Rule.SEALANT, seal.get(), "it goes on at the wrong time for placing " + part);
                }
            }
            cure(joint, sealant);
        });
    }

    private boolean awayThen(Joint joint, String part) {
        return Optional.ofNullable(history.get(joint.id())).orElseThrow().away().contains(part);
    }

    private void cure(Joint joint, Makeup.Sealant sealant) {
        Optional<Operation> tight = last(joint.id());
        if (tight.isEmpty()) {
            faults.add(new Fault(Rule.STAGES, joint.id(), "it is never tight"));
            return;
        }
        Operation last = tight.get();
        for (Operation step : plan.operations()) {
            boolean fills = step.kind() == Kind.FILL
                    && joint.freedom().opens().contains(step.subject().ref());
            boolean primes = step.kind() == Kind.CHECK
                    && check(step.subject().ref()).kind().equals("prime")
                    && Optional.ofNullable(ancestors.get(step.id()))
                            .orElse(Set.of())
                            .contains(last.id());
            if ((fills || primes) && step.clock().startSeconds() - last.clock().endSeconds() < sealant.cureSeconds()) {
                fault(Rule.CURE, step, "the sealant of " + joint.id() + " has not cured");
            }
        }
        long end = plan.totals().totalSeconds();
        long left = last.clock().endSeconds() + sealant.cureSeconds() - end;
        boolean listed = plan.cures().contains(new BuildPlan.Cure(joint.id(), left));
        if (listed != left > 0) {
            faults.add(new Fault(Rule.CURE, joint.id(), "at the end it cures for another " + left + " s"));
        }
    }

    private Check check(String id) {
        return engine.rules().checks().stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The step that reaches a mark; empty when it is reached from the start. */
    private Optional<Operation> reached(String mark) {
        if (engine.rules().checks().stream().anyMatch(check -> check.id().equals(mark))) {
            return find("check/" + mark);
        }
        String id = mark.split("/", 2)[0];
        if (engine.findJoint(id).isEmpty()) {
            return find(id + "/back")
                    .or(() -> engine.circuits().stream()
                            .filter(circuit -> circuit.drains().contains(id))
                            .flatMap(circuit ->
                                    find("bleed/" + circuit.id()).or(() -> find("fill/" + circuit.id())).stream())
                            .findFirst());
        }
        if (!history.containsKey(id)) {
            return Optional.empty();
        }
        return mark.contains("/") ? find(mark) : last(id);
    }

    private void marks() {
        undone().forEach(joint -> {
            for (String mark : joint.makeup().after()) {
                reached(mark).ifPresent(step -> beforeStart(step, joint, Rule.MARK, mark));
            }
            for (int s = 0; s < joint.makeup().stages().size(); s++) {
                Optional<Operation> stage = find(joint.id() + "/" + (s + 1));
                for (String mark : joint.makeup().stages().get(s).after()) {
                    reached(mark).ifPresent(step -> stage.ifPresent(then -> ordered(step, then, Rule.MARK, mark)));
                }
            }
        });
    }

    private void ordered(Operation first, Operation then, Rule rule, String mark) {
        if (at(first) > at(then)) {
            fault(rule, then, "it comes before " + mark);
        }
    }

    private void beforeStart(Operation step, Joint joint, Rule rule, String mark) {
        find(joint.id() + "/snug").ifPresent(snug -> ordered(step, snug, rule, mark));
        boolean excused = find(joint.id() + "/snug").stream()
                .flatMap(snug -> snug.holdUp().blockedBy().stream())
                .anyMatch(lack -> lack.kind() == LackKind.ORDER);
        Stream.concat(closing(joint).stream(), find(joint.id() + "/seal").stream())
                .filter(start -> !excused)
                .filter(start -> !Optional.ofNullable(ancestors.get(step.id()))
                        .orElse(Set.of())
                        .contains(start.id()))
                .forEach(start -> ordered(step, start, rule, mark));
    }

    private void checks() {
        for (Check check : engine.rules().checks()) {
            boolean due = check.when().isEmpty() || check.when().stream().anyMatch(history::containsKey);
            Optional<Operation> done = find("check/" + check.id());
            if (due != done.isPresent()) {
                faults.add(new Fault(Rule.CHECK, check.id(), due ? "it is due" : "it is not due"));
            }
            if (done.isEmpty()) {
                continue;
            }
            Operation step = done.get();
            for (String mark : check.after()) {
                reached(mark).ifPresent(first -> {
                    ordered(first, step, Rule.CHECK, mark);
                    if (step.clock().startSeconds() - first.clock().endSeconds() < check.minLagSeconds()) {
                        fault(Rule.CHECK, step, "it comes too soon after " + mark);
                    }
                });
            }
            for (String mark : check.before()) {
                Rule rule = check.gate() ? Rule.GATE : Rule.CHECK;
                String id = mark.replace("/snug", "");
                if (engine.findJoint(id).isPresent()) {
                    if (history.containsKey(id)) {
                        beforeStart(step, engine.joint(id), rule, check.id());
                    }
                } else {
                    reached(mark).ifPresent(then -> ordered(step, then, rule, check.id()));
                }
            }
            if (step.order().gate() != check.gate()) {
                fault(Rule.GATE, step, "whether it is a gate is wrong");
            }
            lacks(step, LackKind.LIMIT_NOT_CONFIRMED, check.gate() && unconfirmed(check), Rule.GATE);
        }
    }

    private boolean unconfirmed(Check check) {
        return engine.features().stream()
                .filter(feature -> feature.id().matches(java.util.regex.Pattern.quote(check.id()) + "(-[0-9]+)?"))
                .filter(feature -> !request.confirmed().contains(feature.id()))
                .anyMatch(feature -> feature.limits().stream().anyMatch(Feature.Limit::typical));
    }

    private void fills() {
        for (Circuit circuit : engine.circuits()) {
            List<Joint> opened = undone().filter(
                            joint -> joint.freedom().opens().contains(circuit.id()))
                    .toList();
            boolean due = !circuit.fluid().isEmpty()
                    && (!opened.isEmpty() || circuit.drains().stream().anyMatch(history::containsKey));
            Optional<Operation> fill = find("fill/" + circuit.id());
            Optional<Operation> bleed = find("bleed/" + circuit.id());
            if (due != fill.isPresent() || (due && !circuit.bleed().isEmpty()) != bleed.isPresent()) {
                faults.add(new Fault(Rule.FILL, circuit.id(), due ? "it is to be filled" : "it is not to be filled"));
            }
            fill.ifPresent(step -> {
                for (Joint joint : opened) {
                    last(joint.id()).ifPresent(last -> {
                        if (at(last) > at(step)) {
                            fault(Rule.FILL, step, joint.id() + " is not tight");
                        }
                    });
                }
                bleed.ifPresent(then -> ordered(step, then, Rule.FILL, "filling"));
                Operation ready = bleed.orElse(step);
                plan.operations().stream()
                        .filter(prime -> prime.kind() == Kind.CHECK
                                && check(prime.subject().ref()).kind().equals("prime"))
                        .filter(prime -> !Optional.ofNullable(ancestors.get(ready.id()))
                                .orElse(Set.of())
                                .contains(prime.id()))
                        .forEach(prime -> ordered(ready, prime, Rule.FILL, "filling"));
                for (String safe : circuit.makeSafe()) {
                    find(safe + "/back")
                            .filter(back -> !Optional.ofNullable(ancestors.get(step.id()))
                                    .orElse(Set.of())
                                    .contains(back.id()))
                            .ifPresent(back -> ordered(step, back, Rule.FILL, "filling"));
                }
                Optional<Input> fluid = step.needs().inputs().stream().findFirst();
                if (fluid.isEmpty()
                        || !Optional.ofNullable(fluid.get().volume()).equals(circuit.capacity())
                        || !fluid.get().spec().equals(circuit.fluid())) {
                    fault(Rule.FILL, step, "the fluid or its volume is wrong");
                }
            });
        }
    }

    private void takenBack() {
        for (Ready ready : engine.ready()) {
            Optional<Operation> back = find(ready.id() + "/back");
            if (back.isEmpty()) {
                continue;
            }
            undone().filter(joint -> uses(joint, ready))
                    .forEach(joint -> last(joint.id()).ifPresent(last -> {
                        if (at(last) > at(back.get())) {
                            fault(Rule.TAKEN_BACK_EARLY, back.get(), joint.id() + " is not tight");
                        }
                    }));
        }
    }

    private boolean uses(Joint joint, Ready ready) {
        Undone then = Optional.ofNullable(history.get(joint.id())).orElseThrow();
        Set<String> since = cracking(joint)
                .map(crack -> Optional.ofNullable(history.get(crack.id()))
                        .orElseThrow()
                        .ready())
                .orElse(then.ready());
        boolean own = since.contains(ready.id())
                && then.ready().contains(ready.id())
                && (joint.freedom().needs().contains(ready.id())
                        || joint.freedom().opens().stream()
                                .filter(id -> !joint.freedom().drains().contains(id))
                                .anyMatch(id -> engine.circuit(id).makeSafe().contains(ready.id())));
        boolean cracked = cracking(joint)
                .filter(crack -> crack.needs().contains(ready.id()))
                .filter(crack -> !Optional.ofNullable(history.get(crack.id()))
                        .orElseThrow()
                        .droppedNeeds()
                        .contains(ready.id()))
                .isPresent();
        return (own && !then.droppedNeeds().contains(ready.id())) || cracked;
    }

    private void electricLast() {
        Set<String> electric = new LinkedHashSet<>();
        engine.circuits().stream()
                .filter(circuit -> circuit.kind() == CircuitKind.ELECTRIC)
                .forEach(circuit -> electric.addAll(circuit.makeSafe()));
        for (String id : electric) {
            find(id + "/back")
                    .ifPresent(back -> plan.operations().stream()
                            .filter(later -> later.kind() != Kind.WAIT && at(later) > at(back))
                            .filter(later -> !Optional.ofNullable(ancestors.get(later.id()))
                                    .orElse(Set.of())
                                    .contains(back.id()))
                            .forEach(later -> fault(Rule.ELECTRIC_LAST, back, later.id() + " could come before it")));
        }
    }

    private List<Spend> spends(Joint joint) {
        List<Spend> spends = new ArrayList<>(joint.makeup().spends());
        if (cut.contains(joint.id())) {
            joint.work().cut().ifPresent(way -> spends.addAll(way.destroys()));
        }
        return spends;
    }

    private void inputs() {
        Map<String, Integer> wanted = new HashMap<>();
        Map<String, Integer> asked = new HashMap<>();
        undone().forEach(joint -> {
            spends(joint).forEach(spend -> wanted.merge(joint.id() + " " + spend.spec(), spend.count(), Integer::sum));
            joint.makeup()
                    .sealant()
                    .ifPresent(sealant -> wanted.merge(joint.id() + " " + sealant.spec(), 1, Integer::sum));
        });
        for (Operation step : plan.operations()) {
            for (Input input : step.needs().inputs()) {
                Optional<Joint> joint = engine.findJoint(input.joint());
                joint.ifPresent(j -> asked.merge(j.id() + " " + input.spec(), input.count(), Integer::sum));
                joint.flatMap(j -> find(j.id() + "/snug")).ifPresent(snug -> {
                    if (at(step) > at(snug)) {
                        fault(Rule.INPUT, step, input.spec() + " is asked for too late");
                    }
                });
            }
            lacks(
                    step,
                    LackKind.NOT_IN_HAND,
                    step.needs().inputs().stream()
                            .anyMatch(input -> request.missing().contains(input.spec())),
                    Rule.INPUT);
        }
        if (!wanted.equals(asked)) {
            faults.add(new Fault(Rule.INPUT, "", "wanted " + wanted + ", asked " + asked));
        }
    }

    private void accounts() {
        Map<String, Integer> expected = new HashMap<>();
        undone().forEach(joint -> {
            for (Fastener fastener : joint.makeup().fasteners()) {
                Outcome outcome = cut.contains(joint.id()) || fastener.once().equals("all")
                        ? Outcome.RENEWED
                        : fastener.once().isEmpty() ? Outcome.REFITTED : Outcome.REFITTED_PART_NEW;
                expected.merge(AccountKind.FASTENER + " " + fastener.id() + " " + outcome, 1, Integer::sum);
            }
            spends(joint)
                    .forEach(spend -> expected.merge(
                            AccountKind.SPEND + " " + joint.id() + " " + Outcome.RENEWED, 1, Integer::sum));
        });
        lifts.forEach(set -> set.forEach(
                part -> expected.merge(AccountKind.PART + " " + part + " " + Outcome.PLACED, 1, Integer::sum)));
        for (Ready ready : engine.ready()) {
            if (!history.containsKey(ready.id())) {
                continue;
            }
            ready.effect()
                    .spends()
                    .forEach(spend -> expected.merge(
                            AccountKind.SPEND + " " + ready.id() + " " + Outcome.RENEWED, 1, Integer::sum));
            Optional<String> entry = switch (ready.kind()) {
                case DRAIN -> Optional.of(AccountKind.DRAIN_PLUG + " " + ready.id() + " " + Outcome.BACK_AT_ONCE);
                case CRACK_LOOSE -> Optional.empty();
                case SUPPORT, STRAP, PIN, HOLDING_TOOL ->
                    Optional.of(AccountKind.READY + " " + ready.id() + " " + Outcome.REMOVED);
                case RECORD, MAKE_SAFE ->
                    Optional.of(AccountKind.READY + " " + ready.id() + " "
                            + (ready.effect().restore().isEmpty() ? Outcome.NOTHING_TO_DO : Outcome.RESTORED));
            };
            entry.ifPresent(key -> expected.merge(key, 1, Integer::sum));
        }
        Map<String, Integer> found = new HashMap<>();
        for (Account account : plan.accounts()) {
            found.merge(account.kind() + " " + account.id() + " " + account.outcome(), 1, Integer::sum);
            Optional<Operation> by = find(account.by());
            boolean heldUp = by.map(Operation::holdUp)
                    .filter(holdUp -> !holdUp.equals(BuildPlan.HoldUp.NONE))
                    .isPresent();
            if ((!account.by().isEmpty() && by.isEmpty()) || account.settled() == heldUp) {
                faults.add(new Fault(Rule.ACCOUNT, account.id(), "it is settled by no such step, or not settled"));
            }
        }
        if (!expected.equals(found)) {
            Map<String, Integer> lost = new HashMap<>(expected);
            found.keySet().forEach(lost::remove);
            faults.add(new Fault(
                    Rule.ACCOUNT, "", "accounted for " + found.size() + " of " + expected.size() + ", lost " + lost));
        }
    }
}
