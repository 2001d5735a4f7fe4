package gudgeon.core.bolting;

import gudgeon.core.bolting.PlacePattern.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An order of tightening that somebody wrote down, looked at: does it take every fastener once, does it go from the inside
 * out, does it leap across, and how lopsided does it leave the joint on the way.
 *
 * <p>Lopsided at a moment: the distance from the middle of all places to the middle of those that are tightened, as a share of
 * the distance of the farthest place; from the second fastener on. Common practice: the less, the more evenly a gasket is pressed.
 *
 * @param faults what is wrong with the order; none when it is sound
 * @param lopsided the worst moment of the order; NaN without places or when a fastener is missing
 * @param ours the worst moment of the order that is worked out from the places
 * @param inLine the worst moment of going along in the order of the numbers
 */
public record PatternCheck(List<Fault> faults, double lopsided, double ours, double inLine) {
    public PatternCheck {
        faults = List.copyOf(faults);
    }

    /** What can be wrong with an order. */
    public enum Kind {
        /** A fastener of the joint is not in it. */
        MISSING,
        /** A fastener is in it more than once; an angle would be given twice. */
        TWICE,
        /** A number that the joint does not have. */
        UNKNOWN,
        /** A fastener nearer to the middle comes after one farther out. */
        OUTSIDE_FIRST,
        /** It goes on to the next but one of a circle that is not yet crossed: the first two are neighbours. */
        NEIGHBOURS_FIRST
    }

    /**
     * A fault.
     *
     * @param position the fastener, from 1
     * @param other the fastener that it stands wrongly to; 0 when there is none
     */
    public record Fault(Kind kind, int position, int other) {}

    /**
     * Looks at an order.
     *
     * @param order positions from 1
     * @param count how many fasteners the joint has
     * @param spots one place for each of them, or none
     * @param insideOut whether the joint is one that is tightened from the middle, as heads are
     */
    public static PatternCheck of(List<Integer> order, int count, List<Spot> spots, boolean insideOut) {
        if (!spots.isEmpty() && spots.size() != count) {
            throw new IllegalArgumentException(spots.size() + " places for " + count + " fasteners");
        }
        List<Fault> faults = counted(order, count);
        if (!faults.isEmpty() || spots.isEmpty() || count < 2) {
            return new PatternCheck(faults, Double.NaN, Double.NaN, Double.NaN);
        }
        faults.addAll(insideOut ? outsideFirst(order, spots) : neighboursFirst(order, spots));
        List<Integer> along = IntStream.rangeClosed(1, count).boxed().toList();
        List<Integer> ours = PlacePattern.order(insideOut ? "spiral-out" : "cross", count, spots);
        return new PatternCheck(faults, lopsided(order, spots), lopsided(ours, spots), lopsided(along, spots));
    }

    private static List<Fault> counted(List<Integer> order, int count) {
        List<Fault> faults = new ArrayList<>();
        for (int position : order.stream().distinct().toList()) {
            if (position < 1 || position > count) {
                faults.add(new Fault(Kind.UNKNOWN, position, 0));
            } else if (Collections.frequency(order, position) > 1) {
                faults.add(new Fault(Kind.TWICE, position, 0));
            }
        }
        for (int position = 1; position <= count; position++) {
            if (!order.contains(position)) {
                faults.add(new Fault(Kind.MISSING, position, 0));
            }
        }
        return faults;
    }

    /** The first fastener of an inner ring that comes after one of an outer ring. */
    private static List<Fault> outsideFirst(List<Integer> order, List<Spot> spots) {
        Spot middle = PlacePattern.middle(spots);
        double farthest = spots.stream().mapToDouble(middle::distance).max().orElse(0);
        for (int turn = 1; turn < order.size(); turn++) {
            for (int before = 0; before < turn; before++) {
                double inner = middle.distance(spots.get(order.get(turn) - 1));
                double outer = middle.distance(spots.get(order.get(before) - 1));
                if (outer - inner > 2 * PlacePattern.RING * farthest) {
                    return List.of(new Fault(Kind.OUTSIDE_FIRST, order.get(turn), order.get(before)));
                }
            }
        }
        return List.of();
    }

    private static List<Fault> neighboursFirst(List<Integer> order, List<Spot> spots) {
        List<Integer> round = BoltCircle.round(spots);
        if (round.size() < 4) {
            return List.of();
        }
        int first = round.indexOf(order.get(0) - 1);
        int second = round.indexOf(order.get(1) - 1);
        int apart = Math.floorMod(second - first, round.size());
        return apart == 1 || apart == round.size() - 1
                ? List.of(new Fault(Kind.NEIGHBOURS_FIRST, order.get(1), order.get(0)))
                : List.of();
    }

    /** The worst moment of an order, from the second fastener on; 0 for places that all coincide. */
    static double lopsided(List<Integer> order, List<Spot> spots) {
        Spot middle = PlacePattern.middle(spots);
        double farthest = spots.stream().mapToDouble(middle::distance).max().orElse(0);
        double worst = 0;
        double x_mm = 0;
        double y_mm = 0;
        for (int turn = 0; turn < order.size(); turn++) {
            Spot spot = spots.get(order.get(turn) - 1);
            x_mm += spot.x_mm() - middle.x_mm();
            y_mm += spot.y_mm() - middle.y_mm();
            if (turn > 0) {
                worst = Math.max(worst, Math.hypot(x_mm, y_mm) / (turn + 1));
            }
        }
        return farthest > 0 ? worst / farthest : 0;
    }
}
