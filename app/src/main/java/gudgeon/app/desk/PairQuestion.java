package gudgeon.app.desk;

import gudgeon.core.fitting.Aim;
import gudgeon.core.fitting.PairFit;
import java.util.List;

/**
 * Which piece goes into which place: pistons to bores and the like.
 *
 * @param places inner sizes
 * @param pieces outer sizes, at least as many
 * @param wanted range of the clearance
 * @param best best clearance; empty for the middle of the range
 */
public record PairQuestion(List<String> places, List<String> pieces, String wanted, String best) {
    public PairQuestion {
        places = List.copyOf(places);
        pieces = List.copyOf(pieces);
    }

    /** The answer. @param aim as read */
    public record Answer(Aim aim, PairFit fit) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        Aim aim = written.aim("wanted", wanted, best);
        return new Answer(
                aim,
                PairFit.of(
                        sizes(written.lengths_mm("bore", places)), sizes(written.lengths_mm("piston", pieces)), aim));
    }

    static double[] sizes(List<Double> sizes) {
        return sizes.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
