package gudgeon.core.planning;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * Question 1 for the engines of {@link MidSizeEngines} as a model for a general constraint solver (Choco).
 *
 * <p>A <em>fact</em> is an operation done or a unit moved; it is a boolean with an integer level. What makes a fact true must
 * be true at a lower level, so that nothing holds itself up in a circle. A unit is moved when all its rigid joints are undone
 * (with one intact, the piece outweighs the limit or hangs on the base), its lift conditions hold, and each of its flexible
 * joints is undone, or holds it, or is strapped, or leads only to moved units. A part is off when some set of linked parts
 * that holds the base and is closed under intact joints leaves it out. No piece is ever loose, since every joint rests.
 */
final class ChocoOpening {
    private final Engine engine;
    private final StripRequest request;
    private final Model model = new Model("opening", Settings.init().setLCG(true));
    private final Map<String, BoolVar> facts = new LinkedHashMap<>();
    private final Map<String, IntVar> levels = new HashMap<>();
    private final Map<String, BoolVar> earlier = new HashMap<>();
    private final Map<String, Set<String>> unitOf = new HashMap<>();

    private ChocoOpening(Engine engine, StripRequest request) {
        this.engine = engine;
        this.request = request;
    }

    /** The least opening cost; -1 when the target is out of reach. */
    static long cost(Engine engine, StripRequest request) {
        return new ChocoOpening(engine, request).solve();
    }

    private long solve() {
        units();
        List<String> ids = new ArrayList<>();
        engine.joints().forEach(joint -> ids.add(joint.id()));
        engine.ready().forEach(operation -> ids.add(operation.id()));
        unitOf.values().stream().map(ChocoOpening::unitFact).distinct().sorted().forEach(ids::add);
        for (String id : ids) {
            facts.put(id, model.boolVar(id));
            levels.put(id, model.intVar("level of " + id, 0, ids.size(), true));
        }
        engine.joints().forEach(this::joint);
        engine.ready().forEach(this::ready);
        new LinkedHashSet<>(unitOf.values()).forEach(this::move);
        target();
        return minimum();
    }

    private void units() {
        engine.parts().forEach(part -> unitOf.put(part.id(), new LinkedHashSet<>(List.of(part.id()))));
        for (Joint joint : engine.joints()) {
            if (joint.freedom().licensed()) {
                Set<String> union = new LinkedHashSet<>();
                joint.between().forEach(part -> union.addAll(unit(part)));
                union.forEach(part -> unitOf.put(part, union));
            }
        }
    }

    private Set<String> unit(String part) {
        return unitOf.getOrDefault(part, Set.of());
    }

    private static String unitFact(Set<String> unit) {
        return "moved " + unit.iterator().next();
    }

    private String moved(String part) {
        return unitFact(unit(part));
    }

    private BoolVar fact(String id) {
        BoolVar fact = facts.get(id);
        if (fact == null) {
            throw new IllegalArgumentException("no fact " + id);
        }
        return fact;
    }

    /** Implies that the first fact is true at a lower level than the second. */
    private BoolVar before(String first, String then) {
        if (first.equals(then)) {
            return model.boolVar(false);
        }
        return earlier.computeIfAbsent(first + " < " + then, name -> {
            BoolVar is = model.boolVar(name);
            model.arithm(is, "<=", fact(first)).post();
            Constraint lower = model.arithm(levels.get(first), "<", levels.get(then));
            lower.impliedBy(is);
            return is;
        });
    }

    /** If the fact is true, one of these must be. */
    private void needsOne(String fact, List<BoolVar> ways) {
        model.addClauses(ways.toArray(BoolVar[]::new), new BoolVar[] {fact(fact)});
    }

    private void needs(String fact, String first) {
        needsOne(fact, List.of(before(first, fact)));
    }

    private BoolVar allOf(List<BoolVar> all) {
        BoolVar is = model.boolVar();
        all.forEach(one -> model.arithm(is, "<=", one).post());
        return is;
    }

    private BoolVar oneOf(List<BoolVar> ways) {
        BoolVar is = model.boolVar();
        model.addClauses(ways.toArray(BoolVar[]::new), new BoolVar[] {is});
        return is;
    }

    /** Access of a joint between these parts, or, between none, a condition in which a part means moved. */
    private void condition(String fact, Condition condition, List<String> between) {
        for (Condition.Clause clause : condition.clauses()) {
            List<BoolVar> ways = new ArrayList<>();
            for (Condition.Alternative alternative : clause.alternatives()) {
                List<BoolVar> all = new ArrayList<>();
                for (Literal literal : alternative.literals()) {
                    all.add(
                            switch (literal) {
                                case Literal.JointUndone joint -> before(joint.id(), fact);
                                case Literal.PartAway part -> away(fact, part.id(), between);
                            });
                }
                ways.add(allOf(all));
            }
            needsOne(fact, ways);
        }
    }

    private BoolVar away(String fact, String part, List<String> between) {
        BoolVar itself = before(moved(part), fact);
        if (between.isEmpty()) {
            return itself;
        }
        BoolVar others =
                allOf(between.stream().map(end -> before(moved(end), fact)).toList());
        return oneOf(List.of(itself, others));
    }

    private void joint(Joint joint) {
        if (joint.freedom().licensed()) {
            model.arithm(fact(joint.id()), "=", 0).post();
        }
        condition(joint.id(), joint.freedom().access(), joint.between());
        joint.freedom().needs().forEach(need -> needs(joint.id(), need));
        for (String id : joint.freedom().opens()) {
            Circuit circuit = engine.circuit(id);
            circuit.makeSafe().forEach(step -> needs(joint.id(), step));
            needsOne(
                    joint.id(),
                    circuit.drains().stream()
                            .map(drain -> before(drain, joint.id()))
                            .toList());
        }
    }

    private void ready(Ready operation) {
        condition(operation.id(), operation.access(), List.of());
        operation.needs().forEach(need -> needs(operation.id(), need));
    }

    private void move(Set<String> unit) {
        String fact = unitFact(unit);
        if (unit.contains(engine.workplace().base())) {
            model.arithm(fact(fact), "=", 0).post();
            return;
        }
        double mass =
                unit.stream().mapToDouble(id -> engine.part(id).massKilograms()).sum();
        for (String part : unit) {
            Part whole = engine.part(part);
            condition(fact, whole.lift(), List.of());
        }
        for (Joint joint : engine.joints()) {
            boolean leads = joint.between().stream().anyMatch(unit::contains) && !unit.containsAll(joint.between());
            if (leads && !joint.flexible()) {
                needs(fact, joint.id());
            } else if (leads) {
                hanging(unit, joint, mass);
            }
        }
    }

    private void hanging(Set<String> unit, Joint joint, double mass) {
        String fact = unitFact(unit);
        Joint.Hang hang = joint.hang().orElseThrow();
        if (hang.holdsKilograms() >= mass) {
            return;
        }
        List<BoolVar> ways = new ArrayList<>();
        ways.add(before(joint.id(), fact));
        hang.strap().ifPresent(strap -> ways.add(before(strap, fact)));
        ways.add(allOf(joint.between().stream()
                .filter(part -> !unit.contains(part))
                .map(part -> before(moved(part), fact))
                .toList()));
        needsOne(fact, ways);
    }

    private void target() {
        request.target()
                .aside()
                .forEach(part -> model.arithm(fact(moved(part)), "=", 1).post());
        Map<String, BoolVar> linked = new HashMap<>();
        engine.parts().forEach(part -> linked.put(part.id(), model.boolVar("linked " + part.id())));
        for (Joint joint : engine.joints()) {
            for (String from : joint.between()) {
                for (String to : joint.between()) {
                    BoolVar[] then = {linked.get(to), fact(joint.id())};
                    model.addClauses(then, new BoolVar[] {linked.get(from)});
                }
            }
        }
        model.arithm(linked.get(engine.workplace().base()), "=", 1).post();
        for (String part : request.target().off()) {
            model.arithm(fact(moved(part)), "=", 1).post();
            model.arithm(linked.get(part), "=", 0).post();
        }
    }

    private long minimum() {
        List<BoolVar> operations = new ArrayList<>();
        List<Integer> costs = new ArrayList<>();
        for (Joint joint : engine.joints()) {
            operations.add(fact(joint.id()));
            costs.add((int) joint.work().undo().expectedSeconds());
        }
        for (Ready operation : engine.ready()) {
            operations.add(fact(operation.id()));
            costs.add((int) operation.seconds());
        }
        int most = costs.stream().mapToInt(Integer::intValue).sum();
        IntVar cost = model.intVar("cost", 0, most, true);
        int[] weights = costs.stream().mapToInt(Integer::intValue).toArray();
        model.scalar(operations.toArray(BoolVar[]::new), weights, "=", cost).post();
        model.setObjective(Model.MINIMIZE, cost);
        long best = -1;
        while (model.getSolver().solve()) {
            best = cost.getValue();
        }
        return best;
    }
}
