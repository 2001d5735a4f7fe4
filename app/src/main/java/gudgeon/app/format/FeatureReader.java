package gudgeon.app.format;

import gudgeon.core.engine.Feature;
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
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads one feature: what is measured, where, and the limits with who set them. */
final class FeatureReader {
    private static final Quantities.Range SIZE = new Quantities.Range(-2000, 5000, "between -2 m and 5 m");

    private static final String NEW = "new";
    private static final String WEAR = "wear";

    private final Scope scope;
    private final ConditionReader conditions;

    FeatureReader(Scope scope) {
        this.scope = scope;
        this.conditions = new ConditionReader(scope);
    }

    Feature read(Copies.Entry entry) {
        String id = entry.id();
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.FEATURE, id));
        fields.has("each");
        scope.names().place(Names.Kind.FEATURE, id, "access", fields.at("access"));
        String name = fields.text("name", Scope.nameOf(id));
        String kind = fields.need("kind")
                .flatMap(node -> Fields.textOf(node, scope.problems()))
                .orElse("");
        Feature feature = new Feature(
                id,
                name,
                kind,
                parts(fields),
                conditions.read(fields, "access"),
                fields.length("nominal", SIZE),
                take(fields),
                limits(fields));
        fields.close();
        return feature;
    }

    private List<String> parts(Fields fields) {
        if (fields.has("part") == fields.has("parts")) {
            scope.problems()
                    .fault(
                            fields.node(),
                            fields.owner() + " needs 'part' or 'parts', one of them",
                            "name what is measured");
        }
        Optional<Node> part = fields.take("part");
        return part.map(node -> scope.names().resolve(node, Names.Kind.PART))
                .orElseGet(() -> scope.parts(fields, "parts"));
    }

    private Map<String, List<String>> take(Fields fields) {
        Map<String, List<String>> take = new LinkedHashMap<>();
        Optional<Node> node = fields.take("take");
        if (node.isEmpty()) {
            return take;
        }
        if (!(node.get() instanceof MappingNode mapping)) {
            scope.problems().fault(node.get(), "take is not a set of keys", "write take: { what: value or list }");
            return take;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key) {
                take.put(key.getValue(), values(tuple.getValueNode()));
            }
        }
        return take;
    }

    private List<String> values(Node node) {
        List<Node> members = node instanceof SequenceNode list ? list.getValue() : List.of(node);
        return members.stream()
                .map(member -> Fields.textOf(member, scope.problems()))
                .flatMap(Optional::stream)
                .toList();
    }

    private List<Feature.Limit> limits(Fields fields) {
        List<Feature.Limit> limits = new ArrayList<>();
        Optional<Node> node = fields.take("limits");
        if (node.isEmpty()) {
            return limits;
        }
        if (!(node.get() instanceof MappingNode mapping)) {
            scope.problems()
                    .fault(
                            node.get(),
                            "limits is not a set of keys",
                            "write limits: { wear: { max: 0.10 mm, basis: typical } }");
            return limits;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key) {
                limits.add(limit(key.getValue(), scope.fields(tuple.getValueNode(), "the limit " + key.getValue())));
            }
        }
        wearBeyondNew(node.get(), limits);
        return limits;
    }

    /** What is allowed worn reaches beyond what is allowed new, on every side that both speak of. */
    private void wearBeyondNew(Node at, List<Feature.Limit> limits) {
        for (Feature.Limit fresh : named(limits, NEW)) {
            for (Feature.Limit worn : named(limits, WEAR)) {
                if (fresh.max().isPresent() && worn.max().isPresent()) {
                    beyond(at, "max", "above", worn.max().get(), fresh.max().get());
                }
                if (fresh.min().isPresent() && worn.min().isPresent()) {
                    beyond(at, "min", "below", worn.min().get(), fresh.min().get());
                }
            }
        }
    }

    private void beyond(Node at, String side, String word, Length worn, Length fresh) {
        int compared = Double.compare(worn.millimetres(), fresh.millimetres());
        if (word.equals("above") ? compared <= 0 : compared >= 0) {
            scope.problems()
                    .fault(
                            at,
                            "the limit wear has a " + side + " of " + worn.typed() + " that is not " + word + " the "
                                    + side + " of new, " + fresh.typed(),
                            "a worn part is allowed more than a new one");
        }
    }

    private static List<Feature.Limit> named(List<Feature.Limit> limits, String name) {
        return limits.stream().filter(limit -> limit.name().equals(name)).toList();
    }

    private Feature.Limit limit(String name, Fields fields) {
        Optional<Length> min = fields.length("min", SIZE);
        Optional<Length> max = fields.length("max", SIZE);
        if (!fields.has("min") && !fields.has("max")) {
            scope.problems().fault(fields.node(), "the limit " + name + " has neither min nor max", "add one or both");
        }
        if (min.isPresent()
                && max.isPresent()
                && min.get().millimetres() >= max.get().millimetres()) {
            scope.problems()
                    .fault(
                            fields.at("max"),
                            "the limit " + name + " has a max of " + max.get().typed()
                                    + " that is not above its min of "
                                    + min.get().typed(),
                            "min below max");
        }
        Basis basis = Basis.read(fields, scope.problems());
        fields.close();
        return new Feature.Limit(name, min, max, basis.source(), basis.typical());
    }
}
