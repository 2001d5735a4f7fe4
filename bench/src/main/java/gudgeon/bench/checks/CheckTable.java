package gudgeon.bench.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** Tables of outside values: every CSV file that has the columns {@code function}, {@code args}, {@code value} and a tolerance. */
final class CheckTable {
    private static final CsvMapper CSV = new CsvMapper();
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private CheckTable() {}

    /** The rows of every such table in a folder, files by name, rows as they stand; other CSV files are passed over. */
    static List<CheckRow> inFolder(Path folder) {
        List<Path> files;
        try (Stream<Path> list = Files.list(folder)) {
            files = list.filter(file -> file.getFileName().toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the folder " + folder, e);
        }
        List<CheckRow> rows = new ArrayList<>();
        for (Path file : files) {
            rows.addAll(inFile(file));
        }
        return rows;
    }

    private static List<CheckRow> inFile(Path file) {
        List<CheckRow> rows = new ArrayList<>();
        try (MappingIterator<Map<String, String>> lines = CSV.readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(file.toFile())) {
            while (lines.hasNext()) {
                Map<String, String> cells = lines.next();
                if (!cells.containsKey("function") || !cells.containsKey("args")) {
                    return List.of();
                }
                rows.add(row(file, rows.size() + 1, cells));
            }
        } catch (JacksonException e) {
            throw new IllegalArgumentException(file.getFileName() + " is no table: " + e.getOriginalMessage(), e);
        }
        return rows;
    }

    private static CheckRow row(Path file, int number, Map<String, String> cells) {
        String place = file.getFileName() + ", row " + number;
        String function = cell(cells, "function");
        String args = cell(cells, "args");
        Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
        try {
            return new CheckRow(
                    place,
                    cell(cells, "id"),
                    cell(cells, "source"),
                    cell(cells, "provenance"),
                    function,
                    new Args(JSON.readTree(args.isEmpty() ? "{}" : args), folder),
                    values(cell(cells, "value")),
                    tolerance(cells, "abs_tol"),
                    tolerance(cells, "rel_tol"));
        } catch (JacksonException | NumberFormatException e) {
            throw new IllegalArgumentException(place + ": args or value cannot be read: " + e.getMessage(), e);
        }
    }

    private static String cell(Map<String, String> cells, String column) {
        return cells.getOrDefault(column, "").strip();
    }

    private static double[] values(String cell) {
        if (cell.isEmpty()) {
            return new double[0];
        }
        JsonNode node = JSON.readTree(cell);
        if (!node.isArray()) {
            return new double[] {node.asDouble()};
        }
        double[] values = new double[node.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = node.get(i).asDouble();
        }
        return values;
    }

    private static OptionalDouble tolerance(Map<String, String> cells, String column) {
        String text = cell(cells, column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
