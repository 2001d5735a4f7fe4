package gudgeon.app.format;

import gudgeon.core.finding.TestKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** Reads tests.yaml. */
final class TestReader {
    private static final List<String> FIGURES = List.of("compression", "wet ratio", "leak", "current", "balance");

    private final Problems problems;
    private final Map<String, Double> ready = new LinkedHashMap<>();

    TestReader(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    /** Minutes that each state saves when it is there. */
    Map<String, Double> ready() {
        return ready;
    }

    Map<String, TestKind> read(MappingNode root) {
        Fields top = Fields.of(root, "the file", problems);
        top.whole("format", 1, 1, 1);
        for (NodeTuple tuple : FaultReader.members(top, "ready", problems)) {
            Fields all = Fields.of(top.take("ready").orElse(root), "ready", problems);
            all.number(FaultReader.id(tuple), 0, 600).ifPresent(minutes -> ready.put(FaultReader.id(tuple), minutes));
        }
        Map<String, TestKind> tests = new LinkedHashMap<>();
        for (NodeTuple tuple : FaultReader.members(top, "tests", problems)) {
            String id = FaultReader.id(tuple);
            tests.put(id, test(id, tuple.getValueNode()));
        }
        top.close();
        return tests;
    }

    private TestKind test(String id, Node node) {
        Fields fields = Fields.of(node, id, problems);
        String name = fields.text("name", id);
        String shows = fields.text("shows", "");
        List<String> needs = fields.texts("needs");
        TestKind.Effort effort = effort(id, fields);
        Optional<TestKind.Figure> reads = fields.has("reads")
                ? Optional.of(TestKind.Figure.valueOf(fields.word("reads", "compression", FIGURES)
                        .toUpperCase(Locale.ROOT)
                        .replace(' ', '_')))
                : Optional.empty();
        TestKind.Badly badly =
                new TestKind.Badly(fields.number("badly", 0, 0.5).orElse(0.05), fields.texts("badly_when"));
        List<String> cautions = cautions(fields);
        fields.close();
        return new TestKind(id, name, shows, needs, effort, reads, badly, cautions);
    }

    private TestKind.Effort effort(String id, Fields fields) {
        List<String> states = fields.texts("ready");
        states.stream()
                .filter(state -> !ready.containsKey(state))
                .forEach(state -> problems.fault(
                        fields.at("ready"), id + " wants " + Wording.shown(state), "one of: " + String.join(", ", ready.keySet())));
        Optional<TestKind.OnDiesel> diesel = fields.take("diesel").map(node -> {
            Fields other = Fields.of(node, id + " on a diesel", problems);
            TestKind.OnDiesel onDiesel = new TestKind.OnDiesel(
                    other.number("minutes", 0, 600).orElse(0), other.number("each", 0, 600).orElse(0), cautions(other));
            other.close();
            return onDiesel;
        });
        return new TestKind.Effort(
                fields.texts("tools"),
                fields.number("minutes", 0, 600).orElse(0),
                fields.number("each", 0, 600).orElse(0),
                states,
                fields.text("engine", ""),
                diesel);
    }

    private List<String> cautions(Fields fields) {
        List<String> cautions = fields.texts("cautions");
        cautions.stream()
                .filter(caution -> Cautions.catalogue().find(caution).isEmpty())
                .forEach(caution -> problems.fault(
                        fields.at("cautions"),
                        Wording.shown(caution) + " is no caution",
                        Wording.maybe(caution, Cautions.catalogue().ids(), "name one of cautions.yaml")));
        return cautions;
    }
}
