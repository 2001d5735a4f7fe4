package gudgeon.core.measuring;

import java.util.List;

/**
 * A plane laid through the points of a face, by least squares or so that the points lie between two parallel planes of least
 * distance. Widths are vertical, along z: for a face that is level to within a degree or so that is the distance but for its
 * cosine. Source: [ISO12781], from memory.
 *
 * @param slopeX rise along x, in heights' units per mm
 * @param slopeY rise along y
 * @param level height at x = 0, y = 0: of the least-squares plane, or of the middle between the two planes
 * @param width largest height over the plane less smallest
 * @param highs points that hold the upper plane; for least squares the one highest point
 * @param lows points that hold the lower plane
 * @param rank 2 where the points determine a plane, 1 where they lie on one line (in plan), 0 where they are one place
 */
public record FacePlane(
        double slopeX, double slopeY, double level, double width, List<Contact> highs, List<Contact> lows, int rank) {
    public FacePlane {
        highs = List.copyOf(highs);
        lows = List.copyOf(lows);
    }

    /**
     * A point that holds one of the planes.
     *
     * @param point its index
     * @param weight its share of that side; the shares of a side add up to one, and the width is the weighted mean of the
     *     upper heights less that of the lower
     */
    public record Contact(int point, double weight) {}

    /** The height of a point over the plane. */
    public double over(FacePoint point) {
        return point.z_mm() - level - slopeX * point.x_mm() - slopeY * point.y_mm();
    }

    /**
     * The plane of least squares of vertical distances, and the range of heights over it. Points on one line are fitted along
     * that line alone.
     *
     * @throws IllegalArgumentException when there is no point
     */
    public static FacePlane leastSquares(List<FacePoint> points) {
        need(points);
        PlanScale scale = PlanScale.of(points);
        double[] slopes = scale.leastSquaresSlopes(points);
        return finished(
                points, slopes[0], slopes[1], scale.meanHeight(points, slopes), scale.rank(), List.of(), List.of());
    }

    /**
     * The two parallel planes of least vertical distance between which all points lie, exactly: no other slope gives a smaller
     * width.
     *
     * @throws IllegalArgumentException when there is no point
     */
    public static FacePlane minimumZone(List<FacePoint> points) {
        need(points);
        FacePlane start = leastSquares(points);
        PlanScale scale = PlanScale.of(points);
        double[][] columns = new double[points.size()][];
        double[] heights = new double[points.size()];
        for (int i = 0; i < heights.length; i++) {
            columns[i] = scale.place(points.get(i));
            heights[i] = start.over(points.get(i));
        }
        LeastRange.Solution zone = LeastRange.of(columns, heights);
        double[] slopes = scale.slopes(zone.coefficients());
        double slopeX = start.slopeX() + slopes[0];
        double slopeY = start.slopeY() + slopes[1];
        double low = points.stream()
                .mapToDouble(point -> point.z_mm() - slopeX * point.x_mm() - slopeY * point.y_mm())
                .min()
                .orElseThrow();
        return finished(points, slopeX, slopeY, low + zone.range() / 2, zone.rank(), zone.highs(), zone.lows());
    }

    private static FacePlane finished(
            List<FacePoint> points,
            double slopeX,
            double slopeY,
            double level,
            int rank,
            List<Contact> highs,
            List<Contact> lows) {
        FacePlane plane = new FacePlane(slopeX, slopeY, level, 0, highs, lows, rank);
        int high = 0;
        int low = 0;
        for (int i = 1; i < points.size(); i++) {
            high = plane.over(points.get(i)) > plane.over(points.get(high)) ? i : high;
            low = plane.over(points.get(i)) < plane.over(points.get(low)) ? i : low;
        }
        double width = plane.over(points.get(high)) - plane.over(points.get(low));
        return new FacePlane(
                slopeX,
                slopeY,
                level,
                width,
                highs.isEmpty() ? List.of(new Contact(high, 1)) : highs,
                lows.isEmpty() ? List.of(new Contact(low, 1)) : lows,
                rank);
    }

    private static void need(List<FacePoint> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a plane needs at least one point");
        }
    }
}
