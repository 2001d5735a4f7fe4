package gudgeon.app.desk;

import gudgeon.app.format.QuantityKind;
import gudgeon.app.format.TypedQuantity;
import gudgeon.core.fitting.GasketFit;
import java.util.List;

/**
 * Which head gasket by how far the pistons stand out.
 *
 * @param pistons each the readings at two points, or one
 * @param grades each "2 notches: 0.55 mm to 0.65 mm, thickness"
 * @param uncertainty of a reading; empty for 0.01 mm
 * @param allowed how far pistons may differ before a rod is looked at; empty for 0.1 mm, typical
 */
public record GasketQuestion(List<String> pistons, List<String> grades, String uncertainty, String allowed) {
    /** Typical uncertainty of a dial gauge on a bridge, millimetres. */
    private static final double TYPICAL_UNCERTAINTY_mm = 0.01;
    /** Typical; the manual's figure comes first. */
    private static final double TYPICAL_SPREAD_mm = 0.10;

    public GasketQuestion {
        pistons = List.copyOf(pistons);
        grades = List.copyOf(grades);
    }

    /**
     * The answer.
     *
     * @param pistons as read
     * @param allowed_mm the spread above which a rod is looked at
     */
    public record Answer(
            List<GasketFit.Piston> pistons, List<GasketFit.Grade> grades, double allowed_mm, GasketFit fit) {
        public Answer {
            pistons = List.copyOf(pistons);
            grades = List.copyOf(grades);
        }
    }

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        List<GasketFit.Piston> read =
                pistons.stream().map(text -> piston(text, written)).toList();
        List<GasketFit.Grade> known =
                grades.stream().map(text -> grade(text, written)).toList();
        double uncertainty_mm =
                uncertainty.isBlank() ? TYPICAL_UNCERTAINTY_mm : written.length_mm("uncertainty", uncertainty);
        double allowed_mm = allowed.isBlank() ? TYPICAL_SPREAD_mm : written.length_mm("spread", allowed);
        return new Answer(read, known, allowed_mm, GasketFit.of(read, known, uncertainty_mm, allowed_mm));
    }

    private static GasketFit.Piston piston(String text, Written written) {
        List<Double> points = written.lengths_mm("piston", written.values(text));
        if (points.isEmpty() || points.size() > 2) {
            throw new IllegalArgumentException("piston: '" + Checks.shortened(text)
                    + "' cannot be read; write its two points like \"0.58 mm, 0.60 mm\"");
        }
        return new GasketFit.Piston(points.getFirst(), points.getLast());
    }

    private static GasketFit.Grade grade(String text, Written written) {
        Written.Named named = written.named("grade", text, 2, 2, "2 notches: 0.55 mm to 0.65 mm, 1.50 mm");
        TypedQuantity.Span span = TypedQuantity.readSpan(
                "grade " + named.name(), named.values().get(0), QuantityKind.LENGTH, written.comma());
        return new GasketFit.Grade(
                named.name(),
                span.least().value(),
                span.most().value(),
                written.length_mm("thickness of " + named.name(), named.values().get(1)));
    }
}
