package gudgeon.core.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A pace from a record: closed forms against plain summing over every pace that could be. */
class PacesTest {
    private static Paces.Timed timed(double ratio) {
        return new Paces.Timed("undo", 10, 10 * ratio);
    }

    @Test
    void withoutARecordItIsTheUsualPace() {
        Pace pace = Paces.usual().of("undo");
        assertThat(pace.median()).isCloseTo(1.8, within(1e-12));
        assertThat(pace.sigma()).isCloseTo(0.5, within(1e-12));
        assertThat(pace.timed()).isZero();
    }

    /**
     * The same prior written out: mean normal about ln 1.8 with variance v/4, variance v inverse gamma of shape 4 and a scale that
     * makes the first prediction 0.5 wide. Posterior by summing on a grid of mean and variance; nothing of the closed form is used.
     */
    @Test
    void theClosedFormIsTheSumOverAllPaces() {
        double[] ratios = {1.1, 1.4, 0.9, 2.6, 1.2};
        double scale = 0.25 * 3 * 4 / 5;
        double total = 0;
        double first = 0;
        double second = 0;
        for (int i = 1; i < 1500; i++) {
            double v = i * 0.004;
            for (int j = 0; j < 1200; j++) {
                double m = -3 + j * 0.006;
                double weight =
                        -5 * Math.log(v) - scale / v - 0.5 * Math.log(v) - 2 * Math.pow(m - Math.log(1.8), 2) / v;
                for (double ratio : ratios) {
                    weight += -0.5 * Math.log(v) - Math.pow(Math.log(ratio) - m, 2) / (2 * v);
                }
                double w = Math.exp(weight);
                total += w;
                first += w * m;
                second += w * (v + m * m);
            }
        }
        double mean = first / total;
        double spread = Math.sqrt(second / total - mean * mean);
        List<Paces.Timed> record = new ArrayList<>();
        for (double ratio : ratios) {
            record.add(timed(ratio));
        }
        Pace pace = Paces.learned(record).all();
        assertThat(Math.log(pace.median())).isCloseTo(mean, within(1e-4));
        assertThat(pace.sigma()).isCloseTo(spread, within(1e-3));
        assertThat(pace.timed()).isEqualTo(5);
    }

    @Test
    void aLongRecordIsBelievedAndAShortOneOnlyALittle() {
        SplittableRandom chance = new SplittableRandom(11);
        List<Paces.Timed> record = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            record.add(timed(1.2 * Math.exp(0.3 * chance.nextGaussian())));
        }
        Pace believed = Paces.learned(record).all();
        assertThat(believed.median()).isCloseTo(1.2, within(0.05));
        assertThat(believed.sigma()).isCloseTo(0.3, within(0.03));
        Pace once = Paces.learned(List.of(timed(1.0))).all();
        assertThat(once.median()).isBetween(1.5, 1.8);
    }

    @Test
    void aKindOfWorkStartsFromTheWholeAndGoesItsOwnWay() {
        List<Paces.Timed> record = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            record.add(new Paces.Timed("undo", 5, 5));
            record.add(new Paces.Timed("drain", 5, 15));
        }
        Paces paces = Paces.learned(record);
        assertThat(paces.of("undo").median()).isLessThan(paces.all().median());
        assertThat(paces.of("drain").median()).isGreaterThan(paces.all().median());
        assertThat(paces.of("lift")).isEqualTo(paces.all());
    }

    @Test
    void aSlipOfThePenIsNoPace() {
        assertThat(Paces.learned(List.of(timed(1.5), timed(600))).all())
                .isEqualTo(Paces.learned(List.of(timed(1.5))).all());
    }
}
