package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import java.util.List;

/** What is to be measured, on paper: a line a place, to fill by hand and type in afterwards. */
public final class MeasuringSheet {
    private MeasuringSheet() {}

    /**
     * A feature to read.
     *
     * @param which what several alike are called; empty when there is one
     * @param places where
     */
    public record Line(Feature feature, String which, List<String> places) {
        public Line {
            places = List.copyOf(places);
        }
    }

    /**
     * Features read with one instrument.
     *
     * @param instrument its name
     */
    public record Group(String instrument, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /** The sheet as PDF. */
    public static byte[] pdf(Engine engine, List<Group> groups, Issue issue) {
        return Paper.pdf(
                "Measuring sheet: " + engine.identity().name(),
                Paper.cells(engine, issue, "Measuring sheet"),
                body(engine, groups));
    }

    private static Xhtml body(Engine engine, List<Group> groups) {
        Xhtml out = new Xhtml();
        out.text("h1", "", engine.identity().name());
        out.text("div", "lead", "To measure, instrument by instrument");
        out.text(
                "p",
                "",
                "Clean first: a white cloth stays white, passages are proven clear. Leave part and instrument together until both are"
                        + " as warm, and write down how warm. Read each place twice; read one place five times once. Part ....... °C"
                        + "  Standard ....... °C");
        for (Group group : groups) {
            out.text("h2", "", Names.capital(group.instrument()));
            for (Line line : group.lines()) {
                feature(out, line);
            }
        }
        return out;
    }

    private static void feature(Xhtml out, Line line) {
        out.openStyled("div", "together", "margin-top:4mm");
        out.text("div", "do", line.feature().name() + (line.which().isEmpty() ? "" : ", each " + line.which()));
        out.text("div", "for", limits(line.feature()));
        out.open("table", "list");
        for (String place : line.places()) {
            out.open("tr", "");
            out.openStyled("td", "", "width:62mm").text(place).close();
            for (int i = 0; i < 3; i++) {
                out.openStyled("td", "r", "width:34mm")
                        .text(".................... mm")
                        .close();
            }
            out.close();
        }
        out.close().close();
    }

    private static String limits(Feature feature) {
        return Names.capital(Figures.list(feature.limits().stream()
                .map(limit -> limit.name()
                        + limit.min().map(min -> " from " + min.typed()).orElse("")
                        + limit.max().map(max -> " up to " + max.typed()).orElse("")
                        + (limit.typical() ? " (typical)" : ""))
                .toList()));
    }
}
