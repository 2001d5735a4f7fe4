package gudgeon.core.measuring;

import java.util.List;

/**
 * The plan of a face turned to its own two main directions and brought to a size of one, so that fits do not depend on where the
 * origin lies, how large the face is, or how it is turned.
 */
final class PlanScale {
    private static final double ONE_LINE = 1e-9;

    private final double middleX;
    private final double middleY;
    private final double cos;
    private final double sin;
    private final double size;
    private final double[] spread;

    private PlanScale(double middleX, double middleY, double cos, double sin, double size, double[] spread) {
        this.middleX = middleX;
        this.middleY = middleY;
        this.cos = cos;
        this.sin = sin;
        this.size = size;
        this.spread = spread;
    }

    static PlanScale of(List<FacePoint> points) {
        double middleX = points.stream().mapToDouble(FacePoint::x_mm).average().orElseThrow();
        double middleY = points.stream().mapToDouble(FacePoint::y_mm).average().orElseThrow();
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (FacePoint point : points) {
            double x = point.x_mm() - middleX;
            double y = point.y_mm() - middleY;
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        double angle = 0.5 * Math.atan2(2 * xy, xx - yy);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double along = 0;
        double across = 0;
        for (FacePoint point : points) {
            double x = point.x_mm() - middleX;
            double y = point.y_mm() - middleY;
            along += square(cos * x + sin * y);
            across += square(cos * y - sin * x);
        }
        double size = Math.sqrt(Math.max(along, across) / points.size());
        double whole = size > 0 ? size : 1;
        return new PlanScale(
                middleX, middleY, cos, sin, whole, new double[] {along / square(whole), across / square(whole)});
    }

    /** 2 for points that spread in two directions, 1 for points on a line, 0 for one place. */
    int rank() {
        int rank = 0;
        for (double directions : spread) {
            rank += directions > square(ONE_LINE) * Math.max(spread[0], spread[1]) ? 1 : 0;
        }
        return rank;
    }

    /** A place in the plan's own directions; a direction in which nothing spreads is zero. */
    double[] place(FacePoint point) {
        double x = (point.x_mm() - middleX) / size;
        double y = (point.y_mm() - middleY) / size;
        return new double[] {told(0) ? cos * x + sin * y : 0, told(1) ? cos * y - sin * x : 0};
    }

    /** Slopes along x and y from those in the plan's own directions. */
    double[] slopes(double[] own) {
        return new double[] {(cos * own[0] - sin * own[1]) / size, (sin * own[0] + cos * own[1]) / size};
    }

    double[] leastSquaresSlopes(List<FacePoint> points) {
        double middle = points.stream().mapToDouble(FacePoint::z_mm).average().orElseThrow();
        double[] sums = new double[2];
        for (FacePoint point : points) {
            double[] place = place(point);
            sums[0] += place[0] * (point.z_mm() - middle);
            sums[1] += place[1] * (point.z_mm() - middle);
        }
        return slopes(new double[] {told(0) ? sums[0] / spread[0] : 0, told(1) ? sums[1] / spread[1] : 0});
    }

    double meanHeight(List<FacePoint> points, double[] slopes) {
        return points.stream()
                .mapToDouble(point -> point.z_mm() - slopes[0] * point.x_mm() - slopes[1] * point.y_mm())
                .average()
                .orElseThrow();
    }

    private boolean told(int direction) {
        return spread[direction] > square(ONE_LINE) * Math.max(spread[0], spread[1]);
    }

    private static double square(double x) {
        return x * x;
    }
}
