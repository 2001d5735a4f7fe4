package gudgeon.core.bolting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Orders of tightening from the places of the fasteners. All are deterministic: what is equally near or far is taken in
 * file order.
 *
 * <ul>
 *   <li>cross: ring by ring from the middle outward; within a ring always the one farthest from the last. Where all lie evenly
 *       on one circle, the order of {@link CrossPattern}.
 *   <li>spiral-out: ring by ring from the middle outward; within a ring onward in one sense of rotation.
 *   <li>ends-in: from the two ends of the longer extent to the middle, always the one farthest from the last.
 *   <li>in-line: in file order.
 * </ul>
 */
public final class PlacePattern {
    /** All that there are. */
    public static final List<String> NAMES = List.of(
            "cross",
            "spiral-out",
            "ends-in",
            "in-line",
            "cross-reversed",
            "spiral-out-reversed",
            "ends-in-reversed",
            "in-line-reversed");

    /** Distances that differ by less than this share belong to one ring. */
    static final double RING = 0.15;

    private static final String REVERSED = "-reversed";

    private PlacePattern() {}

    /** A place on the face, millimetres. */
    public record Spot(double x_mm, double y_mm) {
        /** The way to another place, millimetres. */
        public double distance(Spot other) {
            return Math.hypot(x_mm - other.x_mm, y_mm - other.y_mm);
        }
    }

    /** Whether a pattern cannot be worked out without places. */
    public static boolean needsPlaces(String name) {
        return !name.startsWith("in-line");
    }

    /** The 1-based positions in order; {@code spots} has one place for each fastener, or none for in-line. */
    public static List<Integer> order(String name, int count, List<Spot> spots) {
        boolean reversed = name.endsWith(REVERSED);
        String plain = reversed ? name.substring(0, name.length() - REVERSED.length()) : name;
        List<Integer> order = new ArrayList<>(
                switch (plain) {
                    case "cross" -> cross(spots);
                    case "spiral-out" -> byRings(spots, fromMiddle(spots), false, true);
                    case "ends-in" -> byRings(spots, alongExtent(spots), true, false);
                    default -> IntStream.range(0, count).boxed().toList();
                });
        if (reversed) {
            Collections.reverse(order);
        }
        return order.stream().map(index -> index + 1).toList();
    }

    private static List<Integer> cross(List<Spot> spots) {
        List<Integer> round = BoltCircle.round(spots);
        return round.isEmpty()
                ? byRings(spots, fromMiddle(spots), false, false)
                : CrossPattern.order(spots.size()).stream()
                        .map(turn -> round.get(turn - 1))
                        .toList();
    }

    /** The mean of the places: the centre of a bolt circle, whatever the number of bolts. */
    static Spot middle(List<Spot> spots) {
        return new Spot(
                spots.stream().mapToDouble(Spot::x_mm).average().orElse(0),
                spots.stream().mapToDouble(Spot::y_mm).average().orElse(0));
    }

    private static double[] fromMiddle(List<Spot> spots) {
        Spot middle = middle(spots);
        return spots.stream().mapToDouble(middle::distance).toArray();
    }

    private static double[] alongExtent(List<Spot> spots) {
        Spot middle = middle(spots);
        double width = spots.stream()
                .mapToDouble(spot -> Math.abs(spot.x_mm - middle.x_mm))
                .max()
                .orElse(0);
        double height = spots.stream()
                .mapToDouble(spot -> Math.abs(spot.y_mm - middle.y_mm))
                .max()
                .orElse(0);
        return spots.stream()
                .mapToDouble(
                        spot -> width >= height ? Math.abs(spot.x_mm - middle.x_mm) : Math.abs(spot.y_mm - middle.y_mm))
                .toArray();
    }

    private static List<Integer> byRings(List<Spot> spots, double[] distance, boolean outerFirst, boolean round) {
        List<Integer> order = new ArrayList<>();
        double largest = java.util.Arrays.stream(distance).max().orElse(0);
        for (List<Integer> ring : rings(distance, largest, outerFirst)) {
            List<Integer> left = new ArrayList<>(ring);
            while (!left.isEmpty()) {
                int next = order.isEmpty() ? left.get(0) : next(order.getLast(), left, spots, round);
                order.add(next);
                left.remove(Integer.valueOf(next));
            }
        }
        return order;
    }

    private static List<List<Integer>> rings(double[] distance, double largest, boolean outerFirst) {
        Comparator<Integer> near = Comparator.comparingDouble(index -> distance[index]);
        List<Integer> sorted = IntStream.range(0, distance.length)
                .boxed()
                .sorted(outerFirst ? near.reversed() : near)
                .toList();
        List<List<Integer>> rings = new ArrayList<>();
        double start = 0;
        for (int index : sorted) {
            if (rings.isEmpty() || Math.abs(distance[index] - start) > RING * largest) {
                rings.add(new ArrayList<>());
                start = distance[index];
            }
            rings.getLast().add(index);
        }
        rings.forEach(Collections::sort);
        return rings;
    }

    private static int next(int last, List<Integer> left, List<Spot> spots, boolean round) {
        Spot from = spots.get(last);
        if (!round) {
            return left.stream()
                    .max(Comparator.comparingDouble(
                                    (Integer index) -> Math.rint(from.distance(spots.get(index)) * 1000))
                            .thenComparing(Comparator.reverseOrder()))
                    .orElseThrow();
        }
        Spot middle = middle(spots);
        double at = Math.atan2(from.y_mm - middle.y_mm, from.x_mm - middle.x_mm);
        return left.stream()
                .min(Comparator.comparingDouble((Integer index) -> turn(at, spots.get(index), middle))
                        .thenComparing(Comparator.naturalOrder()))
                .orElseThrow();
    }

    private static double turn(double from, Spot to, Spot middle) {
        double angle = Math.atan2(to.y_mm - middle.y_mm, to.x_mm - middle.x_mm) - from;
        double full = 2 * Math.PI;
        return Math.rint(((angle % full) + full) % full * 1e6);
    }
}
