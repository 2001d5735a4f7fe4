package gudgeon.core.measuring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * By which rule and against which limits.
 *
 * @param rule the edition that a job keeps to
 * @param limits each for one trait; several may hold for one
 */
public record Judging(DecisionRule rule, List<OfTrait> limits) {
    /** The default edition, no limits. */
    public static final Judging NOTHING = new Judging(DecisionRule.PROBABILITY_2017, List.of());

    public Judging {
        limits = List.copyOf(limits);
    }

    /** A limit and what it holds for. */
    public record OfTrait(Derived.Trait trait, Limits limits) {}

    /**
     * What something derived is, against each limit for it; once without a verdict where there is none.
     *
     * @param repeats how often each place was read
     * @param maximumError_mm of the one instrument; empty when several were used
     */
    public List<Judged> of(String what, Derived derived, int repeats, OptionalDouble maximumError_mm) {
        List<Judged> judged = limits.stream()
                .filter(limit -> limit.trait() == derived.trait())
                .map(limit -> new Judged(
                        what,
                        derived,
                        Optional.of(Verdict.of(derived.estimate(), limit.limits(), rule, repeats, maximumError_mm))))
                .toList();
        return judged.isEmpty() ? List.of(new Judged(what, derived, Optional.empty())) : judged;
    }
}
