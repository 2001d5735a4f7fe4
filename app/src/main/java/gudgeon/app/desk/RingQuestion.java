package gudgeon.app.desk;

import gudgeon.core.fitting.Aim;
import gudgeon.core.fitting.RingFit;
import java.util.List;

/**
 * Which ring goes into which bore, and what is filed.
 *
 * @param bores diameters
 * @param gaps end gaps of the rings in the gauge bore
 * @param gauge diameter of that bore
 * @param wanted range of the gap
 */
public record RingQuestion(List<String> bores, List<String> gaps, String gauge, String wanted) {
    public RingQuestion {
        bores = List.copyOf(bores);
        gaps = List.copyOf(gaps);
    }

    /** The answer. @param aim as read */
    public record Answer(Aim aim, RingFit fit) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        Aim aim = written.aim("wanted", wanted, "");
        return new Answer(
                aim,
                RingFit.of(
                        PairQuestion.sizes(written.lengths_mm("bore", bores)),
                        PairQuestion.sizes(written.lengths_mm("gap", gaps)),
                        written.length_mm("gauge", gauge),
                        aim));
    }
}
