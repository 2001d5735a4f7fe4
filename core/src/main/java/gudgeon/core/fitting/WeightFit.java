package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Pieces of several kinds (pistons, pins, rods) put together into sets that weigh as nearly the same as can be, and how much
 * then comes off which set.
 *
 * <p>Two kinds: the heaviest of one with the lightest of the other; that is best for the heaviest and for the lightest set at
 * once. Three kinds: exact up to 8 sets, over all pairs of what is left for each of the first kind; above that, and for more
 * kinds, one kind after another by opposite sorting, then exchanges while they help; the spread that is left is then all that is
 * known of the gap.
 *
 * @param before the first of each kind together, and so on
 * @param best the best found
 * @param proven whether no other has a smaller spread
 */
public record WeightFit(Plan before, Plan best, boolean proven) {
    private static final int EXACT_SETS = 8;

    /**
     * Sets.
     *
     * @param members by set, for each kind the index of its piece
     * @param sums_g by set
     */
    public record Plan(List<List<Integer>> members, List<Double> sums_g) {
        public Plan {
            members = members.stream().map(List::copyOf).toList();
            sums_g = List.copyOf(sums_g);
        }

        /** Heaviest less lightest, grams. */
        public double spread_g() {
            return sums_g.stream().mapToDouble(Double::doubleValue).max().orElse(0)
                    - sums_g.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        }

        /** What comes off each set so that none is heavier than the lightest by more than so many grams. */
        public List<Double> takeOff_g(double allowed_g) {
            double lightest =
                    sums_g.stream().mapToDouble(Double::doubleValue).min().orElse(0);
            return sums_g.stream()
                    .map(sum -> Math.max(0, sum - lightest - allowed_g))
                    .toList();
        }
    }

    /**
     * Solves it.
     *
     * @param kinds by kind, the weights of its pieces in grams, equally many of each, above 0
     */
    public static WeightFit of(List<double[]> kinds) {
        int sets = kinds.isEmpty() ? 0 : kinds.getFirst().length;
        if (sets == 0 || kinds.stream().anyMatch(kind -> kind.length != sets)) {
            throw new IllegalArgumentException("there must be equally many pieces of every kind, and at least one");
        }
        if (kinds.stream().flatMapToDouble(Arrays::stream).anyMatch(each -> !(each > 0 && each < 1e9))) {
            throw new IllegalArgumentException("weights are above 0");
        }
        int[][] asItComes = new int[kinds.size()][];
        Arrays.setAll(asItComes, kind -> IntStream.range(0, sets).toArray());
        int[][] start = sorted(kinds, sets);
        boolean exact = kinds.size() <= 2 || (kinds.size() == 3 && sets <= EXACT_SETS);
        if (kinds.size() > 2) {
            exchange(kinds, start);
        }
        int[][] best = kinds.size() == 3 && sets <= EXACT_SETS ? new ThreeKinds(kinds, start).solve() : start;
        return new WeightFit(plan(kinds, asItComes), plan(kinds, best), exact);
    }

    /** One kind after another: the heaviest with what is lightest so far. */
    private static int[][] sorted(List<double[]> kinds, int sets) {
        int[][] pieceOf = new int[kinds.size()][sets];
        double[] sums = new double[sets];
        for (int kind = 0; kind < kinds.size(); kind++) {
            double[] weights = kinds.get(kind);
            double[] soFar = sums.clone();
            int[] light = order(sets, Comparator.comparingDouble(set -> soFar[set]));
            int[] heavy = kind == 0
                    ? IntStream.range(0, sets).toArray()
                    : order(sets, Comparator.comparingDouble(piece -> -weights[piece]));
            for (int turn = 0; turn < sets; turn++) {
                int set = kind == 0 ? turn : light[turn];
                pieceOf[kind][set] = heavy[turn];
                sums[set] += weights[heavy[turn]];
            }
        }
        return pieceOf;
    }

    private static int[] order(int count, Comparator<Integer> order) {
        return IntStream.range(0, count)
                .boxed()
                .sorted(order)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Exchanges two pieces of a kind while that makes the spread smaller. */
    private static void exchange(List<double[]> kinds, int[][] pieceOf) {
        int sets = pieceOf[0].length;
        boolean better = true;
        while (better) {
            better = false;
            for (int kind = 1; kind < pieceOf.length; kind++) {
                for (int first = 0; first < sets; first++) {
                    for (int second = first + 1; second < sets; second++) {
                        double before = spread(kinds, pieceOf);
                        swap(pieceOf[kind], first, second);
                        if (spread(kinds, pieceOf) < before - 1e-9) {
                            better = true;
                        } else {
                            swap(pieceOf[kind], first, second);
                        }
                    }
                }
            }
        }
    }

    private static void swap(int[] array, int first, int second) {
        int kept = array[first];
        array[first] = array[second];
        array[second] = kept;
    }

    private static double spread(List<double[]> kinds, int[][] pieceOf) {
        return plan(kinds, pieceOf).spread_g();
    }

    private static Plan plan(List<double[]> kinds, int[][] pieceOf) {
        List<List<Integer>> members = new ArrayList<>();
        List<Double> sums = new ArrayList<>();
        for (int set = 0; set < pieceOf[0].length; set++) {
            List<Integer> pieces = new ArrayList<>();
            double sum = 0;
            for (int kind = 0; kind < pieceOf.length; kind++) {
                pieces.add(pieceOf[kind][set]);
                sum += kinds.get(kind)[pieceOf[kind][set]];
            }
            members.add(pieces);
            sums.add(sum);
        }
        return new Plan(members, sums);
    }
}
