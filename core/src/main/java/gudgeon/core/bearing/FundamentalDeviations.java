package gudgeon.core.bearing;

import gudgeon.core.bearing.ToleranceZone.Limits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The tables of [ISO286-1] and [ISO286-2] up to 500 mm, in µm. */
final class FundamentalDeviations {
    private static final double[] MAIN_STEPS = {3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500};

    private static final double[] FINE_STEPS = {
        3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500
    };

    private static final double[][] GRADES = {
        {0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5, 3.5, 4.5, 6, 7, 8},
        {1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4, 5, 7, 8, 9, 10},
        {2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10, 12, 13, 15},
        {3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20},
        {4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27},
        {6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40},
        {10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63},
        {14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97},
        {25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155},
        {40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250},
        {60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400},
        {100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630},
        {140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970},
        {250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300, 1400, 1550},
        {400, 480, 580, 700, 840, 1000, 1200, 1400, 1600, 1850, 2100, 2300, 2500},
        {600, 750, 900, 1100, 1300, 1600, 1900, 2200, 2500, 2900, 3200, 3600, 4000},
        {1000, 1200, 1500, 1800, 2100, 2500, 3000, 3500, 4000, 4600, 5200, 5700, 6300},
        {1400, 1800, 2200, 2700, 3300, 3900, 4600, 5400, 6300, 7200, 8100, 8900, 9700}
    };

    /** Shafts' upper deviations, negated, for the letters up to h. */
    private static final Map<String, double[]> BELOW = below();

    /** Shafts' lower deviations for the letters from k. */
    private static final Map<String, double[]> ABOVE = above();

    private FundamentalDeviations() {}

    private static Map<String, double[]> below() {
        Map<String, double[]> map = new LinkedHashMap<>();
        map.put("c", new double[] {
            60, 70, 80, 95, 95, 110, 110, 120, 130, 140, 150, 170, 180, 200, 210, 230, 240, 260, 280, 300, 330, 360, 400,
            440, 480
        });
        map.put("d", new double[] {20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230});
        map.put("e", new double[] {14, 20, 25, 32, 40, 50, 60, 72, 85, 100, 110, 125, 135});
        map.put("f", new double[] {6, 10, 13, 16, 20, 25, 30, 36, 43, 50, 56, 62, 68});
        map.put("g", new double[] {2, 4, 5, 6, 7, 9, 10, 12, 14, 15, 17, 18, 20});
        map.put("h", new double[13]);
        return map;
    }

    private static Map<String, double[]> above() {
        Map<String, double[]> map = new LinkedHashMap<>();
        map.put("k", new double[] {0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5});
        map.put("m", new double[] {2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23});
        map.put("n", new double[] {4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40});
        map.put("p", new double[] {6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68});
        map.put("r", new double[] {
            10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132
        });
        map.put("s", new double[] {
            14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252
        });
        map.put("t", new double[] {
            Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 41, 48, 54, 66, 75, 91, 104, 122, 134,
            146, 166, 180, 196, 218, 240, 268, 294, 330, 360
        });
        map.put("u", new double[] {
            18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284, 315, 350, 390, 435, 490,
            540
        });
        map.put("x", new double[] {
            20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425, 475, 525, 590, 660, 740,
            820
        });
        return map;
    }

    static boolean knows(String position) {
        return position.equals("js") || BELOW.containsKey(position) || ABOVE.containsKey(position);
    }

    static String letters() {
        List<String> letters = new ArrayList<>(BELOW.keySet());
        letters.add("js");
        letters.addAll(ABOVE.keySet());
        return String.join(", ", letters);
    }

    static Limits limits(ToleranceZone zone, double nominal_mm) {
        if (!(nominal_mm > 0 && nominal_mm <= 500)) {
            throw new IllegalArgumentException(
                    "The nominal size is " + nominal_mm + " mm; the tables go from above 0 to 500 mm.");
        }
        double width = grade(zone.grade(), nominal_mm);
        if (zone.position().equals("js")) {
            return new Limits(width / 2, -width / 2);
        }
        return zone.hole() ? hole(zone, nominal_mm, width) : shaft(zone, nominal_mm, width);
    }

    private static Limits shaft(ToleranceZone zone, double nominal_mm, double width) {
        double[] below = BELOW.get(zone.position());
        if (below != null) {
            double upper = plainZero(-value(below, zone, nominal_mm));
            return new Limits(upper, upper - width);
        }
        double lower = lower(zone, nominal_mm);
        return new Limits(lower + width, lower);
    }

    /** Lower deviation of a shaft from k; k itself only sits above the nominal size in grades 4 to 7. */
    private static double lower(ToleranceZone zone, double nominal_mm) {
        if (zone.position().equals("k") && (zone.grade() < 4 || zone.grade() > 7)) {
            return 0;
        }
        return value(tableAbove(zone), zone, nominal_mm);
    }

    /** A hole mirrors the shaft of the same letter; in the finer grades of an interference it is moved by a step of grade. */
    private static Limits hole(ToleranceZone zone, double nominal_mm, double width) {
        double[] below = BELOW.get(zone.position());
        if (below != null) {
            double lower = value(below, zone, nominal_mm);
            return new Limits(lower + width, lower);
        }
        boolean middling = List.of("k", "m", "n").contains(zone.position());
        boolean moved = nominal_mm > 3 && zone.grade() >= 3 && zone.grade() <= (middling ? 8 : 7);
        double upper;
        if (moved) {
            double step = width - grade(zone.grade() - 1, nominal_mm);
            upper = -value(tableAbove(zone), zone, nominal_mm) + step;
            if (zone.position().equals("m") && zone.grade() == 6 && nominal_mm > 250 && nominal_mm <= 315) {
                upper = -9;
            }
        } else if (zone.position().equals("n") && zone.grade() > 8 && nominal_mm > 3) {
            upper = 0;
        } else if (zone.position().equals("k") && zone.grade() > 8 && nominal_mm > 3) {
            throw new IllegalArgumentException("K is not laid down above grade 8.");
        } else {
            upper = plainZero(-value(tableAbove(zone), zone, nominal_mm));
        }
        return new Limits(upper, upper - width);
    }

    private static double plainZero(double value) {
        return value == 0 ? 0 : value;
    }

    private static double[] tableAbove(ToleranceZone zone) {
        double[] above = ABOVE.get(zone.position());
        if (above == null) {
            throw new IllegalArgumentException("No zone begins with " + zone.position() + " here.");
        }
        return above;
    }

    private static double value(double[] table, ToleranceZone zone, double nominal_mm) {
        double value = table[step(table.length == MAIN_STEPS.length ? MAIN_STEPS : FINE_STEPS, nominal_mm)];
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException(zone.position() + " is not laid down for " + nominal_mm + " mm.");
        }
        return value;
    }

    private static double grade(int grade, double nominal_mm) {
        return GRADES[grade - 1][step(MAIN_STEPS, nominal_mm)];
    }

    private static int step(double[] steps, double nominal_mm) {
        int step = 0;
        while (nominal_mm > steps[step]) {
            step++;
        }
        return step;
    }
}
