package gudgeon.core.measuring;

import gudgeon.core.measuring.DecisionRule.Outcome;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a result is, held against a limit.
 *
 * @param result the result
 * @param limits the limit
 * @param rule the edition that was kept to
 * @param outcome within, beyond, or too close to call
 * @param conformance probability that the true value is within
 * @param settling what would settle it, for one too close to call
 */
public record Verdict(
        Estimate result,
        Limits limits,
        DecisionRule rule,
        Outcome outcome,
        double conformance,
        Optional<Settling> settling) {
    private static final int MOST_REPEATS = 30;
    private static final Set<Source.Kind> REPEATS = EnumSet.of(Source.Kind.REPEATS, Source.Kind.REPEATS_ASSUMED);
    private static final Set<Source.Kind> READ = EnumSet.of(
            Source.Kind.INSTRUMENT, Source.Kind.RESOLUTION, Source.Kind.REPEATS, Source.Kind.REPEATS_ASSUMED);
    private static final Set<Source.Kind> WARMTH = EnumSet.of(
            Source.Kind.TEMPERATURE,
            Source.Kind.TEMPERATURE_DIFFERENCE,
            Source.Kind.PART_EXPANSION,
            Source.Kind.STANDARD_EXPANSION);

    /** The verdict without knowledge of the instrument: what would settle it is said for repeats and warmth only. */
    public static Verdict of(Estimate result, Limits limits, DecisionRule rule) {
        return of(result, limits, rule, 1, OptionalDouble.empty());
    }

    /**
     * The verdict.
     *
     * @param repeats how often each place was read
     * @param maximumError_mm what the instrument may err by; empty when several were used
     */
    public static Verdict of(
            Estimate result, Limits limits, DecisionRule rule, int repeats, OptionalDouble maximumError_mm) {
        Outcome outcome = rule.outcome(result, limits);
        Optional<Settling> settling = outcome == Outcome.TOO_CLOSE
                ? Optional.of(new Settling(
                        moreRepeats(result, limits, rule, repeats),
                        betterInstrument(result, limits, rule, maximumError_mm),
                        decides(result.budget().scaled(WARMTH, 0, 1), result, limits, rule)))
                : Optional.empty();
        return new Verdict(result, limits, rule, outcome, DecisionRule.conformance(result, limits), settling);
    }

    /** Whether nobody vouches for the limit: the verdict holds only if the limit does. */
    public boolean provisional() {
        return !limits.confirmed();
    }

    /**
     * What would settle a result that is too close to call, each by itself, if its value stayed. None of them: the value lies on
     * the limit.
     *
     * @param moreRepeats so many more readings of each place that decides
     * @param maximumError_mm an instrument that errs no more, read as finely and repeating as well in proportion
     * @param atReference part and standard at 20 °C, left together until they are
     */
    public record Settling(OptionalInt moreRepeats, OptionalDouble maximumError_mm, boolean atReference) {
        /** Whether anything would. */
        public boolean possible() {
            return moreRepeats.isPresent() || maximumError_mm.isPresent() || atReference;
        }
    }

    private static boolean decides(Budget budget, Estimate result, Limits limits, DecisionRule rule) {
        return rule.outcome(new Estimate(result.value(), budget), limits) != Outcome.TOO_CLOSE;
    }

    private static OptionalInt moreRepeats(Estimate result, Limits limits, DecisionRule rule, int repeats) {
        for (int more = 1; more <= MOST_REPEATS; more++) {
            double now = (double) repeats / (repeats + more);
            Budget budget = result.budget().scaled(REPEATS, Math.sqrt(now), 1 / now);
            if (decides(budget, result, limits, rule)) {
                return OptionalInt.of(more);
            }
        }
        return OptionalInt.empty();
    }

    /** The largest error, on a tenth of a micrometre, of an instrument that would decide. */
    private static OptionalDouble betterInstrument(
            Estimate result, Limits limits, DecisionRule rule, OptionalDouble maximumError_mm) {
        if (maximumError_mm.isEmpty()) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (decides(result.budget().scaled(READ, middle, 1), result, limits, rule)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double error_mm = Math.floor(low * maximumError_mm.getAsDouble() * 1e4 + 1e-6) / 1e4;
        return error_mm > 0 ? OptionalDouble.of(error_mm) : OptionalDouble.empty();
    }
}
