package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which piston ring goes into which bore, and how much each end gap is filed. A gap can be made larger, never smaller: a ring whose
 * gap is too large in a bore cannot be used there. Fewest that cannot be used; then least filing; then nearest to the best.
 *
 * <p>A ring squared in a bore wider by so much opens by pi times that. Source: geometry; common practice.
 *
 * @param before ring 1 in bore 1, and so on
 * @param best the best pairing
 */
public record RingFit(Plan before, Plan best) {
    private static final double UNUSABLE = 1e12;
    private static final double FILED = 1e5;

    /**
     * A ring in a bore.
     *
     * @param ring its index
     * @param gap_mm end gap there before filing
     * @param file_mm how much to file off, 0 when nothing
     * @param usable whether the gap is not too large
     */
    public record Placed(int ring, double gap_mm, double file_mm, boolean usable) {
        /** The gap after filing. */
        public double filed_mm() {
            return gap_mm + file_mm;
        }
    }

    /**
     * A pairing.
     *
     * @param placed by bore
     * @param file_mm filed off altogether
     * @param unusable how many rings are too open where they are
     */
    public record Plan(List<Placed> placed, double file_mm, int unusable) {
        public Plan {
            placed = List.copyOf(placed);
        }
    }

    /**
     * Solves it.
     *
     * @param bores_mm diameters where the ring was squared, as measured
     * @param gaps_mm end gap of each ring in the gauge bore, at least as many as bores
     * @param gauge_mm diameter of the bore in which the gaps were measured
     * @param aim what the gap should be
     */
    public static RingFit of(double[] bores_mm, double[] gaps_mm, double gauge_mm, Aim aim) {
        if (bores_mm.length == 0 || gaps_mm.length < bores_mm.length) {
            throw new IllegalArgumentException(gaps_mm.length + " rings are too few for " + bores_mm.length + " bores");
        }
        double[][] cost = new double[bores_mm.length][gaps_mm.length];
        for (int bore = 0; bore < bores_mm.length; bore++) {
            for (int ring = 0; ring < gaps_mm.length; ring++) {
                Placed placed = place(ring, gaps_mm[ring] + Math.PI * (bores_mm[bore] - gauge_mm), aim);
                cost[bore][ring] = (placed.usable() ? 0 : UNUSABLE)
                        + FILED * placed.file_mm() * 1000
                        + aim.off_um(placed.filed_mm());
            }
        }
        List<Integer> ringOf = Assignment.cheapest(cost).orElseThrow().columnOf();
        List<Integer> asItComes = IntStream.range(0, bores_mm.length).boxed().toList();
        return new RingFit(
                plan(asItComes, bores_mm, gaps_mm, gauge_mm, aim), plan(ringOf, bores_mm, gaps_mm, gauge_mm, aim));
    }

    private static Placed place(int ring, double gap_mm, Aim aim) {
        boolean usable = gap_mm <= aim.most_mm() || aim.holds(gap_mm);
        double file_mm = aim.holds(gap_mm) ? 0 : Math.max(0, aim.least_mm() - gap_mm);
        return new Placed(ring, gap_mm, file_mm, usable);
    }

    private static Plan plan(List<Integer> ringOf, double[] bores_mm, double[] gaps_mm, double gauge_mm, Aim aim) {
        List<Placed> placed = new ArrayList<>();
        for (int bore = 0; bore < bores_mm.length; bore++) {
            int ring = ringOf.get(bore);
            placed.add(place(ring, gaps_mm[ring] + Math.PI * (bores_mm[bore] - gauge_mm), aim));
        }
        return new Plan(placed, placed.stream().mapToDouble(Placed::file_mm).sum(), (int)
                placed.stream().filter(each -> !each.usable()).count());
    }
}
