package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The uncertainty of a result, line by line. Lines of different sources are independent; lines of one source are one error and
 * add up with their signs, which is how a difference of two readings with one instrument forgets that instrument's offset.
 * Source: [GUM] 5.1, 5.2, G.4.
 *
 * @param contributions in the order given; each source once
 */
public record Budget(List<Contribution> contributions) {
    public Budget {
        contributions = List.copyOf(contributions);
        if (contributions.stream().map(Contribution::source).distinct().count() != contributions.size()) {
            throw new IllegalArgumentException("a source stands twice in one budget. Maybe sum() is meant?");
        }
    }

    /** A budget of lines, each source once. */
    public static Budget of(Contribution... contributions) {
        return new Budget(List.of(contributions));
    }

    /**
     * The budget of a sum of results, each line of the same source added with its sign. A line that two results share keeps the
     * fewer of their degrees of freedom.
     */
    public static Budget sum(List<Budget> budgets) {
        Map<Source, Contribution> bySource = new LinkedHashMap<>();
        for (Budget budget : budgets) {
            for (Contribution line : budget.contributions) {
                bySource.merge(line.source(), line, Budget::together);
            }
        }
        return new Budget(new ArrayList<>(bySource.values()));
    }

    private static Contribution together(Contribution first, Contribution second) {
        return new Contribution(
                first.source(),
                Math.abs(first.signed() + second.signed()),
                Math.signum(first.signed() + second.signed()),
                Math.min(first.degreesOfFreedom(), second.degreesOfFreedom()),
                first.spread());
    }

    /** The budget of the result multiplied by a number. */
    public Budget times(double factor) {
        return new Budget(contributions.stream().map(line -> line.times(factor)).toList());
    }

    /** The same with all lines of some kinds multiplied: what another instrument, or more repeats, would leave. */
    Budget scaled(Set<Source.Kind> kinds, double factor, double moreFreedom) {
        return new Budget(contributions.stream()
                .map(line -> kinds.contains(line.source().kind())
                        ? new Contribution(
                                line.source(),
                                line.standardUncertainty() * factor,
                                line.sensitivity(),
                                line.degreesOfFreedom() * moreFreedom,
                                line.spread())
                        : line)
                .toList());
    }

    /** The lines, the largest component first; equal ones in the order given. */
    public List<Contribution> largestFirst() {
        return contributions.stream()
                .sorted(Comparator.comparingDouble(Contribution::component).reversed())
                .toList();
    }

    /** The combined standard uncertainty, first order, in the result's unit. Source: [GUM] 5.1.2. */
    public double combined() {
        return Math.sqrt(variance());
    }

    /**
     * The combined standard uncertainty with the second-order terms of products of two inputs: for two different inputs the
     * square of (second derivative u1 u2), for one input with itself half of it. Source: [GUM] 5.1.2 note.
     *
     * @param terms each pair of inputs once
     */
    public double combinedSecondOrder(List<SecondDerivative> terms) {
        double sum = variance();
        for (SecondDerivative term : terms) {
            double product = term.value() * uncertaintyOf(term.first()) * uncertaintyOf(term.second());
            sum += term.first().equals(term.second()) ? product * product / 2 : product * product;
        }
        return Math.sqrt(sum);
    }

    /**
     * The effective degrees of freedom by Welch and Satterthwaite, not truncated; infinite when no line limits them. Source:
     * [GUM] G.4.1.
     */
    public double effectiveDegreesOfFreedom() {
        double fourth = 0;
        for (Contribution line : contributions) {
            double squared = line.component() * line.component();
            fourth += squared * squared / line.degreesOfFreedom();
        }
        return fourth == 0 ? Double.POSITIVE_INFINITY : variance() * variance() / fourth;
    }

    /**
     * The coverage factor of a two-sided interval: Student's t with the effective degrees of freedom. Source: [GUM] G.3.
     *
     * @param probability of the interval, strictly between 0 and 1, as 0.95
     */
    public double coverageFactor(double probability) {
        return Distributions.studentQuantile(effectiveDegreesOfFreedom(), (1 - probability) / 2);
    }

    /** The expanded uncertainty at a coverage probability, in the result's unit. */
    public double expanded(double probability) {
        return coverageFactor(probability) * combined();
    }

    /** The component of one source; zero when it is not in the budget. */
    public double component(Source source) {
        return contributions.stream()
                .filter(line -> line.source().equals(source))
                .mapToDouble(Contribution::component)
                .sum();
    }

    private double variance() {
        double sum = 0;
        for (Contribution line : contributions) {
            sum += line.component() * line.component();
        }
        return sum;
    }

    private double uncertaintyOf(Source source) {
        return contributions.stream()
                .filter(line -> line.source().equals(source))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no input " + source.of() + " in the budget"))
                .standardUncertainty();
    }

    /**
     * A second derivative of the result.
     *
     * @param first one input
     * @param second the other, or the same
     * @param value the derivative at the inputs' values
     */
    public record SecondDerivative(Source first, Source second, double value) {}
}
