package gudgeon.app.format;

import gudgeon.core.quantity.Length;
import gudgeon.core.quantity.Mass;
import gudgeon.core.quantity.Volume;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The keys of one mapping, taken one by one. What was never asked for is unknown and becomes a fault at {@link #close}.
 */
final class Fields {
    private static final int LONGEST_TEXT = 2000;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}(\\.\\d{1,6})?");

    private final MappingNode node;
    private final String owner;
    private final Problems problems;
    private final Map<String, NodeTuple> tuples = new LinkedHashMap<>();
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(MappingNode node, String owner, Problems problems) {
        this.node = node;
        this.owner = owner;
        this.problems = problems;
        for (NodeTuple tuple : node.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key) {
                tuples.putIfAbsent(key.getValue(), tuple);
            }
        }
    }

    /** The keys of a node that must be a mapping; an empty set of keys and a fault when it is not. */
    static Fields of(Node node, String owner, Problems problems) {
        if (node instanceof MappingNode mapping) {
            return new Fields(mapping, owner, problems);
        }
        problems.fault(node, owner + " is not a set of keys", "write { key: value } or one key on each line below");
        return new Fields(
                new MappingNode(
                        node.getTag(),
                        true,
                        List.of(),
                        org.snakeyaml.engine.v2.common.FlowStyle.AUTO,
                        node.getStartMark(),
                        node.getEndMark()),
                owner,
                problems);
    }

    MappingNode node() {
        return node;
    }

    String owner() {
        return owner;
    }

    boolean has(String key) {
        asked.add(key);
        return tuples.containsKey(key);
    }

    /** The place of a key, of the mapping when the key is not there. */
    Optional<Mark> at(String key) {
        NodeTuple tuple = tuples.get(key);
        return tuple == null ? node.getStartMark() : tuple.getKeyNode().getStartMark();
    }

    Optional<Node> take(String key) {
        asked.add(key);
        NodeTuple tuple = tuples.get(key);
        if (tuple == null) {
            return Optional.empty();
        }
        if (tuple.getValueNode() instanceof ScalarNode scalar
                && scalar.isPlain()
                && scalar.getValue().isEmpty()) {
            problems.fault(
                    tuple.getKeyNode(),
                    "nothing stands after " + Wording.shown(key),
                    "give it a value, or take the key out");
            return Optional.empty();
        }
        return Optional.of(tuple.getValueNode());
    }

    /** A value that must be there. */
    Optional<Node> need(String key) {
        if (!has(key)) {
            problems.fault(node, owner + " has no " + Wording.shown(key), "add " + key);
            return Optional.empty();
        }
        return take(key);
    }

    /** Text; the fallback when the key is not there. */
    String text(String key, String fallback) {
        return take(key).flatMap(value -> textOf(value, problems)).orElse(fallback);
    }

    /** One of some words; the fallback when the key is not there or says something else. */
    String word(String key, String fallback, List<String> words) {
        Optional<Node> value = take(key);
        if (value.isEmpty()) {
            return fallback;
        }
        String text = textOf(value.get(), problems).orElse(fallback);
        if (!words.contains(text)) {
            problems.fault(
                    value.get(),
                    Wording.shown(text) + " is not known as " + key,
                    Wording.maybe(text, words, "one of: " + String.join(", ", words)));
            return fallback;
        }
        return text;
    }

    /** true or false; false when the key is not there. */
    boolean yes(String key) {
        Optional<Node> value = take(key);
        if (value.isEmpty()) {
            return false;
        }
        String text = textOf(value.get(), problems).orElse("false");
        if (!text.equals("true") && !text.equals("false")) {
            problems.fault(
                    value.get(),
                    Wording.shown(text) + " is neither true nor false",
                    "write true or leave " + key + " out");
        }
        return text.equals("true");
    }

    /** A whole number within bounds; the fallback when the key is not there. */
    int whole(String key, int fallback, int from, int to) {
        return take(key)
                .map(value -> wholeOf(value, fallback, from, to, problems))
                .orElse(fallback);
    }

    /** A plain number of at most {@code most}, for prices and factors. */
    OptionalDouble number(String key, double least, double most) {
        Optional<Node> value = take(key);
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        String text = textOf(value.get(), problems).orElse("");
        if (!NUMBER.matcher(text).matches() || Double.parseDouble(text) < least || Double.parseDouble(text) > most) {
            problems.fault(
                    value.get(),
                    Wording.shown(text) + " is not a plain number for " + key,
                    "between " + plain(least) + " and " + plain(most) + ", with a decimal point, without a unit");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }

    static String plain(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The members of a list; none when the key is not there. */
    List<Node> list(String key) {
        return take(key).map(value -> listOf(value, key, problems)).orElse(List.of());
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (Node member : list(key)) {
            textOf(member, problems).ifPresent(texts::add);
        }
        return texts;
    }

    Optional<Length> length(String key, Quantities.Range range) {
        return measure(key, QuantityKind.LENGTH, range).map(measure -> new Length(measure.value(), measure.typed()));
    }

    Optional<Mass> mass(String key, Quantities.Range range) {
        return measure(key, QuantityKind.MASS, range).map(measure -> new Mass(measure.value(), measure.typed()));
    }

    Optional<Volume> volume(String key, Quantities.Range range) {
        return measure(key, QuantityKind.VOLUME, range).map(measure -> new Volume(measure.value(), measure.typed()));
    }

    /** Whole seconds, rounded. */
    Optional<Long> seconds(String key, Quantities.Range range) {
        return measure(key, QuantityKind.TIME, range).map(measure -> Math.round(measure.value()));
    }

    Optional<Quantities.Measure> measure(String key, QuantityKind kind, Quantities.Range range) {
        return take(key).flatMap(value -> Quantities.read(value, kind, range, problems));
    }

    /** Says which keys are unknown. */
    void close() {
        tuples.forEach((key, tuple) -> {
            if (!asked.contains(key) && !key.equals("<<")) {
                problems.fault(
                        tuple.getKeyNode(),
                        "the key " + Wording.shown(key) + " is not known in " + owner,
                        Wording.maybe(key, asked, "known: " + String.join(", ", asked)));
            }
        });
    }

    static Optional<String> textOf(Node node, Problems problems) {
        if (!(node instanceof ScalarNode scalar)) {
            problems.fault(node, "a list or a set of keys where a text belongs", "write plain text");
            return Optional.empty();
        }
        String text = scalar.getValue().strip();
        if (text.length() > LONGEST_TEXT) {
            problems.fault(node, "a text of " + text.length() + " characters", "at most " + LONGEST_TEXT);
            return Optional.empty();
        }
        return Optional.of(text);
    }

    static int wholeOf(Node node, int fallback, int from, int to, Problems problems) {
        String text = textOf(node, problems).orElse("");
        if (!text.matches("\\d{1,9}") || Integer.parseInt(text) < from || Integer.parseInt(text) > to) {
            problems.fault(
                    node,
                    Wording.shown(text) + " is not a whole number that can stand here",
                    "from " + from + " to " + to);
            return fallback;
        }
        return Integer.parseInt(text);
    }

    static List<Node> listOf(Node node, String key, Problems problems) {
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue();
        }
        problems.fault(node, Wording.shown(key) + " is not a list", "put it in brackets: [ ... ]");
        return List.of();
    }
}
