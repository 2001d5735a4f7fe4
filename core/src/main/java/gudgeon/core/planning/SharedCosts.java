package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Shares the costs of a sequencing problem out among projections, so that what these cost by themselves may be added: a
 * bound that never exceeds what is left. The shares are improved by steps along a subgradient: a change that one projection
 * goes through more often than the others gets a larger share there.
 *
 * <p>Source: [KD2010] for additive shares of costs, [POLYAK1969] for the length of a step.
 */
final class SharedCosts {
    /** Shares are whole numbers of thousandths of a unit. */
    static final int FINE = 1000;

    private static final int PATIENCE = 10;

    private final Sequencing problem;
    private final List<Pricing> pricings = new ArrayList<>();

    /** Shares as they stand at first. */
    SharedCosts(Sequencing problem, List<Projection> projections, int[][][] change, int[][] leave) {
        this.problem = problem;
        for (int i = 0; i < projections.size(); i++) {
            pricings.add(new Pricing(projections.get(i), change[i], leave[i]));
        }
    }

    /** The same shares, to be changed apart from these. */
    SharedCosts copy() {
        List<Projection> projections = pricings.stream().map(p -> p.projection).toList();
        int[][][] change = new int[pricings.size()][][];
        int[][] leave = new int[pricings.size()][];
        save(change, leave);
        return new SharedCosts(problem, projections, change, leave);
    }

    private void save(int[][][] change, int[][] leave) {
        for (int i = 0; i < pricings.size(); i++) {
            change[i] = Arrays.stream(pricings.get(i).change).map(int[]::clone).toArray(int[][]::new);
            leave[i] = pricings.get(i).leave.clone();
        }
    }

    /** In thousandths: what is left at least. States are those of the projections, in their order. */
    long remaining(int[] states, int context) {
        long sum = 0;
        for (int i = 0; i < states.length; i++) {
            sum += pricings.get(i).remaining(states[i], context);
        }
        return sum;
    }

    /** Improves the shares for one state, until the bound reaches a target or steps no longer help. */
    void improve(int[] states, int context, long target, int steps) {
        int m = pricings.size();
        int k = problem.contexts;
        int[][][] bestChange = new int[m][][];
        int[][] bestLeave = new int[m][];
        long best = -1;
        double length = 1;
        int idle = 0;
        int[] start = new int[m];
        int[][] after = new int[m][];
        for (int i = 0; i < m; i++) {
            Projection projection = pricings.get(i).projection;
            start[i] = projection.stands().of(states[i], projection.group[context]);
            after[i] = projection.stands().after(start[i]);
        }
        for (int step = 0; step <= steps && length > 0.01; step++) {
            long value = evaluate(start, after);
            if (value > best) {
                idle = value > best + FINE / 2 ? 0 : idle + 1;
                best = value;
                save(bestChange, bestLeave);
            } else {
                idle++;
            }
            if (idle >= PATIENCE) {
                length *= 0.7;
                idle = 0;
            }
            if (step == steps || value >= target || !advance(start, length, target - value, new int[m][k][k])) {
                break;
            }
        }
        for (int i = 0; i < m; i++) {
            for (int c = 0; c < k; c++) {
                System.arraycopy(bestChange[i][c], 0, pricings.get(i).change[c], 0, k);
            }
            System.arraycopy(bestLeave[i], 0, pricings.get(i).leave, 0, k);
            pricings.get(i).price();
        }
    }

    private long evaluate(int[] start, int[][] after) {
        long sum = 0;
        for (int i = 0; i < start.length; i++) {
            pricings.get(i).evaluate(after[i]);
            sum += pricings.get(i).evaluated(start[i]);
        }
        return sum;
    }

    private boolean advance(int[] start, double length, long gap, int[][][] changes) {
        int m = pricings.size();
        int k = problem.contexts;
        int[][] leaves = new int[m][k];
        for (int i = 0; i < m; i++) {
            pricings.get(i).count(start[i], changes[i], leaves[i]);
        }
        double norm = 0;
        int[] counts = new int[m];
        for (int c = 0; c < k; c++) {
            for (int d = 0; d <= k; d++) {
                for (int i = 0; i < m; i++) {
                    counts[i] = d == k ? leaves[i][c] : changes[i][c][d];
                }
                norm += spread(counts);
            }
        }
        if (norm == 0) {
            return false;
        }
        double step = length * gap / norm;
        double[] shares = new double[m];
        for (int c = 0; c < k; c++) {
            for (int d = 0; d <= k; d++) {
                for (int i = 0; i < m; i++) {
                    counts[i] = d == k ? leaves[i][c] : changes[i][c][d];
                }
                if (spread(counts) > 0) {
                    move(c, d, counts, step, shares);
                }
            }
        }
        pricings.forEach(Pricing::price);
        return true;
    }

    private static double spread(int[] counts) {
        double mean = mean(counts);
        double sum = 0;
        for (int count : counts) {
            sum += (count - mean) * (count - mean);
        }
        return sum;
    }

    private static double mean(int[] counts) {
        int sum = 0;
        for (int count : counts) {
            sum += count;
        }
        return (double) sum / counts.length;
    }

    private void move(int from, int to, int[] counts, double step, double[] shares) {
        int k = problem.contexts;
        double mean = mean(counts);
        for (int i = 0; i < shares.length; i++) {
            Pricing pricing = pricings.get(i);
            int share = to == k ? pricing.leave[from] : pricing.change[from][to];
            shares[i] = share + step * (counts[i] - mean);
        }
        long whole = (long) FINE * (to == k ? problem.leave[from] : problem.change[from][to]);
        fit(shares, whole);
        for (int i = 0; i < shares.length; i++) {
            int share = (int) Math.floor(shares[i]);
            if (to == k) {
                pricings.get(i).leave[from] = share;
            } else {
                pricings.get(i).change[from][to] = share;
            }
        }
    }

    /** The nearest shares that are not negative and add up to the whole. */
    private static void fit(double[] shares, double whole) {
        double[] sorted = shares.clone();
        Arrays.sort(sorted);
        double sum = 0;
        double excess = 0;
        for (int i = sorted.length - 1, count = 1; i >= 0; i--, count++) {
            sum += sorted[i];
            double candidate = (sum - whole) / count;
            if (sorted[i] >= candidate) {
                excess = candidate;
            }
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.max(0, shares[i] - excess);
        }
    }
}
