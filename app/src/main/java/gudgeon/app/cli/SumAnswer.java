package gudgeon.app.cli;

import gudgeon.app.desk.Written;
import gudgeon.app.document.AnswerRow;
import gudgeon.app.format.PlainJson;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Asks a question that needs no job, and prints its answer: rows for a person, or JSON. */
final class SumAnswer {
    private static final int LABEL = 30;

    private final Screen screen;
    private final boolean json;

    SumAnswer(Screen screen, boolean json) {
        this.screen = screen;
        this.json = json;
    }

    /** How numbers are written where this machine stands: with a decimal comma or without. */
    static Written written() {
        Locale here = Locale.getDefault(Locale.Category.FORMAT);
        return new Written(DecimalFormatSymbols.getInstance(here).getDecimalSeparator() == ',');
    }

    /**
     * Asks and prints.
     *
     * @param question throws IllegalArgumentException for what cannot be read
     * @param words the answer in rows
     * @param map the answer as JSON
     */
    <A> int print(
            Function<Written, A> question,
            Function<A, List<AnswerRow>> words,
            Function<A, Map<String, @Nullable Object>> map) {
        A answer;
        try {
            answer = question.apply(written());
        } catch (IllegalArgumentException e) {
            screen.err().println("gudgeon: " + e.getMessage());
            return Exit.INPUT;
        }
        if (json) {
            screen.out().print(PlainJson.text(map.apply(answer)));
        } else {
            rows(words.apply(answer));
        }
        return Exit.DONE;
    }

    private void rows(List<AnswerRow> rows) {
        Layout layout = new Layout(screen);
        int widest = rows.stream().mapToInt(row -> row.label().length()).max().orElse(0);
        int indent = Math.min(widest, LABEL) + 4;
        for (AnswerRow row : rows) {
            if (row.label().isEmpty()) {
                layout.paragraph(2, row.text(), Ink.SOFT);
            } else if (row.label().length() > LABEL) {
                layout.paragraph(2, row.label());
                layout.paragraph(indent, row.text());
            } else {
                String lead =
                        "  " + row.label() + " ".repeat(indent - 2 - row.label().length());
                layout.hanging(lead, indent, row.text());
            }
        }
    }
}
