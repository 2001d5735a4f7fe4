package gudgeon.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/** Rows of figures, for people as a table and for programs as JSON. */
public final class Table {
    private final List<Map<String, Object>> rows = new ArrayList<>();

    /** A row being filled, its columns in order. */
    public Map<String, Object> row() {
        Map<String, Object> row = new LinkedHashMap<>();
        rows.add(row);
        return row;
    }

    /** One JSON list of objects. */
    public String json() {
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(rows);
    }

    /** A table in Markdown; columns are those of the first row. */
    public String markdown() {
        if (rows.isEmpty()) {
            return "";
        }
        List<String> columns = List.copyOf(rows.getFirst().keySet());
        StringBuilder out = new StringBuilder();
        out.append("| ").append(String.join(" | ", columns)).append(" |\n|");
        columns.forEach(column -> out.append("---|"));
        out.append('\n');
        for (Map<String, Object> row : rows) {
            out.append('|');
            columns.forEach(
                    column -> out.append(' ').append(cell(row.getOrDefault(column, ""))).append(" |"));
            out.append('\n');
        }
        return out.toString();
    }

    private static String cell(Object value) {
        return switch (value) {
            case Boolean yes -> yes ? "yes" : "no";
            case Double number -> String.format(Locale.ROOT, number < 10 ? "%.2f" : "%.0f", number);
            default -> value.toString();
        };
    }

    /** Machine, date and load, as they stand above every result. */
    public static String circumstances() {
        return String.format(
                Locale.ROOT,
                "%s, %s processors, %s, Java %s, at most %d MB of heap; load average %.1f at the end.%n",
                LocalDate.now(java.time.ZoneOffset.UTC),
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("os.name") + " " + System.getProperty("os.arch"),
                System.getProperty("java.version"),
                Runtime.getRuntime().maxMemory() >> 20,
                Cpu.load());
    }

    /** Writes a result into a folder, making it when there is none. */
    public static void write(Path folder, String name, String text) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + folder.resolve(name), e);
        }
    }
}
