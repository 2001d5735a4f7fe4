package gudgeon.app.document;

import gudgeon.core.book.Facts;
import java.util.List;
import java.util.stream.Collectors;

/** Readings for a spreadsheet: one line each, in the form in which they are read in again. */
public final class ReadingsCsv {
    private static final String HEADINGS = "feature,place,reading mm,instrument,part °C,standard °C,at";

    private ReadingsCsv() {}

    /** The table; lines end as in RFC 4180. Source: [RFC4180]. */
    public static String of(List<Facts.ReadingAt> readings) {
        return HEADINGS + "\r\n"
                + readings.stream()
                        .flatMap(reading -> reading.said().shown_mm().stream().map(shown -> line(reading, shown)))
                        .collect(Collectors.joining());
    }

    private static String line(Facts.ReadingAt reading, double shown_mm) {
        List<Double> warmth = reading.said().warmth_C();
        return String.join(
                        ",",
                        cell(reading.said().feature()),
                        cell(reading.said().place()),
                        java.math.BigDecimal.valueOf(shown_mm).toPlainString(),
                        cell(reading.said().instrument()),
                        warmth.isEmpty() ? "" : Figures.plain(warmth.getFirst()),
                        warmth.size() < 2 ? "" : Figures.plain(warmth.getLast()),
                        reading.at().toString())
                + "\r\n";
    }

    private static String cell(String text) {
        return text.matches("[^\",\r\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
