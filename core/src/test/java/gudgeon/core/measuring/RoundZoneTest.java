package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Circles: shapes whose roundness is known, two ways to the zone, and what may not matter. */
class RoundZoneTest {
    /** A shape of n lobes has a zone of twice its amplitude about its centre, where readings hit every crest; computed by hand. */
    @Test
    void lobes() {
        for (int lobes : new int[] {3, 4, 6, 9}) {
            List<PlanePoint> outline = new ArrayList<>();
            for (int i = 0; i < 360; i += 5) {
                double radius = 43 + 0.012 * Math.cos(Math.toRadians(lobes * i));
                PlanePoint point = PlanePoint.polar(i, radius);
                outline.add(new PlanePoint(point.x_mm() + 0.8, point.y_mm() - 0.3));
            }
            RoundZone zone = RoundZone.of(outline);
            assertThat(zone.proven()).isTrue();
            assertThat(zone.fit().width_mm()).as("%d lobes", lobes).isCloseTo(0.024, within(1e-9));
        }
    }

    @Test
    void bothWaysAgree() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            List<PlanePoint> outline = ring(random, 8 + random.nextInt(12), 0.05);
            assertThat(RoundZone.of(outline, 0).fit().width_mm())
                    .as("seed %d", seed)
                    .isCloseTo(RoundZone.of(outline, 100).fit().width_mm(), within(1e-7));
        }
    }

    @Test
    void zoneIsNeverWiderThanLeastSquares() {
        for (int seed = 0; seed < 60; seed++) {
            List<PlanePoint> outline = ring(new Random(seed), 36, 0.02);
            assertThat(RoundZone.of(outline).fit().width_mm())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(RoundFit.leastSquares(outline).width_mm() + 1e-12);
        }
    }

    /** The sum of squared distances from the circle does not fall when centre or radius is moved a little. */
    @Test
    void leastSquaresIsLeast() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            List<PlanePoint> outline = ring(random, 5 + random.nextInt(10), 2);
            RoundFit fit = RoundFit.leastSquares(outline);
            double least = squares(outline, fit.x_mm(), fit.y_mm(), fit.radius_mm());
            for (int i = 0; i < 40; i++) {
                double step = Math.pow(10, -1 - random.nextInt(5));
                assertThat(squares(
                                outline,
                                fit.x_mm() + step * random.nextGaussian(),
                                fit.y_mm() + step * random.nextGaussian(),
                                fit.radius_mm() + step * random.nextGaussian()))
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(least * (1 - 1e-12));
            }
        }
    }

    @Test
    void noCircleThroughALineOrTwoPoints() {
        PlanePoint a = new PlanePoint(0, 0);
        PlanePoint b = new PlanePoint(1, 1);
        assertThatThrownBy(() -> RoundZone.of(List.of(a, b, a))).hasMessageContaining("three different");
        assertThatThrownBy(() -> RoundFit.leastSquares(List.of(a, b, new PlanePoint(2, 2))))
                .hasMessageContaining("one line");
        assertThatThrownBy(() -> new PlanePoint(Double.NaN, 0)).hasMessageContaining("finite");
    }

    private static List<PlanePoint> ring(Random random, int size, double rough) {
        List<PlanePoint> outline = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            double angle = 360.0 * (i + 0.5 * random.nextDouble()) / size;
            outline.add(PlanePoint.polar(angle, 30 + rough * random.nextDouble()));
        }
        return outline;
    }

    private static double squares(List<PlanePoint> outline, double x, double y, double radius) {
        return outline.stream()
                .mapToDouble(point -> Math.pow(Math.hypot(point.x_mm() - x, point.y_mm() - y) - radius, 2))
                .sum();
    }
}
