package gudgeon.core.session;

import gudgeon.core.forecast.Paces;
import java.util.List;

/**
 * What is asked of the session planner. Every default is explicit here.
 *
 * @param minutes the time there is
 * @param chance with which the safe stop must be reached, closing up included; 0.8 is usual
 * @param closeUp minutes kept at the end
 * @param now how the engine stands now
 * @param steps the steps that can be done, in their order
 * @param windows when things are at hand; what has no window is there all the time
 * @param paces the person's pace
 */
public record SessionRequest(
        double minutes,
        double chance,
        CloseUp closeUp,
        Stand now,
        List<Step> steps,
        List<Window> windows,
        Paces paces) {
    /** The chance that is asked for when nothing else is said. */
    public static final double USUAL_CHANCE = 0.8;

    /**
     * A step that is seized with at least this chance is not the last of a day: what it then costs would have to be paid in the
     * dark. Typical, common practice.
     */
    public static final double RISKY = 0.1;

    public SessionRequest {
        steps = List.copyOf(steps);
        windows = List.copyOf(windows);
        if (!(minutes > 0 && Double.isFinite(minutes))) {
            throw new IllegalArgumentException("a session has more than 0 minutes, not " + minutes);
        }
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException(
                    "a chance lies strictly between 0 and 1, not at " + chance + ". Maybe 0.8?");
        }
    }
}
