package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Planes through faces: published readings, a slow rival, and what may not matter. */
class FacePlaneTest {
    /** Source: [MOODY1955] heights; 175.371 and 163.67305 microinch were computed by two other methods. */
    @Test
    void surfacePlate() throws IOException {
        List<FacePoint> points = moody();
        assertThat(points).hasSize(126);
        assertThat(FacePlane.leastSquares(points).width()).isCloseTo(175.371, within(0.001));
        FacePlane zone = FacePlane.minimumZone(points);
        assertThat(zone.width()).isCloseTo(163.67305, within(1e-5));
        assertThat(zone.rank()).isEqualTo(2);
        assertThat(zone.highs()).as("edge to edge: two points hold each plane").hasSize(2);
        assertThat(zone.lows()).hasSize(2);
    }

    @Test
    void agreesWithEveryPlaneThroughThreeAndParallelToTwo() {
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            List<FacePoint> points = randomFace(random, 4 + random.nextInt(6));
            double exact = slowZone(points);
            assertThat(FacePlane.minimumZone(points).width())
                    .as("seed %d", seed)
                    .isCloseTo(exact, within(1e-11));
        }
    }

    @Test
    void turningShiftingTiltingAndOrderChangeNothing() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<FacePoint> points = randomFace(random, 5 + random.nextInt(30));
            double angle = random.nextDouble() * 6.3;
            double tiltX = (random.nextDouble() - 0.5) * 0.02;
            double tiltY = (random.nextDouble() - 0.5) * 0.02;
            List<FacePoint> changed = new ArrayList<>();
            for (FacePoint p : points) {
                double x = Math.cos(angle) * p.x_mm() - Math.sin(angle) * p.y_mm() + 1234.5;
                double y = Math.sin(angle) * p.x_mm() + Math.cos(angle) * p.y_mm() - 987.6;
                changed.add(new FacePoint(x, y, p.z_mm() + 17 + tiltX * p.x_mm() + tiltY * p.y_mm()));
            }
            Collections.shuffle(changed, random);
            assertThat(FacePlane.minimumZone(changed).width())
                    .as("seed %d", seed)
                    .isCloseTo(FacePlane.minimumZone(points).width(), within(1e-9));
            assertThat(FacePlane.leastSquares(changed).width())
                    .as("seed %d", seed)
                    .isCloseTo(FacePlane.leastSquares(points).width(), within(1e-9));
        }
    }

    @Test
    void noOtherSlopeIsBetterOnAGridAtManyPoints() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            List<FacePoint> points = randomFace(random, 150);
            FacePlane zone = FacePlane.minimumZone(points);
            for (int i = 0; i < 300; i++) {
                double dx = random.nextGaussian() * 1e-4;
                double dy = random.nextGaussian() * 1e-4;
                assertThat(width(points, zone.slopeX() + dx, zone.slopeY() + dy))
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(zone.width() - 1e-12);
            }
        }
    }

    @Test
    void fewPointsAndOnesOnALineAreAnswered() {
        FacePoint a = new FacePoint(0, 0, 0.01);
        FacePoint b = new FacePoint(100, 0, 0.05);
        FacePoint c = new FacePoint(30, 80, -0.02);
        assertThat(FacePlane.minimumZone(List.of(a)).rank()).isZero();
        assertThat(FacePlane.minimumZone(List.of(a, b)).rank()).isEqualTo(1);
        assertThat(FacePlane.minimumZone(List.of(a, b, c)).width()).isCloseTo(0, within(1e-12));
        assertThat(FacePlane.minimumZone(List.of(a, b, c, a, b)).width())
                .as("duplicates")
                .isCloseTo(0, within(1e-12));
        FacePlane twice = FacePlane.minimumZone(List.of(a, b, c, new FacePoint(100, 0, 0.07)));
        assertThat(twice.width()).as("one place, two heights").isCloseTo(0.02, within(1e-12));
        List<FacePoint> line = List.of(
                new FacePoint(0, 0, 0),
                new FacePoint(50, 25, 0.03),
                new FacePoint(100, 50, 0),
                new FacePoint(20, 10, 0));
        FacePlane straight = FacePlane.minimumZone(line);
        assertThat(straight.rank()).isEqualTo(1);
        assertThat(straight.width()).isCloseTo(0.03, within(1e-12));
        assertThatThrownBy(() -> FacePlane.minimumZone(List.of())).hasMessageContaining("at least one point");
        assertThatThrownBy(() -> new FacePoint(0, 0, Double.NaN)).hasMessageContaining("finite");
    }

    static List<FacePoint> moody() throws IOException {
        try (InputStream in = FacePlaneTest.class.getResourceAsStream("surface-plate-moody1955.csv")) {
            List<FacePoint> points = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                if (line.isBlank() || line.startsWith("#") || line.startsWith("line")) {
                    continue;
                }
                String[] cells = line.strip().split(",", -1);
                points.add(new FacePoint(
                        Double.parseDouble(cells[1]), Double.parseDouble(cells[2]), Double.parseDouble(cells[3])));
            }
            return points;
        }
    }

    private static List<FacePoint> randomFace(Random random, int size) {
        List<FacePoint> points = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            points.add(new FacePoint(400 * random.nextDouble(), 150 * random.nextDouble(), 0.1 * random.nextDouble()));
        }
        return points;
    }

    private static double width(List<FacePoint> points, double slopeX, double slopeY) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (FacePoint p : points) {
            double over = p.z_mm() - slopeX * p.x_mm() - slopeY * p.y_mm();
            low = Math.min(low, over);
            high = Math.max(high, over);
        }
        return high - low;
    }

    /** Every slope with three points on one plane, or two on each of two parallel planes. */
    private static double slowZone(List<FacePoint> points) {
        double best = width(points, 0, 0);
        int n = points.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                for (int k = 0; k < n; k++) {
                    for (int l = k + 1; l < n; l++) {
                        best = Math.min(
                                best, parallelTo(points, points.get(i), points.get(j), points.get(k), points.get(l)));
                    }
                }
            }
        }
        return best;
    }

    private static double parallelTo(List<FacePoint> points, FacePoint a, FacePoint b, FacePoint c, FacePoint d) {
        double x1 = b.x_mm() - a.x_mm();
        double y1 = b.y_mm() - a.y_mm();
        double z1 = b.z_mm() - a.z_mm();
        double x2 = d.x_mm() - c.x_mm();
        double y2 = d.y_mm() - c.y_mm();
        double z2 = d.z_mm() - c.z_mm();
        double determinant = x1 * y2 - x2 * y1;
        if (Math.abs(determinant) < 1e-9) {
            return Double.POSITIVE_INFINITY;
        }
        return width(points, (z1 * y2 - z2 * y1) / determinant, (x1 * z2 - x2 * z1) / determinant);
    }
}
