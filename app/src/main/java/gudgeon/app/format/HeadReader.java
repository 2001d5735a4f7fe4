package gudgeon.app.format;

import gudgeon.core.engine.Geometry;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Zone;
import gudgeon.core.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the key {@code engine} and the zones: identity and workplace. */
final class HeadReader {
    private static final Quantities.Range BORE = new Quantities.Range(10, 1000, "between 10 mm and 1000 mm");
    private static final Quantities.Range GO = new Quantities.Range(0, 8 * 3600, "at most 8 h");
    private static final Quantities.Range TOOL_CHANGE = new Quantities.Range(0, 3600, "at most 1 h, typically 20 s");
    private static final Quantities.Range LIMIT = new Quantities.Range(0.1, 100_000, "between 0.1 kg and 100000 kg");
    private static final long BENCH_SECONDS = 30;
    private static final long TOOL_CHANGE_SECONDS = 20;

    private final Problems problems;

    HeadReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * What the engine is called and how it is laid out, before any name is resolved.
     *
     * @param geometry its shape, as far as the file tells it
     * @param start the node that names the start zone, if any
     * @param base the node that names the base, if any
     */
    record Head(
            String id,
            String name,
            int cylinders,
            Map<String, String> facts,
            Geometry geometry,
            Optional<Node> start,
            Optional<Node> base,
            long toolChangeSeconds,
            List<LiftingWay> ways) {}

    Head head(Fields fields) {
        String id =
                fields.need("id").flatMap(node -> Fields.textOf(node, problems)).orElse("engine");
        if (!id.matches("[a-z][a-z0-9-]{0,59}")) {
            problems.fault(
                    fields.at("id"),
                    Wording.shown(id) + " cannot be an id",
                    "lower-case letters, digits and hyphens, starting with a letter");
        }
        String name = fields.need("name")
                .flatMap(node -> Fields.textOf(node, problems))
                .orElse(id);
        int cylinders = fields.whole("cylinders", 0, 1, 64);
        Map<String, String> facts = new LinkedHashMap<>();
        Geometry geometry = facts(fields, cylinders, facts);
        Head head = new Head(
                id,
                name,
                cylinders,
                facts,
                geometry,
                fields.take("start"),
                fields.need("base"),
                fields.seconds("tool_change", TOOL_CHANGE).orElse(TOOL_CHANGE_SECONDS),
                ways(fields));
        fields.close();
        return head;
    }

    private Geometry facts(Fields fields, int cylinders, Map<String, String> facts) {
        String cycle = fields.text("cycle", "");
        if (!cycle.isEmpty()) {
            facts.put("cycle", cycle);
        }
        firing(fields, cylinders, facts);
        Optional<Length> bore = fields.length("bore", BORE);
        Optional<Length> stroke = fields.length("stroke", BORE);
        bore.ifPresent(length -> facts.put("bore", length.typed()));
        stroke.ifPresent(length -> facts.put("stroke", length.typed()));
        Geometry geometry = new GeometryReader(problems).read(fields, bore, stroke);
        GeometryReader.tell(geometry, facts);
        fields.take("views").ifPresent(node -> {
            if (node instanceof MappingNode mapping) {
                mapping.getValue().forEach(tuple -> view(tuple, facts));
            } else {
                problems.fault(node, "the views are not a set of keys", "write { what: how it is seen }");
            }
        });
        return geometry;
    }

    private void firing(Fields fields, int cylinders, Map<String, String> facts) {
        List<String> order = new ArrayList<>();
        int most = cylinders == 0 ? 64 : cylinders;
        for (Node node : fields.list("firing")) {
            order.add(Integer.toString(Fields.wholeOf(node, 1, 1, most, problems)));
        }
        if (order.isEmpty()) {
            return;
        }
        facts.put("firing", String.join("-", order));
        if (cylinders > 0
                && (order.size() != cylinders || order.stream().distinct().count() != cylinders)) {
            problems.fault(
                    fields.at("firing"),
                    "a firing order of " + order.size() + " for " + cylinders + " cylinders",
                    "name every cylinder once");
        }
    }

    private void view(NodeTuple tuple, Map<String, String> facts) {
        if (tuple.getKeyNode() instanceof ScalarNode key) {
            Fields.textOf(tuple.getValueNode(), problems).ifPresent(text -> facts.put("views." + key.getValue(), text));
        }
    }

    private List<LiftingWay> ways(Fields fields) {
        Map<String, LiftingWay> ways = new LinkedHashMap<>();
        ways.put("alone", new LiftingWay("alone", 25, 60, "close to the body"));
        ways.put("helper", new LiftingWay("helper", 50, 120, ""));
        ways.put("hoist", new LiftingWay("hoist", 500, 1200, ""));
        fields.take("ways_of_lifting").ifPresent(node -> {
            Fields all = Fields.of(node, "ways_of_lifting", problems);
            for (LiftingWay usual : List.copyOf(ways.values())) {
                all.take(usual.name()).ifPresent(way -> ways.put(usual.name(), way(way, usual)));
            }
            all.close();
        });
        return List.copyOf(ways.values());
    }

    private LiftingWay way(Node node, LiftingWay usual) {
        Fields fields = Fields.of(node, "the way of lifting " + usual.name(), problems);
        LiftingWay way = new LiftingWay(
                usual.name(),
                fields.measure("limit", QuantityKind.MASS, LIMIT)
                        .map(Quantities.Measure::value)
                        .orElse(usual.limitKilograms()),
                fields.seconds("time", GO).orElse(usual.seconds()),
                fields.text("posture", usual.posture()));
        fields.close();
        return way;
    }

    Zone zone(Copies.Entry entry, Scope scope) {
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.ZONE, entry.id()));
        long usual = entry.id().equals(Zone.BENCH) ? BENCH_SECONDS : 0;
        Zone zone = new Zone(
                entry.id(),
                fields.text("name", Scope.nameOf(entry.id())),
                fields.seconds("go", GO).orElse(usual),
                fields.seconds("back", GO).orElse(usual),
                scope.cautions(fields, "cautions"));
        fields.close();
        return zone;
    }

    /** The bench that every engine has. */
    static Zone bench() {
        return new Zone(Zone.BENCH, Scope.nameOf(Zone.BENCH), BENCH_SECONDS, BENCH_SECONDS, List.of());
    }
}
