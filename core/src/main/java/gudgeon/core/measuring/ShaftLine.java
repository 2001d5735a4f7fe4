package gudgeon.core.measuring;

import java.util.Comparator;
import java.util.List;

/**
 * Whether a shaft on two supports is straight: where its axis lies at several places along it, against the straight line
 * through the two outermost. A shaft bent by some amount at a place has twice that as its run-out there.
 *
 * @param bows in order along the shaft; the first and last lie on the line
 */
public record ShaftLine(List<Bow> bows) {
    public ShaftLine {
        bows = List.copyOf(bows);
    }

    /**
     * A place that was turned under a dial.
     *
     * @param along_mm where
     * @param turn what the dial showed
     */
    public record Station(double along_mm, Turn turn) {}

    /**
     * How far the axis lies off the line.
     *
     * @param along_mm where
     * @param bow_mm how far
     * @param direction_deg towards which angle from the mark: the high side, which faces the dial when that angle does
     */
    public record Bow(double along_mm, double bow_mm, double direction_deg) {}

    /**
     * The line of some stations.
     *
     * @param stations at least three at different places
     */
    public static ShaftLine of(List<Station> stations) {
        List<Station> sorted = stations.stream()
                .sorted(Comparator.comparingDouble(Station::along_mm))
                .toList();
        if (sorted.size() < 3
                || sorted.getFirst().along_mm() == sorted.getLast().along_mm()) {
            throw new IllegalArgumentException(
                    "straightness shows at three places along a shaft or more, not at " + sorted.size());
        }
        Station first = sorted.getFirst();
        Station last = sorted.getLast();
        return new ShaftLine(sorted.stream()
                .map(station -> {
                    double share = (station.along_mm() - first.along_mm()) / (last.along_mm() - first.along_mm());
                    double x = x(station) - x(first) * (1 - share) - x(last) * share;
                    double y = y(station) - y(first) * (1 - share) - y(last) * share;
                    return new Bow(station.along_mm(), Math.hypot(x, y), Angles.turn(Math.toDegrees(Math.atan2(y, x))));
                })
                .toList());
    }

    /** The place that lies farthest off the line. */
    public Bow largest() {
        return bows.stream().max(Comparator.comparingDouble(Bow::bow_mm)).orElseThrow();
    }

    private static double x(Station station) {
        return station.turn().offset_mm()
                * Math.cos(Math.toRadians(station.turn().direction_deg()));
    }

    private static double y(Station station) {
        return station.turn().offset_mm()
                * Math.sin(Math.toRadians(station.turn().direction_deg()));
    }
}
