package gudgeon.app.web.sums;

import gudgeon.app.desk.BoltTorque;
import gudgeon.app.desk.FloatQuestion;
import gudgeon.app.desk.GasketQuestion;
import gudgeon.app.desk.PairQuestion;
import gudgeon.app.desk.RingQuestion;
import gudgeon.app.desk.ShellQuestion;
import gudgeon.app.desk.ShimQuestion;
import gudgeon.app.desk.TinQuestion;
import gudgeon.app.desk.WeightQuestion;
import gudgeon.app.desk.WrenchQuestion;
import gudgeon.app.desk.Written;
import gudgeon.app.document.AnswerRow;
import gudgeon.app.document.BoltWords;
import gudgeon.app.document.FitWords;
import gudgeon.app.document.TinWords;
import gudgeon.app.web.picture.LadderPicture;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** What can be worked out at the bench without a job: what each asks for, and who answers it. */
enum SumKind {
    TIN(
            "Mixed tin",
            "which bolt belongs in which hole; where one left over may be missing",
            List.of(
                    Field.lines("bolts", "The bolts, a kind on each line", "8 x M6x1 x 20 mm"),
                    Field.lines(
                            "holes",
                            "The holes, a kind on each line",
                            "cover edge: 4 x M6x1, clamped 8 mm, aluminium 16 mm deep"),
                    Field.line("left", "Left over, if one is", "M6x1 x 20 mm; it is counted above, too"),
                    Field.lines("seen", "Holes you have looked at and found filled", "cover edge: 3"),
                    Field.lines("cost", "What it costs to open some again", "cover edge: 20 min"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            TinQuestion.Answer answer = new TinQuestion(
                            typed.lines("bolts"),
                            typed.lines("holes"),
                            typed.line("left"),
                            typed.lines("seen"),
                            typed.lines("cost"))
                    .ask(written);
            List<AnswerRow> rows = new ArrayList<>();
            answer.leftover().ifPresent(left -> rows.addAll(TinWords.leftover(answer.tin(), left)));
            rows.addAll(TinWords.ways(answer.tin()));
            rows.addAll(TinWords.pairs(answer.tin()));
            return SumResult.of(rows);
        }
    },
    SHIMS(
            "Shims",
            "valve clearances: shims change places, the fewest are bought",
            List.of(
                    Field.lines(
                            "valves", "The valves: clearance and shim, one on each line", "inlet 1: 0.10 mm, 2.70 mm"),
                    Field.line("wanted", "Clearance wanted", "0.15 mm to 0.25 mm"),
                    Field.line("box", "Spare shims, if any", "2.60 mm, 2.65 mm"),
                    Field.line("shop", "Sizes that can be bought", "2.50 mm, 2.55 mm, 2.60 mm"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            ShimQuestion.Answer answer = new ShimQuestion(
                            typed.lines("valves"),
                            typed.line("wanted"),
                            "",
                            written.values(typed.line("box")),
                            written.values(typed.line("shop")))
                    .ask(written);
            List<LadderPicture.Value> rungs = answer.fit().plans().getFirst().placed().stream()
                    .map(placed -> new LadderPicture.Value(
                            answer.valves().get(placed.valve()).name(),
                            answer.valves().get(placed.valve()).clearance_mm(),
                            placed.clearance_mm(),
                            answer.valves().get(placed.valve()).aim()))
                    .toList();
            return new SumResult(FitWords.shims(answer.valves(), answer.fit()), LadderPicture.of(rungs));
        }
    },
    PISTONS(
            "Pistons to bores",
            "which piston into which bore",
            List.of(
                    Field.line("bores", "Bores as measured", "86.010 mm, 86.014 mm"),
                    Field.line("pistons", "Pistons as measured", "85.962 mm, 85.955 mm"),
                    Field.line("wanted", "Clearance wanted", "0.04 mm to 0.06 mm"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            PairQuestion.Answer answer = new PairQuestion(
                            written.values(typed.line("bores")),
                            written.values(typed.line("pistons")),
                            typed.line("wanted"),
                            "")
                    .ask(written);
            List<LadderPicture.Value> rungs = IntStream.range(
                            0, answer.fit().best().pieceOf().size())
                    .mapToObj(bore -> new LadderPicture.Value(
                            "bore " + (bore + 1),
                            answer.fit().before().clearance_mm().get(bore),
                            answer.fit().best().clearance_mm().get(bore),
                            answer.aim()))
                    .toList();
            return new SumResult(FitWords.pairs("bore", "piston", answer.aim(), answer.fit()), LadderPicture.of(rungs));
        }
    },
    RINGS(
            "Ring gaps",
            "which ring into which bore, and what to file",
            List.of(
                    Field.line("bores", "Bores as measured", "86.010 mm, 86.030 mm"),
                    Field.line("gaps", "End gaps in the gauge bore", "0.25 mm, 0.35 mm"),
                    Field.line("gauge", "Diameter of that bore", "86.000 mm"),
                    Field.line("wanted", "Gap wanted", "0.30 mm to 0.50 mm"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            RingQuestion.Answer answer = new RingQuestion(
                            written.values(typed.line("bores")),
                            written.values(typed.line("gaps")),
                            typed.line("gauge"),
                            typed.line("wanted"))
                    .ask(written);
            return SumResult.of(FitWords.rings(answer.fit()));
        }
    },
    SHELLS(
            "Bearing shells",
            "grades for the oil clearance",
            List.of(
                    Field.lines(
                            "bearings",
                            "Bearings: housing and journal, one on each line",
                            "main 1: 59.000 mm, 54.980 mm"),
                    Field.lines("grades", "Grades: thickness and halves on hand, one on each line", "red: 1.990 mm, 4"),
                    Field.line("wanted", "Oil clearance wanted", "0.03 mm to 0.05 mm"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            ShellQuestion.Answer answer = new ShellQuestion(
                            typed.lines("bearings"), typed.lines("grades"), typed.line("wanted"), "")
                    .ask(written);
            return SumResult.of(FitWords.shells(answer.bearings(), answer.grades(), answer.aim(), answer.fit()));
        }
    },
    WEIGHTS(
            "Weights",
            "pistons, pins and rods to sets that weigh the same",
            List.of(
                    Field.lines("kinds", "A kind on each line", "pistons: 412.3 g, 411.0 g"),
                    Field.line("allowed", "How much sets may differ in the end, if at all", "2 g"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            WeightQuestion.Answer answer = new WeightQuestion(typed.lines("kinds"), typed.line("allowed")).ask(written);
            return SumResult.of(FitWords.weights(answer.names(), answer.allowed_g(), answer.fit()));
        }
    },
    GASKET(
            "Head gasket",
            "by how far a diesel's pistons stand out",
            List.of(
                    Field.lines("pistons", "Two points of each piston, one piston on each line", "0.58 mm, 0.60 mm"),
                    Field.lines("grades", "Grades, one on each line", "2 notches: 0.55 mm to 0.65 mm, 1.50 mm"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            GasketQuestion.Answer answer =
                    new GasketQuestion(typed.lines("pistons"), typed.lines("grades"), "", "").ask(written);
            return SumResult.of(FitWords.gasket(answer.allowed_mm(), answer.fit()));
        }
    },
    FLOAT(
            "End float",
            "shims or thrust washers",
            List.of(
                    Field.line("measured", "Float as measured", "0.35 mm"),
                    Field.line("present", "Thickness of what lay there", "2.30 mm"),
                    Field.line("sizes", "Thicknesses to choose from", "2.30 mm, 2.40 mm, 2.50 mm"),
                    Field.line("wanted", "Float wanted", "0.10 mm to 0.20 mm"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            FloatQuestion.Answer answer = new FloatQuestion(
                            typed.line("measured"),
                            typed.line("present"),
                            written.values(typed.line("sizes")),
                            2,
                            typed.line("wanted"))
                    .ask(written);
            return SumResult.of(FitWords.endFloat(answer.measured_mm(), answer.aim(), answer.fit()));
        }
    },
    PRELOAD(
            "Torque and preload",
            "what a torque does to a bolt",
            List.of(
                    Field.line("torque", "Torque", "24 N·m"),
                    Field.line("thread", "Thread", "M8x1.25"),
                    Field.line("class", "Class on the head", "8.8"),
                    Field.line("state", "State of the thread", "dry, oiled, paste or locked"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            BoltTorque.OfTorque answer = new BoltTorque(
                            typed.line("thread"), typed.line("class"), typed.line("state"), List.of())
                    .ofTorque(typed.line("torque"), written);
            List<AnswerRow> rows = new ArrayList<>(BoltWords.band(answer.band()));
            rows.addAll(BoltWords.taken(true));
            return SumResult.of(rows);
        }
    },
    WRENCH(
            "Wrench and crow-foot",
            "what to set, and on which wrench",
            List.of(
                    Field.line("torque", "Torque at the bolt", "60 N·m"),
                    Field.line("adaptor", "Offset of the crow-foot, length of the wrench", "50 mm, 400 mm"),
                    Field.lines("wrenches", "Your wrenches, one on each line", "middle: 20-100 N·m"))) {
        @Override
        SumResult ask(Typed typed, Written written) {
            WrenchQuestion.Answer answer = new WrenchQuestion(
                            typed.line("torque"), typed.lines("wrenches"), written.values(typed.line("adaptor")))
                    .ask(written);
            return SumResult.of(BoltWords.wrench(
                    answer.adaptor(),
                    answer.torque().like(answer.torque().value(), 4),
                    answer.torque().like(answer.setting_Nm(), 3),
                    answer.choice()));
        }
    };

    private final String title;
    private final String lead;
    private final List<Field> fields;

    SumKind(String title, String lead, List<Field> fields) {
        this.title = title;
        this.lead = lead;
        this.fields = fields;
    }

    /**
     * A field of a form.
     *
     * @param lines whether it takes several lines
     */
    record Field(String name, String label, String example, boolean lines) {
        static Field line(String name, String label, String example) {
            return new Field(name, label, example, false);
        }

        static Field lines(String name, String label, String example) {
            return new Field(name, label, example, true);
        }
    }

    /** What was typed, by field. */
    interface Typed {
        /** One line; empty when nothing was typed. */
        String line(String field);

        /** Its lines, without empty ones. */
        default List<String> lines(String field) {
            return line(field)
                    .lines()
                    .map(String::strip)
                    .filter(each -> !each.isEmpty())
                    .toList();
        }
    }

    /** Works it out. @throws IllegalArgumentException when something cannot be read */
    abstract SumResult ask(Typed typed, Written written);

    /** What comes of it. @param ladder before and after; none where that is not drawn */
    record SumResult(List<AnswerRow> rows, LadderPicture ladder) {
        SumResult {
            rows = List.copyOf(rows);
        }

        static SumResult of(List<AnswerRow> rows) {
            return new SumResult(rows, LadderPicture.NONE);
        }
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    String title() {
        return title;
    }

    String lead() {
        return lead;
    }

    List<Field> fields() {
        return fields;
    }

    static Optional<SumKind> find(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
}
