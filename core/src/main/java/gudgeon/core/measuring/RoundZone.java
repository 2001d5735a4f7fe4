package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.List;

/**
 * The two concentric circles of least distance between which all points of an outline lie. A best centre has at least four
 * points on its circles: two outside and two inside (it lies on the middle lines of both pairs), three and one, or one and
 * three (it is the centre of the circle through the three). Up to {@value #ALL_CENTRES} points every such centre is tried.
 * Above, the zone is found by linear programmes from the least-squares centre, and boxes of other centres among the points are
 * excluded one by one, since no distance changes faster than its centre moves. Source: [ISO12181], from memory.
 */
public final class RoundZone {
    static final int ALL_CENTRES = 32;

    private static final int ROUNDS = 60;
    private static final double SETTLED = 1e-12;
    private static final double AS_FAR_AS = 1e4;
    private static final double ENOUGH = 1e-6;
    private static final int BOXES = 400_000;

    private final List<PlanePoint> points;
    private RoundFit best;
    private int boxes;

    private RoundZone(List<PlanePoint> points, RoundFit start) {
        this.points = points;
        this.best = start;
    }

    /**
     * The zone of an outline.
     *
     * @param points at least three different ones, not on one line
     */
    public static RoundZone of(List<PlanePoint> points) {
        return of(points, ALL_CENTRES);
    }

    static RoundZone of(List<PlanePoint> points, int allCentres) {
        List<PlanePoint> different = points.stream().distinct().toList();
        RoundFit start = RoundFit.leastSquares(different);
        RoundZone zone = new RoundZone(different, RoundFit.about(different, start.x_mm(), start.y_mm()));
        if (different.size() <= allCentres) {
            zone.tryAllCentres();
        } else {
            zone.refine(zone.best);
            zone.excludeOthers();
        }
        return zone;
    }

    /** The circle midway between the two of the zone, and their distance as its width. */
    public RoundFit fit() {
        return best;
    }

    /**
     * Whether no centre among the points has a smaller zone, by more than a millionth of it; false only where a short arc leaves
     * the centre so free that the search was cut short.
     */
    public boolean proven() {
        return boxes < BOXES;
    }

    private void tryAllCentres() {
        List<double[]> lines = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                lines.add(middleLine(points.get(i), points.get(j)));
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                tryCrossing(lines.get(i), lines.get(j));
            }
        }
    }

    /** The line of places equally far from two points: a x + b y = c. The circumcentre of three is a crossing of two such lines. */
    private static double[] middleLine(PlanePoint first, PlanePoint second) {
        double a = second.x_mm() - first.x_mm();
        double b = second.y_mm() - first.y_mm();
        double c = a * (first.x_mm() + second.x_mm()) / 2 + b * (first.y_mm() + second.y_mm()) / 2;
        return new double[] {a, b, c};
    }

    private void tryCrossing(double[] first, double[] second) {
        double determinant = first[0] * second[1] - first[1] * second[0];
        double x = (first[2] * second[1] - first[1] * second[2]) / determinant;
        double y = (first[0] * second[2] - first[2] * second[0]) / determinant;
        if (Double.isFinite(x)
                && Double.isFinite(y)
                && distance(x, y) < AS_FAR_AS * (best.radius_mm() + best.width_mm())) {
            offer(RoundFit.about(points, x, y));
        }
    }

    private double distance(double x, double y) {
        return points.getFirst().to(x, y);
    }

    private void offer(RoundFit other) {
        if (other.width_mm() < best.width_mm()) {
            best = other;
        }
    }

    /** Linear programmes on the distances, from a centre; each settles the move of the centre to first order. */
    private void refine(RoundFit from) {
        RoundFit at = from;
        for (int round = 0; round < ROUNDS; round++) {
            RoundFit centre = at;
            double[][] columns = new double[points.size()][];
            double[] values = new double[points.size()];
            for (int i = 0; i < values.length; i++) {
                PlanePoint point = points.get(i);
                values[i] = point.to(centre.x_mm(), centre.y_mm());
                columns[i] = new double[] {
                    (point.x_mm() - centre.x_mm()) / values[i], (point.y_mm() - centre.y_mm()) / values[i]
                };
            }
            double[] move = LeastRange.of(columns, values).coefficients();
            RoundFit next = RoundFit.about(points, centre.x_mm() + move[0], centre.y_mm() + move[1]);
            for (int half = 0; half < 30 && next.width_mm() > centre.width_mm(); half++) {
                move = new double[] {move[0] / 2, move[1] / 2};
                next = RoundFit.about(points, centre.x_mm() + move[0], centre.y_mm() + move[1]);
            }
            if (next.width_mm() >= centre.width_mm() - SETTLED * centre.radius_mm()) {
                offer(next);
                break;
            }
            at = next;
            offer(at);
        }
    }

    private void excludeOthers() {
        double size = points.stream()
                .mapToDouble(p -> p.to(best.x_mm(), best.y_mm()))
                .max()
                .orElseThrow();
        split(best.x_mm(), best.y_mm(), size);
    }

    /** A square of centres: no centre in it is better than its middle by more than twice its half diagonal. */
    private void split(double x, double y, double half) {
        if (boxes++ >= BOXES) {
            return;
        }
        double width = RoundFit.about(points, x, y).width_mm();
        if (width < best.width_mm()) {
            refine(RoundFit.about(points, x, y));
        }
        double enough = ENOUGH * best.width_mm() + SETTLED * best.radius_mm();
        if (width - 2 * half * Math.sqrt(2) >= best.width_mm() - enough) {
            return;
        }
        double quarter = half / 2;
        split(x - quarter, y - quarter, quarter);
        split(x + quarter, y - quarter, quarter);
        split(x - quarter, y + quarter, quarter);
        split(x + quarter, y + quarter, quarter);
    }
}
