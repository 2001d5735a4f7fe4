package gudgeon.core.measuring;

import java.util.List;

/**
 * How well one taker's readings of one place agree, tried out before or assumed.
 *
 * @param standardDeviation_mm of a single reading
 * @param degreesOfFreedom how well that is known
 * @param assumed whether nobody tried it out
 */
public record Repeatability(double standardDeviation_mm, double degreesOfFreedom, boolean assumed) {
    private static final double ASSUMED_FREEDOM = 4;

    public Repeatability {
        if (!(standardDeviation_mm >= 0 && Double.isFinite(standardDeviation_mm) && degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "a repeatability is a standard deviation of zero or more with degrees of freedom above"
                            + " zero, not " + standardDeviation_mm + " with " + degreesOfFreedom);
        }
    }

    /**
     * Pooled from repeats at several places. Source: [GUM] H.5.
     *
     * @param groups_mm repeats of each place; at least one with two
     */
    public static Repeatability pooled(List<List<Double>> groups_mm) {
        double squares = 0;
        double freedom = 0;
        for (List<Double> group : groups_mm) {
            if (group.size() > 1) {
                squares += Sample.of(
                                group.stream().mapToDouble(Double::doubleValue).toArray())
                        .sumOfSquares();
                freedom += group.size() - 1;
            }
        }
        if (freedom == 0) {
            throw new IllegalArgumentException("no place was read twice: nothing tells how well readings repeat");
        }
        return new Repeatability(Math.sqrt(squares / freedom), freedom, false);
    }

    /**
     * Where nobody tried: the larger of the resolution and half of what the instrument may err by, worth four degrees of freedom, so
     * that five repeats of one's own outweigh it. Common practice.
     */
    public static Repeatability assumed(Instrument instrument) {
        return new Repeatability(
                Math.max(instrument.resolution_mm(), instrument.maximumError_mm() / 2), ASSUMED_FREEDOM, true);
    }
}
