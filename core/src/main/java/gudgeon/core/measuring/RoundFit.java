package gudgeon.core.measuring;

import java.util.List;

/**
 * A circle laid through the points of an outline.
 *
 * @param x_mm its centre
 * @param y_mm its centre
 * @param radius_mm its radius: of least squares, or midway between the two circles of the zone
 * @param width_mm largest distance from the centre less smallest: the departure from roundness about this centre
 */
public record RoundFit(double x_mm, double y_mm, double radius_mm, double width_mm) {
    private static final int STEPS = 200;

    static RoundFit about(List<PlanePoint> points, double x, double y) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (PlanePoint point : points) {
            double distance = point.to(x, y);
            low = Math.min(low, distance);
            high = Math.max(high, distance);
        }
        return new RoundFit(x, y, (low + high) / 2, high - low);
    }

    /**
     * The circle of least squares of distances from it (not of their squares), by Gauss and Newton with damping from an
     * algebraic start. Source: [ISO12181], from memory.
     *
     * @param points at least three, not on one line
     */
    public static RoundFit leastSquares(List<PlanePoint> points) {
        double[] circle = algebraic(points);
        double damping = 1e-6;
        double now = squares(points, circle);
        for (int step = 0; step < STEPS; step++) {
            double[] next = gaussNewton(points, circle, damping);
            double then = squares(points, next);
            if (then <= now) {
                double moved =
                        Math.abs(next[0] - circle[0]) + Math.abs(next[1] - circle[1]) + Math.abs(next[2] - circle[2]);
                circle = next;
                now = then;
                damping /= 10;
                if (moved <= 1e-15 * (Math.abs(circle[0]) + Math.abs(circle[1]) + circle[2])) {
                    break;
                }
            } else {
                damping *= 10;
                if (damping > 1e12) {
                    break;
                }
            }
        }
        RoundFit about = about(points, circle[0], circle[1]);
        return new RoundFit(circle[0], circle[1], circle[2], about.width_mm());
    }

    private static double squares(List<PlanePoint> points, double[] circle) {
        double sum = 0;
        for (PlanePoint point : points) {
            double off = point.to(circle[0], circle[1]) - circle[2];
            sum += off * off;
        }
        return sum;
    }

    private static double[] gaussNewton(List<PlanePoint> points, double[] circle, double damping) {
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (PlanePoint point : points) {
            double distance = point.to(circle[0], circle[1]);
            double[] gradient = {
                distance == 0 ? 0 : (circle[0] - point.x_mm()) / distance,
                distance == 0 ? 0 : (circle[1] - point.y_mm()) / distance,
                -1
            };
            add(normal, right, gradient, circle[2] - distance);
        }
        for (int i = 0; i < 3; i++) {
            normal[i][i] *= 1 + damping;
        }
        double[] move = new Dense(normal).solve(right);
        return new double[] {circle[0] + move[0], circle[1] + move[1], circle[2] + move[2]};
    }

    private static void add(double[][] normal, double[] right, double[] gradient, double value) {
        for (int i = 0; i < gradient.length; i++) {
            right[i] += gradient[i] * value;
            for (int j = 0; j < gradient.length; j++) {
                normal[i][j] += gradient[i] * gradient[j];
            }
        }
    }

    /** The circle of least squares of x^2 + y^2 - 2ax - 2by - c, about the points' middle. */
    private static double[] algebraic(List<PlanePoint> points) {
        guard(points);
        double middleX = points.stream().mapToDouble(PlanePoint::x_mm).average().orElseThrow();
        double middleY = points.stream().mapToDouble(PlanePoint::y_mm).average().orElseThrow();
        double size = Math.sqrt(points.stream()
                .mapToDouble(point -> point.to(middleX, middleY) * point.to(middleX, middleY))
                .average()
                .orElseThrow());
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (PlanePoint point : points) {
            double x = (point.x_mm() - middleX) / size;
            double y = (point.y_mm() - middleY) / size;
            add(normal, right, new double[] {x, y, 1}, x * x + y * y);
        }
        double determinant = normal[0][0] * normal[1][1] - normal[0][1] * normal[1][0];
        if (!(determinant > 1e-16 * normal[0][0] * normal[0][0] + 1e-300)) {
            throw new IllegalArgumentException("the points lie on one line: no circle goes through them");
        }
        double[] own = new Dense(normal).solve(right);
        double a = own[0] / 2;
        double b = own[1] / 2;
        return new double[] {
            middleX + a * size, middleY + b * size, size * Math.sqrt(Math.max(0, own[2] + a * a + b * b))
        };
    }

    static void guard(List<PlanePoint> points) {
        if (points.stream().distinct().count() < 3) {
            throw new IllegalArgumentException("a circle needs at least three different points");
        }
    }
}
