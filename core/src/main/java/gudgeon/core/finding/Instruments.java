package gudgeon.core.finding;

/** Readings of instruments turned into what they mean. Pressures Pa, diameters m. */
public final class Instruments {
    /** Diameter of the smaller orifice of aviation practice, 0.040 inch, m. Source: [AC43.13]. */
    public static final double SMALL = 0.040 * 0.0254;

    /** Diameter of the larger one, 0.060 inch, m. */
    public static final double LARGE = 0.060 * 0.0254;

    /** The usual supply, 80 psi gauge, Pa. */
    public static final double USUAL_SUPPLY = 80 * 6894.757293168;

    private static final double LEAST_LOSS = 0.005;
    private static final double MOST_LOSS = 0.995;

    private Instruments() {}

    /**
     * The leak behind a leak-down reading, in 0.040 inch orifices.
     *
     * @param loss share of the supply's gauge pressure that is lost, 0 to 1
     * @param supply gauge pressure before the orifice
     * @param orifice its diameter
     * @param ambient pressure of the air
     */
    public static double orifices(double loss, double supply, double orifice, double ambient) {
        double share = Math.min(MOST_LOSS, Math.max(LEAST_LOSS, loss));
        double before = supply + ambient;
        double cylinder = supply * (1 - share) + ambient;
        double ratio = LeakFlow.leakOverOrifice(before, cylinder, ambient);
        return ratio * (orifice / SMALL) * (orifice / SMALL);
    }

    /** The loss that a leak of so many 0.040 inch orifices shows; the inverse, by halving. */
    public static double loss(double orifices, double supply, double orifice, double ambient) {
        double low = LEAST_LOSS;
        double high = MOST_LOSS;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (orifices(middle, supply, orifice, ambient) < orifices) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
