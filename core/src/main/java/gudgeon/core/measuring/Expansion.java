package gudgeon.core.measuring;

/** Length and temperature. The reference temperature of all sizes is 20 °C. Source: [ISO1]. */
public final class Expansion {
    /** The temperature at which sizes are meant, in °C. */
    public static final double REFERENCE_C = 20;

    private Expansion() {}

    /**
     * How much longer a length becomes, in millimetres.
     *
     * @param expansion_per_K linear expansion, in 1/K
     * @param warmer_K temperature difference
     */
    public static double growth_mm(double length_mm, double expansion_per_K, double warmer_K) {
        return length_mm * expansion_per_K * warmer_K;
    }

    /**
     * The mean linear expansion between two states, in 1/K.
     *
     * @param length0_m at the first temperature; not zero
     * @param temperature0_K different from the second
     */
    public static double coefficient_per_K(
            double length0_m, double length1_m, double temperature0_K, double temperature1_K) {
        if (length0_m == 0 || temperature0_K == temperature1_K) {
            throw new IllegalArgumentException("an expansion needs a length and two different temperatures");
        }
        return (length1_m - length0_m) / (length0_m * (temperature1_K - temperature0_K));
    }

    /**
     * A reading brought to 20 °C: the setting standard was larger or smaller than its marked size, and so was the part.
     *
     * @param standard_per_K linear expansion of the setting standard
     * @param standard_C its temperature
     * @param part_per_K linear expansion of the wall measured
     * @param part_C its temperature
     */
    public static double at20_mm(
            double reading_mm, double standard_per_K, double standard_C, double part_per_K, double part_C) {
        return reading_mm
                * (1 + standard_per_K * (standard_C - REFERENCE_C))
                / (1 + part_per_K * (part_C - REFERENCE_C));
    }
}
