package gudgeon.app.format;

import gudgeon.core.finding.FindingKind;
import gudgeon.core.finding.FindingKind.Path;
import gudgeon.core.finding.FindingKind.Strength;
import gudgeon.core.finding.Place;
import gudgeon.core.finding.Support;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** Reads findings.yaml. */
final class FindingReader {
    private static final Pattern STRENGTH =
            Pattern.compile("(\\d?\\.?\\d{1,6}) (read|physics|practice|judgement)(?:, ([a-z ]+))?");
    private static final List<String> PATHS =
            List.of("exhaust", "intake", "crankcase", "coolant", "neighbour", "outside");

    private final Problems problems;

    FindingReader(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    Map<String, FindingKind> read(MappingNode root, Collection<String> faults, Collection<String> tests) {
        Fields top = Fields.of(root, "the file", problems);
        top.whole("format", 1, 1, 1);
        Map<String, FindingKind> findings = new LinkedHashMap<>();
        for (NodeTuple tuple : FaultReader.members(top, "findings", problems)) {
            String id = FaultReader.id(tuple);
            findings.put(id, finding(id, tuple.getValueNode(), faults, tests));
        }
        top.close();
        return findings;
    }

    private FindingKind finding(String id, Node node, Collection<String> faults, Collection<String> tests) {
        Fields fields = Fields.of(node, id, problems);
        String test = fields.word("test", "", new ArrayList<>(tests));
        Place at = fields.word("where", "engine", List.of("cylinder", "engine")).equals("engine")
                ? Place.ENGINE
                : Place.CYLINDER;
        String ask = fields.text("ask", "");
        if (ask.isEmpty()) {
            problems.fault(node, id + " asks nothing", "add ask: what is answered with yes or no");
        }
        Optional<Path> heard = fields.has("heard")
                ? Optional.of(Path.valueOf(fields.word("heard", "exhaust", PATHS).toUpperCase(Locale.ROOT)))
                : Optional.empty();
        double alarm = fields.number("false_alarm", 0, 0.9).orElse(0);
        Map<String, Strength> raised = raised(fields, faults);
        fields.close();
        return new FindingKind(id, test, at, ask, alarm, heard, raised);
    }

    private Map<String, Strength> raised(Fields fields, Collection<String> faults) {
        Map<String, Strength> raised = new LinkedHashMap<>();
        Optional<Node> node = fields.take("raised_by");
        if (node.isEmpty() || !(node.get() instanceof MappingNode mapping)) {
            return raised;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            String fault = FaultReader.id(tuple);
            if (!faults.contains(fault)) {
                problems.fault(
                        tuple.getKeyNode(),
                        Wording.shown(fault) + " is no fault",
                        Wording.maybe(fault, faults, "name one of faults.yaml"));
            }
            strength(tuple.getValueNode()).ifPresent(strength -> raised.put(fault, strength));
        }
        return raised;
    }

    private Optional<Strength> strength(Node node) {
        String text = Fields.textOf(node, problems).orElse("");
        Matcher matcher = STRENGTH.matcher(text);
        if (!matcher.matches() || !(Double.parseDouble(matcher.group(1)) > 0)
                || !(Double.parseDouble(matcher.group(1)) < 1)) {
            problems.fault(
                    node,
                    Wording.shown(text) + " is no strength",
                    "a chance between 0 and 1, then read, physics, practice or judgement, as in '0.7 practice'");
            return Optional.empty();
        }
        String needs = matcher.group(3);
        return Optional.of(new Strength(
                Double.parseDouble(matcher.group(1)),
                Support.valueOf(matcher.group(2).toUpperCase(Locale.ROOT)),
                needs == null ? List.of() : List.of(needs)));
    }
}
