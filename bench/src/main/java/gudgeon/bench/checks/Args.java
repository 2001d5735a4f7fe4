package gudgeon.bench.checks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/**
 * The arguments of one row: a JSON object, and the folder in which the files that it names lie.
 *
 * @param json the object
 * @param folder where the table lies
 */
record Args(JsonNode json, Path folder) {
    /** The number under a key. */
    double number(String key) {
        return findNumber(key).orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is missing"));
    }

    /** The number under a key, or the given one. */
    double number(String key, double otherwise) {
        return findNumber(key).orElse(otherwise);
    }

    /** The whole number under a key. */
    int whole(String key) {
        double number = number(key);
        if (number != Math.rint(number) || Math.abs(number) > 1e9) {
            throw new IllegalArgumentException("\"" + key + "\" is " + number + ", a whole number is needed");
        }
        return (int) number;
    }

    /** The number under a key, if there is one. */
    OptionalDouble findNumber(String key) {
        JsonNode node = json.get(key);
        if (node == null || node.isNull()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(asNumber(key, node));
    }

    /** The text under a key. */
    String text(String key) {
        return findText(key).orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is missing"));
    }

    /** The text under a key, if there is one. */
    Optional<String> findText(String key) {
        JsonNode node = json.get(key);
        return node == null || node.isNull() ? Optional.empty() : Optional.of(node.asString());
    }

    /** The list of numbers under a key. */
    double[] numbers(String key) {
        return asNumbers(key, list(key));
    }

    /** The list of lists of numbers under a key. */
    double[][] lists(String key) {
        List<double[]> rows = new ArrayList<>();
        for (JsonNode row : list(key)) {
            rows.add(asNumbers(key, row));
        }
        return rows.toArray(double[][]::new);
    }

    /** Whether there is something under a key. */
    boolean has(String key) {
        JsonNode node = json.get(key);
        return node != null && !node.isNull();
    }

    /** The object or list under a key, as it stands. */
    JsonNode node(String key) {
        JsonNode node = json.get(key);
        if (node == null || node.isNull()) {
            throw new IllegalArgumentException("\"" + key + "\" is missing");
        }
        return node;
    }

    /** The file that a key names, beside the table. */
    Path file(String key) {
        Path file = folder.resolve(text(key)).normalize();
        if (!file.startsWith(folder.normalize())) {
            throw new IllegalArgumentException("\"" + key + "\" leads out of the folder of the table");
        }
        return file;
    }

    private JsonNode list(String key) {
        JsonNode node = node(key);
        if (!node.isArray()) {
            throw new IllegalArgumentException("\"" + key + "\" is no list");
        }
        return node;
    }

    private static double[] asNumbers(String key, JsonNode list) {
        double[] numbers = new double[list.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = asNumber(key, list.get(i));
        }
        return numbers;
    }

    private static double asNumber(String key, JsonNode node) {
        if (!node.isNumber()) {
            throw new IllegalArgumentException("\"" + key + "\" is " + node + ", a number is needed");
        }
        return node.asDouble();
    }
}
