package gudgeon.app.format;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Makes the ready operation that cracks a joint loose while its shaft is still held. What {@code crack_loose} does not say is
 * taken from the joint: zone, tools, access, engine state; the time is 60 s (typical).
 */
final class CrackLoose {
    static final String PREFIX = "crack-";
    private static final long SECONDS = 60;

    private final Scope scope;
    private final ConditionReader conditions;

    CrackLoose(Scope scope) {
        this.scope = scope;
        this.conditions = new ConditionReader(scope);
    }

    /** Whether a joint asks for it. */
    static boolean wanted(Fields joint) {
        return joint.take("crack_loose").filter(node -> !isFalse(node)).isPresent();
    }

    /** Whether a joint's body asks for it, before its keys are read. */
    static boolean wanted(Node body) {
        return body instanceof MappingNode mapping
                && mapping.getValue().stream()
                        .anyMatch(tuple -> tuple.getKeyNode() instanceof ScalarNode key
                                && key.getValue().equals("crack_loose")
                                && !isFalse(tuple.getValueNode()));
    }

    private static boolean isFalse(Node node) {
        return node instanceof ScalarNode scalar && scalar.getValue().equals("false");
    }

    Optional<Ready> read(Fields jointFields, Joint joint, JointReader.Holding holding) {
        Optional<Node> node = jointFields.take("crack_loose");
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (node.get() instanceof ScalarNode) {
            return jointFields.yes("crack_loose")
                    ? Optional.of(operation(
                            joint,
                            holding,
                            SECONDS,
                            joint.work().tools(),
                            joint.freedom().access(),
                            List.of(),
                            joint.work().zone()))
                    : Optional.empty();
        }
        Fields fields = scope.fields(node.get(), "crack_loose");
        long seconds = fields.seconds("time", Scope.WORK_TIME).orElse(SECONDS);
        List<String> tools =
                fields.has("tools") ? fields.texts("tools") : joint.work().tools();
        Condition access = fields.has("access")
                ? conditions.read(fields, "access")
                : joint.freedom().access();
        List<String> needs = scope.ready(fields, "needs");
        String zone = scope.zone(fields, joint.work().zone());
        fields.close();
        return Optional.of(operation(joint, holding, seconds, tools, access, needs, zone));
    }

    private static Ready operation(
            Joint joint,
            JointReader.Holding holding,
            long seconds,
            List<String> tools,
            Condition access,
            List<String> needs,
            String zone) {
        Set<String> all = new LinkedHashSet<>(tools);
        holding.tool().ifPresent(all::add);
        Ready.Effect effect = new Ready.Effect(
                OptionalDouble.empty(),
                List.of(),
                holding.hold(),
                joint.freedom().engineState(),
                "",
                List.of(),
                joint.work().cautions(),
                "");
        return new Ready(
                PREFIX + joint.id(),
                "Crack loose: " + joint.name(),
                ReadyKind.CRACK_LOOSE,
                seconds,
                zone,
                List.copyOf(all),
                access,
                needs,
                Optional.of(joint.id()),
                effect);
    }
}
