package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.UndoTime;
import gudgeon.core.engine.Zone;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Length;
import gudgeon.core.quantity.Mass;
import gudgeon.core.quantity.Torque;
import gudgeon.core.quantity.Volume;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** Small random engines with everything that matters to the way back. */
final class BuildEngines {
    static final List<LiftingWay> WAYS = List.of(
            new LiftingWay("alone", 25, 60, "close to the body"),
            new LiftingWay("helper", 50, 120, ""),
            new LiftingWay("hoist", 500, 1200, ""));

    private static final List<String> ZONES = List.of("top", "front", "underneath");

    private final Random random;
    private final List<String> partIds = new ArrayList<>();
    private final List<String> jointIds = new ArrayList<>();
    private final List<Ready> ready = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();

    private BuildEngines(long seed) {
        random = new Random(seed);
    }

    static Engine random(long seed) {
        return new BuildEngines(seed).engine();
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private Engine engine() {
        int parts = 3 + random.nextInt(6);
        for (int p = 0; p <= parts; p++) {
            partIds.add("p" + p);
        }
        List<List<String>> between = new ArrayList<>();
        for (int p = 1; p <= parts; p++) {
            int joints = chance(0.35) ? 2 : 1;
            for (int j = 0; j < joints; j++) {
                Set<String> joined = new LinkedHashSet<>(List.of("p" + p, "p" + random.nextInt(p)));
                if (chance(0.15)) {
                    joined.add(pick(partIds));
                }
                between.add(List.copyOf(joined));
                jointIds.add("j" + between.size());
            }
        }
        List<Circuit> circuits = circuits();
        standing();
        checkIds();
        List<Joint> joints = new ArrayList<>();
        for (int j = 0; j < between.size(); j++) {
            joints.add(joint(jointIds.get(j), between.get(j), circuits));
        }
        List<Part> list = new ArrayList<>();
        for (String id : partIds) {
            Condition lift = chance(0.2) ? condition(List.of(id), 0.2) : Condition.ALWAYS;
            Optional<Mass> mass = chance(0.05)
                    ? Optional.empty()
                    : Optional.of(Mass.ofKilograms(chance(0.2) ? 20 + random.nextInt(40) : 1 + random.nextInt(12)));
            list.add(new Part(id, id, "", mass, id.equals("p0") ? Condition.ALWAYS : lift, Part.Care.NONE));
        }
        return new Engine(
                new Engine.Identity("random", "Random", 1, "", 1, Map.of()),
                new Engine.Workplace("p0", "top", 20, zones(), WAYS),
                list,
                joints,
                circuits,
                ready,
                List.of(feature()),
                new Engine.BuildRules(List.of(), checks));
    }

    private static List<Zone> zones() {
        return List.of(
                new Zone("top", "Top", 0, 0, List.of()),
                new Zone("front", "Front", 60, 40, List.of()),
                new Zone("underneath", "Underneath", 600, 300, List.of("raised-machine")),
                new Zone(Zone.BENCH, "Bench", 30, 30, List.of()));
    }

    private static Feature feature() {
        Feature.Limit limit =
                new Feature.Limit("height", Optional.of(Length.ofMillimetres(0.1)), Optional.empty(), "typical", true);
        return new Feature(
                "check0-1",
                "Height",
                "height",
                List.of("p1"),
                Condition.ALWAYS,
                Optional.empty(),
                Map.of(),
                List.of(limit));
    }

    private List<Circuit> circuits() {
        List<Circuit> circuits = new ArrayList<>();
        if (chance(0.6)) {
            List<String> drains = new ArrayList<>();
            if (chance(0.7)) {
                ready.add(operation("drain-a", ReadyKind.DRAIN, Condition.ALWAYS, List.of(), "", List.of()));
                drains.add("drain-a");
            }
            circuits.add(new Circuit(
                    "coolant",
                    "Coolant",
                    CircuitKind.COOLANT,
                    "coolant, ready mixed",
                    chance(0.7) ? Optional.of(Volume.ofLitres(6)) : Optional.empty(),
                    List.of(),
                    drains,
                    List.of("hot"),
                    chance(0.5) ? "Open the bleed screw until no bubbles come." : ""));
        }
        if (chance(0.5)) {
            ready.add(operation(
                    "battery-off", ReadyKind.MAKE_SAFE, Condition.ALWAYS, List.of(), "Connect it.", List.of()));
            circuits.add(new Circuit(
                    "electric",
                    "Electric",
                    CircuitKind.ELECTRIC,
                    "",
                    Optional.empty(),
                    List.of("battery-off"),
                    List.of(),
                    List.of(),
                    ""));
        }
        return circuits;
    }

    private void standing() {
        if (chance(0.5)) {
            ready.add(operation("pin", ReadyKind.PIN, maybe(0.2), List.of(), "Take it out.", List.of()));
        }
        if (chance(0.5)) {
            ready.add(operation("support", ReadyKind.SUPPORT, maybe(0.3), List.of(), "", List.of(part())));
        }
        if (chance(0.4)) {
            ready.add(operation("strap", ReadyKind.STRAP, Condition.ALWAYS, List.of(), "Take it off.", List.of()));
        }
        if (chance(0.3)) {
            ready.add(operation(
                    "codes",
                    ReadyKind.RECORD,
                    Condition.ALWAYS,
                    List.of(),
                    chance(0.5) ? "Enter them." : "",
                    List.of()));
        }
    }

    private String part() {
        return partIds.get(1 + random.nextInt(partIds.size() - 1));
    }

    private Condition maybe(double probability) {
        return chance(probability) ? condition(List.of(), 0.3) : Condition.ALWAYS;
    }

    private Ready operation(
            String id, ReadyKind kind, Condition access, List<String> needs, String restore, List<String> carries) {
        Ready.Effect effect = new Ready.Effect(
                OptionalDouble.empty(),
                carries,
                Joint.Hold.NONE,
                Joint.EngineState.ANY,
                restore,
                kind == ReadyKind.DRAIN ? List.of(new Spend("plug washer", 1, OptionalDouble.empty())) : List.of(),
                List.of(),
                "");
        return new Ready(
                id,
                id,
                kind,
                60 + random.nextInt(300),
                pick(ZONES),
                chance(0.5) ? List.of("t1") : List.of(),
                access,
                needs,
                Optional.empty(),
                effect);
    }

    private Condition condition(List<String> own, double jointShare) {
        List<Condition.Clause> clauses = new ArrayList<>();
        for (int c = 0; c <= random.nextInt(2); c++) {
            List<Condition.Alternative> alternatives = new ArrayList<>();
            for (int a = 0; a <= random.nextInt(2); a++) {
                List<Literal> literals = new ArrayList<>();
                for (int l = 0; l <= random.nextInt(2); l++) {
                    String part = part();
                    if (chance(jointShare)) {
                        literals.add(new Literal.JointUndone(pick(jointIds)));
                    } else if (!own.contains(part)) {
                        literals.add(new Literal.PartAway(part));
                    }
                }
                if (!literals.isEmpty()) {
                    alternatives.add(new Condition.Alternative(literals));
                }
            }
            if (!alternatives.isEmpty()) {
                clauses.add(new Condition.Clause(alternatives));
            }
        }
        return new Condition(clauses);
    }

    private Joint joint(String id, List<String> between, List<Circuit> circuits) {
        boolean flexible = chance(0.25);
        Optional<String> strap = ready.stream()
                .map(Ready::id)
                .filter("strap"::equals)
                .findFirst()
                .filter(_ -> chance(0.5));
        Optional<Joint.Hang> hang =
                flexible ? Optional.of(new Joint.Hang(pick(List.of(0.0, 3.0, 60.0)), strap)) : Optional.empty();
        List<String> needs = new ArrayList<>();
        ready.stream()
                .filter(r -> Set.of(ReadyKind.PIN, ReadyKind.SUPPORT).contains(r.kind()) && chance(0.15))
                .forEach(r -> needs.add(r.id()));
        if (chance(0.2)) {
            needs.add("crack-" + id);
            crack(id);
        }
        List<String> opens =
                circuits.stream().filter(_ -> chance(0.25)).map(Circuit::id).toList();
        Joint.Freedom freedom = new Joint.Freedom(
                chance(0.4) ? condition(between, 0.25) : Condition.ALWAYS,
                chance(0.15) ? condition(between, 0.2) : Condition.ALWAYS,
                needs,
                opens,
                List.of(),
                false,
                Joint.EngineState.ANY,
                chance(0.1) ? new Joint.Hold(List.of(List.of(other(id)), List.of(other(id)))) : Joint.Hold.NONE,
                chance(0.3));
        Joint.Work work = new Joint.Work(
                pick(ZONES),
                pick(List.of(List.of(), List.of("t1"), List.of("t2"), List.of("t1", "t3"))),
                new UndoTime(100, 0, 0, ""),
                60 + random.nextInt(900),
                Optional.of(new Joint.Cut(60, List.of(new Spend("cut " + id, 1, OptionalDouble.empty())), List.of())),
                List.of(),
                "",
                false);
        return new Joint(id, id, JointKind.BOLTED, between, hang, freedom, work, makeup(id));
    }

    private String other(String id) {
        String joint = pick(jointIds);
        return joint.equals(id) ? jointIds.getFirst() : joint;
    }

    private void crack(String joint) {
        Ready.Effect effect = new Ready.Effect(
                OptionalDouble.empty(),
                List.of(),
                chance(0.6) ? new Joint.Hold(List.of(List.of(other(joint)))) : Joint.Hold.NONE,
                Joint.EngineState.ANY,
                "",
                List.of(),
                List.of(),
                "");
        ready.add(new Ready(
                "crack-" + joint,
                "Crack " + joint,
                ReadyKind.CRACK_LOOSE,
                60,
                pick(ZONES),
                List.of("t4"),
                maybe(0.15),
                List.of(),
                Optional.of(joint),
                effect));
    }

    private Makeup makeup(String id) {
        int count = random.nextInt(5);
        List<Fastener> fasteners = new ArrayList<>();
        List<Integer> pattern = new ArrayList<>();
        for (int f = 1; f <= count; f++) {
            pattern.add(f);
            fasteners.add(new Fastener(
                    id + "/" + f,
                    FastenerKind.BOLT,
                    "M8x1.25",
                    Optional.empty(),
                    "hexagon 13 mm",
                    Fastener.Place.UNKNOWN,
                    List.of(),
                    pick(List.of("", "", "all", "washers")),
                    "",
                    ""));
        }
        Collections.shuffle(pattern, random);
        List<Makeup.Stage> stages = new ArrayList<>();
        String state = chance(0.03) ? "" : pick(List.of("dry", "oiled", "locked"));
        for (int s = 0; s < random.nextInt(4); s++) {
            boolean angle = s > 0 && chance(0.5);
            stages.add(new Makeup.Stage(
                    angle ? Optional.empty() : Optional.of(Torque.ofNewtonMetres(20 + 10 * s)),
                    angle ? Optional.of(Angle.ofDegrees(90)) : Optional.empty(),
                    state,
                    chance(0.12) ? List.of(mark()) : List.of()));
        }
        List<Spend> spends = chance(0.3) ? List.of(new Spend("gasket " + id, 1, OptionalDouble.of(4))) : List.of();
        Optional<Makeup.Sealant> sealant = chance(0.2)
                ? Optional.of(
                        new Makeup.Sealant("sealant", pick(List.of(0L, 600L, 1200L)), pick(List.of(0L, 600L, 7200L))))
                : Optional.empty();
        List<String> after = new ArrayList<>();
        if (chance(0.12)) {
            String mark = mark();
            if (!mark.startsWith(id)) {
                after.add(mark);
            }
        }
        return new Makeup(
                fasteners,
                spends,
                stages,
                chance(0.7) ? pattern : List.of(),
                new Makeup.Loosen(1, List.of()),
                sealant,
                after);
    }

    private String mark() {
        List<String> marks = new ArrayList<>(jointIds);
        jointIds.forEach(id -> marks.add(id + "/snug"));
        checks.forEach(check -> marks.add(check.id()));
        ready.forEach(operation -> marks.add(operation.id()));
        return pick(marks);
    }

    private void checkIds() {
        for (int k = 0; k < random.nextInt(4); k++) {
            List<String> after =
                    chance(0.8) ? List.of(pick(jointIds)) : List.of(pick(jointIds), pick(jointIds) + "/snug");
            List<String> before = chance(0.6) ? List.of(pick(jointIds)) : List.of();
            Check.Work work = new Check.Work(pick(ZONES), List.of(), 120, List.of(), "");
            checks.add(new Check(
                    "check" + k,
                    "Check",
                    pick(List.of("check", "wait", "prime")),
                    chance(0.5) ? List.of() : List.of(pick(jointIds), pick(jointIds)),
                    after,
                    before,
                    chance(0.4),
                    pick(List.of(0L, 900L)),
                    work));
        }
    }
}
