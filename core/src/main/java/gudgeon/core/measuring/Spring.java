package gudgeon.core.measuring;

import java.util.List;

/**
 * A coil spring pressed to several lengths.
 *
 * @param free_mm length without load
 * @param rate_N_per_mm newtons for each millimetre of compression, by least squares
 * @param intercept_N load that the line gives at length zero
 * @param rest_N standard deviation of the loads about the line; zero with two
 */
public record Spring(double free_mm, double rate_N_per_mm, double intercept_N, double rest_N) {
    /**
     * A length and the load that holds it.
     *
     * @param length_mm above zero
     * @param load_N zero or more
     */
    public record Pressed(double length_mm, double load_N) {
        public Pressed {
            if (!(length_mm > 0 && load_N >= 0 && Double.isFinite(length_mm) && Double.isFinite(load_N))) {
                throw new IllegalArgumentException(
                        "a spring is pressed to a length above zero by a load of zero or more, not to " + length_mm
                                + " mm by " + load_N + " N");
            }
        }
    }

    /**
     * The line through the loads.
     *
     * @param free_mm length without load
     * @param pressed at least two lengths under load
     */
    public static Spring of(double free_mm, List<Pressed> pressed) {
        double[] lengths = pressed.stream().mapToDouble(Pressed::length_mm).toArray();
        double[] loads = pressed.stream().mapToDouble(Pressed::load_N).toArray();
        if (lengths.length < 2) {
            throw new IllegalArgumentException("a rate needs loads at two lengths or more");
        }
        LeastSquaresFit fit = LeastSquaresFit.line(lengths, loads, 0);
        double rest = fit.degreesOfFreedom() > 0 ? fit.residualStandardDeviation() : 0;
        return new Spring(free_mm, -fit.coefficient(1), fit.coefficient(0), rest);
    }

    /** The load at a length, as fitted between or near the lengths tried, in newtons. */
    public double load_N(double length_mm) {
        return intercept_N - rate_N_per_mm * length_mm;
    }

    /** How far its free length differs from the one at which the line has no load: a spring that has set, or binds early. */
    public double lostLength_mm() {
        return intercept_N / rate_N_per_mm - free_mm;
    }

    /**
     * How far a spring leans off square, in degrees.
     *
     * @param lean_mm how far its top stands off a square that its foot touches
     */
    public static double lean_deg(double lean_mm, double free_mm) {
        if (!(free_mm > 0)) {
            throw new IllegalArgumentException("a spring has a length above zero, not " + free_mm);
        }
        return Math.toDegrees(Math.atan2(lean_mm, free_mm));
    }
}
