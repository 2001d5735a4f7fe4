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

    /** Danger first; of each level first what stands in full at an earlier step, in one bar, then what is new. */
    void write(Xhtml out, List<String> ids, int step) {
        for (Caution.Level level : Caution.Level.values()) {
            List<Caution> ofLevel = catalogue.ranked(ids).stream()
                    .filter(caution -> caution.level() == level)
                    .toList();
            List<Caution> known = ofLevel.stream()
                    .filter(caution -> writtenOut.containsKey(caution.id()))
                    .toList();
            if (!known.isEmpty()) {
                bar(out, level);
                for (Caution caution : known) {
                    out.text("b", "", caution.title()).text(", see step " + writtenOut.get(caution.id()) + ". ");
                }
                out.close();
            }
            for (Caution caution : ofLevel) {
                if (writtenOut.putIfAbsent(caution.id(), step) == null) {
                    bar(out, level);
                    out.text("b", "", caution.title() + ".")
                            .text(" " + caution.text())
                            .close();
                }
            }
        }
    }

    private static void bar(Xhtml out, Caution.Level level) {
        boolean danger = level == Caution.Level.DANGER;
        out.open("div", danger ? "danger" : "caution");
        out.text("b", "word", danger ? "Danger. " : "Caution. ");
    }
}
