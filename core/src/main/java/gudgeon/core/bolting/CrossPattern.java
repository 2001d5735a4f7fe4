package gudgeon.core.bolting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The order in which bolts evenly round a circle are tightened across it, one wrench.
 *
 * <p>By halving: an even number is taken as opposite pairs, the pairs in the order of half the number; of an odd number n every
 * ((n - 1) / 2)th is taken in turn. That is the table of the standard up to 24 bolts; for 28 and 32 the table goes another way
 * and stands here as it is.
 *
 * <p>Source: [PCC-1] legacy cross pattern; 12 and 24 as published, the rest from memory. Numbers that the standard does not list
 * are ours by the same rule.
 */
public final class CrossPattern {
    private static final int MOST = 1000;

    /** Of four bolts a quarter turn apart, the first, where the table does not follow the rule. */
    private static final Map<Integer, List<Integer>> QUARTERS =
            Map.of(28, List.of(1, 4, 6, 2, 7, 3, 5), 32, List.of(1, 5, 3, 7, 2, 6, 8, 4));

    private CrossPattern() {}

    /**
     * The order of so many bolts, numbered from 1 round the circle.
     *
     * @param bolts 1 to 1000
     */
    public static List<Integer> order(int bolts) {
        if (bolts < 1 || bolts > MOST) {
            throw new IllegalArgumentException("a cross pattern has 1 to " + MOST + " bolts, not " + bolts);
        }
        List<Integer> quarters = QUARTERS.get(bolts);
        if (quarters != null) {
            return quarters.stream()
                    .flatMap(first ->
                            List.of(first, first + bolts / 2, first + bolts / 4, first + 3 * bolts / 4).stream())
                    .toList();
        }
        return bolts % 2 == 0 ? pairs(bolts) : star(bolts);
    }

    private static List<Integer> pairs(int bolts) {
        List<Integer> order = new ArrayList<>();
        for (int first : order(bolts / 2)) {
            order.add(first);
            order.add(first + bolts / 2);
        }
        return List.copyOf(order);
    }

    private static List<Integer> star(int bolts) {
        List<Integer> order = new ArrayList<>();
        int step = Math.max(1, (bolts - 1) / 2);
        for (int turn = 0; turn < bolts; turn++) {
            order.add(1 + turn * step % bolts);
        }
        return List.copyOf(order);
    }
}
