package gudgeon.app.cli;

import gudgeon.app.document.MeasureFigures;
import gudgeon.app.document.MeasureRemarks;
import gudgeon.app.document.MeasureWords;
import gudgeon.app.format.PlainJson;
import gudgeon.core.measuring.Contribution;
import gudgeon.core.measuring.DecisionRule;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Remark;
import gudgeon.core.measuring.Sheet;
import java.util.List;
import java.util.Locale;

/** Answers to readings, as text or JSON. */
final class MeasureText {
    private static final int MOST_PLACES = 4;

    private final Screen screen;
    private final MeasureOptions options;

    MeasureText(Screen screen, MeasureOptions options) {
        this.screen = screen;
        this.options = options;
    }

    /**
     * What a command answers as JSON.
     *
     * @param request what was asked, every default made explicit
     * @param sheet values, verdicts, remarks
     */
    private record Answer(Object request, Told sheet) {}

    /** A sheet whose remarks name their kind. */
    private record Told(String of, List<Judged> judged, List<ToldRemark> remarks) {}

    /** @param kind common size, read again ... */
    private record ToldRemark(String kind, Remark said) {
        static ToldRemark of(Remark remark) {
            String kind = remark.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ");
            return new ToldRemark(kind.toLowerCase(Locale.ROOT), remark);
        }
    }

    /** Prints an answer. */
    int print(Object request, Sheet sheet) {
        if (options.json()) {
            screen.out()
                    .print(PlainJson.text(new Answer(
                            request,
                            new Told(
                                    sheet.of(),
                                    sheet.judged(),
                                    sheet.remarks().stream().map(ToldRemark::of).toList()))));
            return Exit.DONE;
        }
        MeasureFigures figures = options.figures();
        MeasureWords words = new MeasureWords(figures);
        Layout layout = new Layout(screen);
        String of = "";
        for (Judged judged : sheet.judged()) {
            if (!judged.of().equals(of)) {
                of = judged.of();
                layout.heading(capital(of));
            }
            value(layout, words, judged);
        }
        remarks(layout, new MeasureRemarks(figures), sheet.remarks());
        if (sheet.judged().stream().anyMatch(judged -> judged.verdict().isPresent())) {
            layout.paragraph(0, "Judged by " + MeasureWords.rule(options.rule()) + ".", Ink.SOFT);
        }
        return Exit.DONE;
    }

    private void value(Layout layout, MeasureWords words, Judged judged) {
        var trait = judged.derived().trait();
        String value = String.format(
                Locale.ROOT,
                "%-20s %s",
                MeasureWords.trait(trait),
                words.figures().value(trait, judged.derived().estimate()));
        List<String> from = judged.derived().from();
        String places = from.size() > MOST_PLACES
                ? from.size() + " places"
                : String.join(
                        " · ",
                        from.stream()
                                .map(place -> MeasureWords.place(trait, place))
                                .toList());
        layout.line("  " + value
                + (from.isEmpty() || places.equals(judged.of()) ? "" : Ink.SOFT.on(screen, "   " + places)));
        judged.verdict().ifPresent(verdict -> {
            layout.paragraph(4, words.verdict(trait, verdict), ink(verdict.outcome()));
            words.settling(verdict).forEach(way -> layout.paragraph(4, way));
        });
        if (options.budget()) {
            for (Contribution line : judged.derived().estimate().budget().largestFirst()) {
                layout.withFigure(
                        "      ",
                        6,
                        MeasureWords.source(line.source()),
                        words.figures().component(trait, line.component()),
                        Ink.SOFT);
            }
        }
    }

    private static void remarks(Layout layout, MeasureRemarks words, List<Remark> remarks) {
        if (!remarks.isEmpty()) {
            layout.blank();
        }
        for (Remark remark : remarks) {
            words.words(remark).forEach(sentence -> layout.hanging("- ", 2, sentence));
        }
    }

    private static Ink ink(DecisionRule.Outcome outcome) {
        return switch (outcome) {
            case WITHIN -> Ink.GOOD;
            case BEYOND -> Ink.DANGER;
            case TOO_CLOSE -> Ink.CAUTION;
        };
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
