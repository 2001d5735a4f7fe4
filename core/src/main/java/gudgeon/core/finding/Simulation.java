package gudgeon.core.finding;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.random.RandomGenerator;

/**
 * Engines drawn from a model, and readings drawn from them: to see whether what is believed comes true as often as it says. Chance
 * comes in as an argument, so that the same seed gives the same engines.
 */
public final class Simulation {
    private final EngineModel model;
    private final RandomGenerator random;
    private final Evidence plain;

    /**
     * An engine and what was read on it.
     *
     * @param truth what is wrong, as fault and place, {@code EXV_BURNT@3}
     * @param seen what was read
     */
    public record Drawn(Set<String> truth, List<Observation> seen) {
        public Drawn {
            truth = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(truth));
            seen = List.copyOf(seen);
        }
    }

    /** A cylinder as drawn. */
    private record Cylinder(List<Fault> faults, Expected expected) {}

    /** Draws from a model. */
    public Simulation(EngineModel model, RandomGenerator random) {
        this.model = model;
        this.random = random;
        plain = new Evidence(model, List.of());
    }

    /**
     * One engine.
     *
     * @param findings ids of findings that are asked about: of the engine once, of cylinders for each
     * @param compression whether every cylinder's compression is taken
     * @param leaks how many cylinders, from the first, get a leak-down test
     */
    public Drawn draw(List<String> findings, boolean compression, int leaks) {
        List<Member> members = members();
        List<Cylinder> cylinders = new ArrayList<>();
        Set<String> truth = new LinkedHashSet<>();
        members.forEach(member -> truth.add(member.fault().id() + "@" + member.where().label()));
        for (int i = 0; i < model.facts().cylinders(); i++) {
            Cylinder cylinder = cylinder(i, members);
            cylinders.add(cylinder);
            int number = i + 1;
            cylinder.faults().forEach(fault -> truth.add(fault.id() + "@" + number));
        }
        List<Observation> seen = new ArrayList<>();
        for (String id : findings) {
            FindingKind finding = model.knowledge().findFinding(id).orElseThrow();
            if (finding.at() == Place.ENGINE) {
                seen.add(new Observation.Seen(finding.test(), id, 0, ofEngine(finding, members, cylinders), 1));
            } else {
                for (int i = 0; i < cylinders.size(); i++) {
                    seen.add(new Observation.Seen(
                            finding.test(), id, i + 1, ofCylinder(finding, i, members, cylinders.get(i)), 1));
                }
            }
        }
        double healthy = model.grid().ln()[pick(model.grid().chance())];
        for (int i = 0; i < cylinders.size() && compression; i++) {
            double[] mean = cylinders.get(i).expected().compression();
            double ln = healthy + figure("T_COMP", mean, Gauges.COMPRESSION);
            seen.add(measured("T_COMP", TestKind.Figure.COMPRESSION, i + 1, Math.exp(ln)));
        }
        for (int i = 0; i < Math.min(leaks, cylinders.size()); i++) {
            double orifices = Math.exp(figure("T_LEAK", cylinders.get(i).expected().leak(), Gauges.LEAK));
            seen.add(measured("T_LEAK", TestKind.Figure.LEAK, i + 1, Instruments.loss(
                    orifices, Instruments.USUAL_SUPPLY, Instruments.SMALL, model.facts().cranking().ambient())));
        }
        return new Drawn(truth, seen);
    }

    private static Observation measured(String test, TestKind.Figure figure, int cylinder, double value) {
        return new Observation.Measured(
                test, figure, cylinder, value, 0, OptionalDouble.of(Instruments.SMALL), Instruments.USUAL_SUPPLY, 1);
    }

    private double figure(String test, double[] mean, double[] range) {
        return random.nextDouble() < bad(test)
                ? range[0] + (range[1] - range[0]) * random.nextDouble()
                : mean[0] + mean[1] * random.nextGaussian();
    }

    private double bad(String test) {
        return model.knowledge().findTest(test).orElseThrow().badly().chance();
    }

    private boolean ofEngine(FindingKind finding, List<Member> members, List<Cylinder> cylinders) {
        List<Fault> raisers = new ArrayList<>(members.stream().map(Member::fault).toList());
        cylinders.forEach(cylinder -> raisers.addAll(cylinder.faults()));
        double away = 1 - plain.foldedAlarm(finding);
        for (double pass : plain.foldedPasses(finding, raisers)) {
            away *= pass;
        }
        return random.nextDouble() >= away;
    }

    private boolean ofCylinder(FindingKind finding, int cylinder, List<Member> members, Cylinder drawn) {
        if (random.nextDouble() < bad(finding.test())) {
            return random.nextBoolean();
        }
        double away = 1 - finding.falseAlarm();
        for (Fault fault : drawn.faults()) {
            away *= 1 - model.strength(finding, fault);
        }
        for (Member member : members) {
            away *= member.touches(cylinder) ? 1 - model.strength(finding, member.fault()) : 1;
        }
        return random.nextDouble() >= away;
    }

    private List<Member> members() {
        List<Member> all = model.members();
        List<List<Member>> sets = new ArrayList<>();
        List<Double> odds = new ArrayList<>();
        sets.add(List.of());
        odds.add(1.0);
        for (int a = 0; a < all.size(); a++) {
            sets.add(List.of(all.get(a)));
            odds.add(all.get(a).odds());
            for (int b = a + 1; b < all.size(); b++) {
                if (all.get(a).identity() != all.get(b).identity()) {
                    sets.add(List.of(all.get(a), all.get(b)));
                    odds.add(all.get(a).odds() * all.get(b).odds());
                }
            }
        }
        return sets.get(pick(odds.stream().mapToDouble(Double::doubleValue).toArray()));
    }

    private Cylinder cylinder(int cylinder, List<Member> members) {
        List<Fault> faults = model.faults();
        double[] odds = faults.stream().mapToDouble(fault -> odds(fault, cylinder, members)).toArray();
        List<int[]> sets = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        sets.add(new int[0]);
        weights.add(1.0);
        for (int f = 0; f < odds.length; f++) {
            sets.add(new int[] {f});
            weights.add(odds[f]);
            for (int g = f + 1; g < odds.length && members.isEmpty(); g++) {
                sets.add(new int[] {f, g});
                weights.add(odds[f] * odds[g]);
            }
        }
        Condition condition = Condition.HEALTHY;
        List<Fault> drawn = new ArrayList<>();
        for (int f : sets.get(pick(weights.stream().mapToDouble(Double::doubleValue).toArray()))) {
            drawn.add(faults.get(f));
            List<EngineModel.Body> bodies = model.bodies().get(f);
            if (!bodies.isEmpty()) {
                condition = condition.with(bodies.get(pick(
                                bodies.stream().mapToDouble(EngineModel.Body::share).toArray()))
                        .condition());
            }
        }
        for (Member member : members) {
            List<Member.Option> options = member.options().get(cylinder);
            if (!options.isEmpty()) {
                condition = condition.with(options.get(pick(
                                options.stream().mapToDouble(Member.Option::chance).toArray()))
                        .condition());
            }
        }
        return new Cylinder(drawn, new Expected(condition, model.gauges()));
    }

    private static double odds(Fault fault, int cylinder, List<Member> members) {
        double p = fault.chance().alone();
        for (Member member : members) {
            if (member.touches(cylinder)) {
                p = Math.max(p, fault.chance().with().getOrDefault(member.fault().id(), 0.0));
            }
        }
        return p / (1 - p);
    }

    private int pick(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        double at = random.nextDouble() * sum;
        for (int i = 0; i < weights.length; i++) {
            at -= weights[i];
            if (at < 0) {
                return i;
            }
        }
        return weights.length - 1;
    }
}
