package gudgeon.app.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table of readings as a spreadsheet writes it: one line of headings, then one line a reading. Cells are parted by commas, or
 * by semicolons, and then a comma may be the decimal sign. A heading carries its unit: {@code height um}, {@code size_mm}, {@code
 * angle [deg]}. Lines that begin with # are left out.
 */
public final class MeasuredTable {
    private static final int MOST_ROWS = 20_000;
    private static final Pattern HEADING = Pattern.compile("(.*?)[\\s_]*[\\[(]?([^\\s_\\[\\]()]+)[\\])]?");

    private final String file;
    private final char separator;
    private final List<String> headings;
    private final List<Row> rows;

    private MeasuredTable(String file, char separator, List<String> headings, List<Row> rows) {
        this.file = file;
        this.separator = separator;
        this.headings = List.copyOf(headings);
        this.rows = List.copyOf(rows);
    }

    /** A line with its number in the file. */
    private record Row(int line, List<String> cells) {}

    /**
     * Reads a table.
     *
     * @param file its name, for messages
     * @throws IllegalArgumentException when there are no headings, no line below, or far too many
     */
    public static MeasuredTable read(String file, String text) {
        List<String> lines = text.replace("\ufeff", "").lines().toList();
        char separator = ',';
        List<String> headings = List.of();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isBlank() || line.stripLeading().startsWith("#")) {
                continue;
            }
            if (headings.isEmpty()) {
                separator = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
                headings = cells(line, separator);
            } else {
                rows.add(new Row(i + 1, cells(line, separator)));
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(file + ": no line of readings below a line of headings");
        }
        if (rows.size() > MOST_ROWS) {
            throw new IllegalArgumentException(
                    file + ": " + rows.size() + " lines, more than the " + MOST_ROWS + " that are read");
        }
        return new MeasuredTable(file, separator, headings, rows);
    }

    /** How many readings. */
    public int size() {
        return rows.size();
    }

    /** Whether there is a column of such a name. */
    public boolean has(String name) {
        return column(name).isPresent();
    }

    /**
     * The text of a cell; empty when there is no such column.
     *
     * @param row from zero
     */
    public String text(int row, String name) {
        return column(name).map(column -> cell(row, column)).orElse("");
    }

    /**
     * The quantity of a cell, in the unit that its kind is held in.
     *
     * @throws IllegalArgumentException with file, line, and what would be right
     */
    public double quantity(int row, String name, QuantityKind kind, Locale locale) {
        return find(row, name, kind, locale)
                .orElseThrow(() -> new IllegalArgumentException(where(row) + "the column " + name + " is empty here"));
    }

    /** The quantity of a cell; empty when the cell is. */
    public OptionalDouble find(int row, String name, QuantityKind kind, Locale locale) {
        int column = column(name)
                .orElseThrow(() ->
                        new IllegalArgumentException(file + ": no column " + name + " with its unit. Its headings are: "
                                + String.join(", ", headings) + ". Maybe " + name + " " + unitOf(kind) + "?"));
        String cell = cell(row, column);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        boolean bare = cell.matches("[+-]?[0-9.,]+([eE][+-]?[0-9]+)?");
        String unit = unit(headings.get(column), name);
        if (bare && unit.isEmpty()) {
            throw new IllegalArgumentException(file + ": the heading " + headings.get(column) + " has no unit. Maybe "
                    + name + " " + unitOf(kind) + "?");
        }
        String plain = separator == ';' ? cell.replace(',', '.') : cell;
        try {
            return OptionalDouble.of(Amount.parse(bare ? decimal(plain) + " " + unit : plain, kind, locale)
                    .value());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(where(row) + e.getMessage(), e);
        }
    }

    /** The unit of the kind's example: mm of "12 mm". */
    private static String unitOf(QuantityKind kind) {
        return kind.example().replaceFirst(".* ", "");
    }

    private static String decimal(String number) {
        return number.matches(".*[eE].*") ? new java.math.BigDecimal(number).toPlainString() : number;
    }

    /** The cell as a person would type it, with the unit of its heading; empty when there is no such column or nothing in it. */
    public String typed(int row, String name) {
        return column(name)
                .map(column -> {
                    String cell = cell(row, column);
                    String plain = separator == ';' ? cell.replace(',', '.') : cell;
                    return plain.matches("[+-]?[0-9.]+") ? plain + " " + unit(headings.get(column), name) : plain;
                })
                .orElse("");
    }

    /** File and line, for a message about a row. */
    public String where(int row) {
        return file + ":" + rows.get(row).line() + ": ";
    }

    private String cell(int row, int column) {
        List<String> cells = rows.get(row).cells();
        return column < cells.size() ? cells.get(column).strip() : "";
    }

    /** The column whose heading is the name, or the name and a unit. */
    private Optional<Integer> column(String name) {
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i).strip().toLowerCase(Locale.ROOT);
            if (heading.equals(name) || !unit(heading, name).isEmpty()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static String unit(String heading, String name) {
        Matcher matcher = HEADING.matcher(heading.strip());
        boolean named = matcher.matches() && matcher.group(1).strip().equalsIgnoreCase(name);
        return named ? matcher.group(2) : "";
    }

    private static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char sign : line.toCharArray()) {
            if (sign == '"') {
                quoted = !quoted;
            } else if (sign == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(sign);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
