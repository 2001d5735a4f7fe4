package gudgeon.core.finding;

import gudgeon.core.inference.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is believed of one engine after its readings, and why: what each reading weighs, whether they contradict one another, and
 * which of them is most likely bad. Cost: one posterior for each sitting left out, one for each alone.
 */
public final class Diagnosis {
    /** Sets of faults that add less than this share are mostly left out. */
    public static final double BEAM = 1e-8;

    private final EngineModel model;
    private final Tables tables;
    private final List<Observation> observations;
    private final List<Sitting> sittings;
    private final Posterior posterior;
    private final Evidence evidence;

    /** Works out what is believed. The order of the observations does not matter. */
    public Diagnosis(EngineModel model, List<Observation> observations) {
        this.model = model;
        tables = new Tables(model);
        this.observations = List.copyOf(observations);
        sittings = sittings(model, observations);
        evidence = new Evidence(model, observations);
        posterior = new Marginals(new Slices(tables, evidence, BEAM)).posterior();
    }

    /** The posterior of some observations; beam 0 leaves nothing out. */
    public static Posterior posterior(EngineModel model, List<Observation> observations, double beam) {
        return posterior(new Tables(model), observations, beam);
    }

    private static Posterior posterior(Tables tables, List<Observation> observations, double beam) {
        return new Marginals(new Slices(tables, new Evidence(tables.model(), observations), beam)).posterior();
    }

    private static List<Sitting> sittings(EngineModel model, List<Observation> observations) {
        Map<String, List<Observation>> together = new LinkedHashMap<>();
        for (Observation each : observations) {
            together.computeIfAbsent(key(model, each), any -> new ArrayList<>()).add(each);
        }
        List<Sitting> sittings = new ArrayList<>();
        together.values().forEach(all -> sittings.add(
                new Sitting(all.getFirst().test(), all.getFirst().cylinder(), all)));
        return sittings;
    }

    private static String key(EngineModel model, Observation each) {
        String at = each.test() + "/" + each.cylinder() + "/" + each.sitting();
        if (each instanceof Observation.Seen seen) {
            boolean heard = model.knowledge()
                    .findFinding(seen.finding())
                    .map(kind -> kind.heard().isPresent())
                    .orElse(false);
            return heard ? at : seen.cylinder() == 0 ? at + "/" + seen.finding() : at + "/asked";
        }
        return at;
    }

    CylinderReadings readings(int cylinder) {
        return evidence.cylinder(cylinder);
    }

    /** The model. */
    public EngineModel model() {
        return model;
    }

    /** What was seen, in the given order. */
    public List<Observation> observations() {
        return observations;
    }

    /** What was learned together, in the order of first mention. */
    public List<Sitting> sittings() {
        return sittings;
    }

    /** What is believed. */
    public Posterior posterior() {
        return posterior;
    }

    /**
     * What one sitting does.
     *
     * @param sitting the sitting
     * @param bad chance that it was done badly and says nothing
     * @param decibans for the leading belief: how much weaker it would be without this sitting
     */
    public record Weighed(Sitting sitting, double bad, double decibans) {}

    /** Every sitting left out in turn. */
    public List<Weighed> weighed() {
        List<Weighed> weighed = new ArrayList<>();
        Posterior.Belief lead = posterior.beliefs().getFirst();
        for (Sitting sitting : sittings) {
            List<Observation> rest = new ArrayList<>(observations);
            sitting.observations().forEach(rest::remove);
            Posterior without = posterior(tables, rest, BEAM);
            double bad = badChance(sitting) * Math.exp(without.logChance() - posterior.logChance());
            double before = without.chance(lead.fault().id(), lead.where().label());
            weighed.add(new Weighed(
                    sitting, Math.min(1, bad), Weight.decibans(odds(lead.chance()) / odds(before))));
        }
        return weighed;
    }

    private static double odds(double chance) {
        return Math.max(chance, 1e-15) / Math.max(1 - chance, 1e-15);
    }

    /** Chance that a sitting is bad and shows just this. */
    private double badChance(Sitting sitting) {
        double bad = model.knowledge()
                .findTest(sitting.test())
                .map(test -> test.badly().chance())
                .orElse(0.05);
        if (sitting.cylinder() == 0) {
            return bad / 2;
        }
        CylinderReadings alone =
                new Evidence(model, sitting.observations()).cylinder(sitting.cylinder() - 1);
        double chance = bad;
        for (CylinderReadings.Figures figures : alone.figures()) {
            chance *= figures.broad();
        }
        for (CylinderReadings.Answers answers : alone.answers()) {
            chance *= Math.pow(0.5, answers.findings().length);
        }
        return chance;
    }

    /**
     * How much the sittings contradict one another: log2 of the product of their chances alone over their chance together.
     * Above 0 they fit each other worse than by chance; below, they support one another. Source: [JENSENCONFLICT].
     */
    public double conflict() {
        double alone = 0;
        for (Sitting sitting : sittings) {
            alone += posterior(tables, sitting.observations(), BEAM).logChance();
        }
        return sittings.size() < 2 ? 0 : (alone - posterior.logChance()) / Math.log(2);
    }

    /** The leading belief when one sitting after another comes in, in the given order: decibans that add up exactly. */
    public List<Weighed> inSequence() {
        List<Weighed> steps = new ArrayList<>();
        Posterior.Belief lead = posterior.beliefs().getFirst();
        List<Observation> known = new ArrayList<>();
        double before = posterior(tables, known, BEAM).chance(lead.fault().id(), lead.where().label());
        for (Sitting sitting : sittings) {
            known.addAll(sitting.observations());
            double after = posterior(tables, known, BEAM).chance(lead.fault().id(), lead.where().label());
            steps.add(new Weighed(sitting, 0, Weight.decibans(odds(after) / odds(before))));
            before = after;
        }
        return steps;
    }

    /** The leading beliefs, at most so many, likeliest first. */
    public List<Posterior.Belief> leading(int most, double least) {
        return posterior.beliefs().stream()
                .filter(belief -> belief.chance() >= least)
                .sorted(Comparator.comparingDouble(Posterior.Belief::chance).reversed())
                .limit(most)
                .toList();
    }
}
