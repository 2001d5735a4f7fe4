package gudgeon.app.desk;

import gudgeon.core.bolting.StretchCheck;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a bolt that was stretched may be used once more.
 *
 * @param length measured length and the longest allowed; the first alone, both or none
 * @param neck measured smallest diameter and the smallest allowed
 * @param uncertainty of both readings; empty for 0
 * @param singleUse whether it may never be used again
 */
public record ReuseQuestion(List<String> length, List<String> neck, String uncertainty, boolean singleUse) {
    public ReuseQuestion {
        length = List.copyOf(length);
        neck = List.copyOf(neck);
    }

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public StretchCheck ask(Written written) {
        double either_mm = uncertainty.isBlank() ? 0 : written.length_mm("uncertainty", uncertainty);
        return new StretchCheck(
                singleUse, compared("length", length, either_mm, written), compared("neck", neck, either_mm, written));
    }

    private static StretchCheck.Compared compared(
            String field, List<String> values, double uncertainty_mm, Written written) {
        if (values.size() > 2) {
            throw new IllegalArgumentException(
                    field + ": say what was measured and its limit, like \"112.1 mm, 112.5 mm\"");
        }
        return new StretchCheck.Compared(
                value(field, values, 0, written), value(field, values, 1, written), uncertainty_mm);
    }

    private static OptionalDouble value(String field, List<String> values, int index, Written written) {
        return values.size() > index
                ? OptionalDouble.of(written.length_mm(field, values.get(index)))
                : OptionalDouble.empty();
    }
}
