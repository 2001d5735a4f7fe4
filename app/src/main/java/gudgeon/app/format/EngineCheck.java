package gudgeon.app.format;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import gudgeon.core.planning.ReachAudit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rules that look at the engine as a whole, once every name resolves: it hangs together, it can be taken apart, its
 * conditions say something. What concerns one key alone is judged where the key is read.
 */
final class EngineCheck {
    private final Engine engine;
    private final Names names;
    private final Problems problems;
    private final Islands islands;

    EngineCheck(Engine engine, Names names, Problems problems) {
        this.engine = engine;
        this.names = names;
        this.problems = problems;
        this.islands = new Islands(engine);
    }

    void run() {
        boolean whole = hangsTogether();
        masses();
        joints();
        ready();
        lifts();
        cautions();
        orders();
        if (whole && !problems.anyFault()) {
            Set<String> moved = new HashSet<>(ReachAudit.movedUntouched(engine));
            conditionsSaySomething(moved);
            reachable();
            circuitsCanBeMadeReady();
        }
    }

    private boolean hangsTogether() {
        boolean whole = true;
        for (List<String> island : islands.apart()) {
            whole = false;
            problems.fault(
                    names.at(Names.Kind.PART, island.getFirst()),
                    island.size() == 1
                            ? "no joint links the part " + island.getFirst() + " with the base "
                                    + engine.workplace().base()
                            : "no joint links these parts with the base "
                                    + engine.workplace().base() + ": " + some(island),
                    "add the joint that holds " + (island.size() == 1 ? "it" : "one of them"));
        }
        return whole;
    }

    private static String some(List<String> ids) {
        return String.join(", ", ids.subList(0, Math.min(12, ids.size()))) + (ids.size() > 12 ? " ..." : "");
    }

    private void masses() {
        for (Part part : engine.parts()) {
            if (part.mass().isEmpty() && !part.id().equals(engine.workplace().base())) {
                problems.warning(
                        names.at(Names.Kind.PART, part.id()),
                        "the part " + part.id() + " has no mass and counts as more than one person can lift",
                        "add mass; an estimate is better than none");
            }
        }
    }

    private void joints() {
        for (Joint joint : engine.joints()) {
            String id = joint.id();
            for (Literal literal : joint.freedom().access().literals()) {
                own(joint, literal, "access");
            }
            for (Literal literal : joint.freedom().accessBuild().literals()) {
                own(joint, literal, "access_build");
            }
            if (joint.freedom().rests() && joint.flexible()) {
                problems.fault(
                        names.at(Names.Kind.JOINT, id, "rests"),
                        "rests on the flexible joint " + id,
                        "only what stands on something rests; what hangs is set aside");
            }
            drainOpensOnlyItsOwn(joint);
        }
    }

    private void own(Joint joint, Literal literal, String key) {
        boolean own = switch (literal) {
            case Literal.PartAway part -> joint.between().contains(part.id());
            case Literal.JointUndone undone -> undone.id().equals(joint.id());
        };
        if (own) {
            problems.fault(
                    names.at(Names.Kind.JOINT, joint.id(), key),
                    key + " of the joint " + joint.id() + " names "
                            + (literal instanceof Literal.PartAway
                                    ? literal.id() + ", which it holds itself"
                                    : "the joint itself"),
                    "it would never be free; name what is really in the way");
        }
    }

    private void drainOpensOnlyItsOwn(Joint joint) {
        if (joint.freedom().drains().isEmpty()) {
            return;
        }
        for (String circuit : joint.freedom().opens()) {
            if (!joint.freedom().drains().contains(circuit)) {
                problems.fault(
                        names.at(Names.Kind.JOINT, joint.id(), "opens"),
                        "the drain " + joint.id() + " opens " + circuit + ", which it does not drain",
                        "a drain opens no other circuits than those it drains");
            }
        }
    }

    private void ready() {
        Map<String, List<String>> needs = new LinkedHashMap<>();
        engine.ready().forEach(operation -> needs.put(operation.id(), operation.needs()));
        for (List<String> cycle : Cycles.of(needs)) {
            problems.fault(
                    names.at(Names.Kind.READY, cycle.getFirst(), "needs"),
                    "ready operations that need each other: " + String.join(", ", cycle),
                    "one of them must come first");
        }
        for (Ready operation : engine.ready()) {
            if (operation.joint().isEmpty()) {
                continue;
            }
            Joint joint = engine.joint(operation.joint().get());
            for (Literal literal : operation.access().literals()) {
                boolean own = literal instanceof Literal.PartAway part
                        && joint.between().contains(part.id());
                if (own) {
                    own(joint, literal, "access");
                }
            }
        }
    }

    private void lifts() {
        Map<String, List<String>> under = new LinkedHashMap<>();
        for (Part part : engine.parts()) {
            List<String> waits = new ArrayList<>();
            for (Literal literal : part.lift().literals()) {
                if (literal instanceof Literal.PartAway other) {
                    waits.add(other.id());
                    if (other.id().equals(engine.workplace().base())) {
                        problems.fault(
                                names.at(Names.Kind.PART, part.id(), "lift"),
                                "lift of the part " + part.id() + " names the base, which never moves",
                                "name the part that is really on top of it");
                    } else if (other.id().equals(part.id())) {
                        problems.fault(
                                names.at(Names.Kind.PART, part.id(), "lift"),
                                "lift of the part " + part.id() + " names the part itself",
                                "it would say nothing; name what is on top of it");
                    }
                }
            }
            under.put(part.id(), waits);
        }
        for (List<String> cycle : Cycles.of(under)) {
            if (cycle.size() > 1) {
                problems.remark(
                        names.at(Names.Kind.PART, cycle.getFirst(), "lift"),
                        "these parts wait for each other and leave together or not at all: " + some(cycle),
                        "");
            }
        }
    }

    private void cautions() {
        List<String> known = Cautions.catalogue().ids();
        for (Names.Named caution : names.cautions()) {
            if (!known.contains(caution.id())) {
                problems.fault(
                        caution.at(),
                        "no caution is called " + Wording.shown(caution.id()),
                        Wording.maybe(caution.id(), known, "known: " + String.join(", ", known)));
            }
        }
    }

    private void orders() {
        Map<String, List<String>> later = new LinkedHashMap<>();
        engine.rules()
                .precedences()
                .forEach(pair -> later.computeIfAbsent(pair.first(), key -> new ArrayList<>())
                        .add(pair.then()));
        for (List<String> cycle : Cycles.of(later)) {
            String first = cycle.getFirst();
            Names.Kind kind = names.has(Names.Kind.JOINT, first) ? Names.Kind.JOINT : Names.Kind.READY;
            problems.warning(
                    names.at(kind, first),
                    "each of these has to come before the other: " + some(cycle),
                    "no plan can have all of them; check order, before, and warm against cold");
        }
    }

    private void conditionsSaySomething(Set<String> moved) {
        for (Joint joint : engine.joints()) {
            boolean ownMoved = moved.containsAll(joint.between());
            Set<String> pieces = islands.piecesOf(joint.between());
            for (Condition.Clause clause : joint.freedom().access().clauses()) {
                boolean holds = clause.alternatives().stream()
                        .anyMatch(alternative -> alternative.literals().stream()
                                .allMatch(literal -> literal instanceof Literal.PartAway part
                                        && (ownMoved || moved.contains(part.id()))
                                        && !pieces.contains(islands.pieceOf(part.id()))));
                if (holds) {
                    saysNothing(Names.Kind.JOINT, joint.id(), "access");
                }
            }
        }
        for (Part part : engine.parts()) {
            for (Condition.Clause clause : part.lift().clauses()) {
                if (holdsByMoved(clause, moved)) {
                    saysNothing(Names.Kind.PART, part.id(), "lift");
                }
            }
        }
        for (Feature feature : engine.features()) {
            for (Condition.Clause clause : feature.access().clauses()) {
                if (holdsByMoved(clause, moved)) {
                    saysNothing(Names.Kind.FEATURE, feature.id(), "access");
                }
            }
        }
    }

    private static boolean holdsByMoved(Condition.Clause clause, Set<String> moved) {
        return clause.alternatives().stream()
                .anyMatch(alternative -> alternative.literals().stream()
                        .allMatch(literal -> literal instanceof Literal.PartAway part && moved.contains(part.id())));
    }

    private void saysNothing(Names.Kind kind, String id, String key) {
        problems.fault(
                names.at(kind, id, key),
                key + " of " + Scope.called(kind, id) + " already holds in the untouched engine",
                "it says nothing: a part that nothing rigid holds counts as moved; check the joints of the parts it names");
    }

    private void reachable() {
        for (ReachAudit.Unreachable found : ReachAudit.unreachable(engine)) {
            if (found.licensedOnly()) {
                problems.remark(
                        names.at(Names.Kind.PART, found.part()),
                        "the part " + found.part() + " comes off only by licensed practice",
                        "");
            } else {
                problems.fault(
                        names.at(Names.Kind.PART, found.part()),
                        "the part " + found.part() + " can never be taken off",
                        found.conflict().isEmpty()
                                ? "see the parts above it in this list"
                                : "these contradict each other: " + some(found.conflict()));
            }
        }
    }

    private void circuitsCanBeMadeReady() {
        Set<String> never = new LinkedHashSet<>(ReachAudit.neverFree(engine));
        for (Circuit circuit : engine.circuits()) {
            boolean opened = engine.joints().stream()
                    .anyMatch(joint -> joint.freedom().opens().contains(circuit.id()));
            List<String> unsafe =
                    circuit.makeSafe().stream().filter(never::contains).toList();
            boolean noDrain = !circuit.drains().isEmpty() && never.containsAll(circuit.drains());
            if (opened && (noDrain || !unsafe.isEmpty())) {
                problems.fault(
                        names.at(Names.Kind.CIRCUIT, circuit.id(), noDrain ? "drains" : "make_safe"),
                        "the circuit " + circuit.id() + " is opened but can never be made ready: "
                                + String.join(", ", noDrain ? circuit.drains() : unsafe) + " can never be done",
                        "check what they need and what must be out of their way");
            }
        }
    }
}
