package gudgeon.core.geometry;

/**
 * The bore and stroke of a cylinder.
 *
 * @param bore_mm the bore's diameter in mm, above 0
 * @param stroke_mm the piston's travel in mm, above 0
 */
public record Cylinder(double bore_mm, double stroke_mm) {
    public Cylinder {
        Guard.positive("The bore", bore_mm, "mm");
        Guard.positive("The stroke", stroke_mm, "mm");
    }

    /** The area of the bore in mm². */
    public double area_mm2() {
        return Math.PI / 4 * bore_mm * bore_mm;
    }

    /** The volume swept in one stroke, π/4 · bore² · stroke, in cm³. */
    public double swept_cm3() {
        return area_mm2() * stroke_mm / 1000;
    }

    /** The same cylinder bored out to another diameter, in mm. */
    public Cylinder withBore(double other_mm) {
        return new Cylinder(other_mm, stroke_mm);
    }
}
