package gudgeon.app.cli;

import gudgeon.app.desk.FeaturePlaces;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.MeasuredFeature;
import gudgeon.app.desk.MeasuringList;
import gudgeon.app.document.Figures;
import gudgeon.app.document.MeasureFigures;
import gudgeon.app.document.MeasureRemarks;
import gudgeon.app.document.MeasureWords;
import gudgeon.app.document.Names;
import gudgeon.core.measuring.Judged;
import java.util.List;

/** What was and is to be measured at a job, as text. */
final class JobMeasureText {
    private final Screen screen;
    private final Layout layout;
    private final MeasureFigures figures;

    JobMeasureText(Screen screen, Job job) {
        this.screen = screen;
        this.layout = new Layout(screen);
        this.figures = new MeasureFigures(job.facts().setting().means().units().equals("inch"));
    }

    /** What is left, by instrument; then what was read, the worst first. */
    void list(MeasuringList list) {
        list.now().forEach((instrument, features) -> {
            layout.heading(Names.capital(instrument));
            features.forEach(this::line);
        });
        if (!list.done().isEmpty()) {
            layout.heading("Read");
            list.done().forEach(this::sheet);
        }
        if (!list.later().isEmpty()) {
            layout.heading("Out of reach yet");
            list.later().forEach(this::line);
        }
    }

    private void line(MeasuredFeature one) {
        FeaturePlaces places = new FeaturePlaces(one.feature());
        layout.line("  " + one.feature().name()
                + Ink.SOFT.on(screen, "  [" + one.feature().id() + "]"));
        String each = places.which().map(which -> "each " + which + ": ").orElse("");
        layout.paragraph(6, each + String.join(" · ", one.left()), Ink.SOFT);
    }

    /** Values and verdicts of one feature. */
    void sheet(MeasuredFeature one) {
        MeasureWords words = new MeasureWords(figures);
        layout.line("  " + one.feature().name());
        if (one.access().readDirty()) {
            layout.paragraph(
                    4, "Read before it was clean: dirt and oil read as size. Clean it and read it again.", Ink.CAUTION);
        }
        for (Judged judged : one.sheet().map(sheet -> sheet.judged()).orElse(List.of())) {
            var trait = judged.derived().trait();
            String of = judged.of().equals(one.feature().name()) ? "" : judged.of() + ", ";
            layout.line("    " + of + MeasureWords.trait(trait) + " "
                    + figures.value(trait, judged.derived().estimate()));
            judged.verdict().ifPresent(verdict -> {
                layout.paragraph(6, words.verdict(trait, verdict));
                words.settling(verdict).forEach(way -> layout.paragraph(6, way));
            });
        }
        MeasureRemarks remarks = new MeasureRemarks(figures);
        one.sheet()
                .ifPresent(sheet -> sheet.remarks().stream()
                        .flatMap(remark -> remarks.words(remark).stream())
                        .distinct()
                        .forEach(sentence -> layout.hanging("    - ", 6, sentence)));
        if (!one.left().isEmpty() && new FeaturePlaces(one.feature()).which().isEmpty()) {
            layout.paragraph(
                    4,
                    Figures.count(one.left().size(), "place") + " left: " + String.join(" · ", one.left()),
                    Ink.SOFT);
        }
    }
}
