package gudgeon.app.format;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads conditions: a list, all of it needed, of parts, {@code { joint: id }} and {@code { any: [ ... ] }}. */
final class ConditionReader {
    private final Scope scope;

    ConditionReader(Scope scope) {
        this.scope = scope;
    }

    /** The condition under a key; always met when the key is not there. */
    Condition read(Fields fields, String key) {
        List<Condition.Clause> clauses = new ArrayList<>();
        for (Node entry : fields.list(key)) {
            Optional<Node> any = only(entry, "any");
            if (any.isPresent()) {
                choice(any.get()).ifPresent(clauses::add);
            } else {
                for (Literal literal : literals(entry)) {
                    clauses.add(new Condition.Clause(List.of(new Condition.Alternative(List.of(literal)))));
                }
            }
        }
        return clauses.isEmpty() ? Condition.ALWAYS : new Condition(clauses);
    }

    private Optional<Condition.Clause> choice(Node any) {
        List<Condition.Alternative> alternatives = new ArrayList<>();
        for (Node entry : Fields.listOf(any, "any", scope.problems())) {
            if (entry instanceof SequenceNode together) {
                List<Literal> all = new ArrayList<>();
                together.getValue().forEach(member -> all.addAll(literals(member)));
                if (!all.isEmpty()) {
                    alternatives.add(new Condition.Alternative(all));
                }
            } else {
                literals(entry).forEach(literal -> alternatives.add(new Condition.Alternative(List.of(literal))));
            }
        }
        if (alternatives.isEmpty()) {
            if (any instanceof SequenceNode list && list.getValue().isEmpty()) {
                scope.problems().fault(any, "'any' offers no alternative", "name at least one");
            }
            return Optional.empty();
        }
        return Optional.of(new Condition.Clause(alternatives));
    }

    /** A part or a joint; several for the copies of one. */
    private List<Literal> literals(Node entry) {
        if (entry instanceof ScalarNode) {
            return scope.names().resolve(entry, Names.Kind.PART).stream()
                    .map(id -> (Literal) new Literal.PartAway(id))
                    .toList();
        }
        Optional<Node> joint = only(entry, "joint");
        if (joint.isPresent()) {
            return scope.names().resolve(joint.get(), Names.Kind.JOINT).stream()
                    .map(id -> (Literal) new Literal.JointUndone(id))
                    .toList();
        }
        scope.problems()
                .fault(
                        entry,
                        "this is not a condition",
                        "write a part id, { joint: id } or { any: [one, [two, three]] }");
        return List.of();
    }

    private static Optional<Node> only(Node entry, String key) {
        if (entry instanceof MappingNode mapping && mapping.getValue().size() == 1) {
            NodeTuple tuple = mapping.getValue().get(0);
            if (tuple.getKeyNode() instanceof ScalarNode scalar
                    && scalar.getValue().equals(key)) {
                return Optional.of(tuple.getValueNode());
            }
        }
        return Optional.empty();
    }
}
