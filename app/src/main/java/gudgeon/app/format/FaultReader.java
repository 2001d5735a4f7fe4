package gudgeon.app.format;

import gudgeon.core.finding.Depth;
import gudgeon.core.finding.Fault;
import gudgeon.core.finding.Grade;
import gudgeon.core.finding.Leak;
import gudgeon.core.finding.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads faults.yaml. */
final class FaultReader {
    private static final List<String> PLACES = List.of("cylinder", "neighbours", "bank", "engine");
    private static final List<String> DEPTHS = List.of("nothing open", "covers", "head off", "bottom end");

    private final Problems problems;

    FaultReader(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    Map<String, Fault> read(MappingNode root) {
        Fields top = Fields.of(root, "the file", problems);
        top.whole("format", 1, 1, 1);
        Map<String, Fault> faults = new LinkedHashMap<>();
        Map<String, Node> places = new LinkedHashMap<>();
        for (NodeTuple tuple : members(top, "faults", problems)) {
            String id = id(tuple);
            fault(id, tuple.getValueNode()).ifPresent(fault -> faults.put(id, fault));
            places.put(id, tuple.getValueNode());
        }
        top.close();
        faults.forEach((id, fault) -> fault.chance().with().keySet().stream()
                .filter(other -> !faults.containsKey(other))
                .forEach(other -> problems.fault(
                        places.getOrDefault(id, root),
                        id + " is likelier with " + other + ", which is no fault",
                        Wording.maybe(other, faults.keySet(), "name one of this file"))));
        return faults;
    }

    static List<NodeTuple> members(Fields top, String key, Problems problems) {
        Optional<Node> node = top.need(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof MappingNode mapping) {
            return mapping.getValue();
        }
        problems.fault(node.get(), Wording.shown(key) + " is not a set of keys", "write one name on each line below");
        return List.of();
    }

    static String id(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
    }

    private Optional<Fault> fault(String id, Node node) {
        Fields fields = Fields.of(node, id, problems);
        Fault.Words words = new Fault.Words(fields.text("name", ""), fields.text("shows", ""), fields.text("mend", ""));
        if (words.name().isEmpty() || words.mend().isEmpty()) {
            problems.fault(node, id + " has no name or nothing that mends it", "add name and mend");
        }
        String at = fields.word("at", "cylinder", PLACES);
        Fault.Repair repair = new Fault.Repair(
                fields.texts("parts"),
                depth(fields, "seen"),
                depth(fields, "mended"),
                fields.number("hours", 0, 200).orElse(0));
        double chance = fields.number("chance", 0.000001, 0.4).orElse(0);
        List<Grade> grades = new ArrayList<>();
        for (Node grade : fields.list("grades")) {
            grade(id, grade).ifPresent(grades::add);
        }
        Map<String, Double> with = with(fields);
        List<String> needs = fields.texts("needs");
        boolean each = fields.yes("each");
        if (chance <= 0) {
            problems.fault(node, id + " has no chance", "add chance, above 0");
            fields.close();
            return Optional.empty();
        }
        fields.close();
        try {
            return Optional.of(new Fault(
                    id,
                    words,
                    Place.valueOf(at.toUpperCase(Locale.ROOT)),
                    needs,
                    new Fault.Chance(chance, with),
                    repair,
                    each,
                    grades));
        } catch (IllegalArgumentException e) {
            problems.fault(node, String.valueOf(e.getMessage()), "");
            return Optional.empty();
        }
    }

    private static Depth depth(Fields fields, String key) {
        return Depth.values()[DEPTHS.indexOf(fields.word(key, DEPTHS.getFirst(), DEPTHS))];
    }

    private Map<String, Double> with(Fields fields) {
        Map<String, Double> with = new LinkedHashMap<>();
        fields.take("with").ifPresent(node -> {
            Fields others = Fields.of(node, "with", problems);
            for (NodeTuple tuple : others.node().getValue()) {
                String other = id(tuple);
                others.number(other, 0.000001, 0.9).ifPresent(chance -> with.put(other, chance));
            }
        });
        return with;
    }

    private Optional<Grade> grade(String id, Node node) {
        Fields fields = Fields.of(node, "a grade of " + id, problems);
        Leak leak = new Leak(
                area(fields, "exhaust"),
                area(fields, "intake"),
                area(fields, "rings"),
                area(fields, "coolant"),
                area(fields, "neighbour"),
                area(fields, "outside"),
                area(fields, "oilway"));
        double share = fields.number("share", 0.000001, 1).orElse(0);
        Grade grade = new Grade(
                share > 0 ? share : 1,
                leak,
                fields.number("fill", 0.01, 2).orElse(1),
                fields.number("ratio", 0.1, 2).orElse(1),
                fields.number("oil_closes", 0, 1).orElse(0),
                fields.number("power", 0, 1.5).orElse(1),
                fields.number("scatter", 0, 3).orElse(0.3));
        fields.close();
        if (share <= 0) {
            problems.fault(node, "a grade of " + id + " has no share", "add share; the shares of a fault sum to 1");
            return Optional.empty();
        }
        return Optional.of(grade);
    }

    private static double area(Fields fields, String key) {
        return fields.number(key, 0, 1000).orElse(0);
    }
}
