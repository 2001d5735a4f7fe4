package gudgeon.app.cli;

import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Cautions before a step: in full, or as fully as {@link ToldCautions} says. */
final class CautionLines {
    private final Screen screen;
    private final Layout layout;

    CautionLines(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    /** All of them in full, for a step that stands alone. */
    void print(int indent, List<String> ids) {
        Cautions.catalogue().ranked(ids).forEach(caution -> full(indent, caution));
    }

    /** What a step of a plan tells. */
    void print(int indent, ToldCautions.Told now) {
        now.dangers().forEach(caution -> full(indent, caution));
        now.cautions().forEach(caution -> full(indent, caution));
        now.recent()
                .forEach(recent -> line(
                        indent,
                        recent.caution().level(),
                        recent.caution().title() + ", as at step " + recent.step() + "."));
        if (!now.along().isEmpty()) {
            String titles =
                    now.along().stream().map(caution -> caution.title() + ".").collect(Collectors.joining(" "));
            line(indent, Caution.Level.CAUTION, "With the parts that come along: " + titles);
        }
    }

    private void full(int indent, Caution caution) {
        line(indent, caution.level(), caution.title() + ".", Ink.STRONG);
        layout.paragraph(inner(indent, caution.level()), caution.text());
    }

    private void line(int indent, Caution.Level level, String text, Ink... ink) {
        Ink mark = level == Caution.Level.DANGER ? Ink.DANGER : Ink.CAUTION;
        String lead = " ".repeat(indent) + mark.on(screen, word(level)) + "  ";
        layout.hanging(lead, inner(indent, level), text, ink);
    }

    private static int inner(int indent, Caution.Level level) {
        return indent + word(level).length() + 2;
    }

    private static String word(Caution.Level level) {
        return level.word().toUpperCase(Locale.ROOT);
    }
}
