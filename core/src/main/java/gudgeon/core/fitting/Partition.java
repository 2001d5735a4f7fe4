package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Numbers shared out among so many sets that the sums differ as little as possible.
 *
 * @param sets by set, the indices of its numbers in ascending order; sets in the order of their sums
 * @param sums the sums, ascending
 * @param proven whether no sharing has a smaller spread
 */
public record Partition(List<List<Integer>> sets, List<Double> sums, boolean proven) {
    /** So many places are tried before a search gives up its proof. */
    private static final long MOST_TRIED = 20_000_000;

    public Partition {
        sets = sets.stream().map(List::copyOf).toList();
        sums = List.copyOf(sums);
    }

    /** Largest less smallest sum. */
    public double spread() {
        return sums.getLast() - sums.getFirst();
    }

    /**
     * Largest differencing: the two parts of largest spread are joined, the heavy end of one to the light end of the other, until
     * one is left. Quick and good, not always best.
     *
     * <p>Source: [KK1982] from memory.
     *
     * @param numbers finite, at least one
     * @param sets at least 1
     */
    public static Partition differenced(double[] numbers, int sets) {
        check(numbers, sets);
        List<Part> parts = new ArrayList<>();
        for (int index = 0; index < numbers.length; index++) {
            parts.add(Part.of(index, numbers[index], sets));
        }
        while (parts.size() > 1) {
            Part first = takeWidest(parts);
            Part second = takeWidest(parts);
            parts.add(first.join(second));
        }
        return of(parts.getFirst().members(), numbers, false);
    }

    /**
     * The least spread, by branch and bound: the largest number first, into every set of different sum. Beyond about 20 numbers
     * it may run out of tries; then the best found is returned and not called proven.
     */
    public static Partition best(double[] numbers, int sets) {
        Partition start = differenced(numbers, sets);
        Search search = new Search(numbers, sets, start.spread());
        search.place(0);
        List<List<Integer>> found = search.best == null ? start.sets() : search.members();
        return of(found, numbers, search.tried <= MOST_TRIED);
    }

    private static void check(double[] numbers, int sets) {
        if (numbers.length == 0 || sets < 1 || sets > 1000) {
            throw new IllegalArgumentException(
                    numbers.length + " numbers cannot be shared out among " + sets + " sets");
        }
        if (!Arrays.stream(numbers).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("numbers to share out are finite");
        }
    }

    private static Partition of(List<List<Integer>> members, double[] numbers, boolean proven) {
        List<List<Integer>> sorted = members.stream()
                .map(set -> set.stream().sorted().toList())
                .sorted(Comparator.comparingDouble((List<Integer> set) -> sum(set, numbers))
                        .thenComparing(set -> set.isEmpty() ? -1 : set.getFirst()))
                .toList();
        return new Partition(
                sorted, sorted.stream().map(set -> sum(set, numbers)).toList(), proven);
    }

    private static double sum(List<Integer> set, double[] numbers) {
        return set.stream().mapToDouble(index -> numbers[index]).sum();
    }

    private static Part takeWidest(List<Part> parts) {
        Part widest = parts.getFirst();
        for (Part part : parts) {
            if (part.spread() > widest.spread()) {
                widest = part;
            }
        }
        parts.remove(widest);
        return widest;
    }

    /** Sets in the making, heaviest first. */
    private record Part(List<Double> sums, List<List<Integer>> members) {
        static Part of(int index, double number, int sets) {
            List<Double> sums = new ArrayList<>(List.of(number));
            List<List<Integer>> members = new ArrayList<>(List.of(List.of(index)));
            for (int set = 1; set < sets; set++) {
                sums.add(0.0);
                members.add(List.of());
            }
            return sorted(sums, members);
        }

        double spread() {
            return sums.getFirst() - sums.getLast();
        }

        Part join(Part other) {
            int last = sums.size() - 1;
            List<Double> joined = new ArrayList<>();
            List<List<Integer>> both = new ArrayList<>();
            for (int set = 0; set <= last; set++) {
                joined.add(sums.get(set) + other.sums.get(last - set));
                List<Integer> all = new ArrayList<>(members.get(set));
                all.addAll(other.members.get(last - set));
                both.add(all);
            }
            return sorted(joined, both);
        }

        private static Part sorted(List<Double> sums, List<List<Integer>> members) {
            List<Integer> order = IntStream.range(0, sums.size())
                    .boxed()
                    .sorted(Comparator.comparing((Integer set) -> -sums.get(set)))
                    .toList();
            return new Part(
                    order.stream().map(sums::get).toList(),
                    order.stream().map(members::get).toList());
        }
    }

    /** Branch and bound on the spread. */
    private static final class Search {
        private final double[] numbers;
        private final int[] order;
        private final double[] rest;
        private final double[] sums;
        private final int[] setOf;
        private final double total;
        private final double floor;
        private final boolean anyNegative;
        private double least;
        private int @org.jspecify.annotations.Nullable [] best;
        private long tried;

        Search(double[] numbers, int sets, double least) {
            this.numbers = numbers;
            this.least = least;
            order = IntStream.range(0, numbers.length)
                    .boxed()
                    .sorted(Comparator.comparingDouble(index -> -Math.abs(numbers[index])))
                    .mapToInt(Integer::intValue)
                    .toArray();
            rest = new double[numbers.length + 1];
            for (int turn = numbers.length - 1; turn >= 0; turn--) {
                rest[turn] = rest[turn + 1] + Math.max(0, numbers[order[turn]]);
            }
            sums = new double[sets];
            setOf = new int[numbers.length];
            total = Arrays.stream(numbers).sum();
            anyNegative = Arrays.stream(numbers).anyMatch(each -> each < 0);
            floor = floor(numbers, sets, total);
        }

        /** Whole numbers that do not divide evenly leave a spread of at least 1. */
        private static double floor(double[] numbers, int sets, double total) {
            boolean whole = Arrays.stream(numbers).allMatch(each -> each == Math.rint(each) && Math.abs(each) < 1e15);
            return whole && total % sets != 0 ? 1 : 0;
        }

        void place(int turn) {
            if (least <= floor || tried > MOST_TRIED) {
                return;
            }
            if (turn == order.length) {
                double spread = max() - min();
                if (spread < least) {
                    least = spread;
                    best = setOf.clone();
                }
                return;
            }
            if (bound(turn) >= least) {
                return;
            }
            for (int set = 0; set < sums.length; set++) {
                if (isFirstOfItsSum(set)) {
                    tried++;
                    double before = sums[set];
                    sums[set] = before + numbers[order[turn]];
                    setOf[order[turn]] = set;
                    place(turn + 1);
                    sums[set] = before;
                }
            }
        }

        private boolean isFirstOfItsSum(int set) {
            for (int other = 0; other < set; other++) {
                if (Double.compare(sums[other], sums[set]) == 0) {
                    return false;
                }
            }
            return true;
        }

        /** Holds for numbers of at least 0: the heaviest set stays, the others share what is left evenly at best. */
        private double bound(int turn) {
            int others = sums.length - 1;
            if (others == 0 || anyNegative) {
                return 0;
            }
            double heavy = max();
            double light = min() + rest[turn];
            return Math.max(heavy - (total - heavy) / others, (total - light) / others - light);
        }

        private double max() {
            return Arrays.stream(sums).max().orElse(0);
        }

        private double min() {
            return Arrays.stream(sums).min().orElse(0);
        }

        List<List<Integer>> members() {
            List<List<Integer>> members = new ArrayList<>();
            for (int set = 0; set < sums.length; set++) {
                int each = set;
                int[] found = java.util.Objects.requireNonNull(best);
                members.add(IntStream.range(0, found.length)
                        .filter(index -> found[index] == each)
                        .boxed()
                        .toList());
            }
            return members;
        }
    }
}
