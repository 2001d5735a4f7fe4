package gudgeon.app.cli;

import gudgeon.app.format.MeasuredTable;
import gudgeon.app.format.QuantityKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalDouble;

/** Readings from a file. */
record MeasureFile(MeasuredTable table, MeasureOptions options) {
    private static final long MOST_BYTES = 4L << 20;

    static MeasureFile read(String file, MeasureOptions options) {
        Path path = Path.of(file);
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw options.wrong(file + " is larger than the 4 MB that are read. Maybe it is another file?");
            }
            return new MeasureFile(options.build(() -> MeasuredTable.read(file, text(path))), options);
        } catch (MalformedInputException e) {
            throw options.wrong(file + " is not saved as UTF-8 text: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    private static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + path, e);
        }
    }

    int size() {
        return table.size();
    }

    boolean has(String column) {
        return table.has(column);
    }

    String text(int row, String column) {
        return table.text(row, column);
    }

    double length(int row, String column) {
        return options.build(() -> table.quantity(row, column, QuantityKind.LENGTH, locale()));
    }

    OptionalDouble findLength(int row, String column) {
        return options.build(() -> table.find(row, column, QuantityKind.LENGTH, locale()));
    }

    double angle(int row, String column) {
        return options.build(() -> table.quantity(row, column, QuantityKind.ANGLE, locale()));
    }

    private static Locale locale() {
        return Locale.getDefault(Locale.Category.FORMAT);
    }
}
