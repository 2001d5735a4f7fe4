package gudgeon.core.measuring;

import java.util.List;

/**
 * Differences read on one dial: run-outs, lifts, end floats, heights over a face. The dial may err by its whole permissible error
 * over the travel, each end has its last figure and its repeats; warmth is of no account over so little.
 */
public final class DialDifference {
    private DialDifference() {}

    /**
     * A difference of two dial readings.
     *
     * @param place where it was read
     */
    public static Derived of(
            Derived.Trait trait, double difference_mm, Instrument dial, Repeatability repeats, String place) {
        Budget budget = Budget.of(
                Contribution.within(
                        new Source(Source.Kind.INSTRUMENT, dial.id()), Spread.RECTANGULAR, dial.maximumError_mm(), 1),
                Contribution.within(
                        new Source(Source.Kind.RESOLUTION, place),
                        Spread.RECTANGULAR,
                        dial.resolution_mm() / 2,
                        Math.sqrt(2)),
                Contribution.of(
                        new Source(repeats.assumed() ? Source.Kind.REPEATS_ASSUMED : Source.Kind.REPEATS, place),
                        repeats.standardDeviation_mm(),
                        Math.sqrt(2),
                        repeats.degreesOfFreedom()));
        return new Derived(trait, new Estimate(difference_mm, budget), List.of(place));
    }

    /** The standard uncertainty of one height against its neighbours, in mm. */
    public static double heightUncertainty_mm(Instrument dial, Repeatability repeats) {
        double error = Spread.RECTANGULAR.standardUncertainty(dial.maximumError_mm());
        double figure = Spread.RECTANGULAR.standardUncertainty(dial.resolution_mm() / 2);
        return Math.sqrt(
                error * error + figure * figure + repeats.standardDeviation_mm() * repeats.standardDeviation_mm());
    }
}
