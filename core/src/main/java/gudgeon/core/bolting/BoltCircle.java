package gudgeon.core.bolting;

import gudgeon.core.bolting.PlacePattern.Spot;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Whether places lie evenly on one circle, and how they follow each other round it. */
final class BoltCircle {
    /** Share of the radius by which places may lie off the circle. */
    private static final double OFF = 0.02;
    /** Share of the even step by which they may lie off it. */
    private static final double UNEVEN = 0.1;

    private static final int FEWEST = 3;

    private BoltCircle() {}

    /** Indices from the first fastener on, in the sense in which the second lies nearer; empty when they are no even circle. */
    static List<Integer> round(List<Spot> spots) {
        int count = spots.size();
        if (count < FEWEST) {
            return List.of();
        }
        Spot middle = PlacePattern.middle(spots);
        double radius_mm =
                spots.stream().mapToDouble(middle::distance).average().orElse(0);
        if (radius_mm <= 0
                || spots.stream().anyMatch(spot -> Math.abs(middle.distance(spot) - radius_mm) > OFF * radius_mm)) {
            return List.of();
        }
        double[] turns = spots.stream()
                .mapToDouble(spot -> turn(spots.getFirst(), spot, middle))
                .toArray();
        List<Integer> round = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingDouble(index -> turns[index]))
                .toList();
        double step = 2 * Math.PI / count;
        for (int place = 0; place < count; place++) {
            if (Math.abs(turns[round.get(place)] - place * step) > UNEVEN * step) {
                return List.of();
            }
        }
        return turns[1] <= Math.PI ? round : backwards(round);
    }

    private static List<Integer> backwards(List<Integer> round) {
        return IntStream.range(0, round.size())
                .mapToObj(place -> round.get((round.size() - place) % round.size()))
                .toList();
    }

    private static double turn(Spot from, Spot to, Spot middle) {
        double angle = Math.atan2(to.y_mm() - middle.y_mm(), to.x_mm() - middle.x_mm())
                - Math.atan2(from.y_mm() - middle.y_mm(), from.x_mm() - middle.x_mm());
        double full = 2 * Math.PI;
        double turn = ((angle % full) + full) % full;
        return full - turn < 1e-9 ? 0 : turn;
    }
}
