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
        if (!now.dangers().isEmpty()) {
            out.open("div", "danger");
            full(out, "Danger. ", now.dangers());
            out.close();
        }
        if (!now.cautions().isEmpty() || !now.recent().isEmpty() || !now.along().isEmpty()) {
            out.open("div", "caution");
            full(out, "Caution. ", now.cautions());
            String word = now.cautions().isEmpty() ? "Caution. " : "";
            now.recent()
                    .forEach(recent -> out.open("div", "")
                            .text("b", "word", word)
                            .text("b", "", recent.caution().title())
                            .text(", as at step " + recent.step() + ".")
                            .close());
            if (!now.along().isEmpty()) {
                out.open("div", "").text("b", "word", now.recent().isEmpty() ? word : "");
                out.text("With the parts that come along: ");
                out.text(String.join(
                        " ", now.along().stream().map(c -> c.title() + ".").toList()));
                out.close();
            }
            out.close();
        }
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
