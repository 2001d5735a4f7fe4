package gudgeon.app.cli;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Cautions before a step: in full the first time in a plan, by their title from then on. */
final class CautionLines {
    private final Screen screen;
    private final Layout layout;
    private final Set<String> told = new HashSet<>();

    CautionLines(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    void print(int indent, List<String> ids) {
        for (Caution caution : Cautions.catalogue().ranked(ids)) {
            String word = caution.level().word().toUpperCase(Locale.ROOT);
            Ink ink = caution.level() == Caution.Level.DANGER ? Ink.DANGER : Ink.CAUTION;
            String lead = " ".repeat(indent) + ink.on(screen, word) + "  ";
            int inner = indent + word.length() + 2;
            if (told.add(caution.id())) {
                layout.hanging(lead, inner, caution.title() + ".", Ink.STRONG);
                layout.paragraph(inner, caution.text());
            } else {
                layout.hanging(lead, inner, caution.title() + ", see above.");
            }
        }
    }
}
