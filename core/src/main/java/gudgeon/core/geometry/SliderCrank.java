package gudgeon.core.geometry;

/**
 * Crank, rod and piston, the pin on the cylinder's axis unless an offset is given.
 *
 * @param crank_radius_mm half the stroke for a pin without offset, in mm, above 0
 * @param rod_length_mm between the eyes' centres, in mm, more than radius and offset together
 * @param pin_offset_mm how far the pin's path lies beside the crank's axis, in mm, towards the side on which the crankpin
 *     goes down; 0 for most engines
 */
public record SliderCrank(double crank_radius_mm, double rod_length_mm, double pin_offset_mm) {
    public SliderCrank {
        Guard.positive("The crank's radius", crank_radius_mm, "mm");
        Guard.positive("The rod's length", rod_length_mm, "mm");
        Guard.finite("The pin's offset", pin_offset_mm, "mm");
        if (rod_length_mm <= crank_radius_mm + Math.abs(pin_offset_mm)) {
            throw new IllegalArgumentException("A rod of " + rod_length_mm + " mm is too short for a crank's radius of "
                    + crank_radius_mm + " mm. Maybe the stroke was given for the radius.");
        }
    }

    /** With the pin on the axis. */
    public SliderCrank(double crank_radius_mm, double rod_length_mm) {
        this(crank_radius_mm, rod_length_mm, 0);
    }

    /**
     * How far the piston has gone down from its highest place, in mm.
     *
     * @param crank_deg the crank's angle from where crankpin and cylinder's axis line up at the top, in degrees
     */
    public double pistonDrop_mm(double crank_deg) {
        return highest_mm() - height_mm(crank_deg);
    }

    /** The piston's travel from its highest to its lowest place, in mm; 2 · radius without offset. */
    public double stroke_mm() {
        return highest_mm() - lowest_mm();
    }

    private double height_mm(double crank_deg) {
        double angle = Math.toRadians(crank_deg);
        double side = crank_radius_mm * Math.sin(angle) - pin_offset_mm;
        return crank_radius_mm * Math.cos(angle) + Math.sqrt(rod_length_mm * rod_length_mm - side * side);
    }

    private double highest_mm() {
        double reach = rod_length_mm + crank_radius_mm;
        return Math.sqrt(reach * reach - pin_offset_mm * pin_offset_mm);
    }

    private double lowest_mm() {
        double reach = rod_length_mm - crank_radius_mm;
        return Math.sqrt(reach * reach - pin_offset_mm * pin_offset_mm);
    }

    /**
     * The compression ratio that counts from where the inlet valve closes.
     *
     * @param ratio the geometric ratio, above 1
     * @param inletCloses_deg crank degrees after bottom dead centre, 0 to below 180
     */
    public double effectiveRatio(double ratio, double inletCloses_deg) {
        Guard.positive("The compression ratio less one", ratio - 1, "");
        Guard.between("The inlet's closing after bottom dead centre", inletCloses_deg, -90, 179, "°");
        return 1 + (ratio - 1) * pistonDrop_mm(180 + inletCloses_deg) / stroke_mm();
    }
}
