package gudgeon.core.finding;

import gudgeon.core.finding.Causes.Pick;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Both slices put together: for every set of at most two members of the engine slice and every point of the healthy grid, the
 * cylinders are independent causes of the findings of the engine. Each cylinder sends a message: for each depth, point and subset
 * of present findings the sum over its sets of faults of weight times the chance to raise none of the subset. Cost: different
 * combinations of what matters to the cylinders x grid x subsets x cylinders.
 */
final class Slices {
    private final EngineModel model;
    private final Tables tables;
    private final Evidence evidence;
    private final Causes causes;
    private final double beam;
    private final int cylinders;
    private final int faults;
    private final int points;
    private final int subsets;
    private final int from;
    private final int to;
    private final double[] gridChance;
    private final RoughLook look;
    private final boolean[][] matters; // [cylinder][member]
    private final double[] scale;
    private double dropped;
    private final Map<View, double[][]> messages = new HashMap<>();
    private final List<Combination> combinations;

    /** What a cylinder sees of the engine slice: the members that matter to it, -1 for none, and how many faults it may have. */
    record View(int cylinder, int first, int second, boolean pairs) {}

    /** Sets of members that look the same to every cylinder. */
    record Combination(List<View> views, List<Pick> picks) {}

    Slices(Tables tables, Evidence evidence, double beam) {
        this.tables = tables;
        this.evidence = evidence;
        this.beam = beam;
        model = tables.model();
        causes = new Causes(model, evidence);
        cylinders = model.facts().cylinders();
        faults = model.faults().size();
        subsets = causes.subsets();
        matters = new boolean[cylinders][model.members().size()];
        for (int i = 0; i < cylinders; i++) {
            CylinderSlice slice = new CylinderSlice(model, evidence.cylinder(i), i, model.grid());
            for (int m = 0; m < matters[i].length; m++) {
                matters[i][m] = slice.matters(m);
            }
        }
        look = new RoughLook(tables, evidence, causes, matters);
        int[] range = beam > 0 ? look.range() : new int[] {0, model.grid().ln().length};
        from = range[0];
        to = range[1];
        points = to - from;
        gridChance = Arrays.copyOfRange(model.grid().chance(), from, to);
        scale = new double[cylinders];
        Arrays.fill(scale, 1);
        for (int i = 0; i < cylinders; i++) {
            double[] whole = message(new View(i, -1, -1, true))[last()];
            double most = 0;
            for (int c = 0; c < points; c++) {
                most = Math.max(most, whole[c * subsets]);
            }
            scale[i] = most > 0 ? most : 1;
        }
        messages.clear();
        dropped = 0;
        combinations = combinations();
    }

    static int last() {
        return Depth.values().length - 1;
    }

    private List<Combination> combinations() {
        List<Pick> picks = picks();
        double norm = picks.stream().mapToDouble(Pick::chance).sum();
        Map<List<View>, Combination> all = new LinkedHashMap<>();
        for (Pick pick : picks) {
            if (hopeless(pick)) {
                continue;
            }
            List<View> views = new ArrayList<>();
            for (int i = 0; i < cylinders; i++) {
                boolean one = pick.first() >= 0 && matters[i][pick.first()];
                boolean two = pick.second() >= 0 && matters[i][pick.second()];
                views.add(new View(
                        i,
                        one ? pick.first() : two ? pick.second() : -1,
                        one && two ? pick.second() : -1,
                        pick.first() < 0));
            }
            all.computeIfAbsent(views, same -> new Combination(same, new ArrayList<>()))
                    .picks()
                    .add(new Pick(pick.first(), pick.second(), pick.chance() / norm));
        }
        return List.copyOf(all.values());
    }

    private List<Pick> picks() {
        List<Member> members = model.members();
        List<Pick> picks = new ArrayList<>();
        picks.add(new Pick(-1, -1, 1));
        for (int a = 0; a < members.size(); a++) {
            picks.add(new Pick(a, -1, members.get(a).odds()));
            for (int b = a + 1; b < members.size(); b++) {
                if (members.get(a).identity() != members.get(b).identity()) {
                    picks.add(new Pick(a, b, members.get(a).odds() * members.get(b).odds()));
                }
            }
        }
        return picks;
    }

    /** Two members of which neither alone is at all likely, and that change the same cylinder. */
    private boolean hopeless(Pick pick) {
        if (beam == 0 || pick.second() < 0) {
            return false;
        }
        double best = Math.max(
                look.likely(pick.first()) * model.members().get(pick.second()).odds(),
                look.likely(pick.second()) * model.members().get(pick.first()).odds());
        if (best >= 1000 * beam) {
            return false;
        }
        for (int i = 0; i < cylinders; i++) {
            if (matters[i][pick.first()] && matters[i][pick.second()]) {
                return true;
            }
        }
        return false;
    }

    /** Weights of the sets of faults of a cylinder, as it sees the engine slice. */
    CylinderSlice.Weights weights(View view) {
        double own = beam;
        if (beam > 0 && view.first() >= 0) {
            double decades = Math.ceil(-Math.log10(Math.max(look.likely(view.first()), beam)));
            own = Math.min(0.1, beam * Math.pow(10, decades));
        }
        return tables.weights(
                evidence.cylinder(view.cylinder()),
                view.cylinder(),
                view.first(),
                view.second(),
                from,
                to,
                view.pairs(),
                own);
    }

    private double[][] message(View view) {
        double[][] known = messages.get(view);
        if (known == null) {
            CylinderSlice.Weights weights = weights(view);
            dropped += weights.dropped() * (view.first() < 0 ? 1 : look.likely(view.first()));
            known = message(weights, scale[view.cylinder()]);
            messages.put(view, known);
        }
        return known;
    }

    private double[][] message(CylinderSlice.Weights weights, double scaled) {
        double[][] byDepth = new double[last() + 1][points * subsets];
        double[] pass = new double[subsets];
        weights.forEach(faults, (set, f, g) -> {
            causes.pass(f, g, pass);
            double absent = causes.absent(f, g) / scaled;
            double[] into = byDepth[Math.max(depth(f), depth(g))];
            for (int c = 0; c < points; c++) {
                double weight = set[c] * absent;
                int at = c * subsets;
                for (int u = 0; u < subsets; u++) {
                    into[at + u] += weight * pass[u];
                }
            }
        });
        for (int depth = 1; depth <= last(); depth++) {
            for (int k = 0; k < byDepth[depth].length; k++) {
                byDepth[depth][k] += byDepth[depth - 1][k];
            }
        }
        return byDepth;
    }

    private int depth(int fault) {
        return fault < 0 ? 0 : model.faults().get(fault).repair().mended().ordinal();
    }

    /** Product of the messages of all cylinders, by point and subset, times the chance of the point. */
    double[] product(Combination combination, int depth) {
        double[] product = new double[points * subsets];
        for (int c = 0; c < points; c++) {
            Arrays.fill(product, c * subsets, (c + 1) * subsets, gridChance[c]);
        }
        for (View view : combination.views()) {
            multiply(product, message(view)[depth]);
        }
        return product;
    }

    /** For each cylinder the product of the messages of the others, from the front and from the back. */
    double[][] others(Combination combination) {
        double[][] others = new double[cylinders][];
        double[] front = new double[points * subsets];
        for (int c = 0; c < points; c++) {
            Arrays.fill(front, c * subsets, (c + 1) * subsets, gridChance[c]);
        }
        for (int i = 0; i < cylinders; i++) {
            others[i] = front.clone();
            multiply(front, message(combination.views().get(i))[last()]);
        }
        double[] back = new double[points * subsets];
        Arrays.fill(back, 1);
        for (int i = cylinders - 1; i >= 0; i--) {
            multiply(others[i], back);
            multiply(back, message(combination.views().get(i))[last()]);
        }
        return others;
    }

    private static void multiply(double[] product, double[] by) {
        for (int k = 0; k < product.length; k++) {
            product[k] *= by[k];
        }
    }

    /** For each subset, signed: the chance of the members of a combination that are mended no deeper. */
    double[] signed(Combination combination, int depth) {
        double[] sum = new double[subsets];
        for (Pick pick : combination.picks()) {
            if (Math.max(memberDepth(pick.first()), memberDepth(pick.second())) <= depth) {
                causes.add(pick, sum);
            }
        }
        multiply(sum, causes.signs());
        return sum;
    }

    private int memberDepth(int member) {
        return member < 0 ? 0 : model.members().get(member).fault().repair().mended().ordinal();
    }

    /** Whether nothing is left out. */
    boolean exact() {
        return beam == 0;
    }

    EngineModel model() {
        return model;
    }

    Causes causes() {
        return causes;
    }

    Evidence evidence() {
        return evidence;
    }

    List<Combination> all() {
        return combinations;
    }

    int points() {
        return points;
    }

    /** The first point of the whole grid that is looked at. */
    int from() {
        return from;
    }

    double scale(int cylinder) {
        return scale[cylinder];
    }

    double logScale() {
        return Arrays.stream(scale).map(Math::log).sum();
    }

    double dropped() {
        return dropped;
    }
}
