package gudgeon.app.desk;

import gudgeon.core.geometry.PistonToValve;
import gudgeon.core.geometry.PistonToValve.Nearest;
import java.util.ArrayList;
import java.util.List;

/**
 * Can a valve touch the piston, as it stands and with the camshaft some teeth out?
 *
 * @param both piston and valve
 * @param oneTooth_deg what one tooth is worth, in crank degrees
 * @param teeth how many teeth out to look at, early and late, 0 to 10
 * @param play_mm what must be left: stretch, play and carbon, 0 or more
 */
public record TouchQuestion(PistonToValve both, double oneTooth_deg, int teeth, double play_mm) {
    public TouchQuestion {
        if (teeth < 0 || teeth > 10) {
            throw new IllegalArgumentException("Teeth out are 0 to 10, not " + teeth + ".");
        }
    }

    /**
     * One place of the camshaft.
     *
     * @param teethLate negative is early
     * @param clearanceMm least distance along the valve, negative when they meet
     * @param crankDeg where
     * @param verdict what that means
     */
    public record Place(int teethLate, double clearanceMm, double crankDeg, Verdict verdict) {}

    /** What a distance means. */
    public enum Verdict {
        /** More than must be left. */
        CLEAR,
        /** They do not meet on paper, but less is left than must be. */
        TOO_CLOSE,
        /** They meet. */
        TOUCHES
    }

    /** The places of the camshaft, earliest first. */
    public List<Place> ask() {
        List<Place> places = new ArrayList<>();
        for (int late = -teeth; late <= teeth; late++) {
            Nearest nearest = both.nearest(late * oneTooth_deg);
            places.add(new Place(late, nearest.clearance_mm(), nearest.crank_deg(), verdict(nearest.clearance_mm())));
        }
        return places;
    }

    private Verdict verdict(double clearance_mm) {
        if (clearance_mm <= 0) {
            return Verdict.TOUCHES;
        }
        return clearance_mm < play_mm ? Verdict.TOO_CLOSE : Verdict.CLEAR;
    }
}
