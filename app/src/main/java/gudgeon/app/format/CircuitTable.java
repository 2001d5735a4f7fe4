package gudgeon.app.format;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the circuits and makes a ready operation of every drain. */
final class CircuitTable {
    static final String PREFIX = "drain-";

    /** Typical: plug out, run out, plug in. */
    private static final long SECONDS = 600;

    private static final Quantities.Range CAPACITY = new Quantities.Range(0.001, 500, "between 1 ml and 500 l");

    private final Scope scope;
    private final Map<String, Circuit> circuits = new LinkedHashMap<>();
    private final Map<String, Drain> drains = new LinkedHashMap<>();
    private final Set<String> staying = new LinkedHashSet<>();

    CircuitTable(Scope scope) {
        this.scope = scope;
    }

    private record Drain(
            List<String> circuits, OptionalDouble height_mm, long seconds, String spec, List<String> hazards) {}

    List<Circuit> circuits() {
        return List.copyOf(circuits.values());
    }

    /** A wet circuit that is opened has a way to be emptied or made safe, or the file says that its fluid stays in. */
    void wetOnesCanBeEmptied(List<Joint> joints) {
        Set<String> opened = new LinkedHashSet<>();
        joints.forEach(joint -> opened.addAll(joint.freedom().opens()));
        for (Circuit circuit : circuits.values()) {
            boolean wet = switch (circuit.kind()) {
                case COOLANT, OIL, FUEL, FUEL_HIGH_PRESSURE -> true;
                case FLUID, AIR, EXHAUST, VACUUM, ELECTRIC, REFRIGERANT, HIGH_VOLTAGE, AIRBAG -> false;
            };
            boolean nothing = circuit.makeSafe().isEmpty() && circuit.drains().isEmpty();
            if (wet && nothing && opened.contains(circuit.id()) && !staying.contains(circuit.id())) {
                scope.problems()
                        .fault(
                                scope.names().at(Names.Kind.CIRCUIT, circuit.id()),
                                "the circuit " + circuit.id() + " is opened, but nothing drains it or makes it safe",
                                "add drains or make_safe, or 'stays: true' when nothing can run out");
            }
        }
    }

    /** A joint that is said to open a circuit at a height does open it. */
    void openingsAreOpened(List<Joint> joints) {
        for (Circuit circuit : circuits.values()) {
            Set<String> said = circuit.contents()
                    .map(contents -> contents.openedAt().keySet())
                    .orElse(Set.of());
            joints.stream()
                    .filter(joint -> said.contains(joint.id()))
                    .filter(joint -> !joint.freedom().opens().contains(circuit.id()))
                    .forEach(joint -> scope.problems()
                            .fault(
                                    scope.names().at(Names.Kind.CIRCUIT, circuit.id()),
                                    "the joint " + joint.id() + " does not open " + circuit.id(),
                                    "leave it out of 'opens_at', or write 'opens: [" + circuit.id() + "]' at the joint"));
        }
    }

    boolean licensed(String circuit) {
        return Optional.ofNullable(circuits.get(circuit))
                .map(known -> known.kind().licensed())
                .orElse(false);
    }

    /** The circuits that a joint is a drain of. */
    List<String> drainedBy(String joint) {
        return Optional.ofNullable(drains.get(joint)).map(Drain::circuits).orElse(List.of());
    }

    void read(Copies.Entry entry) {
        String id = entry.id();
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.CIRCUIT, id));
        for (String key : List.of("make_safe", "drains")) {
            scope.names().place(Names.Kind.CIRCUIT, id, key, fields.at(key));
        }
        List<String> hazards = scope.cautions(fields, "hazards");
        boolean stays = fields.yes("stays");
        if (stays) {
            staying.add(id);
        }
        List<String> drainIds = new ArrayList<>();
        for (Node node : fields.list("drains")) {
            drain(scope.fields(node, "a drain of " + id), id, hazards, drainIds);
        }
        if (stays && !drainIds.isEmpty()) {
            scope.problems()
                    .fault(
                            fields.at("stays"),
                            "the fluid of " + id + " stays in it, yet it has a drain",
                            "leave out 'stays' or the drains");
        }
        circuits.put(
                id,
                new Circuit(
                        id,
                        fields.text("name", Scope.nameOf(id)),
                        kind(fields, id),
                        fields.text("fluid", ""),
                        fields.volume("capacity", CAPACITY),
                        scope.ready(fields, "make_safe"),
                        drainIds,
                        hazards,
                        fields.text("bleed", ""),
                        new ContentsReader(scope, id).read(fields)));
        fields.close();
    }

    private CircuitKind kind(Fields fields, String id) {
        List<String> words =
                Arrays.stream(CircuitKind.values()).map(CircuitKind::word).toList();
        if (!fields.has("kind") && !words.contains(id)) {
            scope.problems()
                    .fault(fields.node(), fields.owner() + " has no 'kind'", "one of: " + String.join(", ", words));
        }
        String word = fields.word("kind", words.contains(id) ? id : "fluid", words);
        return Arrays.stream(CircuitKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElse(CircuitKind.FLUID);
    }

    private void drain(Fields fields, String circuit, List<String> hazards, List<String> drainIds) {
        Optional<String> joint =
                fields.need("joint").flatMap(node -> scope.names().resolveOne(node, Names.Kind.JOINT));
        OptionalDouble height_mm = fields.length("height", Scope.HEIGHT)
                .map(Length::millimetres)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        long seconds = fields.seconds("time", Scope.WORK_TIME).orElse(SECONDS);
        String spec = fields.text("spec", "");
        fields.close();
        if (joint.isEmpty()) {
            return;
        }
        if (drainIds.contains(PREFIX + joint.get())) {
            scope.problems().fault(fields.node(), joint.get() + " is a drain of " + circuit + " twice", "name it once");
            return;
        }
        drainIds.add(PREFIX + joint.get());
        drains.merge(
                joint.get(),
                new Drain(List.of(circuit), height_mm, seconds, spec, hazards),
                (a, b) -> new Drain(
                        both(a.circuits, b.circuits),
                        a.height_mm,
                        Math.max(a.seconds, b.seconds),
                        a.spec,
                        both(a.hazards, b.hazards)));
    }

    private static List<String> both(List<String> a, List<String> b) {
        List<String> all = new ArrayList<>(a);
        b.stream().filter(member -> !all.contains(member)).forEach(all::add);
        return List.copyOf(all);
    }

    /** The ready operations of all drains, once their joints are read. */
    List<Ready> operations(List<Joint> joints) {
        Map<String, Joint> byId = new LinkedHashMap<>();
        joints.forEach(joint -> byId.put(joint.id(), joint));
        List<Ready> operations = new ArrayList<>();
        drains.forEach((id, drain) -> {
            Joint joint = byId.get(id);
            if (joint != null) {
                operations.add(operation(joint, drain));
            }
        });
        return operations;
    }

    private Ready operation(Joint joint, Drain drain) {
        List<String> names = drain.circuits.stream()
                .map(circuit -> Objects.requireNonNull(circuits.get(circuit)).name())
                .toList();
        List<Spend> spends = new ArrayList<>(joint.makeup().spends());
        if (!drain.spec.isEmpty()) {
            spends.add(new Spend(drain.spec, 1, OptionalDouble.empty()));
        }
        List<String> cautions = both(drain.hazards, joint.work().cautions());
        Ready.Effect effect = new Ready.Effect(
                drain.height_mm,
                List.of(),
                joint.freedom().hold(),
                joint.freedom().engineState(),
                "",
                Spends.merged(spends),
                cautions,
                joint.work().note());
        return new Ready(
                PREFIX + joint.id(),
                "Drain: " + String.join(" and ", names) + ", at " + joint.name(),
                ReadyKind.DRAIN,
                drain.seconds,
                joint.work().zone(),
                joint.work().tools(),
                joint.freedom().access(),
                joint.freedom().needs(),
                Optional.of(joint.id()),
                effect);
    }
}
