package gudgeon.app.web.geometry;

import gudgeon.app.desk.CrankingQuestion;
import gudgeon.app.desk.RatioQuestion;
import gudgeon.app.desk.TeethQuestion;
import gudgeon.app.document.GeometryWords;
import gudgeon.app.document.Names;
import gudgeon.app.format.Amount;
import gudgeon.app.format.QuantityKind;
import gudgeon.app.web.page.Form;
import gudgeon.core.geometry.CombustionSpace;
import gudgeon.core.geometry.Cylinder;
import gudgeon.core.geometry.SliderCrank;
import gudgeon.core.geometry.ToothTiming;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;

/** The forms with what was typed, and the answer to the one that was sent. */
public final class GeometryView {
    private static final double DOUBT_MM = 0.02;
    private static final double DOUBT_CM3 = 0.3;

    private final String asked;
    private final Form form;
    private final List<Row> rows;
    private final List<String> words;

    private GeometryView(String asked, Form form, List<Row> rows, List<String> words) {
        this.asked = asked;
        this.form = form;
        this.rows = rows;
        this.words = words;
    }

    /** One figure of an answer. */
    public record Row(String label, String text) {}

    static GeometryView of(String asked, Form form) {
        List<Row> rows = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Answer answer = new Answer(form, rows, words);
        switch (asked) {
            case "ratio" -> answer.ratio();
            case "teeth" -> answer.teeth();
            case "cranking" -> answer.cranking();
            default -> {}
        }
        return new GeometryView(asked, form, rows, words);
    }

    public Form form() {
        return form;
    }

    /** Whether this form was sent and is sound. */
    public boolean answers(String of) {
        return asked.equals(of) && form.sound();
    }

    /** What is wrong with the form as a whole; empty when nothing is. */
    public String wrong(String of) {
        return asked.equals(of) ? form.fault("whole") : "";
    }

    public List<Row> rows() {
        return rows;
    }

    public List<String> words() {
        return words;
    }

    /** Reads the fields of one form and answers it. */
    private record Answer(Form form, List<Row> rows, List<String> words) {
        void ratio() {
            double bore = read("bore", QuantityKind.LENGTH, "");
            double stroke = read("stroke", QuantityKind.LENGTH, "");
            double chamber = 1000 * read("chamber", QuantityKind.VOLUME, "");
            double gasket = read("gasket", QuantityKind.LENGTH, "");
            double hole = form.typed("hole").isBlank() ? bore : read("hole", QuantityKind.LENGTH, "");
            double deck = read("deck", QuantityKind.LENGTH, "0 mm");
            double dish = 1000 * read("dish", QuantityKind.VOLUME, "0 ml");
            double skim = read("skim", QuantityKind.LENGTH, "0 mm");
            whole(() -> new RatioQuestion(
                            new CombustionSpace(new Cylinder(bore, stroke), chamber, gasket, hole, deck, dish),
                            new CombustionSpace.Uncertainties(
                                    DOUBT_MM, DOUBT_MM, DOUBT_CM3, DOUBT_MM, DOUBT_MM, DOUBT_MM, DOUBT_CM3),
                            new RatioQuestion.Change(skim, new Cylinder(bore, 1).area_mm2(), 0, gasket, bore))
                    .ask())
                    .ifPresent(answer -> {
                        row("Compression ratio", "%.2f ± %.2f", answer.ratio(), answer.expandedUncertainty());
                        row("Swept", "%.1f cm³", answer.sweptCm3());
                        row("Left above the piston", "%.2f cm³", answer.leftCm3());
                        row("Squish, cold", "%.2f mm", answer.squishMm());
                        if (skim > 0) {
                            row("Ratio after the skim", "%.2f", answer.after().ratio());
                            words.add(GeometryWords.CHECK_AFTER_SKIM);
                        }
                        words.add("± is about 95 %, with 0.02 mm and 0.3 ml as the standard uncertainty of each"
                                + " length and volume (typical). The largest doubt comes from: "
                                + GeometryWords.measured(answer.doubts().getFirst().of()) + ".");
                    });
        }

        void teeth() {
            int crank = form.whole("crank", "the count of the crank's wheel", 1, 500).orElse(1);
            int cam = form.whole("cam", "the count of the camshaft's wheel", 1, 500).orElse(1);
            boolean belted = !form.typed("belt").isBlank();
            int belt = belted ? form.whole("belt", "the count of the belt", 1, 1_000).orElse(1) : 0;
            if (!form.sound()) {
                return;
            }
            TeethQuestion.Answer answer = new TeethQuestion(
                            new ToothTiming(crank, cam, belted ? OptionalLong.of(belt) : OptionalLong.empty()))
                    .ask();
            words.addAll(GeometryWords.teeth(
                    answer.oneToothCrankDeg(),
                    answer.wheelMarksMeetTurns(),
                    answer.crankAndBeltMeetTurns(),
                    answer.allMeetTurns()));
            if (!answer.fourStroke()) {
                words.add("In a four-stroke the camshaft's wheel has twice the teeth of the crank's: count again.");
            }
            words.add(GeometryWords.TURN_BY_HAND);
        }

        void cranking() {
            double ratio = form.number("ratio", "the ratio", 2, 30).orElseGet(() -> {
                form.refuse("ratio", "The ratio is missing.");
                return 2;
            });
            double stroke = read("throw", QuantityKind.LENGTH, "");
            double rod = read("rod", QuantityKind.LENGTH, "");
            double closes = form.number("closes", "the closing of the inlet", -90, 170).orElseGet(() -> {
                form.refuse("closes", "When the inlet closes is missing.");
                return 0;
            });
            double height = form.number("height", "the height", -400, 6_000).orElse(0);
            whole(() -> new CrankingQuestion(new SliderCrank(stroke / 2, rod), ratio, closes, height).ask())
                    .ifPresent(answer -> {
                        row("Gauge pressure, typical", "%.1f to %.1f bar", answer.leastBar(), answer.mostBar());
                        row("Effective ratio", "%.2f", answer.effectiveRatio());
                        row("Air outside", "%.1f kPa", answer.airKPa());
                        words.add(GeometryWords.CRANKING);
                    });
        }

        private void row(String label, String format, Object... values) {
            rows.add(new Row(label, String.format(Locale.ROOT, format, values)));
        }

        private double read(String name, QuantityKind kind, String otherwise) {
            String text = form.typed(name).isBlank() ? otherwise : form.typed(name);
            if (text.isEmpty()) {
                form.refuse(name, "This is missing.");
                return Double.NaN;
            }
            try {
                return Amount.parse(text, kind, Locale.ROOT).value();
            } catch (IllegalArgumentException e) {
                form.refuse(name, Names.capital(String.valueOf(e.getMessage())) + ".");
                return Double.NaN;
            }
        }

        private <A> Optional<A> whole(Supplier<A> question) {
            if (!form.sound()) {
                return Optional.empty();
            }
            try {
                return Optional.of(question.get());
            } catch (IllegalArgumentException e) {
                form.refuse("whole", String.valueOf(e.getMessage()));
                return Optional.empty();
            }
        }
    }
}
