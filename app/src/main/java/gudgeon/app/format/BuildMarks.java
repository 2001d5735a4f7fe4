package gudgeon.app.format;

import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads marks of the build: a joint, {@code joint/snug}, {@code joint/2}, a ready operation, a check. */
final class BuildMarks {
    private BuildMarks() {}

    static List<String> read(Fields fields, String key, Scope scope) {
        List<String> marks = new ArrayList<>();
        for (Node node : fields.list(key)) {
            String text = Fields.textOf(node, scope.problems()).orElse("");
            int slash = text.indexOf('/');
            if (slash < 0) {
                marks.addAll(scope.names().resolve(node, Names.Kind.JOINT, Names.Kind.READY, Names.Kind.CHECK));
                continue;
            }
            String suffix = text.substring(slash);
            if (!suffix.matches("/(snug|[1-9]\\d?)")) {
                scope.problems()
                        .fault(
                                node,
                                Wording.shown(text) + " is not a mark of the build",
                                "write joint, joint/snug or joint/2");
                continue;
            }
            Node joint = new ScalarNode(
                    node.getTag(),
                    true,
                    text.substring(0, slash),
                    ((ScalarNode) node).getScalarStyle(),
                    node.getStartMark(),
                    node.getEndMark());
            scope.names().resolve(joint, Names.Kind.JOINT).forEach(id -> marks.add(id + suffix));
        }
        return marks;
    }
}
