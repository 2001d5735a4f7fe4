package gudgeon.app.document;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The cautions of a step, as bars before its action. A caution is written out where a sheet first has it; later steps name
 * it and say where it is written out. Used for one sheet.
 */
final class CautionBars {
    private final Cautions catalogue;
    private final Map<String, Integer> writtenOut = new HashMap<>();

    CautionBars(Cautions catalogue) {
        this.catalogue = catalogue;
    }

    void write(Xhtml out, List<String> ids, int step) {
        for (Caution caution : catalogue.ranked(ids)) {
            Integer before = writtenOut.putIfAbsent(caution.id(), step);
            boolean danger = caution.level() == Caution.Level.DANGER;
            out.open("div", danger ? "danger" : "caution");
            out.text("b", "word", danger ? "Danger. " : "Caution. ");
            out.text("b", "", caution.title() + ".");
            out.text(before == null ? " " + caution.text() : " See step " + before + ".");
            out.close();
        }
    }
}
