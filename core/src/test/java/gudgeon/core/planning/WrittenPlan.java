package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Writes a sequence of steps out as a plan, right or wrong, so that {@link StripReplay} has something to judge. Stated
 * places, times and sums are what {@link BruteModel} makes of the sequence.
 */
final class WrittenPlan {
    private final BruteModel model;
    private final Engine engine;
    private final StripRequest request;
    private final List<StripPlan.Operation> operations = new ArrayList<>();
    private final List<Spend> destroyed = new ArrayList<>();
    private final List<String> chosen = new ArrayList<>();
    private long done;
    private long moved;
    private String zone;
    private List<String> hand = List.of();
    private long jointsSeconds;
    private long readySeconds;
    private long costSeconds;
    private long changeover;
    private long liftSeconds;
    private double money;

    private WrittenPlan(BruteModel model) {
        this.model = model;
        this.engine = model.engine;
        this.request = model.request;
        this.done = model.start();
        this.zone = engine.workplace().startZone();
    }

    static StripPlan write(BruteModel model, List<BruteForce.Step> steps) {
        WrittenPlan writer = new WrittenPlan(model);
        for (BruteForce.Step step : steps) {
            if (step.op() < 0) {
                writer.lift(step.lifted());
            } else {
                writer.operation(step.op());
            }
        }
        return writer.plan();
    }

    /** Steps by name: ids of operations, or parts to lift together written as {@code +a+b}. */
    static StripPlan write(BruteModel model, String... words) {
        List<BruteForce.Step> steps = new ArrayList<>();
        for (String word : words) {
            if (word.startsWith("+")) {
                List<String> parts = List.of(word.substring(1).split("\\+", -1));
                steps.add(new BruteForce.Step(-1, model.partsOf(parts)));
            } else {
                int op = Long.numberOfTrailingZeros(model.opsOf(List.of(word)));
                steps.add(new BruteForce.Step(op, 0));
            }
        }
        return write(model, steps);
    }

    private void operation(int op) {
        String id = model.id(op);
        Optional<Joint> joint = engine.findJoint(id);
        List<Spend> spends = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        long seconds;
        StripPlan.Kind kind;
        List<String> pieces = List.of();
        if (joint.isPresent()) {
            seconds = undo(joint.get(), spends, cautions);
            kind = request.willNotCome().contains(id) ? StripPlan.Kind.CUT : StripPlan.Kind.UNDO;
            pieces = joint.get().between();
        } else {
            Ready ready = engine.ready(id);
            seconds = ready.seconds();
            readySeconds += seconds;
            spends.addAll(ready.effect().spends());
            cautions.addAll(ready.effect().cautions());
            kind = StripPlan.Kind.valueOf(ready.kind().name());
        }
        costSeconds += model.cost(op);
        money += spends.stream()
                .mapToDouble(spend -> spend.count() * spend.priceEach().orElse(0))
                .sum();
        destroyed.addAll(spends);
        chosen.add(id);
        String to = model.zone(op, moved);
        if (!to.equals(zone)) {
            cautions.addAll(engine.zone(to).cautions());
        }
        long change = model.travel(zone, to) + model.toolChanges(hand, model.tools(op));
        changeover += change;
        StripPlan.Place place = new StripPlan.Place(to, model.tools(op), zone, change);
        zone = to;
        hand = model.tools(op);
        done |= 1L << op;
        operations.add(new StripPlan.Operation(
                operations.size() + 1, kind, id, pieces, null, place, seconds, spends, cautions, List.of(), after()));
    }

    private long undo(Joint joint, List<Spend> spends, List<String> cautions) {
        cautions.addAll(joint.work().cautions());
        joint.freedom()
                .opens()
                .forEach(circuit -> cautions.addAll(engine.circuit(circuit).hazards()));
        spends.addAll(joint.makeup().spends());
        long seconds = joint.work().undo().expectedSeconds();
        Optional<Joint.Cut> cut = joint.work().cut();
        if (request.willNotCome().contains(joint.id()) && cut.isPresent()) {
            spends.addAll(cut.get().destroys());
            seconds = cut.get().seconds();
        }
        jointsSeconds += seconds;
        return seconds;
    }

    private void lift(long set) {
        double mass = model.mass(set);
        LiftingWay way = request.means().ways().stream()
                .filter(w -> w.limitKilograms() >= mass)
                .findFirst()
                .orElse(request.means().ways().getLast());
        boolean aside = (set & ~model.off(done)) != 0;
        List<String> hangsOn = new ArrayList<>();
        for (Joint joint : engine.joints()) {
            long between = model.partsOf(joint.between());
            boolean intact = (done & model.opsOf(List.of(joint.id()))) == 0;
            if (joint.flexible() && intact && (between & set) != 0 && (between & ~(set | moved)) != 0) {
                hangsOn.add(joint.id());
            }
        }
        moved |= set;
        liftSeconds += way.seconds();
        long number = operations.stream()
                        .filter(operation -> operation.kind() == StripPlan.Kind.LIFT)
                        .count()
                + 1;
        operations.add(new StripPlan.Operation(
                operations.size() + 1,
                StripPlan.Kind.LIFT,
                "lift-" + number,
                model.partIds(set),
                new StripPlan.Lift(mass, way.name(), aside, hangsOn),
                new StripPlan.Place(zone, List.of(), zone, 0),
                way.seconds(),
                List.of(),
                List.of(),
                List.of(),
                after()));
    }

    private StripPlan.After after() {
        long off = model.off(done);
        return new StripPlan.After(model.partIds(moved & off), model.partIds(moved & ~off));
    }

    private List<Spend> merged() {
        Set<String> specs = new LinkedHashSet<>();
        destroyed.forEach(spend -> specs.add(spend.spec()));
        List<Spend> merged = new ArrayList<>();
        for (String spec : specs) {
            int count = destroyed.stream()
                    .filter(spend -> spend.spec().equals(spec))
                    .mapToInt(Spend::count)
                    .sum();
            Spend first = destroyed.stream()
                    .filter(spend -> spend.spec().equals(spec))
                    .findFirst()
                    .orElseThrow();
            merged.add(new Spend(spec, count, first.priceEach()));
        }
        return merged;
    }

    private StripPlan plan() {
        changeover += model.travel(zone, engine.workplace().startZone());
        int lifts = operations.size() - chosen.size();
        StripPlan.Opening opening = new StripPlan.Opening(
                chosen,
                costSeconds,
                costSeconds,
                true,
                jointsSeconds,
                readySeconds,
                OptionalDouble.of(money),
                List.of());
        StripPlan.Order order = new StripPlan.Order(changeover, changeover, "written", 0);
        return new StripPlan(operations, opening, order, new StripPlan.Lifts(lifts, liftSeconds), merged());
    }
}
