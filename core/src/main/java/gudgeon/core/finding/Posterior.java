package gudgeon.core.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is believed after everything that was seen: chances of faults, of how deep the repair goes, of the healthy compression. */
public final class Posterior {
    private final double logChance;
    private final List<Belief> beliefs;
    private final double[] notDeeper;
    private final double healthy;
    private final double badRun;
    private final double leftOut;

    /**
     * The chance of one fault at one place.
     *
     * @param fault what
     * @param where the place
     * @param chance 0 to 1
     */
    public record Belief(Fault fault, Where where, double chance) {}

    Posterior(
            EngineModel model,
            int from,
            double chance,
            double logScale,
            double[] byDepth,
            double[] grid,
            double[] members,
            double[][] cylinderFaults,
            double leftOut) {
        logChance = Math.log(chance) + logScale;
        this.leftOut = leftOut;
        List<Belief> all = new ArrayList<>();
        List<Member> list = model.members();
        for (int m = 0; m < list.size(); m++) {
            double sum = 0;
            int identity = list.get(m).identity();
            int start = m;
            while (m < list.size() && list.get(m).identity() == identity) {
                sum += members[m++] / chance;
            }
            m--;
            all.add(new Belief(list.get(start).fault(), list.get(start).where(), clean(sum)));
        }
        for (int i = 0; i < cylinderFaults.length; i++) {
            for (int f = 0; f < model.faults().size(); f++) {
                all.add(new Belief(model.faults().get(f), Where.cylinder(i + 1), clean(cylinderFaults[i][f] / chance)));
            }
        }
        all.sort(Comparator.comparingDouble(Belief::chance).reversed());
        beliefs = List.copyOf(all);
        notDeeper = new double[byDepth.length];
        for (int d = 0; d < byDepth.length; d++) {
            notDeeper[d] = clean(byDepth[d] / chance);
        }
        double mean = 0;
        double poor = 0;
        for (int c = 0; c < grid.length; c++) {
            mean += grid[c] / chance * model.grid().ln()[from + c];
            poor += grid[c] / chance * model.grid().badRun()[from + c];
        }
        healthy = Math.exp(mean);
        badRun = clean(poor);
    }

    private static double clean(double chance) {
        return Math.max(0, Math.min(1, chance));
    }

    /** Natural logarithm of the likelihood of everything that was seen. */
    public double logChance() {
        return logChance;
    }

    /** Every fault at every place, likeliest first. */
    public List<Belief> beliefs() {
        return beliefs;
    }

    /** Chance of one fault at one place. */
    public double chance(String fault, String where) {
        return beliefs.stream()
                .filter(belief -> belief.fault().id().equals(fault) && belief.where().label().equals(where))
                .mapToDouble(Belief::chance)
                .findFirst()
                .orElse(0);
    }

    /** Chance that mending everything that is wrong goes at least this deep. */
    public double atLeast(Depth depth) {
        return depth == Depth.NONE ? 1 : 1 - notDeeper[depth.ordinal() - 1];
    }

    /** The deepest level that is needed with a chance of one half or more. */
    public Depth likely() {
        Depth likely = Depth.NONE;
        for (Depth depth : Depth.values()) {
            if (atLeast(depth) >= 0.5) {
                likely = depth;
            }
        }
        return likely;
    }

    /** Healthy gauge pressure while cranking as it was cranked, Pa, geometric mean. */
    public double healthy() {
        return healthy;
    }

    /** Chance that the whole compression run was done badly. */
    public double badRun() {
        return badRun;
    }

    /** At most this share of the likelihood was left out to be quick. */
    public double leftOut() {
        return leftOut;
    }
}
