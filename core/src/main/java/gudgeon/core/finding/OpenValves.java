package gudgeon.core.finding;

import java.util.List;

/**
 * Which valve of a neighbour stands open when a cylinder is at top dead centre between compression and work. Usual openings:
 * exhaust from 45 degrees before bottom to 10 after top, intake from 10 before top to 45 after bottom (common practice).
 */
final class OpenValves {
    private static final int CYCLE = 720;
    private static final int EXHAUST_OPENS = 135;
    private static final int EXHAUST_CLOSES = 370;
    private static final int INTAKE_OPENS = 350;
    private static final int INTAKE_CLOSES = 585;

    private OpenValves() {}

    /** Degrees since its own firing top at which the neighbour stands; even firing intervals. */
    static double angle(List<Integer> firing, int tested, int neighbour) {
        double interval = (double) CYCLE / firing.size();
        double behind = firing.indexOf(tested) - firing.indexOf(neighbour);
        return ((behind * interval) % CYCLE + CYCLE) % CYCLE;
    }

    /** Condition of the tested cylinder: where a breach is heard at the neighbour's valves. */
    static Condition heard(Condition condition, List<Integer> firing, int tested, int neighbour, double openValve) {
        if (!firing.contains(tested) || !firing.contains(neighbour)) {
            return condition.heardAt(openValve / 3, openValve / 3);
        }
        double angle = angle(firing, tested, neighbour);
        boolean exhaust = angle > EXHAUST_OPENS && angle < EXHAUST_CLOSES;
        boolean intake = angle > INTAKE_OPENS && angle < INTAKE_CLOSES;
        double share = exhaust && intake ? 0.5 : 1;
        return condition.heardAt(exhaust ? openValve * share : 0, intake ? openValve * share : 0);
    }
}
