package gudgeon.core.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sums of times. The figures 75.26, 75.5 and 82.25 were worked out outside of this program for three steps of 10, 8 and 12 nominal
 * minutes and a pace of median 1.8, sigma 0.5; the others by closed forms and by drawing lots.
 */
class SumsTest {
    private static final List<WorkTime> THREE = DoubleStream.of(10, 8, 12)
            .mapToObj(minutes -> new Pace(1.8, 0.5, 0).time(Nominal.work("undo", minutes)))
            .toList();

    @Test
    void independentDelaysByConvolution() {
        TimeSpread sum = TimeSpread.sum(THREE, TimeSpread.Grid.upTo(400, 8192));
        assertThat(sum.quantile(0.8)).isCloseTo(75.26, within(0.005));
        assertThat(sum.within(75.26)).isCloseTo(0.8, within(0.0002));
        assertThat(sum.errorBound()).isLessThan(0.2);
    }

    @Test
    void theUsualApproximationOfASumIsAnother() {
        // one log-normal of the same mean and variance, by hand
        double mean = THREE.stream().mapToDouble(WorkTime::mean).sum();
        double variance = THREE.stream().mapToDouble(WorkTime::variance).sum();
        double sigma = Math.sqrt(Math.log1p(variance / mean / mean));
        double approximate = mean * Math.exp(-sigma * sigma / 2 + sigma * 0.8416212335729143);
        assertThat(approximate).isCloseTo(75.5, within(0.05));
    }

    @Test
    void delaysThatGoTogetherAddUpByQuantiles() {
        assertThat(OneFate.sum(THREE).quantile(0.8)).isCloseTo(82.25, within(0.005));
        assertThat(OneFate.sum(THREE).within(82.25)).isCloseTo(0.8, within(0.0002));
        // 30 nominal minutes, 1.8, sigma 0.5, score of 0.8 from a table
        assertThat(30 * 1.8 * Math.exp(0.5 * 0.8416212335729143)).isCloseTo(82.25, within(0.005));
    }

    @Test
    void bandsOfBothKinds() {
        Bands independent = Bands.independent(THREE);
        assertThat(independent.p80()).isCloseTo(75.26, within(0.02));
        assertThat(independent.mean()).isCloseTo(54 * Math.exp(0.125), within(1e-9));
        Bands together = Bands.together(THREE);
        assertThat(together.p80()).isCloseTo(82.25, within(0.005));
        assertThat(together.p50()).isCloseTo(54, within(0.01));
        assertThat(together.p90() - together.p10()).isGreaterThan(independent.p90() - independent.p10());
    }

    /** Tables of the normal distribution. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "1, 0.8413447460685429",
        "-1, 0.15865525393145705",
        "1.959963984540054, 0.975",
        "2.5758293035489004, 0.995",
        "-3, 0.0013498980316300933",
        "5, 0.9999997133484281"
    })
    void theNormalDistribution(double z, double below) {
        assertThat(Normal.below(z)).isCloseTo(below, within(1e-14));
        assertThat(Normal.quantile(below)).isCloseTo(z, within(1e-9));
    }

    /** The rival: as many sums as one likes, drawn with a seed; it shares nothing with the grid. */
    @ParameterizedTest
    @ValueSource(longs = {1, 20261125, 977})
    void drawingLotsAgreesWithinItsError(long seed) {
        List<WorkTime> times = List.of(
                new WorkTime(0, 12, 0.5, WorkTime.Seizure.NONE),
                new WorkTime(5, 7, 0.4, new WorkTime.Seizure(0.2, 30, 0.7)),
                new WorkTime(0, 3, 0.6, new WorkTime.Seizure(0.45, 20, 0.5)));
        SplittableRandom chance = new SplittableRandom(seed);
        int n = 200_000;
        double[] drawn = new double[n];
        for (int i = 0; i < n; i++) {
            for (WorkTime time : times) {
                drawn[i] += time.idle() + time.median() * Math.exp(time.sigma() * chance.nextGaussian());
                if (chance.nextDouble() < time.seizure().chance()) {
                    drawn[i] +=
                            time.seizure().median() * Math.exp(time.seizure().sigma() * chance.nextGaussian());
                }
            }
        }
        double mean = DoubleStream.of(drawn).average().orElseThrow();
        double variance =
                DoubleStream.of(drawn).map(x -> (x - mean) * (x - mean)).sum() / (n - 1);
        double fourth = DoubleStream.of(drawn).map(x -> Math.pow(x - mean, 4)).sum() / n;
        double meanError = Math.sqrt(variance / n);
        double varianceError = Math.sqrt((fourth - variance * variance) / n);
        double trueMean = times.stream().mapToDouble(WorkTime::mean).sum();
        double trueVariance = times.stream().mapToDouble(WorkTime::variance).sum();
        assertThat(mean).as("mean, seed " + seed).isCloseTo(trueMean, within(3 * meanError));
        assertThat(variance).as("variance, seed " + seed).isCloseTo(trueVariance, within(3 * varianceError));
        TimeSpread sum = TimeSpread.sum(times, TimeSpread.Grid.upTo(1500, 16384));
        assertThat(sum.mean()).isCloseTo(trueMean, within(0.02));
        assertThat(sum.variance()).isCloseTo(trueVariance, within(trueVariance * 0.005));
        for (double t : new double[] {25, 40, 80, 150}) {
            double share = (double) DoubleStream.of(drawn).filter(x -> x <= t).count() / n;
            assertThat(sum.within(t))
                    .as(t + " minutes, seed " + seed)
                    .isCloseTo(share, within(3 * Math.sqrt(share * (1 - share) / n) + 1e-4));
        }
    }

    @Test
    void goingTogetherWithSeizureIsTheSumOfQuantiles() {
        WorkTime risky = new WorkTime(0, 3, 0.6, new WorkTime.Seizure(0.45, 20, 0.5));
        WorkTime plain = WorkTime.of(12, 0.5);
        TimeSpread.Grid grid = TimeSpread.Grid.upTo(400, 16384);
        for (double p : new double[] {0.1, 0.5, 0.8, 0.95}) {
            double byGrid = TimeSpread.of(risky, grid).quantile(p)
                    + TimeSpread.of(plain, grid).quantile(p);
            assertThat(OneFate.sum(List.of(risky, plain)).quantile(p)).isCloseTo(byGrid, within(0.01 * byGrid));
        }
    }

    @Test
    void theTransformIsTheSlowSum() {
        SplittableRandom chance = new SplittableRandom(4);
        double[] a = new double[64];
        double[] b = new double[64];
        double[] slow = new double[64];
        for (int i = 0; i < 64; i++) {
            a[i] = chance.nextDouble();
            b[i] = chance.nextDouble();
        }
        for (int i = 0; i < 64; i++) {
            for (int j = 0; i + j < 64; j++) {
                slow[i + j] += a[i] * b[j];
            }
        }
        assertThat(Convolution.of(a, b)).usingComparatorWithPrecision(1e-12).containsExactly(slow);
    }

    @Test
    void whoIsEarlyWaits() {
        TimeSpread.Grid grid = TimeSpread.Grid.upTo(100, 4096);
        TimeSpread sum =
                TimeSpread.of(WorkTime.of(10, 0.3), grid).notBefore(30).plus(TimeSpread.of(WorkTime.waiting(20), grid));
        assertThat(sum.within(49.9)).isLessThan(0.01);
        assertThat(sum.quantile(0.5)).isCloseTo(50, within(0.05));
        assertThat(OneFate.sum(List.of(WorkTime.of(10, 0.3))).notBefore(30).quantile(0.5))
                .isEqualTo(30);
    }

    @Test
    void whatLiesBeyondTheGridIsKept() {
        TimeSpread long_ = TimeSpread.of(WorkTime.of(100, 0.5), TimeSpread.Grid.upTo(100, 1024));
        assertThat(long_.beyond()).isCloseTo(0.5, within(0.01));
        assertThat(long_.quantile(0.9)).isInfinite();
        assertThatThrownBy(() -> long_.quantile(1)).hasMessageContaining("strictly between 0 and 1");
    }
}
