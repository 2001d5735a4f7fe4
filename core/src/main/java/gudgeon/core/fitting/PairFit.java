package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Pieces paired with places so that a clearance comes out right: pistons to bores, pins to bosses, followers to guides. The
 * clearance is the size of the place less that of the piece.
 *
 * <p>Fewest outside the limits; then, where all are inside, the worst as near to the best as can be, and the total; otherwise
 * the least total. Exact. There may be more pieces than places.
 *
 * @param before the first piece in the first place, and so on
 * @param best the best pairing
 * @param others the next best by their total, not better than the best
 */
public record PairFit(Plan before, Plan best, List<Plan> others) {
    private static final double OUTSIDE = 1e9;
    private static final int OTHERS = 3;

    public PairFit {
        others = List.copyOf(others);
    }

    /**
     * A pairing.
     *
     * @param pieceOf by place, its piece
     * @param clearance_mm by place
     * @param quality how good it is
     */
    public record Plan(List<Integer> pieceOf, List<Double> clearance_mm, Aim.Quality quality) {
        public Plan {
            pieceOf = List.copyOf(pieceOf);
            clearance_mm = List.copyOf(clearance_mm);
        }
    }

    /**
     * Solves it.
     *
     * @param places_mm inner sizes, as measured
     * @param pieces_mm outer sizes, as measured, at least as many
     * @param aim what the clearance should be
     */
    public static PairFit of(double[] places_mm, double[] pieces_mm, Aim aim) {
        if (places_mm.length == 0 || pieces_mm.length < places_mm.length) {
            throw new IllegalArgumentException(
                    pieces_mm.length + " pieces do not fill " + places_mm.length + " places");
        }
        double[][] cost = new double[places_mm.length][pieces_mm.length];
        for (int place = 0; place < places_mm.length; place++) {
            for (int piece = 0; piece < pieces_mm.length; piece++) {
                double clearance_mm = places_mm[place] - pieces_mm[piece];
                cost[place][piece] = aim.off_um(clearance_mm) + (aim.holds(clearance_mm) ? 0 : OUTSIDE);
            }
        }
        List<Integer> asItComes = IntStream.range(0, places_mm.length).boxed().toList();
        Plan best = plan(best(cost), places_mm, pieces_mm, aim);
        List<Plan> others = new ArrayList<>();
        for (Assignment each : Assignment.ranked(cost, OTHERS + 1)) {
            if (!each.columnOf().equals(best.pieceOf()) && others.size() < OTHERS) {
                others.add(plan(each.columnOf(), places_mm, pieces_mm, aim));
            }
        }
        return new PairFit(plan(asItComes, places_mm, pieces_mm, aim), best, others);
    }

    private static List<Integer> best(double[][] cost) {
        double[][] inside = Arrays.stream(cost)
                .map(row -> Arrays.stream(row)
                        .map(each -> each >= OUTSIDE ? Double.POSITIVE_INFINITY : each)
                        .toArray())
                .toArray(double[][]::new);
        return BottleneckAssignment.best(inside)
                .map(BottleneckAssignment::columnOf)
                .orElseGet(() -> Assignment.cheapest(cost).orElseThrow().columnOf());
    }

    private static Plan plan(List<Integer> pieceOf, double[] places_mm, double[] pieces_mm, Aim aim) {
        double[] clearance_mm = IntStream.range(0, pieceOf.size())
                .mapToDouble(place -> places_mm[place] - pieces_mm[pieceOf.get(place)])
                .toArray();
        return new Plan(pieceOf, Arrays.stream(clearance_mm).boxed().toList(), Aim.Quality.of(aim, clearance_mm));
    }
}
