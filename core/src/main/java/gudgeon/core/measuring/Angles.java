package gudgeon.core.measuring;

/** Angles in degrees. */
final class Angles {
    private Angles() {}

    /** The same angle from 0 to below 360. */
    static double turn(double angle_deg) {
        double rest = angle_deg % 360;
        double positive = rest < 0 ? rest + 360 : rest;
        return positive >= 360 - 1e-9 ? 0 : positive;
    }

    static double sum(double[] left, double[] right) {
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            sum += left[i] * right[i];
        }
        return sum;
    }
}
