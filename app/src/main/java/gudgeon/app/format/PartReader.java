package gudgeon.app.format;

import gudgeon.core.engine.Part;
import gudgeon.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads one part. */
final class PartReader {
    private static final Quantities.Range MASS = new Quantities.Range(0.0001, 2000, "between 0.1 g and 2000 kg");
    private static final List<String> KEEP = List.of("position", "orientation", "code", "mate");

    private final Scope scope;
    private final ConditionReader conditions;

    PartReader(Scope scope) {
        this.scope = scope;
        this.conditions = new ConditionReader(scope);
    }

    Part read(Copies.Entry entry) {
        String id = entry.id();
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.PART, id));
        fields.has("each");
        scope.names().place(Names.Kind.PART, id, "lift", fields.at("lift"));
        String name = fields.text("name", Scope.nameOf(id));
        Optional<Mass> mass = fields.mass("mass", MASS);
        Part part = new Part(id, name, fields.text("group", ""), mass, conditions.read(fields, "lift"), care(fields));
        fields.close();
        return part;
    }

    private Part.Care care(Fields fields) {
        return new Part.Care(
                fields.text("material", ""),
                fields.text("rest", ""),
                keep(fields),
                fields.text("supplied_as", ""),
                scope.cautions(fields, "cautions"),
                fields.text("note", ""),
                fields.yes("photo"),
                fields.texts("also"));
    }

    private List<String> keep(Fields fields) {
        List<String> keep = new ArrayList<>();
        for (Node node : fields.list("keep")) {
            String word = Fields.textOf(node, scope.problems()).orElse("");
            if (KEEP.contains(word)) {
                keep.add(word);
            } else {
                scope.problems()
                        .fault(
                                node,
                                Wording.shown(word) + " is not known as keep",
                                "one of: " + String.join(", ", KEEP));
            }
        }
        return keep;
    }
}
