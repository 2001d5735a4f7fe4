package gudgeon.core.measuring;

/**
 * How warm it was.
 *
 * @param part_C the part, in °C
 * @param standard_C the setting standard or scale, in °C
 * @param doubt_K how far the thermometer may be off for both together (half-width)
 * @param difference_K how far part and standard may differ from the difference given (half-width)
 * @param part what the wall measured is made of: the liner, or the parent metal
 */
public record Conditions(double part_C, double standard_C, double doubt_K, double difference_K, Expanding part) {
    private static final double UNKNOWN_K = 10;
    private static final double UNKNOWN_DIFFERENCE_K = 3;
    private static final double THERMOMETER_K = 1;
    private static final double SOAKED_K = 1;

    public Conditions {
        if (!(part_C > -60 && part_C < 300 && standard_C > -60 && standard_C < 100)) {
            throw new IllegalArgumentException("a part is measured between -60 and 300 °C, not at " + part_C
                    + " with a standard at " + standard_C);
        }
        if (!(doubt_K >= 0 && difference_K >= 0 && doubt_K < 100 && difference_K < 100)) {
            throw new IllegalArgumentException(
                    "a doubt of temperature is zero or more, not " + doubt_K + ", " + difference_K);
        }
    }

    /** Part and standard left together at one temperature, read on a common thermometer: within 1 K, and 1 K of each other. */
    public static Conditions soaked(double temperature_C, Expanding part) {
        return new Conditions(temperature_C, temperature_C, THERMOMETER_K, SOAKED_K, part);
    }

    /** Whether nobody looked how warm it was. */
    boolean isUnknown() {
        return doubt_K == UNKNOWN_K && difference_K == UNKNOWN_DIFFERENCE_K;
    }

    /** Nobody looked: 20 °C, give or take 10 K, and part and standard within 3 K of each other. */
    public static Conditions unknown(Expanding part) {
        return new Conditions(Expansion.REFERENCE_C, Expansion.REFERENCE_C, UNKNOWN_K, UNKNOWN_DIFFERENCE_K, part);
    }
}
