package gudgeon.core.measuring;

/**
 * Whether a connecting rod is straight: heights over a plate at both ends of a mandrel in the small end, the big end clamped on
 * another. Measured upright for bend, lying for twist.
 *
 * @param bend_per100mm how much the two bores lean towards each other over 100 mm of mandrel, in mm
 * @param twist_per100mm how much they are turned out of one plane over 100 mm of mandrel, in mm
 */
public record RodLine(double bend_per100mm, double twist_per100mm) {
    /**
     * A rod.
     *
     * @param apart_mm distance of the two places on the mandrel; above zero
     */
    public static RodLine of(
            double apart_mm, double uprightLeft_mm, double uprightRight_mm, double lyingLeft_mm, double lyingRight_mm) {
        if (!(apart_mm > 0 && Double.isFinite(apart_mm))) {
            throw new IllegalArgumentException("the places on the mandrel are some way apart, not " + apart_mm);
        }
        return new RodLine(
                100 * (uprightRight_mm - uprightLeft_mm) / apart_mm, 100 * (lyingRight_mm - lyingLeft_mm) / apart_mm);
    }
}
