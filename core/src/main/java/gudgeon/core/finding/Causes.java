package gudgeon.core.finding;

import gudgeon.core.inference.Quickscore;
import java.util.Arrays;
import java.util.List;

/**
 * What every fault does to the findings of the engine: for each subset of the present ones the chance that it raises none of them,
 * and the chance that it raises none of the absent ones. Source: [HECKERMAN].
 */
final class Causes {
    private final Evidence evidence;
    private final int subsets;
    private final double[] signs;
    private final double[][] faultPresent;
    private final double[] faultAbsent;
    private final double[][] memberPresent;
    private final double[] memberAbsent;

    Causes(EngineModel model, Evidence evidence) {
        this.evidence = evidence;
        subsets = 1 << evidence.present().size();
        signs = signed();
        List<Fault> faults = model.faults();
        faultPresent = new double[faults.size()][];
        faultAbsent = new double[faults.size()];
        fill(faults, faultPresent, faultAbsent);
        List<Fault> raisers = model.members().stream().map(Member::fault).toList();
        memberPresent = new double[raisers.size()][];
        memberAbsent = new double[raisers.size()];
        fill(raisers, memberPresent, memberAbsent);
    }

    private double[] signed() {
        double away = 1;
        for (FindingKind finding : evidence.absent()) {
            away *= 1 - evidence.foldedAlarm(finding);
        }
        double[] signs = Quickscore.subsets(evidence.present().stream()
                .mapToDouble(finding -> 1 - evidence.foldedAlarm(finding))
                .toArray());
        for (int u = 0; u < signs.length; u++) {
            signs[u] *= (Integer.bitCount(u) & 1) == 0 ? away : -away;
        }
        return signs;
    }

    private void fill(List<Fault> raisers, double[][] present, double[] absent) {
        double[][] passes = new double[raisers.size()][evidence.present().size()];
        for (int f = 0; f < evidence.present().size(); f++) {
            double[] folded = evidence.foldedPasses(evidence.present().get(f), raisers);
            for (int r = 0; r < folded.length; r++) {
                passes[r][f] = folded[r];
            }
        }
        Arrays.fill(absent, 1);
        for (FindingKind finding : evidence.absent()) {
            double[] folded = evidence.foldedPasses(finding, raisers);
            for (int r = 0; r < folded.length; r++) {
                absent[r] *= folded[r];
            }
        }
        for (int r = 0; r < passes.length; r++) {
            present[r] = Quickscore.subsets(passes[r]);
        }
    }

    int subsets() {
        return subsets;
    }

    /** For each subset the chance that no false alarm raises it or anything absent, with the sign of the sum. */
    double[] signs() {
        return signs;
    }

    /** For each subset the chance that two faults of a cylinder (-1 for none) raise none of it, into the array. */
    void pass(int f, int g, double[] into) {
        if (f < 0) {
            Arrays.fill(into, 1);
        } else {
            System.arraycopy(faultPresent[f], 0, into, 0, subsets);
        }
        if (g >= 0) {
            double[] other = faultPresent[g];
            for (int u = 0; u < subsets; u++) {
                into[u] *= other[u];
            }
        }
    }

    /** Chance that these two faults raise nothing that is absent. */
    double absent(int f, int g) {
        return (f < 0 ? 1 : faultAbsent[f]) * (g < 0 ? 1 : faultAbsent[g]);
    }

    /** Adds, for each subset, the chance of a set of members and that they raise none of it and nothing absent. */
    void add(Pick pick, double[] into) {
        double chance = pick.chance()
                * (pick.first() < 0 ? 1 : memberAbsent[pick.first()])
                * (pick.second() < 0 ? 1 : memberAbsent[pick.second()]);
        for (int u = 0; u < subsets; u++) {
            into[u] += chance
                    * (pick.first() < 0 ? 1 : memberPresent[pick.first()][u])
                    * (pick.second() < 0 ? 1 : memberPresent[pick.second()][u]);
        }
    }

    /** Logarithm of what a member alone (-1 for none) makes of all findings of the engine. */
    double explained(int member) {
        double log = member < 0 ? 0 : Math.log(memberAbsent[member]);
        for (int f = 0; f < evidence.present().size(); f++) {
            double away = 1 - evidence.foldedAlarm(evidence.present().get(f));
            log += Math.log(1 - away * (member < 0 ? 1 : memberPresent[member][1 << f]));
        }
        return log;
    }

    /** A set of at most two members of the engine slice, -1 for none, and its chance before anything is seen. */
    record Pick(int first, int second, double chance) {}
}
