package gudgeon.app.format;

import gudgeon.core.finding.FindingKind.Path;
import gudgeon.core.finding.Physics;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads physics.yaml. */
final class PhysicsReader {
    private final Problems problems;

    PhysicsReader(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    Optional<Physics> read(MappingNode root) {
        Fields top = Fields.of(root, "the file", problems);
        top.whole("format", 1, 1, 1);
        Fields healthy = group(top, "healthy");
        Fields compression = group(top, "compression");
        Fields wet = group(top, "wet");
        Fields hearing = group(top, "hearing");
        Map<Path, Physics.Hearing> paths = new EnumMap<>(Path.class);
        for (Path path : Path.values()) {
            Fields each = group(hearing, path.name().toLowerCase(Locale.ROOT));
            paths.put(path, new Physics.Hearing(
                    number(each, "floor"), number(each, "ceiling"), number(each, "half"), number(each, "steep")));
        }
        top.list("limits").forEach(limit -> limit(limit));
        Physics physics = new Physics(
                new Physics.Healthy(number(healthy, "rings"), number(healthy, "rings_scatter")),
                new Physics.Compression(
                        number(compression, "scatter"),
                        number(compression, "known"),
                        number(compression, "stated"),
                        number(compression, "guessed"),
                        number(compression, "run_badly"),
                        number(compression, "run_badly_by"),
                        number(compression, "run_badly_scatter")),
                new Physics.Wet(number(wet, "scatter"), number(wet, "volume_counts")),
                number(group(top, "leak"), "scatter"),
                number(group(top, "current"), "scatter"),
                number(group(top, "balance"), "scatter"),
                paths,
                number(hearing, "open_valve"));
        top.close();
        return problems.anyFault() ? Optional.empty() : Optional.of(physics);
    }

    private void limit(Node node) {
        Fields fields = Fields.of(node, "a limit", problems);
        for (String key : new String[] {"shows", "text", "unit", "source"}) {
            if (fields.text(key, "").isEmpty()) {
                problems.fault(node, "a limit has no " + key, "add " + key);
            }
        }
        number(fields, "value");
        fields.close();
    }

    private Fields group(Fields in, String key) {
        return in.need(key)
                .map(node -> Fields.of(node, key, problems))
                .orElseGet(() -> Fields.of(in.node(), key, problems));
    }

    private double number(Fields fields, String key) {
        return fields.need(key)
                .flatMap(node -> {
                    var number = fields.number(key, 0, 1000);
                    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.<Double>empty();
                })
                .orElse(1.0);
    }
}
