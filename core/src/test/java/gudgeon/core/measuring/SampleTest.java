package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Samples and fits that lose their digits in plain double sums. */
class SampleTest {
    /** Source: [STRD] NumAcc4: 1001 values, mean 10000000.2, standard deviation 0.1, lag-1 autocorrelation -0.999, all exact. */
    @Test
    void tenMillionAndATenth() {
        double[] values = new double[1001];
        values[0] = 10000000.2;
        for (int i = 1; i < values.length; i++) {
            values[i] = i % 2 == 1 ? 10000000.1 : 10000000.3;
        }
        Sample sample = Sample.of(values);
        assertThat(sample.mean()).isEqualTo(10000000.2);
        assertThat(sample.standardDeviation()).isCloseTo(0.1, within(1e-15));
        assertThat(sample.lag1Autocorrelation()).isCloseTo(-0.999, within(1e-12));
    }

    /** Source: [STRD] Wampler1: a polynomial of fifth order through exact values, all coefficients one, no residual. */
    @Test
    void fifthOrder() {
        double[][] powers = new double[21][5];
        double[] y = new double[21];
        for (int x = 0; x < 21; x++) {
            double power = 1;
            y[x] = 1;
            for (int i = 0; i < 5; i++) {
                power *= x;
                powers[x][i] = power;
                y[x] += power;
            }
        }
        LeastSquaresFit fit = LeastSquaresFit.of(powers, y);
        for (int i = 0; i <= 5; i++) {
            assertThat(fit.coefficient(i)).isEqualTo(1);
            assertThat(fit.standardDeviation(i)).isLessThan(1e-40);
        }
        assertThat(fit.rSquared()).isEqualTo(1);
    }

    @Test
    void tooLittleIsRefused() {
        assertThatThrownBy(Sample::of).hasMessageContaining("at least one");
        assertThatThrownBy(() -> Sample.of(1, Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> Sample.of(1).standardDeviation()).hasMessageContaining("two readings");
        assertThatThrownBy(() -> LeastSquaresFit.line(new double[] {2, 2, 2}, new double[] {1, 2, 3}, 0))
                .hasMessageContaining("all x are equal");
        assertThatThrownBy(() -> VarianceAnalysis.of(new double[][] {{1}, {2}})).hasMessageContaining("second reading");
    }
}
