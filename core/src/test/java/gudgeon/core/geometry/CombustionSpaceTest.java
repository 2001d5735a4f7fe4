package gudgeon.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.geometry.CombustionSpace.Measured;
import gudgeon.core.geometry.CombustionSpace.Uncertainties;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Compression ratio and its doubt; the rows of the published tables are checked with the measurements. */
class CombustionSpaceTest {
    private static final Cylinder CYLINDER = new Cylinder(86, 86);
    private static final CombustionSpace SPACE = new CombustionSpace(CYLINDER, 45, 1.2, 87.5, 0.3, 5);
    private static final Uncertainties DOUBT = new Uncertainties(0.01, 0.02, 0.3, 0.03, 0.2, 0.02, 0.2);

    /** Against drawing the seven values at random (JCGM 101), seeded: the standard deviation of 200,000 ratios within 1 %. */
    @Test
    void theDoubtIsThatOfDrawnValues() {
        Random random = new Random(7);
        int n = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double ratio = new CombustionSpace(
                            new Cylinder(86 + 0.01 * random.nextGaussian(), 86 + 0.02 * random.nextGaussian()),
                            45 + 0.3 * random.nextGaussian(),
                            1.2 + 0.03 * random.nextGaussian(),
                            87.5 + 0.2 * random.nextGaussian(),
                            0.3 + 0.02 * random.nextGaussian(),
                            5 + 0.2 * random.nextGaussian())
                    .compressionRatio();
            sum += ratio;
            squares += ratio * ratio;
        }
        double deviation = Math.sqrt(squares / n - sum / n * (sum / n));
        assertThat(SPACE.standardUncertainty(DOUBT)).isCloseTo(deviation, within(0.01 * deviation));
        assertThat(SPACE.doubts(DOUBT).getFirst().of()).isEqualTo(Measured.CHAMBER);
    }

    /** A skim of the head over the whole mouth of the chamber is the same as the change of height over that area. */
    @Test
    void aSkimRaisesTheRatioAsTheFormulaSays() {
        double area = Math.PI / 4 * 87 * 87;
        assertThat(SPACE.withHeadSkimmed(0.2, area).compressionRatio())
                .isCloseTo(
                        CombustionSpace.ratioAfter(CYLINDER.swept_cm3(), SPACE.compressionRatio(), -0.2, area),
                        within(1e-12));
        assertThat(SPACE.withBlockSkimmed(0.2).squish_mm()).isCloseTo(1.3, within(1e-12));
    }

    @Test
    void nothingLeftAboveThePistonIsRefused() {
        assertThatThrownBy(() -> new CombustionSpace(CYLINDER, 5, 1, 87, 0, -40))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wrong sign");
    }

    /** Sea level and 2,000 m: the gauge pressure falls with the air outside (physics). */
    @Test
    void crankingPressureFallsWithHeight() {
        double ratio = new SliderCrank(43, 144).effectiveRatio(9.5, 49);
        Compression.Band low = Compression.cranking(ratio, StandardAtmosphere.pressure_Pa(0));
        Compression.Band high = Compression.cranking(ratio, StandardAtmosphere.pressure_Pa(2_000));
        assertThat(high.most_Pa() / low.most_Pa()).isCloseTo(79_501.4 / 101_325, within(1e-5));
        assertThat(low.least_Pa()).isBetween(10e5, low.most_Pa());
    }
}
