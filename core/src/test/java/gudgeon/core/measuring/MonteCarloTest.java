package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Drawing from inputs against the guide's own examples, and against first order. */
class MonteCarloTest {
    private static Estimate input(String name, double value, Spread spread, double halfWidth) {
        return new Estimate(value, Budget.of(Contribution.within(Source.of(name), spread, halfWidth, 1)));
    }

    /** Source: [JCGM101] 9.2.3: four rectangular inputs of variance one: 95 % within 3.88 of zero; first order says 3.92. */
    @Test
    void fourRectangles() {
        double half = Math.sqrt(3);
        List<Estimate> inputs = List.of(
                input("a", 0, Spread.RECTANGULAR, half),
                input("b", 0, Spread.RECTANGULAR, half),
                input("c", 0, Spread.RECTANGULAR, half),
                input("d", 0, Spread.RECTANGULAR, half));
        MonteCarlo drawn = MonteCarlo.of(inputs, x -> x[0] + x[1] + x[2] + x[3], 1, 400_000);
        assertThat(drawn.standardDeviation()).isCloseTo(2, within(0.01));
        assertThat(drawn.high()).isCloseTo(3.88, within(0.02));
        Estimate first = inputs.get(0).plus(inputs.get(1)).plus(inputs.get(2)).plus(inputs.get(3));
        assertThat(first.expanded()).isCloseTo(3.92, within(0.001));
        assertThat(drawn.agreesWith(first)).isTrue();
    }

    /** Source: [JCGM101] 9.3, from memory: u drawn 0.0754 mg, first order 0.0539 mg; they do not agree. */
    @Test
    void massInAir() {
        List<Estimate> inputs = List.of(
                input("reference", 100_000, Spread.NORMAL, 0.050),
                input("added", 1.234, Spread.NORMAL, 0.020),
                input("air", 1.20, Spread.RECTANGULAR, 0.10),
                input("weight density", 8000, Spread.RECTANGULAR, 1000),
                input("reference density", 8000, Spread.RECTANGULAR, 50));
        MonteCarlo drawn = MonteCarlo.of(
                inputs, x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000, 7, 400_000);
        assertThat(drawn.mean()).isCloseTo(1.234, within(0.002));
        assertThat(drawn.standardDeviation()).isCloseTo(0.0754, within(0.0004));
        Estimate first =
                new Estimate(1.234, Budget.of(Contribution.of(Source.of("all"), 0.0539, 1, Double.POSITIVE_INFINITY)));
        assertThat(drawn.agreesWith(first)).isFalse();
    }

    @Test
    void aRoundBoreReadsOutOfRound() {
        Repeatability rough = new Repeatability(0.003, 20, false);
        double[] depths = {10, 50, 90};
        String[] directions = {"thrust", "axial"};
        SizeSurvey round = Gauges.survey(Gauges.BORE_GAUGE, "1", rough, depths, directions, 86, 86, 86, 86, 86, 86);
        Derived first = round.outOfRound().orElseThrow();
        MonteCarlo drawn = round.drawn(Derived.Trait.OUT_OF_ROUND, 5);
        assertThat(first.value()).isZero();
        assertThat(drawn.mean()).as("scatter alone reads as out-of-round").isGreaterThan(0.003);
        assertThat(drawn.agreesWith(first.estimate())).isFalse();
        SizeSurvey worn = Gauges.survey(Gauges.BORE_GAUGE, "1", rough, depths, directions, 86.1, 86, 86, 86, 86, 86);
        assertThat(worn.drawn(Derived.Trait.OUT_OF_ROUND, 5)
                        .agreesWith(worn.outOfRound().orElseThrow().estimate()))
                .as("far from zero first order does")
                .isTrue();
    }

    @Test
    void sameSeedSameAnswer() {
        List<Estimate> inputs = List.of(input("a", 0, Spread.ARCSINE, 1), input("b", 0, Spread.TRIANGULAR, 1));
        assertThat(MonteCarlo.of(inputs, x -> x[0] * x[1], 3, 2000))
                .isEqualTo(MonteCarlo.of(inputs, x -> x[0] * x[1], 3, 2000));
    }
}
