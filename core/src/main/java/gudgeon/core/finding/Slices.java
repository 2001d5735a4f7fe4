package gudgeon.core.finding;

import gudgeon.core.inference.Quickscore;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Both slices put together: for every set of at most two members of the engine slice and every point of the healthy grid, the
 * cylinders are independent causes of the findings of the engine (inclusion and exclusion, {@link Quickscore}). Cost: different
 * combinations of what matters to the cylinders x grid x 2^(present findings) x cylinders.
 */
final class Slices {
    private static final double NEGLIGIBLE = 1e-11;

    private static final double ROUGH = 1e-8;

    private final EngineModel model;
    private final Tables tables;
    private final Evidence evidence;
    private final double beam;
    private final int cylinders;
    private final double[] gridChance;
    private final int points;
    private final int from;
    private final int to;
    private final double[] rough; // [1 + member]: what remains likely by a rough look
    private double roughest;
    private final int subsets;
    private final int faults;
    private final double[][] presentPass; // [fault][subset]
    private final double[] absentPass; // [fault]
    private final double[] leakOf; // [subset], signed
    private final double[][] memberPresent; // [member][subset]
    private final double[] memberAbsent; // [member]
    private final boolean[][] matters; // [cylinder][member]
    private final double[] scale;
    private double dropped;

    private final Map<Long, Messages> messages = new LinkedHashMap<>();
    private final Map<List<Long>, Combination> combinations = new LinkedHashMap<>();

    /** Message of a cylinder: for each depth (faults mended no deeper), point and subset the sum of weights times passes. */
    private record Messages(double[][][] byDepth) {}

    /** Sets of members that look the same to every cylinder. */
    private static final class Combination {
        final int[] first;
        final int[] second;
        final boolean pairs;
        final List<Pick> picks = new ArrayList<>();

        Combination(int[] first, int[] second, boolean pairs) {
            this.pairs = pairs;
            this.first = first;
            this.second = second;
        }
    }

    /** A set of at most two members and its prior chance. */
    record Pick(int first, int second, double chance) {}

    Slices(Tables tables, Evidence evidence, double beam) {
        this.tables = tables;
        this.evidence = evidence;
        this.beam = beam;
        model = tables.model();
        cylinders = model.facts().cylinders();
        faults = model.faults().size();
        subsets = 1 << evidence.present().size();
        leakOf = leaks();
        presentPass = new double[faults][];
        absentPass = new double[faults];
        passes(model.faults(), presentPass, absentPass);
        List<Fault> raisers = model.members().stream().map(Member::fault).toList();
        memberPresent = new double[raisers.size()][];
        memberAbsent = new double[raisers.size()];
        passes(raisers, memberPresent, memberAbsent);
        matters = new boolean[cylinders][raisers.size()];
        for (int i = 0; i < cylinders; i++) {
            CylinderSlice slice = new CylinderSlice(model, evidence.cylinder(i), i, model.grid());
            for (int m = 0; m < raisers.size(); m++) {
                matters[i][m] = slice.matters(m);
            }
        }
        rough = new double[raisers.size() + 1];
        int[] range = look();
        from = range[0];
        to = range[1];
        points = to - from;
        gridChance = Arrays.copyOfRange(model.grid().chance(), from, to);
        scale = new double[cylinders];
        for (int i = 0; i < cylinders; i++) {
            scale[i] = 1;
            scale[i] = Arrays.stream(message(i, -1, -1, true).byDepth()[last()])
                    .mapToDouble(row -> row[0])
                    .max()
                    .orElse(1);
        }
        messages.clear();
        dropped = 0;
        gather();
    }

    /**
     * A rough look, at most one fault in each cylinder and one member: which points of the grid matter, and how likely each
     * member stays. Says from which point to which; all of them when nothing may be left out.
     */
    private int[] look() {
        int all = model.grid().ln().length;
        double[] sum = new double[all];
        Map<Long, double[]> seen = new LinkedHashMap<>();
        double[] logs = new double[rough.length];
        double[][] each = new double[rough.length][];
        double highest = Double.NEGATIVE_INFINITY;
        for (int m = -1; m < rough.length - 1; m++) {
            double[] log = new double[all];
            for (int i = 0; i < cylinders; i++) {
                int member = m >= 0 && matters[i][m] ? m : -1;
                int cylinder = i;
                double[] single = seen.computeIfAbsent((long) i << 32 | member + 1, any -> single(cylinder, member));
                for (int c = 0; c < all; c++) {
                    log[c] += single[c];
                }
            }
            logs[m + 1] = explained(m);
            for (int c = 0; c < all; c++) {
                log[c] += Math.log(model.grid().chance()[c]) + logs[m + 1];
                highest = Math.max(highest, log[c]);
            }
            each[m + 1] = log;
        }
        for (int m = 0; m < each.length; m++) {
            for (int c = 0; c < all; c++) {
                double weight = Math.exp(each[m][c] - highest);
                rough[m] += weight;
                sum[c] += weight;
            }
            roughest = Math.max(roughest, rough[m]);
        }
        if (beam == 0) {
            return new int[] {0, all};
        }
        return range(sum);
    }

    private static int[] range(double[] sum) {
        double most = Arrays.stream(sum).max().orElse(1);
        int low = 0;
        while (low < sum.length - 1 && sum[low] < ROUGH * most) {
            low++;
        }
        int high = sum.length;
        while (high > low + 1 && sum[high - 1] < ROUGH * most) {
            high--;
        }
        return new int[] {low / 3 * 3, Math.min(sum.length, (high + 2) / 3 * 3)};
    }

    /** Logarithm of a cylinder's likelihood at every point, at most one fault in it. */
    private double[] single(int cylinder, int member) {
        CylinderSlice.Weights weights = tables.weights(
                evidence.cylinder(cylinder), cylinder, member, -1, 0, model.grid().ln().length, false, 0);
        double[] sum = new double[model.grid().ln().length];
        for (double[] row : weights.byPoint()) {
            for (int c = 0; c < sum.length; c++) {
                sum[c] += row[c];
            }
        }
        for (int c = 0; c < sum.length; c++) {
            sum[c] = Math.log(Math.max(sum[c], 1e-300));
        }
        return sum;
    }

    /** Logarithm of a member's odds and of what it alone makes of the engine's findings. */
    private double explained(int member) {
        double log = member < 0 ? 0 : Math.log(model.members().get(member).odds() * memberAbsent[member]);
        for (int f = 0; f < evidence.present().size(); f++) {
            double away = 1 - evidence.foldedAlarm(evidence.present().get(f));
            log += Math.log(1 - away * (member < 0 ? 1 : memberPresent[member][1 << f]));
        }
        return log;
    }

    private static int last() {
        return Depth.values().length - 1;
    }

    private double[] leaks() {
        double away = 1;
        for (FindingKind finding : evidence.absent()) {
            away *= 1 - evidence.foldedAlarm(finding);
        }
        double[] leaks = Quickscore.subsets(evidence.present().stream()
                .mapToDouble(finding -> 1 - evidence.foldedAlarm(finding))
                .toArray());
        for (int u = 0; u < leaks.length; u++) {
            leaks[u] *= (Integer.bitCount(u) & 1) == 0 ? away : -away;
        }
        return leaks;
    }

    private void passes(List<Fault> raisers, double[][] present, double[] absent) {
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

    private void gather() {
        List<Member> members = model.members();
        double norm = 1;
        List<Pick> picks = new ArrayList<>();
        picks.add(new Pick(-1, -1, 1));
        for (int a = 0; a < members.size(); a++) {
            picks.add(new Pick(a, -1, members.get(a).odds()));
            for (int b = a + 1; b < members.size(); b++) {
                if (members.get(a).identity() != members.get(b).identity() && !hopeless(a, b)) {
                    picks.add(new Pick(a, b, members.get(a).odds() * members.get(b).odds()));
                }
            }
        }
        norm = picks.stream().mapToDouble(Pick::chance).sum();
        for (Pick pick : picks) {
            int[] first = new int[cylinders];
            int[] second = new int[cylinders];
            List<Long> key = new ArrayList<>();
            for (int i = 0; i < cylinders; i++) {
                boolean one = pick.first() >= 0 && matters[i][pick.first()];
                boolean two = pick.second() >= 0 && matters[i][pick.second()];
                first[i] = one ? pick.first() : two ? pick.second() : -1;
                second[i] = one && two ? pick.second() : -1;
                key.add(key(first[i], second[i]));
            }
            boolean pairs = pick.second() < 0;
            key.add(pairs ? 1L : 0L);
            combinations
                    .computeIfAbsent(key, any -> new Combination(first, second, pairs))
                    .picks
                    .add(new Pick(pick.first(), pick.second(), pick.chance() / norm));
        }
    }

    /**
     * Two members that both change the same cylinder, and of which neither alone is at all likely: worked out only when nothing may be
     * left out.
     */
    private boolean hopeless(int a, int b) {
        if (beam == 0) {
            return false;
        }
        boolean together = false;
        for (int i = 0; i < cylinders; i++) {
            together |= matters[i][a] && matters[i][b];
        }
        double best = Math.max(
                rough[a + 1] * model.members().get(b).odds(), rough[b + 1] * model.members().get(a).odds());
        return together && best < beam * 100 * roughest;
    }

    private static long key(int first, int second) {
        return (long) (first + 1) << 32 | second + 1;
    }

    private Messages message(int cylinder, int first, int second, boolean pairs) {
        long key = (long) cylinder << 56 | (pairs ? 1L << 55 : 0) | key(first, second);
        Messages known = messages.get(key);
        if (known == null) {
            CylinderSlice.Weights weights = weights(cylinder, first, second, pairs);
            dropped += weights.dropped();
            known = new Messages(messages(weights.byPoint(), cylinder));
            messages.put(key, known);
        }
        return known;
    }

    private CylinderSlice.Weights weights(int cylinder, int first, int second, boolean pairs) {
        return tables.weights(evidence.cylinder(cylinder), cylinder, first, second, from, to, pairs, beam);
    }

    private double[][][] messages(double[][] weights, int cylinder) {
        double[][][] byDepth = new double[last() + 1][points][subsets];
        add(byDepth, weights[0], -1, -1, cylinder);
        for (int f = 0; f < faults; f++) {
            add(byDepth, weights[1 + f], f, -1, cylinder);
        }
        if (weights.length > 1 + faults) {
            for (int f = 0; f < faults; f++) {
                for (int g = f + 1; g < faults; g++) {
                    double[] pair = weights[CylinderSlice.Sets.pair(f, g, faults)];
                    if (pair != null) {
                        add(byDepth, pair, f, g, cylinder);
                    }
                }
            }
        }
        for (int depth = 1; depth <= last(); depth++) {
            for (int c = 0; c < points; c++) {
                for (int u = 0; u < subsets; u++) {
                    byDepth[depth][c][u] += byDepth[depth - 1][c][u];
                }
            }
        }
        return byDepth;
    }

    private void add(double[][][] byDepth, double[] weights, int f, int g, int cylinder) {
        int depth = Math.max(depth(f), depth(g));
        double absent = (f < 0 ? 1 : absentPass[f]) * (g < 0 ? 1 : absentPass[g]) / scale[cylinder];
        double[] pass = pass(f, g);
        for (int c = 0; c < points; c++) {
            double weight = weights[c] * absent;
            double[] into = byDepth[depth][c];
            for (int u = 0; u < subsets; u++) {
                into[u] += weight * pass[u];
            }
        }
    }

    private int depth(int fault) {
        return fault < 0 ? 0 : model.faults().get(fault).repair().mended().ordinal();
    }

    private double[] pass(int f, int g) {
        double[] pass = new double[subsets];
        for (int u = 0; u < subsets; u++) {
            pass[u] = (f < 0 ? 1 : presentPass[f][u]) * (g < 0 ? 1 : presentPass[g][u]);
        }
        return pass;
    }

    /** Everything, summed up. */
    Posterior posterior() {
        double[] total = new double[last() + 1];
        double[] grid = new double[points];
        double[] byMember = new double[model.members().size()];
        double[][] cylinderFaults = new double[cylinders][faults];
        double free = 0;
        List<double[]> chanceOf = new ArrayList<>();
        for (Combination combination : combinations.values()) {
            double[] byPoint = new double[points];
            chanceOf.add(byPoint);
            for (int depth = 0; depth <= last(); depth++) {
                double[][] signed = signed(combination, depth);
                for (int c = 0; c < points; c++) {
                    double[] product = products(combination, depth, c, -1);
                    double sum = dot(product, signed[c]);
                    total[depth] += sum;
                    if (depth == last()) {
                        byPoint[c] = sum;
                        grid[c] += sum;
                        free += product[0] * signed[c][0];
                    }
                }
            }
        }
        double all = total[last()];
        int index = 0;
        for (Combination combination : combinations.values()) {
            double[] byPoint = chanceOf.get(index++);
            members(combination, byMember, all);
            double[][] signed = signed(combination, last());
            boolean[] counts = new boolean[points];
            boolean any = false;
            for (int c = 0; c < points; c++) {
                counts[c] = byPoint[c] > NEGLIGIBLE * all;
                any |= counts[c];
            }
            if (any) {
                cylinderFaults(combination, signed, counts, cylinderFaults);
            }
        }
        return new Posterior(
                model, from, all, logScale(), total, grid, byMember, cylinderFaults, all > 0 ? dropped * free / all : 0);
    }

    private double logScale() {
        return Arrays.stream(scale).map(Math::log).sum();
    }

    /** Everything of a combination that is not of the cylinders: for each point, signed by subset. */
    private double[][] signed(Combination combination, int depth) {
        double[] sum = new double[subsets];
        for (Pick pick : combination.picks) {
            if (Math.max(memberDepth(pick.first()), memberDepth(pick.second())) <= depth) {
                addPick(sum, pick);
            }
        }
        double[][] signed = new double[points][subsets];
        for (int c = 0; c < points; c++) {
            for (int u = 0; u < subsets; u++) {
                signed[c][u] = sum[u] * leakOf[u] * gridChance[c];
            }
        }
        return signed;
    }

    private int memberDepth(int member) {
        return member < 0 ? 0 : model.members().get(member).fault().repair().mended().ordinal();
    }

    private void addPick(double[] sum, Pick pick) {
        double chance = pick.chance()
                * (pick.first() < 0 ? 1 : memberAbsent[pick.first()])
                * (pick.second() < 0 ? 1 : memberAbsent[pick.second()]);
        for (int u = 0; u < subsets; u++) {
            sum[u] += chance
                    * (pick.first() < 0 ? 1 : memberPresent[pick.first()][u])
                    * (pick.second() < 0 ? 1 : memberPresent[pick.second()][u]);
        }
    }

    /** Product over the cylinders, one left out when it is not -1. */
    private double[] products(Combination combination, int depth, int point, int without) {
        double[] product = new double[subsets];
        Arrays.fill(product, 1);
        for (int i = 0; i < cylinders; i++) {
            if (i != without) {
                double[] message = message(i, combination.first[i], combination.second[i], combination.pairs).byDepth()[depth][point];
                for (int u = 0; u < subsets; u++) {
                    product[u] *= message[u];
                }
            }
        }
        return product;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private void members(Combination combination, double[] byMember, double all) {
        double[] sums = new double[subsets];
        for (int c = 0; c < points; c++) {
            double[] product = products(combination, last(), c, -1);
            for (int u = 0; u < subsets; u++) {
                sums[u] += product[u] * gridChance[c] * leakOf[u];
            }
        }
        for (Pick pick : combination.picks) {
            double[] own = new double[subsets];
            addPick(own, pick);
            double share = dot(sums, own) / all;
            if (pick.first() >= 0) {
                byMember[pick.first()] += share;
            }
            if (pick.second() >= 0) {
                byMember[pick.second()] += share;
            }
        }
    }

    private void cylinderFaults(
            Combination combination, double[][] signed, boolean[] counts, double[][] cylinderFaults) {
        for (int i = 0; i < cylinders; i++) {
            double[][] weights =
                    weights(i, combination.first[i], combination.second[i], combination.pairs).byPoint();
            double[][] outside = new double[points][];
            for (int c = 0; c < points; c++) {
                if (counts[c]) {
                    outside[c] = products(combination, last(), c, i);
                    for (int u = 0; u < subsets; u++) {
                        outside[c][u] *= signed[c][u] / scale[i];
                    }
                }
            }
            for (int f = 0; f < faults; f++) {
                cylinderFaults[i][f] += share(weights[1 + f], f, -1, outside);
                for (int g = f + 1; g < faults && weights.length > 1 + faults; g++) {
                    double[] pair = weights[CylinderSlice.Sets.pair(f, g, faults)];
                    if (pair != null) {
                        double share = share(pair, f, g, outside);
                        cylinderFaults[i][f] += share;
                        cylinderFaults[i][g] += share;
                    }
                }
            }
        }
    }

    private double share(double[] weights, int f, int g, double[][] outside) {
        double[] pass = pass(f, g);
        double sum = 0;
        for (int c = 0; c < points; c++) {
            if (outside[c] != null) {
                sum += weights[c] * dot(outside[c], pass);
            }
        }
        return sum * (f < 0 ? 1 : absentPass[f]) * (g < 0 ? 1 : absentPass[g]);
    }
}
