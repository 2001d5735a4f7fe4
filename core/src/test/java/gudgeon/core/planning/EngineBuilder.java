package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes small engines in code, for tests. Zones {@code top} (the start) and {@code bench} (30 s each way) exist; taking up
 * a tool costs 20 s; alone 25 kg in 60 s is the engine's way of lifting unless others are added. As a reader of engine
 * files does, {@link #build()} derives the order of warm, cold and draining operations.
 */
final class EngineBuilder {
    private final String base;
    private final List<PartDraft> parts = new ArrayList<>();
    private final List<JointDraft> joints = new ArrayList<>();
    private final List<ReadyDraft> ready = new ArrayList<>();
    private final List<Circuit> circuits = new ArrayList<>();
    private final List<Feature> features = new ArrayList<>();
    private final List<Precedence> precedences = new ArrayList<>();
    private final Map<String, Zone> zones = new LinkedHashMap<>();
    private final List<LiftingWay> ways = new ArrayList<>();
    private long toolChangeSeconds = 20;

    /** An engine with nothing but its base. */
    EngineBuilder(String base) {
        this.base = base;
        part(base, 500);
        zone("top", 0, 0);
        zone(Zone.BENCH, 30, 30);
    }

    PartDraft part(String id, double kilograms) {
        PartDraft draft = new PartDraft(id, kilograms);
        parts.add(draft);
        return draft;
    }

    JointDraft rigid(String id, long seconds, String... between) {
        JointDraft draft = new JointDraft(id, seconds, List.of(between), Optional.empty());
        joints.add(draft);
        return draft;
    }

    JointDraft flexible(String id, long seconds, double holdsKilograms, String... between) {
        Joint.Hang hang = new Joint.Hang(holdsKilograms, Optional.empty());
        JointDraft draft = new JointDraft(id, seconds, List.of(between), Optional.of(hang));
        joints.add(draft);
        return draft;
    }

    ReadyDraft ready(String id, ReadyKind kind, long seconds) {
        ReadyDraft draft = new ReadyDraft(id, kind, seconds);
        ready.add(draft);
        return draft;
    }

    EngineBuilder circuit(String id, CircuitKind kind, List<String> makeSafe, List<String> drains) {
        return circuit(id, kind, makeSafe, drains, List.of());
    }

    EngineBuilder circuit(
            String id, CircuitKind kind, List<String> makeSafe, List<String> drains, List<String> hazards) {
        circuits.add(new Circuit(id, id, kind, "", Optional.empty(), makeSafe, drains, hazards, ""));
        return this;
    }

    EngineBuilder feature(String id, String part, Condition access) {
        features.add(new Feature(id, id, "flatness", List.of(part), access, Optional.empty(), Map.of(), List.of()));
        return this;
    }

    EngineBuilder zone(String id, long go, long back, String... cautions) {
        zones.put(id, new Zone(id, id, go, back, List.of(cautions)));
        return this;
    }

    EngineBuilder toolChange(long seconds) {
        toolChangeSeconds = seconds;
        return this;
    }

    EngineBuilder way(String name, double limitKilograms, long seconds) {
        ways.add(new LiftingWay(name, limitKilograms, seconds, ""));
        return this;
    }

    EngineBuilder before(String first, String then) {
        precedences.add(new Precedence(first, then, "written"));
        return this;
    }

    Engine build() {
        List<LiftingWay> lifting = ways.isEmpty() ? List.of(new LiftingWay("alone", 25, 60, "")) : ways;
        List<Joint> builtJoints = joints.stream().map(JointDraft::build).toList();
        List<Ready> builtReady = ready.stream().map(ReadyDraft::build).toList();
        List<Precedence> order = new ArrayList<>(precedences);
        order.addAll(derived(builtJoints, builtReady));
        return new Engine(
                new Engine.Identity("plover-1", "Plover 1", 1, "", 1, Map.of()),
                new Engine.Workplace(base, "top", toolChangeSeconds, List.copyOf(zones.values()), lifting),
                parts.stream().map(PartDraft::build).toList(),
                builtJoints,
                circuits,
                builtReady,
                features,
                new Engine.BuildRules(order, List.<Check>of()));
    }

    /** Warm before cold, warm before any drain. */
    private static List<Precedence> derived(List<Joint> joints, List<Ready> ready) {
        List<String> warm = new ArrayList<>();
        List<String> later = new ArrayList<>();
        for (Joint joint : joints) {
            sort(joint.id(), joint.freedom().engineState(), false, warm, later);
        }
        for (Ready operation : ready) {
            boolean drain = operation.kind() == ReadyKind.DRAIN;
            sort(operation.id(), operation.effect().engineState(), drain, warm, later);
        }
        List<Precedence> pairs = new ArrayList<>();
        for (String first : warm) {
            for (String then : later) {
                pairs.add(new Precedence(first, then, "warm before cold"));
            }
        }
        return pairs;
    }

    private static void sort(String id, Joint.EngineState state, boolean drain, List<String> warm, List<String> later) {
        if (state == Joint.EngineState.WARM) {
            warm.add(id);
        } else if (state == Joint.EngineState.COLD || drain) {
            later.add(id);
        }
    }

    /** The part is out of the way, or moved. */
    static Literal away(String part) {
        return new Literal.PartAway(part);
    }

    /** The joint is undone. */
    static Literal undone(String joint) {
        return new Literal.JointUndone(joint);
    }

    /** Literals that hold together. */
    static Condition.Alternative all(Literal... literals) {
        return new Condition.Alternative(List.of(literals));
    }

    /** A condition of one clause, with one literal for each alternative. */
    static Condition anyOf(Literal... literals) {
        List<Condition.Alternative> alternatives = new ArrayList<>();
        for (Literal literal : literals) {
            alternatives.add(all(literal));
        }
        return new Condition(List.of(new Condition.Clause(alternatives)));
    }

    /** One more clause. */
    static Condition and(Condition condition, List<Condition.Alternative> alternatives) {
        List<Condition.Clause> clauses = new ArrayList<>(condition.clauses());
        clauses.add(new Condition.Clause(alternatives));
        return new Condition(clauses);
    }
}
