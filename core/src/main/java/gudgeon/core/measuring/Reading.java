package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.List;

/**
 * What an instrument showed at one place.
 *
 * @param place where, in the taker's words; readings of one place have one name
 * @param shown_mm what was read, once or several times
 * @param instrument with what
 * @param conditions how warm it was
 */
public record Reading(String place, List<Double> shown_mm, Instrument instrument, Conditions conditions) {
    public Reading {
        shown_mm = List.copyOf(shown_mm);
        if (shown_mm.isEmpty()) {
            throw new IllegalArgumentException("no reading at " + place);
        }
        for (double shown : shown_mm) {
            if (!Double.isFinite(shown)) {
                throw new IllegalArgumentException("a reading at " + place + " must be finite, not " + shown);
            }
        }
    }

    /** The same shown at the instrument's range. */
    public boolean inRange() {
        return shown_mm.stream().allMatch(instrument::reaches);
    }

    /** What it is worth when nobody tried out how well readings repeat. */
    public Worth worth() {
        return worth(Repeatability.assumed(instrument));
    }

    /**
     * What it is worth: the mean, less the instrument's known offset, brought to 20 °C, with its budget.
     *
     * @param before how well such readings repeat, tried out or assumed; pooled with the repeats of this one
     */
    public Worth worth(Repeatability before) {
        Sample sample =
                Sample.of(shown_mm.stream().mapToDouble(Double::doubleValue).toArray());
        double mean_mm = sample.mean();
        double corrected_mm = mean_mm - instrument.offset_mm();
        double at20_mm = Expansion.at20_mm(
                corrected_mm,
                instrument.standard().expansion_per_K(),
                conditions.standard_C(),
                conditions.part().expansion_per_K(),
                conditions.part_C());
        List<Contribution> lines = new ArrayList<>();
        lines.add(Contribution.within(
                new Source(Source.Kind.INSTRUMENT, instrument.id()),
                Spread.RECTANGULAR,
                instrument.maximumError_mm(),
                1));
        if (instrument.resolution_mm() > 0) {
            lines.add(Contribution.within(
                    new Source(Source.Kind.RESOLUTION, place), Spread.RECTANGULAR, instrument.resolution_mm() / 2, 1));
        }
        lines.add(repeats(sample, before));
        warmth(lines, at20_mm);
        return new Worth(
                this,
                mean_mm,
                corrected_mm - mean_mm,
                at20_mm - corrected_mm,
                new Estimate(at20_mm, new Budget(lines)));
    }

    private Contribution repeats(Sample sample, Repeatability before) {
        int own = sample.size() - 1;
        double earlier = before.degreesOfFreedom();
        double squares =
                sample.sumOfSquares() + earlier * before.standardDeviation_mm() * before.standardDeviation_mm();
        boolean assumed = before.assumed() && own < earlier;
        return Contribution.of(
                new Source(assumed ? Source.Kind.REPEATS_ASSUMED : Source.Kind.REPEATS, place),
                Math.sqrt(squares / (own + earlier) / sample.size()),
                1,
                own + earlier);
    }

    private void warmth(List<Contribution> lines, double size_mm) {
        double part_per_K = conditions.part().expansion_per_K();
        double standard_per_K = instrument.standard().expansion_per_K();
        lines.add(Contribution.within(
                new Source(Source.Kind.TEMPERATURE, ""),
                Spread.RECTANGULAR,
                conditions.doubt_K(),
                size_mm * (standard_per_K - part_per_K)));
        lines.add(Contribution.within(
                new Source(Source.Kind.TEMPERATURE_DIFFERENCE, place),
                Spread.RECTANGULAR,
                conditions.difference_K(),
                -size_mm * part_per_K));
        lines.add(Contribution.within(
                new Source(Source.Kind.PART_EXPANSION, conditions.part().name()),
                Spread.RECTANGULAR,
                conditions.part().halfWidth_per_K(),
                -size_mm * (conditions.part_C() - Expansion.REFERENCE_C)));
        lines.add(Contribution.within(
                new Source(Source.Kind.STANDARD_EXPANSION, instrument.standard().name()),
                Spread.RECTANGULAR,
                instrument.standard().halfWidth_per_K(),
                size_mm * (conditions.standard_C() - Expansion.REFERENCE_C)));
    }

    /**
     * A reading and what it is worth.
     *
     * @param reading as taken
     * @param mean_mm of what was shown
     * @param offset_mm what the instrument's check took off or added
     * @param warmth_mm what bringing it to 20 °C added
     * @param estimate the size at 20 °C and its budget
     */
    public record Worth(Reading reading, double mean_mm, double offset_mm, double warmth_mm, Estimate estimate) {
        /** The place of the reading. */
        public String place() {
            return reading.place();
        }
    }
}
