package gudgeon.core.finding;

import gudgeon.core.inference.RepairOrder;
import gudgeon.core.inference.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What to do next. The likeliest faults are taken one at a time, with the grade that the readings leave; for each test that has not been
 * done, what its answers tell about them on average, for each minute that it takes, and what it saves of the expected cost of
 * repair. An answer that cannot change the plan saves nothing. Cost: tests x outcomes x faults, and one small order of repairs
 * for each outcome.
 */
public final class NextTests {
    private static final int MOST_FAULTS = 40;
    private static final double LEAST_CHANCE = 0.002;
    private static final int MOST_ACTIONS = 6;
    private static final double LEAST_BITS = 0.002;

    private final Diagnosis diagnosis;
    private final EngineModel model;
    private final OpeningCosts costs;
    private final Set<String> tools;
    private final Set<String> ready = new LinkedHashSet<>();
    private final Set<String> begun = new LinkedHashSet<>();
    private final Set<String> done = new LinkedHashSet<>();
    private final List<Posterior.Belief> faults = new ArrayList<>();
    private final double[] chances; // of the faults, and last of something else
    private final Outcomes outcomes;

    /**
     * A step to take.
     *
     * @param kind what sort of step
     * @param test the test; for opening the level's name stands in {@code depth}
     * @param cylinders the cylinders; none for the engine
     * @param minutes that it takes now
     * @param bits what it tells on average about what is wrong
     * @param saves minutes of repair that knowing its answer saves on average, its own minutes not taken off
     * @param missing tools that it needs and that are not owned
     * @param answers what it may show, likeliest first
     */
    public record Step(
            Kind kind,
            TestKind test,
            List<Integer> cylinders,
            double minutes,
            double bits,
            double saves,
            List<String> missing,
            List<Outcome> answers) {
        public Step {
            cylinders = List.copyOf(cylinders);
            missing = List.copyOf(missing);
            answers = List.copyOf(answers);
        }

        /** Bits for each minute, two more counted for beginning. */
        public double rate() {
            return bits / (minutes + 2);
        }
    }

    /** Sorts of steps. */
    public enum Kind {
        /** A test that has not been done. */
        TEST,
        /** The same again, because the reading is probably bad. */
        REPEAT
    }

    /**
     * What a test may show, and what would lead then.
     *
     * @param words ids of findings, or the range of a figure
     * @param chance of it
     * @param leads what would be likeliest
     * @param then how likely
     */
    public record Outcome(String words, double chance, Posterior.Belief leads, double then) {}

    /**
     * What it costs to stop testing.
     *
     * @param order what to try, in order
     * @param minutes expected until it is mended
     * @param to how deep the first of them goes
     */
    public record Plan(List<Posterior.Belief> order, double minutes, Depth to) {
        public Plan {
            order = List.copyOf(order);
        }
    }

    /**
     * @param costs what opening costs
     * @param tools that are owned; empty when nothing was said
     */
    public NextTests(Diagnosis diagnosis, OpeningCosts costs, Set<String> tools) {
        this.diagnosis = diagnosis;
        this.costs = costs;
        this.tools = tools;
        model = diagnosis.model();
        for (Observation each : diagnosis.observations()) {
            begun.add(each.test());
            done.add(key(each.test(), each.cylinder()));
            if (each instanceof Observation.Seen seen) {
                done.add(key(seen.finding(), each.cylinder()));
            }
            model.knowledge().findTest(each.test()).ifPresent(test -> ready.addAll(test.effort().ready()));
        }
        diagnosis.posterior().beliefs().stream()
                .filter(belief -> belief.chance() >= LEAST_CHANCE)
                .limit(MOST_FAULTS)
                .forEach(faults::add);
        chances = new double[faults.size() + 1];
        double sum = faults.stream().mapToDouble(Posterior.Belief::chance).sum();
        for (int k = 0; k < faults.size(); k++) {
            chances[k] = faults.get(k).chance() / Math.max(1, sum);
        }
        chances[faults.size()] = Math.max(0, 1 - sum);
        outcomes = new Outcomes(diagnosis, faults);
    }

    private static String key(String what, int cylinder) {
        return what + "/" + cylinder;
    }

    /** Every step that tells something, the most for each minute first; tools that are missing come after those that are owned. */
    public List<Step> ranked() {
        List<Step> steps = new ArrayList<>();
        double now = repair(chances).minutes();
        for (TestKind test : model.knowledge().tests().values()) {
            if (model.facts().fits(test.needs())) {
                add(test, now, steps);
            }
        }
        steps.sort(Comparator.comparing((Step step) -> !step.missing().isEmpty())
                .thenComparing(Comparator.comparingDouble(Step::rate).reversed())
                .thenComparing(step -> step.test().id()));
        return steps;
    }

    private void add(TestKind test, double now, List<Step> steps) {
        List<FindingKind> engine = new ArrayList<>();
        List<FindingKind> cylinder = new ArrayList<>();
        for (FindingKind finding : model.knowledge().findings().values()) {
            if (finding.test().equals(test.id())) {
                (finding.at() == Place.ENGINE ? engine : cylinder).add(finding);
            }
        }
        engine.removeIf(finding -> done.contains(key(finding.id(), 0)));
        if (!engine.isEmpty()) {
            consider(test, List.of(), outcomes.engine(test, engine), now, 0).ifPresent(steps::add);
        }
        if (test.reads().isEmpty() && cylinder.isEmpty()) {
            return;
        }
        List<Step> each = new ArrayList<>();
        for (int i = 1; i <= model.facts().cylinders(); i++) {
            int at = i;
            List<FindingKind> open = cylinder.stream()
                    .filter(finding -> !done.contains(key(finding.id(), at)))
                    .toList();
            boolean figure = test.reads().isPresent() && !done.contains(key(test.id(), i));
            if (figure || (!open.isEmpty() && test.reads().isEmpty())) {
                consider(test, List.of(i), outcomes.cylinder(test, open, i, figure), now, 1).ifPresent(each::add);
            }
        }
        each.sort(Comparator.comparingDouble(Step::bits).reversed().thenComparing(step -> step.cylinders().getFirst()));
        each.stream().limit(2).forEach(steps::add);
        if (each.size() > 2) {
            steps.add(together(test, each));
        }
    }

    /** All cylinders in one go; what they tell together is at most the sum. */
    private Step together(TestKind test, List<Step> each) {
        double bits = Math.min(
                Weight.entropy(chances), each.stream().mapToDouble(Step::bits).sum());
        double saves = each.stream().mapToDouble(Step::saves).max().orElse(0);
        List<Integer> cylinders = each.stream().map(step -> step.cylinders().getFirst()).sorted().toList();
        return new Step(
                Kind.TEST, test, cylinders, minutes(test, cylinders.size()), bits, saves, missing(test), List.of());
    }

    private Optional<Step> consider(
            TestKind test, List<Integer> cylinders, Outcomes.Table table, double now, int count) {
        double bits = Weight.information(chances, table.chances());
        if (bits < LEAST_BITS) {
            return Optional.empty();
        }
        double after = 0;
        List<Outcome> answers = new ArrayList<>();
        for (int o = 0; o < table.words().size(); o++) {
            double chance = 0;
            double[] then = new double[chances.length];
            for (int k = 0; k < then.length; k++) {
                then[k] = chances[k] * table.chances()[k][o];
                chance += then[k];
            }
            if (chance < 1e-9) {
                continue;
            }
            int lead = 0;
            for (int k = 0; k < then.length; k++) {
                then[k] /= chance;
                lead = k < faults.size() && then[k] > then[lead] ? k : lead;
            }
            after += chance * repair(then).minutes();
            answers.add(new Outcome(table.words().get(o), chance, faults.get(lead), then[lead]));
        }
        answers.sort(Comparator.comparingDouble(Outcome::chance).reversed());
        return Optional.of(new Step(
                Kind.TEST,
                test,
                cylinders,
                minutes(test, count),
                bits,
                Math.max(0, now - after),
                missing(test),
                answers.stream().limit(4).toList()));
    }

    private double minutes(TestKind test, int cylinders) {
        boolean diesel = model.facts().diesel() && test.effort().diesel().isPresent();
        double once = diesel ? test.effort().diesel().orElseThrow().minutes() : test.effort().minutes();
        double each = diesel ? test.effort().diesel().orElseThrow().each() : test.effort().each();
        if (begun.contains(test.id())) {
            once = 1;
        } else {
            for (String state : test.effort().ready()) {
                once -= ready.contains(state) ? model.knowledge().ready().getOrDefault(state, 0.0) : 0;
            }
        }
        return Math.max(1, once) + each * cylinders;
    }

    private List<String> missing(TestKind test) {
        return tools.isEmpty()
                ? List.of()
                : test.effort().tools().stream().filter(tool -> !tools.contains(tool)).toList();
    }

    /** What opening costs. */
    public OpeningCosts costs() {
        return costs;
    }

    /** The cheapest order of trying the likeliest faults as things stand. */
    public Plan plan() {
        return repair(chances);
    }

    private Plan repair(double[] now) {
        List<Integer> likely = new ArrayList<>();
        for (int k = 0; k < faults.size(); k++) {
            likely.add(k);
        }
        likely.sort(Comparator.comparingDouble((Integer k) -> now[k]).reversed());
        List<Integer> taken = likely.subList(0, Math.min(MOST_ACTIONS, likely.size()));
        double sum = taken.stream().mapToDouble(k -> now[k]).sum();
        List<RepairOrder.Action> actions = new ArrayList<>();
        double[] weights = new double[taken.size()];
        Map<String, Posterior.Belief> named = new LinkedHashMap<>();
        for (int a = 0; a < weights.length; a++) {
            Posterior.Belief belief = faults.get(taken.get(a));
            Fault.Repair repair = belief.fault().repair();
            weights[a] = sum > 0 ? now[taken.get(a)] / sum : 0;
            String name = belief.fault().id() + "@" + belief.where().label();
            named.put(name, belief);
            actions.add(new RepairOrder.Action(
                    name,
                    List.of(a),
                    costs.look(),
                    Math.max(costs.least(), repair.hours() * 60 - costs.upTo(repair.mended())),
                    repair.mended().ordinal() - 1));
        }
        RepairOrder.Costed best = new RepairOrder(weights, costs.levels(), actions).best();
        List<Posterior.Belief> order = new ArrayList<>();
        best.names().forEach(name -> order.add(Objects.requireNonNull(named.get(name))));
        Depth first = order.isEmpty() ? Depth.NONE : order.getFirst().fault().repair().mended();
        return new Plan(order, best.cost(), first);
    }

    /** Readings that are probably bad, as steps to do again, the worst first. */
    public List<Step> repeats(List<Diagnosis.Weighed> weighed, double least) {
        List<Step> steps = new ArrayList<>();
        weighed.stream()
                .filter(each -> each.bad() >= least)
                .sorted(Comparator.comparingDouble(Diagnosis.Weighed::bad).reversed())
                .forEach(each -> model.knowledge().findTest(each.sitting().test()).ifPresent(test -> steps.add(new Step(
                        Kind.REPEAT,
                        test,
                        each.sitting().cylinder() == 0 ? List.of() : List.of(each.sitting().cylinder()),
                        minutes(test, each.sitting().cylinder() == 0 ? 0 : 1),
                        Weight.entropy(each.bad(), 1 - Math.min(1, each.bad())),
                        0,
                        List.of(),
                        List.of()))));
        return steps;
    }
}
