package gudgeon.app.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Makes the copies that {@code each} asks for: every {@code #} in the id and in the texts inside becomes the number of the
 * copy. Bounded: what the copies of one file hold together is counted.
 */
final class Copies {
    static final int MOST_COPIES = 100;
    private static final int MOST_NODES = 500_000;

    /** "(1 inlet, 2 exhaust)" behind a name with the number of its copy. */
    private static final Pattern EXPLAINED = Pattern.compile("(?<=#) \\(([0-9]+ [^,()]+(?:, [0-9]+ [^,()]+)+)\\)");

    private final int cylinders;
    private final Problems problems;
    private int nodesLeft = MOST_NODES;

    /**
     * @param cylinders what {@code each: cylinder} means; 0 when the file does not say
     */
    Copies(int cylinders, Problems problems) {
        this.cylinders = cylinders;
        this.problems = problems;
    }

    /**
     * One thing of a section.
     *
     * @param id its id, with the number of the copy in it
     * @param key where its id stands
     * @param body its keys, with the number of the copy in them
     * @param number the copy, from 1; 0 when there is no {@code each}
     */
    record Entry(String id, Node key, Node body, int number) {}

    /** The things of a section in file order, copies in place. */
    List<Entry> of(Node section, String what) {
        List<Entry> entries = new ArrayList<>();
        if (!(section instanceof MappingNode mapping)) {
            problems.fault(section, "the " + what + "s are not a set of keys", "write one 'id: { ... }' on each line");
            return entries;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key) {
                add(key, tuple.getValueNode(), entries);
            }
        }
        return entries;
    }

    private void add(ScalarNode key, Node body, List<Entry> entries) {
        Optional<Node> each = each(body);
        if (each.isEmpty()) {
            entries.add(new Entry(key.getValue(), key, body, 0));
            return;
        }
        int count = count(each.get());
        String template = key.getValue().contains("#") ? key.getValue() : key.getValue() + "-#";
        for (int number = 1; number <= count; number++) {
            Node copy = numbered(body, Integer.toString(number));
            if (nodesLeft < 0) {
                problems.fault(each.get(), "the copies of this file are too many", "make fewer copies");
                return;
            }
            entries.add(new Entry(template.replace("#", Integer.toString(number)), key, copy, number));
        }
    }

    private static Optional<Node> each(Node body) {
        if (body instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key
                        && key.getValue().equals("each")) {
                    return Optional.of(tuple.getValueNode());
                }
            }
        }
        return Optional.empty();
    }

    private int count(Node each) {
        if (each instanceof ScalarNode scalar && scalar.getValue().equals("cylinder")) {
            if (cylinders == 0) {
                problems.fault(
                        each, "'each: cylinder', but the engine does not say how many", "add cylinders to engine");
            }
            return cylinders;
        }
        return Fields.wholeOf(each, 1, 1, MOST_COPIES, problems);
    }

    /** A text of one copy. What brackets say of every copy, "# (1 inlet, 2 exhaust)", is said of this one only: "1 (inlet)". */
    private static String own(String text, String number) {
        Matcher list = EXPLAINED.matcher(text);
        if (!list.find()) {
            return text.replace("#", number);
        }
        Matcher mine = Pattern.compile("(?:^|, )" + number + " ([^,]+)").matcher(list.group(1));
        return list.replaceAll(mine.find() ? Matcher.quoteReplacement(" (" + mine.group(1) + ")") : "")
                .replace("#", number);
    }

    private Node numbered(Node node, String number) {
        nodesLeft--;
        if (nodesLeft < 0) {
            return node;
        }
        return switch (node) {
            case ScalarNode scalar ->
                scalar.getValue().contains("#")
                        ? new ScalarNode(
                                scalar.getTag(),
                                true,
                                own(scalar.getValue(), number),
                                scalar.getScalarStyle(),
                                scalar.getStartMark(),
                                scalar.getEndMark())
                        : scalar;
            case SequenceNode sequence ->
                new SequenceNode(
                        sequence.getTag(),
                        true,
                        sequence.getValue().stream()
                                .map(child -> numbered(child, number))
                                .toList(),
                        sequence.getFlowStyle(),
                        sequence.getStartMark(),
                        sequence.getEndMark());
            case MappingNode mapping ->
                new MappingNode(
                        mapping.getTag(),
                        true,
                        mapping.getValue().stream()
                                .map(tuple -> new NodeTuple(tuple.getKeyNode(), numbered(tuple.getValueNode(), number)))
                                .toList(),
                        mapping.getFlowStyle(),
                        mapping.getStartMark(),
                        mapping.getEndMark());
            default -> node;
        };
    }
}
