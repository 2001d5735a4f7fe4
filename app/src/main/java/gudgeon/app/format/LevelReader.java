package gudgeon.app.format;

import gudgeon.core.engine.Level;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads how far the engine can be opened: for each depth the parts that are off then. */
final class LevelReader {
    private final Scope scope;
    private final String base;

    LevelReader(Scope scope, String base) {
        this.scope = scope;
        this.base = base;
    }

    /** From the outside inward, whatever the order of the file. */
    List<Level> read(Node node) {
        Fields fields = scope.fields(node, "levels");
        List<Level> levels = new ArrayList<>();
        for (Level.Depth depth : Level.Depth.values()) {
            if (fields.has(depth.word())) {
                List<String> parts = parts(fields, depth.word());
                if (!parts.isEmpty()) {
                    levels.add(new Level(depth, parts));
                }
            }
        }
        fields.close();
        return levels;
    }

    private List<String> parts(Fields fields, String key) {
        List<Node> members = fields.list(key);
        if (members.isEmpty() && fields.take(key).stream().allMatch(SequenceNode.class::isInstance)) {
            scope.problems()
                    .fault(fields.at(key), "the level " + key + " names no part", "name the parts that are off then");
        }
        for (Node member : members) {
            if (Fields.textOf(member, scope.problems()).orElse("").equals(base)) {
                scope.problems()
                        .fault(
                                member,
                                "the level " + key + " names the base, which never moves",
                                "name the parts that are off then");
            }
        }
        return scope.names().resolveAll(members, Names.Kind.PART);
    }
}
