package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.measuring.DecisionRule.Outcome;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Verdicts by both editions, and what settles one too close to call. */
class VerdictTest {
    private static final Limits TEN = Limits.between("size", 10.0, 10.1, true);

    private static Estimate known(double value, double uncertainty) {
        return new Estimate(
                value, Budget.of(Contribution.of(Source.of("all"), uncertainty, 1, Double.POSITIVE_INFINITY)));
    }

    /** Source: [ISO14253-1] edition 1998, limits 10.0 and 10.1 with U = 0.02: conformance from 10.02 to 10.08. */
    @Test
    void edition1998() {
        double u = 0.02 / 1.959963984540054;
        assertThat(outcome(DecisionRule.GUARD_BAND_1998, 10.0801, u)).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(outcome(DecisionRule.GUARD_BAND_1998, 10.0799, u)).isEqualTo(Outcome.WITHIN);
        assertThat(outcome(DecisionRule.GUARD_BAND_1998, 10.1199, u)).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(outcome(DecisionRule.GUARD_BAND_1998, 10.1201, u)).isEqualTo(Outcome.BEYOND);
    }

    /** Source: [ISO14253-1] edition 2017: a guard band of 1.645 standard uncertainties on one side. */
    @Test
    void edition2017() {
        double u = 0.01;
        assertThat(outcome(DecisionRule.PROBABILITY_2017, 10.1 - 1.65 * u, u)).isEqualTo(Outcome.WITHIN);
        assertThat(outcome(DecisionRule.PROBABILITY_2017, 10.1 - 1.64 * u, u)).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(outcome(DecisionRule.PROBABILITY_2017, 10.1 + 1.64 * u, u)).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(outcome(DecisionRule.PROBABILITY_2017, 10.1 + 1.65 * u, u)).isEqualTo(Outcome.BEYOND);
        Verdict onIt = Verdict.of(known(10.1, u), Limits.atMost("size", 10.1, false), DecisionRule.PROBABILITY_2017);
        assertThat(onIt.conformance()).isCloseTo(0.5, within(1e-12));
        assertThat(onIt.provisional()).isTrue();
        assertThat(onIt.settling().orElseThrow().possible())
                .as("on the limit nothing helps")
                .isFalse();
    }

    @Test
    void wideUncertaintyBetweenNarrowLimitsIsNeverWithin() {
        assertThat(outcome(DecisionRule.PROBABILITY_2017, 10.05, 0.05)).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(outcome(DecisionRule.GUARD_BAND_1998, 10.05, 0.05)).isEqualTo(Outcome.TOO_CLOSE);
    }

    @Test
    void whatSettlesIt() {
        Repeatability rough = new Repeatability(0.004, 30, false);
        Estimate result = Gauges.read(Gauges.MICROMETER, "pin", rough, 49.955).estimate();
        Limits least = Limits.atLeast("wear", 49.950, true);
        Verdict verdict = Verdict.of(result, least, DecisionRule.PROBABILITY_2017, 1, OptionalDouble.of(0.002));
        assertThat(verdict.outcome()).isEqualTo(Outcome.TOO_CLOSE);
        int more = verdict.settling().orElseThrow().moreRepeats().orElseThrow();
        double[] shown = new double[1 + more];
        java.util.Arrays.fill(shown, 49.955);
        shown[0] += 0.004;
        shown[1] -= 0.004;
        Estimate again = Gauges.read(Gauges.MICROMETER, "pin", rough, shown).estimate();
        assertThat(DecisionRule.PROBABILITY_2017.outcome(again, least))
                .as("%d more", more)
                .isEqualTo(Outcome.WITHIN);
        double error = verdict.settling().orElseThrow().maximumError_mm().orElseThrow();
        assertThat(error).isBetween(0.0005, 0.002);
    }

    @Test
    void fewReadingsMakeAWiderBand() {
        Estimate few = new Estimate(10.08, Budget.of(Contribution.of(Source.of("all"), 0.01, 1, 2)));
        assertThat(few.oneSided(0.95)).as("t of two degrees of freedom, 2.92").isCloseTo(0.0292, within(1e-5));
        assertThat(DecisionRule.PROBABILITY_2017.outcome(few, TEN)).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(DecisionRule.PROBABILITY_2017.outcome(known(10.08, 0.01), TEN))
                .isEqualTo(Outcome.WITHIN);
    }

    private static Outcome outcome(DecisionRule rule, double value, double uncertainty) {
        return Verdict.of(known(value, uncertainty), TEN, rule).outcome();
    }
}
