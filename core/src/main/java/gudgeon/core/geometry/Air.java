package gudgeon.core.geometry;

/**
 * Dry air as an ideal gas of nitrogen, oxygen and argon. Source: [NASA4513], seven-coefficient polynomials of N2 and O2, 300
 * to 1,000 K and above, from memory; checked against a tabulated air entropy in the tests.
 */
final class Air {
    private static final double[] N2_LOW = {3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12};
    private static final double[] N2_HIGH = {2.92664, 1.4879768e-3, -5.68476e-7, 1.0097038e-10, -6.753351e-15};
    private static final double[] O2_LOW = {3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12};
    private static final double[] O2_HIGH = {3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14};
    private static final double JOIN_K = 1_000;
    private static final double N2 = 0.78084;
    private static final double O2 = 0.20946;
    private static final double ARGON = 0.0097;

    private Air() {}

    /** Entropy at constant pressure over the gas constant, up to a constant. */
    static double entropy(double temperature_K) {
        double sum = N2 * of(N2_LOW, N2_HIGH, temperature_K) + O2 * of(O2_LOW, O2_HIGH, temperature_K);
        return sum + ARGON * 2.5 * Math.log(temperature_K);
    }

    private static double of(double[] low, double[] high, double temperature_K) {
        if (temperature_K <= JOIN_K) {
            return integral(low, temperature_K);
        }
        return integral(low, JOIN_K) + integral(high, temperature_K) - integral(high, JOIN_K);
    }

    /** The integral of cp/R over ln T. */
    private static double integral(double[] a, double t) {
        return a[0] * Math.log(t) + t * (a[1] + t * (a[2] / 2 + t * (a[3] / 3 + t * a[4] / 4)));
    }
}
