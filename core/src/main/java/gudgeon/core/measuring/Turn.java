package gudgeon.core.measuring;

import java.util.List;

/**
 * A shaft turned under a dial, or a bore swept: heights against angle, split into what comes from a shifted axis (once a turn),
 * an oval (twice), and the rest. A V-block under the same place changes the oval as seen; run-out of a place is read with the
 * blocks elsewhere. Source: [ISO1101] for run-out; harmonic fit by least squares, common practice.
 *
 * @param runOut_mm largest height less smallest: the total reading of the dial
 * @param offset_mm how far the axis of the place lies from the axis turned about
 * @param direction_deg towards which angle; 0 to 360
 * @param oval_mm largest diameter less smallest that an oval of that size has; zero when too few angles were read to tell
 * @param ovalDirection_deg towards which angle it is longest; 0 to 180
 * @param rest_mm range of what is left
 */
public record Turn(
        double runOut_mm,
        double offset_mm,
        double direction_deg,
        double oval_mm,
        double ovalDirection_deg,
        double rest_mm) {
    private static final int FOR_OFFSET = 3;
    private static final int FOR_OVAL = 6;

    /**
     * @param angle_deg how far the shaft is turned: the angle of the place under the dial, from its mark
     * @param height_mm what the dial shows, rising outwards
     */
    public record Dial(double angle_deg, double height_mm) {
        public Dial {
            if (!(Double.isFinite(angle_deg) && Double.isFinite(height_mm))) {
                throw new IllegalArgumentException(
                        "a dial reading needs two finite numbers, not " + angle_deg + ", " + height_mm);
            }
        }
    }

    /**
     * The split of some readings.
     *
     * @param dials at least three different angles; six for the oval
     */
    public static Turn of(List<Dial> dials) {
        long angles = dials.stream()
                .map(dial -> Math.rint(1000 * Angles.turn(dial.angle_deg())))
                .distinct()
                .count();
        if (angles < FOR_OFFSET) {
            throw new IllegalArgumentException("a shifted axis shows at three angles or more, not at " + angles
                    + ". Maybe four, a quarter turn apart?");
        }
        int columns = angles >= FOR_OVAL ? 5 : 3;
        double[] fit = fit(dials, columns);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double restLow = Double.POSITIVE_INFINITY;
        double restHigh = Double.NEGATIVE_INFINITY;
        for (Dial dial : dials) {
            double rest = dial.height_mm() - Angles.sum(row(dial.angle_deg(), columns), fit);
            low = Math.min(low, dial.height_mm());
            high = Math.max(high, dial.height_mm());
            restLow = Math.min(restLow, rest);
            restHigh = Math.max(restHigh, rest);
        }
        double oval = columns == 5 ? Math.hypot(fit[3], fit[4]) : 0;
        double ovalDirection = columns == 5 ? Angles.turn(Math.toDegrees(Math.atan2(fit[4], fit[3]))) / 2 : 0;
        return new Turn(
                high - low,
                Math.hypot(fit[1], fit[2]),
                Angles.turn(Math.toDegrees(Math.atan2(fit[2], fit[1]))),
                4 * oval,
                ovalDirection,
                restHigh - restLow);
    }

    private static double[] fit(List<Dial> dials, int columns) {
        double[][] normal = new double[columns][columns];
        double[] right = new double[columns];
        for (Dial dial : dials) {
            double[] row = row(dial.angle_deg(), columns);
            for (int i = 0; i < columns; i++) {
                right[i] += row[i] * dial.height_mm();
                for (int j = 0; j < columns; j++) {
                    normal[i][j] += row[i] * row[j];
                }
            }
        }
        return new Dense(normal).solve(right);
    }

    private static double[] row(double angle_deg, int columns) {
        double angle = Math.toRadians(angle_deg);
        double[] row = {1, Math.cos(angle), Math.sin(angle), Math.cos(2 * angle), Math.sin(2 * angle)};
        return java.util.Arrays.copyOf(row, columns);
    }
}
