package gudgeon.core.measuring;

/**
 * A point of an outline measured in a plane.
 *
 * @param x_mm one coordinate
 * @param y_mm the other, in the same unit
 */
public record PlanePoint(double x_mm, double y_mm) {
    public PlanePoint {
        if (!(Double.isFinite(x_mm) && Double.isFinite(y_mm))) {
            throw new IllegalArgumentException("a point needs two finite numbers, not " + x_mm + ", " + y_mm);
        }
    }

    /** The point at an angle and a radius. */
    public static PlanePoint polar(double angle_deg, double radius_mm) {
        double angle = Math.toRadians(angle_deg);
        return new PlanePoint(radius_mm * Math.cos(angle), radius_mm * Math.sin(angle));
    }

    double to(double x, double y) {
        return Math.hypot(x_mm - x, y_mm - y);
    }
}
