package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.LackKind;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildReplay.Fault;
import gudgeon.core.planning.BuildReplay.Rule;
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

/** What the replay of a way back knows: the strip as it was, the plan, and where its steps stand. */
final class BuildEvidence {
    /** What was so when a joint was undone or a ready operation done; {@code ready} is what had been done by then. */
    record Undone(
            Set<String> away,
            Set<String> ready,
            Set<Condition.Clause> dropped,
            Set<String> droppedNeeds,
            List<List<String>> holds) {}

    final Engine engine;
    final BuildRequest request;
    final BuildPlan plan;
    final List<Fault> faults = new ArrayList<>();
    /** By id, everything that was done in the strip. */
    final Map<String, Undone> history = new LinkedHashMap<>();
    final Set<String> cut = new HashSet<>();
    final List<Set<String>> lifts = new ArrayList<>();
    final Map<Set<String>, Set<String>> readyAtLift = new HashMap<>();
    final Set<String> droppedLifts = new HashSet<>();
    final Set<String> droppedHangs = new HashSet<>();
    /** By id, the place of a step in the plan. */
    final Map<String, Integer> index = new HashMap<>();
    /** By id, the steps that a step says it comes after, directly or not. */
    final Map<String, Set<String>> ancestors = new HashMap<>();
    /** The state: at first that after the strip, then that of the walk. */
    final BuildWorld world;

    BuildEvidence(Engine engine, BuildRequest request, BuildPlan plan) {
        this.engine = engine;
        this.request = request;
        this.plan = plan;
        world = new BuildWorld(engine);
        request.steps().forEach(this::strip);
        for (int i = 0; i < plan.operations().size(); i++) {
            index.put(plan.operations().get(i).id(), i);
        }
    }

    /** The steps that a step comes after. */
    Set<String> before(Operation step) {
        return Optional.ofNullable(ancestors.get(step.id())).orElse(Set.of());
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

    void fault(Rule rule, Operation step, String text) {
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

    void lacks(Operation step, LackKind kind, boolean lacking, Rule rule) {
        boolean said = step.holdUp().blockedBy().stream().anyMatch(lack -> lack.kind() == kind);
        if (said != lacking) {
            faults.add(new Fault(rule, step.id(), lacking ? "does not say that it lacks " + kind : "lacks no " + kind));
        }
    }

    Optional<Ready> cracking(Joint joint) {
        return engine.ready().stream()
                .filter(ready -> ready.kind() == ReadyKind.CRACK_LOOSE
                        && ready.joint().equals(Optional.of(joint.id()))
                        && history.containsKey(ready.id()))
                .findFirst();
    }

    int at(Operation step) {
        return index.getOrDefault(step.id(), Integer.MAX_VALUE);
    }

    Optional<Operation> find(String id) {
        return Optional.ofNullable(index.get(id)).map(plan.operations()::get);
    }

    /** The step that makes a joint tight. */
    Optional<Operation> last(String id) {
        Joint joint = engine.joint(id);
        if (!joint.makeup().stages().isEmpty()) {
            return find(id + "/" + joint.makeup().stages().size());
        }
        return find(id + (cracking(joint).isPresent() ? "/tight" : "/snug"));
    }

    Stream<Joint> undone() {
        return engine.joints().stream().filter(joint -> history.containsKey(joint.id()));
    }

    Optional<Operation> placing(String part) {
        return plan.operations().stream()
                .filter(step ->
                        step.kind() == Kind.PLACE && step.subject().parts().contains(part))
                .findFirst();
    }

    /** The placing that closes a joint. */
    Optional<Operation> closing(Joint joint) {
        Set<String> awayThen =
                Optional.ofNullable(history.get(joint.id())).orElseThrow().away();
        for (Set<String> set : lifts) {
            if (joint.between().stream().anyMatch(part -> set.contains(part) && !awayThen.contains(part))) {
                return placing(set.iterator().next());
            }
        }
        return Optional.empty();
    }

    boolean awayThen(Joint joint, String part) {
        return Optional.ofNullable(history.get(joint.id())).orElseThrow().away().contains(part);
    }

    Check check(String id) {
        return engine.rules().checks().stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The step that reaches a mark; empty when it is reached from the start. */
    Optional<Operation> reached(String mark) {
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

    void ordered(Operation first, Operation then, Rule rule, String mark) {
        if (at(first) > at(then)) {
            fault(rule, then, "it comes before " + mark);
        }
    }

    void beforeStart(Operation step, Joint joint, Rule rule, String mark) {
        find(joint.id() + "/snug").ifPresent(snug -> ordered(step, snug, rule, mark));
        boolean excused = find(joint.id() + "/snug").stream()
                .flatMap(snug -> snug.holdUp().blockedBy().stream())
                .anyMatch(lack -> lack.kind() == LackKind.ORDER);
        Stream.concat(closing(joint).stream(), find(joint.id() + "/seal").stream())
                .filter(start -> !excused)
                .filter(start -> !before(step)
                        .contains(start.id()))
                .forEach(start -> ordered(step, start, rule, mark));
    }

    List<Spend> spends(Joint joint) {
        List<Spend> spends = new ArrayList<>(joint.makeup().spends());
        if (cut.contains(joint.id())) {
            joint.work().cut().ifPresent(way -> spends.addAll(way.destroys()));
        }
        return spends;
    }

    boolean onThread(Joint joint) {
        return !joint.makeup().stages().isEmpty()
                && joint.makeup().stages().stream()
                        .allMatch(stage -> Set.of("locked", "sealed").contains(stage.threadState()));
    }
}
