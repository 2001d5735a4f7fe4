package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.List;

/**
 * The least distance of two coaxial cylinders between which a surface lies, from radii read about an axis of rotation at several
 * heights: a linear programme in the shift and tilt of the axis, exact to the first order of both, which for departures below a
 * thousandth of the radius is beyond any instrument's figure. Source: [ISO12180], from memory.
 *
 * @param width_mm the cylindricity
 * @param shiftX_mm where the axis passes height zero
 * @param shiftY_mm where the axis passes height zero
 * @param tiltX its slope, mm per mm
 * @param tiltY its slope, mm per mm
 * @param determined whether the readings tell shift and tilt apart
 */
public record Cylinder(
        double width_mm, double shiftX_mm, double shiftY_mm, double tiltX, double tiltY, boolean determined) {
    /**
     * One radius.
     *
     * @param height_mm along the axis
     * @param angle_deg about it
     * @param radius_mm from the axis of rotation; or its departure from any one radius
     */
    public record Polar(double height_mm, double angle_deg, double radius_mm) {
        public Polar {
            if (!(Double.isFinite(height_mm) && Double.isFinite(angle_deg) && Double.isFinite(radius_mm))) {
                throw new IllegalArgumentException("a radius needs a height, an angle and a length that are finite");
            }
        }
    }

    /**
     * The zone of some radii.
     *
     * @param radii at least one; six or more at two heights say something
     */
    public static Cylinder of(List<Polar> radii) {
        if (radii.isEmpty()) {
            throw new IllegalArgumentException("a cylinder needs at least one radius");
        }
        double middle = radii.stream().mapToDouble(Polar::height_mm).average().orElseThrow();
        double half = Math.max(
                radii.stream()
                        .mapToDouble(one -> Math.abs(one.height_mm() - middle))
                        .max()
                        .orElseThrow(),
                1e-9);
        double[][] columns = new double[radii.size()][];
        double[] values = new double[radii.size()];
        for (int i = 0; i < values.length; i++) {
            Polar one = radii.get(i);
            double cos = Math.cos(Math.toRadians(one.angle_deg()));
            double sin = Math.sin(Math.toRadians(one.angle_deg()));
            double up = (one.height_mm() - middle) / half;
            columns[i] = new double[] {cos, sin, up * cos, up * sin};
            values[i] = one.radius_mm();
        }
        LeastRange.Solution zone = LeastRange.of(columns, values);
        double[] at = zone.coefficients();
        return new Cylinder(
                zone.range(),
                at[0] - at[2] * middle / half,
                at[1] - at[3] * middle / half,
                at[2] / half,
                at[3] / half,
                zone.rank() == 4);
    }

    /** The points of one height as an outline, for its roundness. */
    public static List<PlanePoint> outline(List<Polar> radii, double height_mm, double nominalRadius_mm) {
        List<PlanePoint> outline = new ArrayList<>();
        for (Polar one : radii) {
            if (one.height_mm() == height_mm) {
                outline.add(PlanePoint.polar(one.angle_deg(), nominalRadius_mm + one.radius_mm()));
            }
        }
        return outline;
    }
}
