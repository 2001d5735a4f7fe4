package gudgeon.core.finding;

import gudgeon.core.finding.FindingKind.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.special.Erf;

/** What a test may show under each of some faults, one at a time, and under none of them. */
final class Outcomes {
    private static final int MOST_TOGETHER = 6;
    private static final double[] SHARES = {0.25, 0.5, 0.7, 0.85, 0.95};
    private static final double[] LOSSES = {0.15, 0.30, 0.50, 0.75};
    private static final double WET_STEP = 0.06;

    private final Diagnosis diagnosis;
    private final EngineModel model;
    private final List<Posterior.Belief> faults;
    private final HealthyGrid near;

    /**
     * @param words what each outcome is
     * @param chances for each fault, and last for none of them, the chances of the outcomes
     */
    record Table(List<String> words, double[][] chances) {}

    Outcomes(Diagnosis diagnosis, List<Posterior.Belief> faults) {
        this.diagnosis = diagnosis;
        this.faults = faults;
        model = diagnosis.model();
        double healthy = Math.log(diagnosis.posterior().healthy());
        HealthyGrid grid = model.grid();
        int at = 0;
        while (at < grid.ln().length - 1 && grid.ln()[at] < healthy) {
            at++;
        }
        near = grid.between(at, at + 1);
    }

    /** Findings of the engine. */
    Table engine(TestKind test, List<FindingKind> findings) {
        return answers(test, findings, (finding, k) -> k == faults.size() ? 0 : model.strength(finding, faults.get(k).fault()));
    }

    /** A figure or findings of one cylinder. */
    Table cylinder(TestKind test, List<FindingKind> findings, int cylinder, boolean figure) {
        if (figure) {
            return figure(test, cylinder);
        }
        return answers(test, findings, (finding, k) ->
                k < faults.size() && touches(k, cylinder) ? model.strength(finding, faults.get(k).fault()) : 0);
    }

    private boolean touches(int fault, int cylinder) {
        Where where = faults.get(fault).where();
        return where.at() == Place.ENGINE || where.cylinders().contains(cylinder);
    }

    @FunctionalInterface
    private interface Strength {
        double of(FindingKind finding, int fault);
    }

    /** The findings that differ most between the faults, answered together. */
    private Table answers(TestKind test, List<FindingKind> findings, Strength strength) {
        List<FindingKind> told = new ArrayList<>(findings);
        told.sort((a, b) -> Double.compare(spread(b, strength), spread(a, strength)));
        List<FindingKind> used = told.subList(0, Math.min(MOST_TOGETHER, told.size()));
        int count = 1 << used.size();
        double bad = test.badly().chance();
        double[][] chances = new double[faults.size() + 1][count];
        List<String> words = new ArrayList<>();
        for (int o = 0; o < count; o++) {
            List<String> there = new ArrayList<>();
            for (int f = 0; f < used.size(); f++) {
                if ((o & 1 << f) != 0) {
                    there.add(used.get(f).id());
                }
            }
            words.add(there.isEmpty() ? "none of it" : String.join(", ", there));
            for (int k = 0; k < chances.length; k++) {
                double good = 1;
                for (int f = 0; f < used.size(); f++) {
                    double yes = 1 - (1 - used.get(f).falseAlarm()) * (1 - strength.of(used.get(f), k));
                    good *= (o & 1 << f) != 0 ? yes : 1 - yes;
                }
                chances[k][o] = (1 - bad) * good + bad / count;
            }
        }
        return new Table(words, chances);
    }

    private double spread(FindingKind finding, Strength strength) {
        double most = 0;
        for (int k = 0; k < faults.size(); k++) {
            most = Math.max(most, strength.of(finding, k) * faults.get(k).chance());
        }
        return most;
    }

    private Table figure(TestKind test, int cylinder) {
        TestKind.Figure kind = test.reads().orElseThrow();
        double[] edges = edges(kind);
        List<String> words = words(kind, edges);
        boolean hears = kind == TestKind.Figure.LEAK;
        int places = hears ? Path.values().length + 1 : 1;
        double[][] chances = new double[faults.size() + 1][(edges.length + 1) * places];
        for (int k = 0; k < chances.length; k++) {
            for (Posed posed : posed(k, cylinder)) {
                double[] mean = mean(kind, posed.expected());
                for (int b = 0; b <= edges.length; b++) {
                    double low = b == 0 ? 0 : below(edges[b - 1], mean);
                    double high = b == edges.length ? 1 : below(edges[b], mean);
                    for (int place = 0; place < places; place++) {
                        chances[k][b * places + place] +=
                                posed.share() * (high - low) * (hears ? heard(posed.expected(), place) : 1);
                    }
                }
            }
            double bad = test.badly().chance();
            for (int o = 0; o < chances[k].length; o++) {
                chances[k][o] = (1 - bad) * chances[k][o] + bad / chances[k].length;
            }
        }
        return new Table(hears ? withPlaces(words) : words, chances);
    }

    private static List<String> withPlaces(List<String> words) {
        List<String> all = new ArrayList<>();
        for (String word : words) {
            for (Path path : Path.values()) {
                all.add(word + ", heard most at " + path.name().toLowerCase(java.util.Locale.ROOT));
            }
            all.add(word + ", nothing heard");
        }
        return all;
    }

    /** Chance that it is heard here and nowhere before in the list; the last for nowhere. */
    private static double heard(Expected expected, int place) {
        double chance = 1;
        for (int p = 0; p < place && p < Path.values().length; p++) {
            chance *= 1 - expected.heard(Path.values()[p]);
        }
        return place < Path.values().length ? chance * expected.heard(Path.values()[place]) : chance;
    }

    private double below(double edge, double[] mean) {
        return 0.5 * Erf.erfc((mean[0] - edge) / (mean[1] * Math.sqrt(2)));
    }

    private double[] mean(TestKind.Figure kind, Expected expected) {
        return switch (kind) {
            case COMPRESSION -> expected.compression();
            case WET_RATIO -> expected.wet(5e-6);
            case LEAK -> expected.leak();
            case CURRENT -> expected.current();
            case BALANCE -> expected.balance();
        };
    }

    private double[] edges(TestKind.Figure kind) {
        return switch (kind) {
            case COMPRESSION -> Arrays.stream(SHARES).map(Math::log).toArray();
            case WET_RATIO -> {
                double oil = Math.log(model.gauges().gainOfOil(5e-6));
                yield new double[] {oil - WET_STEP, oil + WET_STEP, oil + 3 * WET_STEP, oil + 6 * WET_STEP};
            }
            case LEAK ->
                Arrays.stream(LOSSES)
                        .map(loss -> Math.log(Instruments.orifices(
                                loss,
                                Instruments.USUAL_SUPPLY,
                                Instruments.SMALL,
                                model.facts().cranking().ambient())))
                        .toArray();
            case CURRENT, BALANCE -> SHARES;
        };
    }

    private List<String> words(TestKind.Figure kind, double[] edges) {
        List<String> words = new ArrayList<>();
        for (int b = 0; b <= edges.length; b++) {
            String low = b == 0 ? "" : shown(kind, b - 1, edges);
            String high = b == edges.length ? "" : shown(kind, b, edges);
            words.add(low.isEmpty() ? "below " + high : high.isEmpty() ? "above " + low : low + " to " + high);
        }
        return words;
    }

    private String shown(TestKind.Figure kind, int edge, double[] edges) {
        return switch (kind) {
            case COMPRESSION ->
                Math.rint(SHARES[edge] * diagnosis.posterior().healthy() / 1e4) / 10 + " bar";
            case WET_RATIO -> Math.rint(Math.exp(edges[edge]) * 100) / 100 + " of dry";
            case LEAK -> Math.round(LOSSES[edge] * 100) + " per cent";
            case CURRENT, BALANCE -> String.valueOf(SHARES[edge]);
        };
    }

    /** A condition that the cylinder may be in under a fault, and its share after what was read there. */
    private record Posed(double share, Expected expected) {}

    private List<Posed> posed(int fault, int cylinder) {
        List<Posed> posed = new ArrayList<>();
        if (fault < faults.size()) {
            Posterior.Belief belief = faults.get(fault);
            int index = model.faults().indexOf(belief.fault());
            if (index >= 0 && belief.where().cylinders().contains(cylinder)) {
                for (EngineModel.Body body : model.bodies().get(index)) {
                    posed.add(posed(body.share(), model.expected(body.number(), 0, 0, 0), cylinder));
                }
            }
            for (Member member : model.members()) {
                if (member.fault().equals(belief.fault()) && member.where().equals(belief.where())) {
                    for (Member.Option option : member.options().get(cylinder - 1)) {
                        posed.add(posed(
                                member.odds() * option.chance(), model.expected(0, 0, option.number(), 0), cylinder));
                    }
                }
            }
        }
        double sum = posed.stream().mapToDouble(Posed::share).sum();
        if (posed.isEmpty() || !(sum > 0)) {
            return List.of(new Posed(1, model.expected(0, 0, 0, 0)));
        }
        return posed.stream().map(each -> new Posed(each.share() / sum, each.expected())).toList();
    }

    private Posed posed(double share, Expected expected, int cylinder) {
        double[] weight = {share};
        diagnosis.readings(cylinder - 1).weigh(expected, 0, near, weight);
        return new Posed(weight[0], expected);
    }
}
