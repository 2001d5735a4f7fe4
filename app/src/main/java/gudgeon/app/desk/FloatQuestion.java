package gudgeon.app.desk;

import gudgeon.core.fitting.Aim;
import gudgeon.core.fitting.EndFloatFit;
import java.util.List;

/**
 * Which shims or thrust washers give an end float.
 *
 * @param measured the float as it is
 * @param present thickness of what lay there; empty for nothing
 * @param sizes thicknesses to choose from
 * @param most how many may lie on each other, 1 to 4
 * @param wanted range of the float
 */
public record FloatQuestion(String measured, String present, List<String> sizes, int most, String wanted) {
    public FloatQuestion {
        sizes = List.copyOf(sizes);
    }

    /** The answer. @param measured_mm the float as it is */
    public record Answer(double measured_mm, Aim aim, EndFloatFit fit) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        Aim aim = written.aim("wanted", wanted, "");
        double measured_mm = written.length_mm("float", measured);
        return new Answer(
                measured_mm,
                aim,
                EndFloatFit.of(
                        measured_mm,
                        present.isBlank() ? 0 : written.length_mm("with", present),
                        written.lengths_mm("size", sizes),
                        most,
                        aim));
    }
}
