package gudgeon.core.planning;

import java.util.BitSet;
import java.util.List;

/**
 * Lagrangian bound of a covering problem: prices on the clauses, found by dual ascent and improved by subgradient steps.
 * The bound is the sum of the prices plus the negative reduced costs; an element whose reduced cost lifts the bound to the
 * ceiling is in no cheaper set.
 */
final class CoverBound {
    private static final int STEPS = 80;
    private static final double GRAIN = 1e-6;

    private final int[][] clauses;
    private final int[] elements;
    private final double[] elementCost;
    private double[] price;
    private double[] reduced;
    private double best = Double.NEGATIVE_INFINITY;

    CoverBound(List<BitSet> sets, long[] cost, long ceiling) {
        BitSet all = new BitSet();
        sets.forEach(all::or);
        elements = all.stream().toArray();
        int[] position = new int[all.length()];
        for (int k = 0; k < elements.length; k++) {
            position[elements[k]] = k;
        }
        elementCost = new double[elements.length];
        for (int k = 0; k < elements.length; k++) {
            elementCost[k] = cost[elements[k]];
        }
        clauses = sets.stream()
                .map(set -> set.stream().map(e -> position[e]).toArray())
                .toArray(int[][]::new);
        price = ascent();
        reduced = reduced(price);
        improve(ceiling);
    }

    /** No hitting set costs less than this. */
    long value() {
        return (long) Math.ceil(best - GRAIN);
    }

    /** Elements that are in no hitting set cheaper than the ceiling. */
    BitSet useless(long ceiling) {
        BitSet useless = new BitSet();
        for (int k = 0; k < elements.length; k++) {
            if (reduced[k] > 0 && Math.ceil(best + reduced[k] - GRAIN) >= ceiling) {
                useless.set(elements[k]);
            }
        }
        return useless;
    }

    /** The element to branch on: least reduced cost, then the most clauses. */
    int promising() {
        int[] hits = new int[elements.length];
        for (int[] clause : clauses) {
            for (int k : clause) {
                hits[k]++;
            }
        }
        int chosen = 0;
        for (int k = 1; k < elements.length; k++) {
            double difference = reduced[k] - reduced[chosen];
            if (difference < -GRAIN || (difference <= GRAIN && hits[k] > hits[chosen])) {
                chosen = k;
            }
        }
        return elements[chosen];
    }

    private double[] ascent() {
        double[] slack = elementCost.clone();
        double[] prices = new double[clauses.length];
        for (int c = 0; c < clauses.length; c++) {
            double least = Double.POSITIVE_INFINITY;
            for (int k : clauses[c]) {
                least = Math.min(least, slack[k]);
            }
            prices[c] = least;
            for (int k : clauses[c]) {
                slack[k] -= least;
            }
        }
        return prices;
    }

    private double[] reduced(double[] prices) {
        double[] result = elementCost.clone();
        for (int c = 0; c < clauses.length; c++) {
            for (int k : clauses[c]) {
                result[k] -= prices[c];
            }
        }
        return result;
    }

    private static double bound(double[] prices, double[] reducedCosts) {
        double sum = 0;
        for (double p : prices) {
            sum += p;
        }
        for (double r : reducedCosts) {
            sum += Math.min(0, r);
        }
        return sum;
    }

    private void improve(long ceiling) {
        best = bound(price, reduced);
        double[] now = price.clone();
        double scale = 1.0;
        for (int step = 0; step < STEPS && value() < ceiling; step++) {
            double[] reducedNow = reduced(now);
            double value = bound(now, reducedNow);
            if (value > best) {
                best = value;
                price = now.clone();
                reduced = reducedNow;
            }
            int[] lack = new int[clauses.length];
            long norm = 0;
            for (int c = 0; c < clauses.length; c++) {
                int hit = 0;
                for (int k : clauses[c]) {
                    hit += reducedNow[k] < 0 ? 1 : 0;
                }
                lack[c] = 1 - hit;
                norm += (long) lack[c] * lack[c];
            }
            if (norm == 0) {
                return;
            }
            double length = scale * (ceiling - value) / norm;
            for (int c = 0; c < clauses.length; c++) {
                now[c] = Math.max(0, now[c] + length * lack[c]);
            }
            scale *= 0.96;
        }
    }
}
