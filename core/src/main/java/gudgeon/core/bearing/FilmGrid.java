package gudgeon.core.bearing;

/**
 * Reynolds' equation on a grid: θ from the widest gap once round, ζ from the middle of the bush to its side. The pressure is in
 * units of 6μω(r/c)² for ω in radians a second.
 */
final class FilmGrid {
    private static final int MOST_SWEEPS = 20_000;
    private static final double SMALL = 1e-8;

    private final double lengthToDiameter;
    private final double eccentricity;
    private final int around;
    private final int across;
    private final double[][] pressure;

    private FilmGrid(double lengthToDiameter, double eccentricity, int around) {
        this.lengthToDiameter = lengthToDiameter;
        this.eccentricity = eccentricity;
        this.around = around;
        this.across = around / 6;
        this.pressure = new double[around + 1][across + 1];
    }

    static FilmGrid solved(double lengthToDiameter, double eccentricity, int around) {
        FilmGrid grid = new FilmGrid(lengthToDiameter, eccentricity, around);
        grid.solve();
        return grid;
    }

    private double step() {
        return 2 * Math.PI / around;
    }

    private double gap(double theta) {
        return 1 + eccentricity * Math.cos(theta);
    }

    /**
     * d/dθ(h³ dp/dθ) + (D/L)² d/dζ(h³ dp/dζ) = dh/dθ, ζ in half lengths; p = 0 at θ = 0, at 2π and at the sides, symmetric
     * about the middle, never below 0.
     */
    private void solve() {
        double stepAcross = 1.0 / across;
        double side = 1 / (lengthToDiameter * lengthToDiameter) * step() * step() / (stepAcross * stepAcross);
        double relax = 2 / (1 + Math.sin(Math.PI / around));
        double[] forward = new double[around + 1];
        double[] here = new double[around + 1];
        double[] source = new double[around + 1];
        for (int i = 0; i <= around; i++) {
            forward[i] = Math.pow(gap((i + 0.5) * step()), 3);
            here[i] = Math.pow(gap(i * step()), 3) * side;
            source[i] = (gap((i + 0.5) * step()) - gap((i - 0.5) * step())) * step();
        }
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double change = 0;
            double most = 0;
            for (int i = 1; i < around; i++) {
                double[] row = pressure[i];
                double[] before = pressure[i - 1];
                double[] after = pressure[i + 1];
                double divisor = forward[i] + forward[i - 1] + 2 * here[i];
                for (int j = 0; j < across; j++) {
                    double inner = j == 0 ? row[1] : row[j - 1];
                    double solved = (forward[i] * after[j]
                                    + forward[i - 1] * before[j]
                                    + here[i] * (inner + row[j + 1])
                                    - source[i])
                            / divisor;
                    double next = Math.max(0, row[j] + relax * (solved - row[j]));
                    change = Math.max(change, Math.abs(next - row[j]));
                    most = Math.max(most, next);
                    row[j] = next;
                }
            }
            if (change <= SMALL * most) {
                return;
            }
        }
    }

    /** The mean of the pressure across the bush at one angle, by the trapezoidal rule. */
    private double across(int i) {
        double sum = pressure[i][0] / 2;
        for (int j = 1; j < across; j++) {
            sum += pressure[i][j];
        }
        return sum / across;
    }

    /** Force along the line of centres and across it, in units of 6μω(r/c)² · r · L. */
    private double[] force() {
        double along = 0;
        double square = 0;
        for (int i = 0; i <= around; i++) {
            double mean = across(i) * step();
            along -= mean * Math.cos(i * step());
            square += mean * Math.sin(i * step());
        }
        return new double[] {along, square};
    }

    /** S = μN/P (r/c)²; P = W/(2rL), W = 6μ·2πN(r/c)² r L · force, so S = 2/(12π · force). */
    double sommerfeld() {
        double[] force = force();
        return 1 / (6 * Math.PI * Math.hypot(force[0], force[1]));
    }

    double attitude_deg() {
        double[] force = force();
        return Math.toDegrees(Math.atan2(force[1], force[0]));
    }

    double pressureRatio() {
        double[] force = force();
        double most = 0;
        for (double[] row : pressure) {
            most = Math.max(most, row[0]);
        }
        return Math.hypot(force[0], force[1]) / 2 / most;
    }

    /** Flow round the bush at an angle, Q/(r c N L): π(h − h³ dp/dθ), the pressure's part taken across the bush. */
    private double flowAround(int i) {
        double slope = (across(i + 1) - across(i)) / step();
        double gap = gap((i + 0.5) * step());
        return Math.PI * (gap - Math.pow(gap, 3) * slope);
    }

    double flowIn() {
        // At the beginning of the film itself: extrapolated from the first two half steps.
        return 1.5 * flowAround(0) - 0.5 * flowAround(1);
    }

    double sideFlowRatio() {
        return sideFlow() / flowIn();
    }

    /** What leaves at both sides: π (D/L)² ∫ h³ (−dp/dζ) dθ at the side. */
    private double sideFlow() {
        double sum = 0;
        for (int i = 0; i <= around; i++) {
            double slope = across >= 2 ? (4 * pressure[i][across - 1] - pressure[i][across - 2]) / 2 * across : 0;
            sum += Math.pow(gap(i * step()), 3) * slope * step();
        }
        return Math.PI * sum / (lengthToDiameter * lengthToDiameter);
    }
}
