package gudgeon.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The best age against a plain search over ages; published values are checked with the measurements. */
class ReplacementTest {
    @Test
    void noOtherAgeCostsLess() {
        Replacement replacement = new Replacement(new Weibull(2.2, 120), 3, 17);
        double best = replacement.costRate(replacement.bestAge());
        for (double age = 1; age < 500; age += 0.5) {
            assertThat(replacement.costRate(age)).isGreaterThanOrEqualTo(best - 1e-12);
        }
        assertThat(best).isLessThan(replacement.runToFailureRate());
    }

    @Test
    void theMeanOfTheShorterIsTheIntegralOfTheSurvivors() {
        Weibull life = new Weibull(1.7, 40);
        double sum = 0;
        double step = 0.001;
        for (double t = step / 2; t < 55; t += step) {
            sum += (1 - life.goneBy(t)) * step;
        }
        assertThat(life.meanUpTo(55)).isCloseTo(sum, within(1e-4));
        assertThat(life.meanUpTo(1e5)).isCloseTo(life.mean(), within(1e-9));
    }

    @Test
    void aPartThatDoesNotWearIsNeverRenewedInTime() {
        assertThatThrownBy(() -> new Replacement(new Weibull(1, 10), 1, 5).bestAge()).hasMessageContaining("wears");
        assertThatThrownBy(() -> new Replacement(new Weibull(3, 10), 5, 5).bestAge()).hasMessageContaining("costs more");
    }
}
