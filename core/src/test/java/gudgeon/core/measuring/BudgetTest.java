package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Budgets of uncertainty against the worked example of an end gauge. */
class BudgetTest {
    /** Source: [GUM] H.1, lengths in nm. */
    private static final Budget END_GAUGE = Budget.of(
            Contribution.of(Source.of("standard"), 25, 1, 18),
            Contribution.of(Source.of("repeats"), 5.8, 1, 24),
            Contribution.of(Source.of("comparator random"), 3.9, 1, 5),
            Contribution.of(Source.of("comparator systematic"), 6.7, 1, 8),
            Contribution.of(
                    Source.of("expansion"), Spread.RECTANGULAR.standardUncertainty(2e-6), 0, Double.POSITIVE_INFINITY),
            Contribution.of(
                    Source.of("expansion difference"),
                    Spread.RECTANGULAR.standardUncertainty(1e-6),
                    50000623 * 0.1,
                    50),
            Contribution.of(
                    Source.of("temperature difference"),
                    Spread.RECTANGULAR.standardUncertainty(0.05),
                    -50000623 * 11.5e-6,
                    2),
            Contribution.of(Source.of("bench temperature"), 0.2, 0, Double.POSITIVE_INFINITY),
            Contribution.of(Source.of("swing"), Spread.ARCSINE.standardUncertainty(0.5), 0, Double.POSITIVE_INFINITY));

    /** Source: [GUM] H.1.6; 31.664 is the unrounded 32, 16.75 from memory, cut to 16 there. */
    @Test
    void endGauge() {
        assertThat(END_GAUGE.combined()).isCloseTo(31.664, within(0.01));
        assertThat(END_GAUGE.effectiveDegreesOfFreedom()).isCloseTo(16.75, within(0.01));
        assertThat(Distributions.studentQuantile(16, 0.005)).isCloseTo(2.92, within(0.005));
        assertThat(Distributions.studentQuantile(16, 0.005) * END_GAUGE.combined())
                .isCloseTo(93, within(1.0));
        assertThat(END_GAUGE.coverageFactor(0.99)).as("16.75 not cut to 16").isBetween(2.89, 2.92);
    }

    /** Source: [GUM] H.1.7: 34 nm with the terms of second order. */
    @Test
    void endGaugeSecondOrder() {
        double l = -50000623;
        assertThat(END_GAUGE.combinedSecondOrder(List.of(
                        new Budget.SecondDerivative(
                                Source.of("expansion difference"), Source.of("bench temperature"), l),
                        new Budget.SecondDerivative(Source.of("expansion difference"), Source.of("swing"), l),
                        new Budget.SecondDerivative(Source.of("expansion"), Source.of("temperature difference"), l))))
                .isCloseTo(33.81, within(0.01));
    }

    @Test
    void largestFirst() {
        assertThat(END_GAUGE.largestFirst().stream()
                        .limit(3)
                        .map(line -> line.source().of()))
                .containsExactly("standard", "temperature difference", "comparator systematic");
    }

    @Test
    void oneSourceOnBothSidesCancels() {
        Budget bore = Budget.of(line("gauge", 3), line("bore", 1));
        Budget piston = Budget.of(line("gauge", 3), line("piston", 2));
        assertThat(Budget.sum(List.of(bore, piston.times(-1))).combined()).isCloseTo(Math.sqrt(5), within(1e-12));
        assertThat(Budget.sum(List.of(bore, piston)).combined()).isCloseTo(Math.sqrt(36 + 5), within(1e-12));
    }

    @Test
    void badLinesAreRefused() {
        assertThatThrownBy(() -> line("gauge", -1)).hasMessageContaining("gauge");
        assertThatThrownBy(() -> line("gauge", Double.NaN)).hasMessageContaining("gauge");
        assertThatThrownBy(() -> Contribution.of(Source.of("gauge"), 1, 1, 0))
                .hasMessageContaining("degrees of freedom");
        assertThatThrownBy(() -> Budget.of(line("a", 1), line("a", 1))).hasMessageContaining("twice");
    }

    private static Contribution line(String source, double uncertainty) {
        return Contribution.of(Source.of(source), uncertainty, 1, Double.POSITIVE_INFINITY);
    }
}
