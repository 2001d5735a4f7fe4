package gudgeon.core.bolting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tolerance class of an external metric thread: 6g, 4h, 6e, or 5g6g where the crest has a class of its own.
 *
 * <p>Fundamental deviations and the tolerances of grade 6 are those of the standard's tables, which round its formulas to the
 * R40 series; other grades stand whole steps of R40 away (0.63 for grade 4, 1.6 for grade 8 ...). Positions e to h; pitches 0.2
 * to 6 mm; diameters 1 to 90 mm; crest grades 4, 6, 8; flank grades 3 to 9.
 *
 * <p>Source: [ISO965-1] tables 1, 5 and 6 and its formulas; the tables from memory, checked in the tests against a published
 * chart.
 *
 * @param flankGrade of the pitch diameter, 3 to 9
 * @param crestGrade of the major diameter, 3 to 9
 * @param position e, f, g or h
 */
public record ThreadTolerance(int flankGrade, int crestGrade, char position) {
    private static final Pattern WRITTEN = Pattern.compile("([3-9])([e-h])(?:([3-9])([e-h]))?");
    private static final double[] PITCHES_mm = {
        0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6
    };
    private static final int[] G_um = {
        17, 18, 18, 19, 19, 20, 20, 21, 22, 22, 24, 26, 28, 32, 34, 38, 42, 48, 53, 60, 63, 71, 75, 80
    };
    private static final int[] F_um = {
        0, 0, 0, 34, 34, 35, 36, 36, 38, 38, 38, 40, 42, 45, 48, 52, 58, 63, 70, 75, 80, 85, 90, 95
    };
    private static final int[] E_um = {
        0, 0, 0, 0, 0, 0, 50, 53, 56, 56, 60, 60, 63, 67, 71, 71, 80, 85, 90, 95, 100, 106, 112, 118
    };
    private static final int[] CREST_um = {
        56, 67, 75, 85, 95, 100, 106, 125, 140, 140, 150, 180, 212, 236, 265, 280, 335, 375, 425, 475, 500, 530, 560,
        600
    };
    private static final double[] DIAMETERS_mm = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90};
    /** By number of the range of diameters and pitch: where the table is not what its formula gives. */
    private static final Map<String, Double> FLANK_ELSE_um = Map.of("2/0.5", 75.0, "6/5.0", 250.0, "6/5.5", 265.0);

    /** Forty steps of a factor of ten, in micrometres from 100 to 950. */
    private static final int[] R40 = {
        100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335,
        355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950
    };
    /** Steps of R40 from grade 6 to grades 3 to 9: factors 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2. */
    private static final int[] STEPS = {-12, -8, -4, 0, 4, 8, 12};

    private static final int LOWEST_GRADE = 3;

    public ThreadTolerance {
        if (flankGrade < LOWEST_GRADE || flankGrade > 9 || crestGrade < LOWEST_GRADE || crestGrade > 9) {
            throw new IllegalArgumentException("tolerance grades of threads go from 3 to 9");
        }
        if (position < 'e' || position > 'h') {
            throw new IllegalArgumentException("the tolerance position of an external thread is e, f, g or h, not "
                    + position + ". Maybe it is the class of a nut?");
        }
    }

    /**
     * Limits of size, millimetres.
     *
     * @param majorMax_mm largest major diameter
     * @param majorMin_mm smallest major diameter
     * @param pitchMax_mm largest pitch diameter
     * @param pitchMin_mm smallest pitch diameter
     */
    public record Limits(double majorMax_mm, double majorMin_mm, double pitchMax_mm, double pitchMin_mm) {}

    /**
     * A class as it is written.
     *
     * @throws IllegalArgumentException for anything else
     */
    public static ThreadTolerance parse(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches() || (matcher.group(4) != null && !matcher.group(4).equals(matcher.group(2)))) {
            throw new IllegalArgumentException(
                    "\"" + written + "\" is no tolerance class of an external thread. Maybe 6g, 4h or 5g6g?");
        }
        int flank = Integer.parseInt(matcher.group(1));
        int crest = matcher.group(3) == null ? flank : Integer.parseInt(matcher.group(3));
        return new ThreadTolerance(flank, crest, matcher.group(2).charAt(0));
    }

    /**
     * The limits of a thread; basic pitch diameter rounded to a micrometre, as in the standard's tables.
     *
     * @throws IllegalArgumentException where the standard has no value: pitch, diameter, or a crest grade other than 4, 6, 8
     */
    public Limits limits(MetricThread thread) {
        return new Limits(majorMax_mm(thread), majorMin_mm(thread), pitchMax_mm(thread), pitchMin_mm(thread));
    }

    /** Largest major diameter, millimetres. */
    public double majorMax_mm(MetricThread thread) {
        return less(thread.diameter_mm(), deviation_um(thread));
    }

    /** Smallest major diameter, millimetres. */
    public double majorMin_mm(MetricThread thread) {
        return less(thread.diameter_mm(), deviation_um(thread) + crestTolerance_um(thread));
    }

    /** Largest pitch diameter, millimetres. */
    public double pitchMax_mm(MetricThread thread) {
        return less(thread.pitchDiameter_mm(), deviation_um(thread));
    }

    /** Smallest pitch diameter, millimetres. */
    public double pitchMin_mm(MetricThread thread) {
        return less(thread.pitchDiameter_mm(), deviation_um(thread) + flankTolerance_um(thread));
    }

    private static double less(double basic_mm, int under_um) {
        return BigDecimal.valueOf(basic_mm)
                .setScale(3, RoundingMode.HALF_UP)
                .subtract(BigDecimal.valueOf(under_um, 3))
                .doubleValue();
    }

    private int deviation_um(MetricThread thread) {
        int row = row(thread.pitch_mm());
        int deviation_um = switch (position) {
            case 'e' -> E_um[row];
            case 'f' -> F_um[row];
            case 'g' -> G_um[row];
            default -> 0;
        };
        if (deviation_um == 0 && position != 'h') {
            throw new IllegalArgumentException(
                    "position " + position + " has no value for a pitch of " + thread.pitch_mm() + " mm");
        }
        return deviation_um;
    }

    private static int row(double pitch_mm) {
        for (int row = 0; row < PITCHES_mm.length; row++) {
            if (Math.abs(PITCHES_mm[row] - pitch_mm) < 1e-9) {
                return row;
            }
        }
        throw new IllegalArgumentException(
                "no tolerances are known for a pitch of " + pitch_mm + " mm. Maybe 0.2 to 6 mm?");
    }

    private int crestTolerance_um(MetricThread thread) {
        if (crestGrade != 4 && crestGrade != 6 && crestGrade != 8) {
            throw new IllegalArgumentException("the crest has grades 4, 6 and 8, not " + crestGrade);
        }
        return stepped(CREST_um[row(thread.pitch_mm())], STEPS[crestGrade - LOWEST_GRADE]);
    }

    /** Grade 6 is 90 P^0.4 d^0.1, d the geometric mean of its range, rounded to R40, but for a few entries of the table. */
    private int flankTolerance_um(MetricThread thread) {
        double pitch_mm = PITCHES_mm[row(thread.pitch_mm())];
        int range = range(thread.diameter_mm());
        double mean_mm = Math.sqrt(Math.max(1, DIAMETERS_mm[range]) * DIAMETERS_mm[range + 1]);
        double formula_um = 90 * Math.pow(pitch_mm, 0.4) * Math.pow(mean_mm, 0.1);
        double grade6_um = FLANK_ELSE_um.getOrDefault(range + "/" + pitch_mm, formula_um);
        return stepped(grade6_um, STEPS[flankGrade - LOWEST_GRADE]);
    }

    private static int range(double diameter_mm) {
        for (int range = 0; range + 1 < DIAMETERS_mm.length; range++) {
            if (diameter_mm > DIAMETERS_mm[range] && diameter_mm <= DIAMETERS_mm[range + 1]) {
                return range;
            }
        }
        throw new IllegalArgumentException(
                "no tolerances are known for a diameter of " + diameter_mm + " mm. Maybe 1 to 90 mm?");
    }

    /** The value of R40 nearest to a number, so many steps on; below 100 the series is a tenth of itself, rounded. */
    private static int stepped(double exact_um, int steps) {
        int best = 0;
        for (int index = -R40.length; index < R40.length; index++) {
            if (Math.abs(r40(index) - exact_um) < Math.abs(r40(best) - exact_um)) {
                best = index;
            }
        }
        return r40(best + steps);
    }

    private static int r40(int index) {
        int within = Math.floorMod(index, R40.length);
        int decade = Math.floorDiv(index, R40.length);
        return decade == 0 ? R40[within] : decade > 0 ? R40[within] * 10 : tenth(R40[within]);
    }

    /** 10 to 95 micrometres: as in the tables, 112 becomes 11 and 236 becomes 24. */
    private static int tenth(int value) {
        return Math.toIntExact(Math.round(value / 10.0));
    }
}
