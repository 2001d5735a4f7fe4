package gudgeon.core.bolting;

/**
 * A unified inch thread, sizes in inches.
 *
 * <p>Source: [B1.1] basic sizes and tensile stress area.
 *
 * @param diameter_in nominal diameter D, above 0 and at most 12
 * @param threadsPerInch n, above 0.9743 / D so that there is a core left
 */
public record UnifiedThread(double diameter_in, double threadsPerInch) {
    private static final double MM = 25.4;

    public UnifiedThread {
        if (!(diameter_in > 0 && diameter_in <= 12)) {
            throw new IllegalArgumentException(
                    "a unified thread of " + diameter_in + " in is not known. Maybe the diameter is in millimetres?");
        }
        if (!(threadsPerInch * diameter_in > 2 && threadsPerInch <= 200)) {
            throw new IllegalArgumentException(
                    threadsPerInch + " threads per inch do not go with a diameter of " + diameter_in + " in");
        }
    }

    /** Basic pitch diameter D - 0.649519 / n, inches. */
    public double pitchDiameter_in() {
        return diameter_in - 0.649519 / threadsPerInch;
    }

    /** Tensile stress area 0.7854 (D - 0.9743 / n)², square inches. */
    public double stressArea_in2() {
        double d_in = diameter_in - 0.9743 / threadsPerInch;
        return 0.7854 * d_in * d_in;
    }

    /** The same profile in millimetres: flank angle and depth are those of the metric thread. */
    public MetricThread inMillimetres() {
        return new MetricThread(diameter_in * MM, MM / threadsPerInch);
    }
}
