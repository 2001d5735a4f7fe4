package gudgeon.core.finding;

import gudgeon.core.finding.Causes.Pick;
import gudgeon.core.finding.Slices.Combination;
import gudgeon.core.finding.Slices.View;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Chances of faults, depths and points, summed out of both slices. */
final class Marginals {
    private static final double NEGLIGIBLE = 1e-9;

    private final Slices slices;
    private final EngineModel model;
    private final int points;
    private final int subsets;
    private final int faults;
    private final double[] byDepth = new double[Depth.values().length];
    private final double[] grid;
    private final double[] members;
    private final double[][] cylinderFaults;
    private final double chance;
    private final double free;

    Marginals(Slices slices) {
        this.slices = slices;
        model = slices.model();
        points = slices.points();
        subsets = slices.causes().subsets();
        faults = model.faults().size();
        grid = new double[points];
        members = new double[model.members().size()];
        cylinderFaults = new double[model.facts().cylinders()][faults];
        List<Double> weights = new ArrayList<>();
        double without = 0;
        for (Combination combination : slices.all()) {
            double sum = 0;
            for (int depth = 0; depth < byDepth.length; depth++) {
                double[] product = slices.product(combination, depth);
                double[] signed = slices.signed(combination, depth);
                boolean last = depth == byDepth.length - 1;
                sum = 0;
                for (int c = 0; c < points; c++) {
                    double part = dot(product, c * subsets, signed);
                    sum += part;
                    if (last) {
                        grid[c] += part;
                        without += product[c * subsets] * signed[0];
                    }
                }
                byDepth[depth] += sum;
                if (last) {
                    members(combination, product);
                }
            }
            weights.add(sum);
        }
        chance = byDepth[byDepth.length - 1];
        free = without;
        cylinders(weights);
    }

    private static double dot(double[] product, int at, double[] signed) {
        double sum = 0;
        for (int u = 0; u < signed.length; u++) {
            sum += product[at + u] * signed[u];
        }
        return sum;
    }

    private void members(Combination combination, double[] product) {
        double[] sums = new double[subsets];
        for (int k = 0; k < product.length; k++) {
            sums[k % subsets] += product[k];
        }
        double[] signs = slices.causes().signs();
        for (int u = 0; u < subsets; u++) {
            sums[u] *= signs[u];
        }
        double[] own = new double[subsets];
        for (Pick pick : combination.picks()) {
            java.util.Arrays.fill(own, 0);
            slices.causes().add(pick, own);
            double share = dot(sums, 0, own);
            if (pick.first() >= 0) {
                members[pick.first()] += share;
            }
            if (pick.second() >= 0) {
                members[pick.second()] += share;
            }
        }
    }

    private void cylinders(List<Double> weights) {
        Map<View, double[]> outside = new LinkedHashMap<>();
        int index = 0;
        for (Combination combination : slices.all()) {
            if (weights.get(index++) < (slices.exact() ? 0 : NEGLIGIBLE) * chance) {
                continue;
            }
            double[] signed = slices.signed(combination, Slices.last());
            double[][] others = slices.others(combination);
            for (View view : combination.views()) {
                double[] sum = outside.computeIfAbsent(view, any -> new double[points * subsets]);
                double[] other = others[view.cylinder()];
                double scale = slices.scale(view.cylinder());
                for (int k = 0; k < sum.length; k++) {
                    sum[k] += other[k] * signed[k % subsets] / scale;
                }
            }
        }
        double[] pass = new double[subsets];
        outside.forEach((view, sum) -> slices.weights(view).forEach(faults, (set, f, g) -> {
            if (f < 0) {
                return;
            }
            slices.causes().pass(f, g, pass);
            double share = 0;
            for (int c = 0; c < points; c++) {
                share += set[c] * dot(sum, c * subsets, pass);
            }
            share *= slices.causes().absent(f, g);
            cylinderFaults[view.cylinder()][f] += share;
            if (g >= 0) {
                cylinderFaults[view.cylinder()][g] += share;
            }
        }));
    }

    Posterior posterior() {
        return new Posterior(
                model,
                slices.from(),
                chance,
                slices.logScale(),
                byDepth,
                grid,
                members,
                cylinderFaults,
                chance > 0 ? slices.dropped() * free / chance : 0);
    }
}
