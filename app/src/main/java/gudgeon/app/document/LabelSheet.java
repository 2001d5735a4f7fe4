package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import java.util.List;

/** Labels for bags on A4, three beside each other, to cut apart. */
public final class LabelSheet {
    private static final int ACROSS = 3;
    private static final int MOST_LINES = 4;

    private LabelSheet() {}

    /**
     * A label.
     *
     * @param bag what is written on the bag
     * @param lines what is in it
     * @param filled whether the bag is there; otherwise the plan will need it
     */
    public record Label(String bag, List<String> lines, boolean filled) {
        public Label {
            lines = List.copyOf(lines);
        }
    }

    /** The labels as PDF. */
    public static byte[] pdf(Engine engine, List<Label> labels, Issue issue) {
        Xhtml out = new Xhtml();
        out.text("h1", "", "Labels for bags");
        out.text("p", "", "Cut along the lines. \u201cTo come\u201d is a bag that the plan will need.");
        out.open("table", "labels");
        for (int row = 0; row < labels.size(); row += ACROSS) {
            out.open("tr", "");
            for (int at = row; at < row + ACROSS; at++) {
                out.open("td", "");
                if (at < labels.size()) {
                    label(out, labels.get(at), issue);
                }
                out.close();
            }
            out.close();
        }
        out.close();
        return Paper.pdf("Labels: " + engine.identity().name(), Paper.cells(engine, issue, "Labels"), out);
    }

    private static void label(Xhtml out, Label label, Issue issue) {
        out.text("div", "label", issue.job() + (label.filled() ? "" : issue.job().isEmpty() ? "to come" : ", to come"));
        out.text("div", "big", label.bag());
        label.lines().stream().limit(MOST_LINES).forEach(line -> out.text("div", "each", line));
        if (label.lines().size() > MOST_LINES) {
            out.text("div", "each", "and " + (label.lines().size() - MOST_LINES) + " more");
        }
    }
}
