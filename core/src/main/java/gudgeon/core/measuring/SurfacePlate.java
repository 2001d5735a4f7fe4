package gudgeon.core.measuring;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A surface plate surveyed along eight lines by a level or autocollimator whose carriage steps by the distance of its feet: two
 * diagonals, four sides, two centre lines. Heights over a plane through the crossing of the diagonals, to which both diagonals
 * have equal ends; then all raised until the lowest is at zero. Source: [MOODY1955].
 */
public final class SurfacePlate {
    private static final double ARCSECOND = Math.PI / 180 / 3600;

    private final Map<Line, double[]> heights;
    private final double lowest;

    private SurfacePlate(Map<Line, double[]> heights) {
        this.heights = heights;
        double least = Double.POSITIVE_INFINITY;
        for (double[] line : heights.values()) {
            for (double height : line) {
                least = Math.min(least, height);
            }
        }
        this.lowest = least;
    }

    /** A line of the survey, from its first-named end. */
    public enum Line {
        NW_SE,
        NE_SW,
        NE_NW,
        NE_SE,
        SE_SW,
        NW_SW,
        E_W,
        N_S
    }

    /** A place of the plate that has a name: corners, middles of the sides, the centre. */
    public enum Station {
        NE(Line.NE_NW, 0),
        NW(Line.NE_NW, 1),
        SE(Line.SE_SW, 0),
        SW(Line.SE_SW, 1),
        N(Line.NE_NW, 0.5),
        E(Line.NE_SE, 0.5),
        S(Line.SE_SW, 0.5),
        W(Line.NW_SW, 0.5),
        C(Line.NW_SE, 0.5);

        private final Line line;
        private final double along;

        Station(Line line, double along) {
            this.line = line;
            this.along = along;
        }

        /** The station of a name as N, SW or C. */
        public static Optional<Station> find(String name) {
            for (Station station : values()) {
                if (station.name().equalsIgnoreCase(name)) {
                    return Optional.of(station);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * The plate from its readings.
     *
     * @param footSpacing distance of the carriage's feet; heights come out in its unit
     * @param readings_arcsec slopes along each of the eight lines; a constant added to a line changes nothing
     * @throws IllegalArgumentException when a line is missing or has fewer than two readings
     */
    public static SurfacePlate of(double footSpacing, Map<Line, double[]> readings_arcsec) {
        if (!(footSpacing > 0)) {
            throw new IllegalArgumentException("the feet must be some way apart, not " + footSpacing);
        }
        Map<Line, double[]> rises = new EnumMap<>(Line.class);
        for (Line line : Line.values()) {
            double[] readings = readings_arcsec.get(line);
            if (readings == null || readings.length < 2) {
                throw new IllegalArgumentException("the line " + line + " needs at least two readings");
            }
            rises.put(line, levelled(footSpacing, readings));
        }
        Map<Line, double[]> heights = new EnumMap<>(Line.class);
        double first = -at(rises, Line.NW_SE, 0.5);
        double second = -at(rises, Line.NE_SW, 0.5);
        put(heights, rises, Line.NW_SE, first, first);
        put(heights, rises, Line.NE_SW, second, second);
        put(heights, rises, Line.NE_NW, second, first);
        put(heights, rises, Line.NE_SE, second, first);
        put(heights, rises, Line.SE_SW, first, second);
        put(heights, rises, Line.NW_SW, first, second);
        put(heights, rises, Line.E_W, at(heights, Line.NE_SE, 0.5), at(heights, Line.NW_SW, 0.5));
        put(heights, rises, Line.N_S, at(heights, Line.NE_NW, 0.5), at(heights, Line.SE_SW, 0.5));
        return new SurfacePlate(heights);
    }

    /** The largest height over the lowest place: the flatness by this method. */
    public double largest() {
        double most = 0;
        for (double[] line : heights.values()) {
            for (double height : line) {
                most = Math.max(most, height - lowest);
            }
        }
        return most;
    }

    /** The height of a named place over the lowest. */
    public double height(Station station) {
        return at(heights, station.line, station.along) - lowest;
    }

    /** The heights along a line over the lowest place of the plate, one more than it has readings. */
    public double[] heights(Line line) {
        double[] over = at(heights, line).clone();
        for (int i = 0; i < over.length; i++) {
            over[i] -= lowest;
        }
        return over;
    }

    /** How far the two centre lines miss the centre that the diagonals gave: the survey's own check. */
    public double closure() {
        return Math.max(Math.abs(at(heights, Line.E_W, 0.5)), Math.abs(at(heights, Line.N_S, 0.5)));
    }

    /**
     * The flatness allowed to a plate of a grade, in microinch, by its diagonal in inch: 40 + D^2/25 for grade AA. Source:
     * [GGG-P-463]; twice that for A and four times for B are from memory.
     */
    public static double tolerance_microinch(String grade, double diagonal_in) {
        double fine = 40 + diagonal_in * diagonal_in / 25;
        return switch (grade) {
            case "AA" -> fine;
            case "A" -> 2 * fine;
            case "B" -> 4 * fine;
            default -> throw new IllegalArgumentException("grade " + grade + " is not one of AA, A, B");
        };
    }

    /** Heights along a line with both ends at zero. */
    private static double[] levelled(double footSpacing, double[] readings) {
        double mean = Sample.of(readings).mean();
        double[] heights = new double[readings.length + 1];
        for (int i = 0; i < readings.length; i++) {
            heights[i + 1] = heights[i] + footSpacing * (readings[i] - mean) * ARCSECOND;
        }
        heights[readings.length] = 0;
        return heights;
    }

    private static void put(
            Map<Line, double[]> heights, Map<Line, double[]> rises, Line line, double start, double end) {
        double[] tilted = at(rises, line).clone();
        for (int i = 0; i < tilted.length; i++) {
            tilted[i] += start + (end - start) * i / (tilted.length - 1);
        }
        heights.put(line, tilted);
    }

    private static double[] at(Map<Line, double[]> lines, Line line) {
        return java.util.Objects.requireNonNull(lines.get(line));
    }

    /** The height at a share of a line's length, between stations by a straight line. */
    private static double at(Map<Line, double[]> lines, Line line, double share) {
        double[] heights = at(lines, line);
        double place = share * (heights.length - 1);
        int before = (int) Math.min(heights.length - 2, Math.floor(place));
        double rest = place - before;
        return heights[before] * (1 - rest) + heights[before + 1] * rest;
    }
}
