package gudgeon.app.document;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import java.util.List;

/** The cautions of a step, as bars before its action: one for what is dangerous, one for the rest. Used for one sheet. */
final class CautionBars {
    private final ToldCautions told;

    CautionBars(Cautions catalogue, Engine engine) {
        this.told = new ToldCautions(catalogue, engine);
    }

    /**
     * Writes the bars of the next step.
     *
     * @param ids the step's cautions
     * @param parts the parts that the step lifts or places; empty for other steps
     */
    void write(Xhtml out, int step, List<String> ids, List<String> parts) {
        ToldCautions.Told now = told.at(step, ids, parts);
        bar(out, "danger", "Danger. ", now.dangers(), recent(now, true), List.of());
        bar(out, "caution", "Caution. ", now.cautions(), recent(now, false), now.along());
    }

    private static List<ToldCautions.Recent> recent(ToldCautions.Told now, boolean danger) {
        return now.recent().stream()
                .filter(recent -> recent.danger() == danger)
                .toList();
    }

    private static void bar(
            Xhtml out,
            String level,
            String word,
            List<Caution> full,
            List<ToldCautions.Recent> recent,
            List<Caution> along) {
        if (full.isEmpty() && recent.isEmpty() && along.isEmpty()) {
            return;
        }
        out.open("div", level);
        full(out, word, full);
        String lead = full.isEmpty() ? word : "";
        if (!recent.isEmpty()) {
            recent(out, lead, recent);
            lead = "";
        }
        if (!along.isEmpty()) {
            out.open("div", "").text("b", "word", lead);
            out.text("With the parts that come along: ");
            out.text(String.join(
                    " ", along.stream().map(caution -> caution.title() + ".").toList()));
            out.close();
        }
        out.close();
    }

    private static void recent(Xhtml out, String word, List<ToldCautions.Recent> recent) {
        out.open("div", "").text("b", "word", word);
        String between = "";
        for (ToldCautions.Recent one : recent) {
            out.text(between)
                    .text("b", "", one.caution().title())
                    .text(" (step " + one.step() + ").");
            between = " ";
        }
        out.close();
    }

    private static void full(Xhtml out, String word, List<Caution> cautions) {
        String lead = word;
        for (Caution caution : cautions) {
            out.open("div", "each");
            if (!lead.isEmpty()) {
                out.text("b", "word", lead);
            }
            out.text("b", "", caution.title() + ".").text(" " + caution.text()).close();
            lead = "";
        }
    }
}
