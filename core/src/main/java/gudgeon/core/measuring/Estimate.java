package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.List;

/**
 * A result and what it is worth. Sums and differences know which errors their terms share. Lengths are in millimetres, and so
 * are their budgets; loads in newtons, angles in degrees, where a method says so.
 *
 * @param value the best value; finite
 * @param budget its uncertainty, in the same unit
 */
public record Estimate(double value, Budget budget) {
    /** The coverage probability of every expanded uncertainty that is shown. */
    public static final double COVERAGE = 0.95;

    public Estimate {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a result must be finite, not " + value);
        }
    }

    /** A value without uncertainty: a nominal size, a count. */
    public static Estimate exactly(double value) {
        return new Estimate(value, new Budget(List.of()));
    }

    /** The standard uncertainty. */
    public double standardUncertainty() {
        return budget.combined();
    }

    /** The expanded uncertainty at 95 %, zero when there is no uncertainty at all. */
    public double expanded() {
        return budget.combined() == 0 ? 0 : budget.expanded(COVERAGE);
    }

    /** The margin that holds on one side with a probability, as 0.95: about 1.65 standard uncertainties. */
    public double oneSided(double probability) {
        return budget.combined() == 0
                ? 0
                : Distributions.studentQuantile(budget.effectiveDegreesOfFreedom(), 1 - probability)
                        * budget.combined();
    }

    /** The sum; errors of the same source add up with their signs. */
    public Estimate plus(Estimate other) {
        return new Estimate(value + other.value, Budget.sum(List.of(budget, other.budget)));
    }

    /** The difference; errors of the same source cancel. */
    public Estimate minus(Estimate other) {
        return new Estimate(value - other.value, Budget.sum(List.of(budget, other.budget.times(-1))));
    }

    /** The product with an exact number. */
    public Estimate times(double factor) {
        return new Estimate(value * factor, budget.times(factor));
    }

    /** The same with the value shifted by an exact amount. */
    public Estimate plus(double amount) {
        return new Estimate(value + amount, budget);
    }

    /** The same with a further source of error. */
    public Estimate with(Contribution line) {
        return new Estimate(value, Budget.sum(List.of(budget, new Budget(List.of(line)))));
    }

    /** The mean of some results. */
    public static Estimate mean(List<Estimate> results) {
        if (results.isEmpty()) {
            throw new IllegalArgumentException("no results, no mean");
        }
        double sum = 0;
        List<Budget> budgets = new ArrayList<>();
        for (Estimate result : results) {
            sum += result.value;
            budgets.add(result.budget.times(1.0 / results.size()));
        }
        return new Estimate(sum / results.size(), Budget.sum(budgets));
    }

    /**
     * How two results of one thing agree: their difference over the root of the sum of their squared expanded uncertainties.
     * One or less: they agree. Errors that both share are not taken out. Source: [ISO13528], from memory.
     */
    public double normalisedError(Estimate other) {
        double both = Math.hypot(expanded(), other.expanded());
        if (both == 0) {
            throw new IllegalArgumentException("two values without uncertainty have no normalised error");
        }
        return Math.abs(value - other.value) / both;
    }
}
