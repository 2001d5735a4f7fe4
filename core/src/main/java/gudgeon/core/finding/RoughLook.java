package gudgeon.core.finding;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A rough look before the exact one, with at most one member of the engine slice and one fault in each cylinder: which points of the
 * healthy grid matter, and how likely each member stays. What it says only decides what is left out.
 */
final class RoughLook {
    private static final double LEAST = 1e-9;
    private static final int STRIDE = 3;

    private final Tables tables;
    private final Evidence evidence;
    private final int all;
    private final double[] likely; // by 1 + member
    private final double[] byPoint;

    RoughLook(Tables tables, Evidence evidence, Causes causes, boolean[][] matters) {
        this.tables = tables;
        this.evidence = evidence;
        EngineModel model = tables.model();
        all = model.grid().ln().length;
        likely = new double[model.members().size() + 1];
        byPoint = new double[all];
        double[][] logs = new double[likely.length][all];
        Map<Long, double[]> seen = new LinkedHashMap<>();
        double highest = Double.NEGATIVE_INFINITY;
        for (int m = -1; m < likely.length - 1; m++) {
            double[] log = logs[m + 1];
            double own = causes.explained(m) + (m < 0 ? 0 : Math.log(model.members().get(m).odds()));
            for (int i = 0; i < matters.length; i++) {
                int member = m >= 0 && matters[i][m] ? m : -1;
                int cylinder = i;
                double[] single = seen.computeIfAbsent((long) i << 32 | member + 1, any -> single(cylinder, member));
                for (int c = 0; c < all; c++) {
                    log[c] += single[c];
                }
            }
            for (int c = 0; c < all; c++) {
                log[c] += own + Math.log(model.grid().chance()[c]);
                highest = Math.max(highest, log[c]);
            }
        }
        for (int m = 0; m < likely.length; m++) {
            for (int c = 0; c < all; c++) {
                double weight = Math.exp(logs[m][c] - highest);
                likely[m] += weight;
                byPoint[c] += weight;
            }
        }
        double most = Arrays.stream(likely).max().orElse(1);
        for (int m = 0; m < likely.length; m++) {
            likely[m] /= most;
        }
    }

    /** Logarithm of a cylinder's likelihood at every point, at most one fault in it. */
    private double[] single(int cylinder, int member) {
        double[][] rows = tables.weights(evidence.cylinder(cylinder), cylinder, member, -1, 0, all, false, 0).byPoint();
        double[] sum = new double[all];
        for (double[] row : rows) {
            for (int c = 0; c < all; c++) {
                sum[c] += row[c];
            }
        }
        for (int c = 0; c < all; c++) {
            sum[c] = Math.log(Math.max(sum[c], 1e-300));
        }
        return sum;
    }

    /** How likely a member (-1 for none) stays, over that of the likeliest. */
    double likely(int member) {
        return likely[member + 1];
    }

    /** From which point of the grid to which it matters; rounded outwards, so that similar evidence has the same. */
    int[] range() {
        double most = Arrays.stream(byPoint).max().orElse(1);
        int low = 0;
        while (low < all - 1 && byPoint[low] < LEAST * most) {
            low++;
        }
        int high = all;
        while (high > low + 1 && byPoint[high - 1] < LEAST * most) {
            high--;
        }
        return new int[] {low / STRIDE * STRIDE, Math.min(all, (high + STRIDE - 1) / STRIDE * STRIDE)};
    }
}
