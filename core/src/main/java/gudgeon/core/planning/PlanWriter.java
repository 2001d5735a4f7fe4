package gudgeon.core.planning;

import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Writes an opening and its order down as a {@link StripPlan}: every step with place, pieces, reasons and state after. */
final class PlanWriter {
    /** Heavier than this reached over, a lift asks for the caution about heavy loads (common practice). */
    private static final long HEAVY_MILLIGRAMS = Model.milligrams(15);

    private final Model model;
    private final StripRequest request;
    private final Reach reach;
    private final long[] cost;
    private final List<StripPlan.Operation> operations = new ArrayList<>();
    private final List<Spend> destroyed = new ArrayList<>();
    private final Spills spills;
    private int lifts;
    private long liftSeconds;

    PlanWriter(Model model, StripRequest request, Reach reach, long[] cost) {
        this.model = model;
        this.request = request;
        this.reach = reach;
        this.cost = cost;
        this.spills = Spills.from(model.engine, request.undone(), request.done());
    }

    StripPlan plan(OpeningSearch.Found opening, OrderSearch.Found order) {
        OrderProblem problem = new OrderProblem(reach, request, opening.chosen(), new BitSet(), List.of());
        Reasons reasons = new Reasons(model, request, opening, order.steps());
        State state = State.of(model, reach.initial().done, new BitSet());
        int zone = problem.start;
        int toolSet = 0;
        List<String> chosen = new ArrayList<>();
        for (int s = 0; s < order.steps().size(); s++) {
            OrderSearch.Step step = order.steps().get(s);
            if (step.isLift()) {
                lift(state, step, problem.zones.get(zone), reasons.ofLift(s));
                continue;
            }
            int operation = IntStream.range(0, problem.size())
                    .filter(o -> problem.action[o] == step.action())
                    .findFirst()
                    .orElseThrow();
            int next = problem.zoneIn(state, operation);
            long changeover = problem.travel[zone][next] + problem.pickUp[toolSet][problem.toolSet[operation]];
            StripPlan.Place place = new StripPlan.Place(
                    problem.zones.get(next), Steps.tools(model, request, step.action()), problem.zones.get(zone), changeover);
            zone = next;
            toolSet = problem.toolSet[operation];
            state.perform(step.action());
            perform(state, step.action(), place, reasons.of(step.action(), s));
            chosen.add(model.actionId(step.action()));
        }
        return new StripPlan(
                operations,
                opening(opening, chosen),
                new StripPlan.Order(order.changeover(), order.lowerBound(), order.method(), order.expanded()),
                new StripPlan.Lifts(lifts, liftSeconds),
                Steps.merged(destroyed));
    }

    private StripPlan.Opening opening(OpeningSearch.Found found, List<String> chosen) {
        long joints = 0;
        long ready = 0;
        long total = 0;
        for (int a = found.chosen().nextSetBit(0); a >= 0; a = found.chosen().nextSetBit(a + 1)) {
            long seconds = Steps.seconds(model, request, a);
            total += cost[a];
            if (a < model.joints) {
                joints += seconds;
            } else {
                ready += seconds;
            }
        }
        List<List<String>> landmarks = found.landmarks().stream()
                .map(landmark -> landmark.stream().mapToObj(model::actionId).toList())
                .toList();
        return new StripPlan.Opening(
                chosen, total, found.cost(), total == found.cost(), joints, ready, StripPlanner.value(destroyed), landmarks);
    }

    private void perform(State state, int action, StripPlan.Place place, List<StripPlan.Why> why) {
        List<Spend> spends = Steps.spends(model, request, action);
        destroyed.addAll(spends);
        Set<String> cautions = new LinkedHashSet<>();
        if (!place.zone().equals(place.fromZone())) {
            cautions.addAll(model.engine.zone(place.zone()).cautions());
        }
        List<String> pieces = List.of();
        if (action < model.joints) {
            Joint joint = model.engine.joints().get(action);
            cautions.addAll(StripCautions.undoing(model.engine, joint));
            pieces = joint.between();
        } else {
            cautions.addAll(StripCautions.readying(model.engine, Steps.ready(model, action)));
        }
        operations.add(new StripPlan.Operation(
                operations.size() + 1,
                Steps.kind(model, request, action),
                model.actionId(action),
                pieces,
                null,
                place,
                Steps.seconds(model, request, action),
                spends,
                List.copyOf(cautions),
                why,
                after(state, losses(action))));
    }

    private List<Spills.Loss> losses(int action) {
        String id = model.actionId(action);
        if (action < model.joints) {
            return spills.undo(id);
        }
        return Steps.kind(model, request, action) == StripPlan.Kind.DRAIN ? spills.drain(id) : List.of();
    }

    private void lift(State state, OrderSearch.Step step, String zone, List<StripPlan.Why> why) {
        BitSet set = new BitSet();
        for (int part : step.lifted()) {
            set.set(part);
            state.moved.set(part);
        }
        long milligrams = reach.lifting().mass(set);
        LiftingWay way = lightest(milligrams);
        lifts++;
        liftSeconds += way.seconds();
        List<String> hangsOn = hangsOn(state, set);
        List<String> pieces = set.stream().mapToObj(model::partId).toList();
        boolean aside = state.linked().intersects(set);
        operations.add(new StripPlan.Operation(
                operations.size() + 1,
                StripPlan.Kind.LIFT,
                "lift-" + lifts,
                pieces,
                new StripPlan.Lift(milligrams / 1e6, way.name(), aside, hangsOn),
                new StripPlan.Place(zone, List.of(), zone, 0),
                way.seconds(),
                List.of(),
                StripCautions.lifting(model.engine, pieces, milligrams > HEAVY_MILLIGRAMS),
                why,
                after(state, List.of())));
    }

    private LiftingWay lightest(long milligrams) {
        return request.means().ways().stream()
                .filter(way -> Model.milligrams(way.limitKilograms()) >= milligrams)
                .min((a, b) -> Double.compare(a.limitKilograms(), b.limitKilograms()))
                .orElseThrow();
    }

    private List<String> hangsOn(State state, BitSet set) {
        List<String> ids = new ArrayList<>();
        for (int j = 0; j < model.joints; j++) {
            if (model.flexible[j] && !state.done.get(j)) {
                boolean inside = IntStream.of(model.jointParts[j]).anyMatch(set::get);
                boolean outside = IntStream.of(model.jointParts[j]).anyMatch(p -> !set.get(p));
                if (inside && outside) {
                    ids.add(model.actionId(j));
                }
            }
        }
        return ids;
    }

    private StripPlan.After after(State state, List<Spills.Loss> losses) {
        BitSet linked = state.linked();
        List<String> off = new ArrayList<>();
        List<String> aside = new ArrayList<>();
        for (int p = state.moved.nextSetBit(0); p >= 0; p = state.moved.nextSetBit(p + 1)) {
            (linked.get(p) ? aside : off).add(model.partId(p));
        }
        return new StripPlan.After(off, aside, losses);
    }
}
