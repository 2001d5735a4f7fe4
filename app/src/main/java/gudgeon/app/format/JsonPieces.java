package gudgeon.app.format;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Spend;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The pieces that all JSON documents share: conditions, what is destroyed, lists of ids, the layout. */
final class JsonPieces {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .build()
            .writer()
            .with(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private JsonPieces() {}

    static ObjectNode object() {
        return NODES.objectNode();
    }

    static ArrayNode array() {
        return NODES.arrayNode();
    }

    /** The document as text, indented, the same on every machine, ending with a line feed. */
    static String text(ObjectNode document) {
        return WRITER.writeValueAsString(document) + "\n";
    }

    static ArrayNode strings(List<String> texts) {
        ArrayNode array = array();
        texts.forEach(array::add);
        return array;
    }

    static ArrayNode numbers(List<Integer> numbers) {
        ArrayNode array = array();
        numbers.forEach(array::add);
        return array;
    }

    /** The number, whole numbers without a point; null when there is none. */
    static void putNumber(ObjectNode object, String key, OptionalDouble value) {
        if (value.isEmpty()) {
            object.putNull(key);
        } else {
            putNumber(object, key, value.getAsDouble());
        }
    }

    static void putNumber(ObjectNode object, String key, double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            object.put(key, (long) value);
        } else {
            object.put(key, value);
        }
    }

    /** The text; null when it is empty. */
    static void putText(ObjectNode object, String key, String text) {
        if (text.isEmpty()) {
            object.putNull(key);
        } else {
            object.put(key, text);
        }
    }

    /**
     * A condition: a list, all needed, of lists of alternatives, each a list of literals {@code {"part": id}} (out of the way)
     * or {@code {"joint": id}} (undone).
     */
    static ArrayNode condition(Condition condition) {
        ArrayNode all = array();
        for (Condition.Clause clause : condition.clauses()) {
            ArrayNode choices = all.addArray();
            for (Condition.Alternative alternative : clause.alternatives()) {
                ArrayNode literals = choices.addArray();
                for (Literal literal : alternative.literals()) {
                    literals.addObject()
                            .put(
                                    switch (literal) {
                                        case Literal.PartAway part -> "part";
                                        case Literal.JointUndone joint -> "joint";
                                    },
                                    literal.id());
                }
            }
        }
        return all;
    }

    /** What is destroyed: {@code [{spec, count, price}]}, the price of one, null when it is not known. */
    static ArrayNode spends(List<Spend> spends) {
        ArrayNode array = array();
        for (Spend spend : spends) {
            ObjectNode object = array.addObject().put("spec", spend.spec()).put("count", spend.count());
            putNumber(object, "price", spend.priceEach());
        }
        return array;
    }

    /** The money that is destroyed, as far as prices are known. */
    static double value(List<Spend> spends) {
        return spends.stream()
                .mapToDouble(spend -> spend.count() * spend.priceEach().orElse(0))
                .sum();
    }

    /** One fastener with its place, {@code [x, y]} in millimetres or null. */
    static ObjectNode fastener(Fastener fastener) {
        ObjectNode object =
                object().put("id", fastener.id()).put("kind", fastener.kind().word());
        putText(object, "thread", fastener.thread());
        putNumber(
                object,
                "length",
                fastener.length()
                        .map(length -> OptionalDouble.of(length.millimetres()))
                        .orElse(OptionalDouble.empty()));
        OptionalDouble x_mm = fastener.place().x_mm();
        OptionalDouble y_mm = fastener.place().y_mm();
        if (x_mm.isPresent() && y_mm.isPresent()) {
            object.putArray("position").add(x_mm.getAsDouble()).add(y_mm.getAsDouble());
        } else {
            object.putNull("position");
        }
        putText(object, "drive", fastener.drive());
        putText(object, "once", fastener.once());
        return object;
    }
}
