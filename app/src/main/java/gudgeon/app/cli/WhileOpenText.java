package gudgeon.app.cli;

import gudgeon.app.desk.StripQuestion;
import gudgeon.app.document.WhileOpenWords;
import gudgeon.app.document.WhileOpenWords.Row;
import gudgeon.core.planning.OtherWays;
import gudgeon.core.planning.WhileOpen;
import java.util.List;

/** What pays while it is open, for a person. */
final class WhileOpenText {
    private static final int MOST = 25;

    private final Layout layout;

    WhileOpenText(Screen screen) {
        this.layout = new Layout(screen);
    }

    void print(StripQuestion.Reply.Planned planned, WhileOpen open, OtherWays others) {
        WhileOpenWords words = new WhileOpenWords(planned.engine());
        layout.heading(planned.engine().identity().name() + ": while "
                + GoalWords.of(planned.engine(), planned.request().target()));
        layout.blank();
        layout.paragraph(
                2,
                "What each part costs more now, there and back, and what coming back for it alone would cost from a whole"
                        + " engine. \"At least\" is a lower bound by this file; the rest are ways found. Waits are left out.");
        section("Pays now, greatest saving first", words.worthwhile(open));
        section("Off anyway: look at it, measure it, decide", words.off(open));
        List<Row> blocked = words.blocked(open);
        if (!blocked.isEmpty()) {
            layout.heading("Cannot be reached");
            blocked.forEach(row -> layout.hanging("  - ", 4, row.parts() + ". " + String.join(" ", row.blocked())));
        }
        layout.heading("The plan another way");
        List<String> ways = words.otherWays(others);
        if (ways.isEmpty()) {
            layout.line("  There is no other way: every step of the plan is in every plan.");
        }
        ways.forEach(way -> layout.hanging("  - ", 4, way + "."));
    }

    private void section(String title, List<Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        layout.heading(title);
        rows.stream().limit(MOST).forEach(row -> {
            String saves = row.saves().isEmpty() ? "" : ", saves " + row.saves();
            layout.hanging(row.nearlyFree() ? "  + " : "  - ", 4, row.parts());
            layout.paragraph(4, "now " + row.now() + "; later " + row.later() + saves);
        });
        if (rows.size() > MOST) {
            layout.line("  and " + (rows.size() - MOST) + " more; --json has them all");
        }
        if (rows.stream().anyMatch(Row::nearlyFree)) {
            layout.line("  + costs a tenth or less of coming back");
        }
    }
}
