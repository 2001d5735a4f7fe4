package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan.Clock;
import gudgeon.core.planning.BuildPlan.HoldUp;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Needs;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildPlan.Order;
import gudgeon.core.planning.BuildPlan.Subject;
import gudgeon.core.planning.BuildPlan.Tightening;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Plants faults in a way back: numbers, changeovers and clock are put right again, so that only the fault itself is wrong. */
final class BuildEdit {
    private final Engine engine;
    private final BuildPlan plan;
    final List<Operation> steps;

    BuildEdit(Engine engine, BuildPlan plan) {
        this.engine = engine;
        this.plan = plan;
        steps = new ArrayList<>(plan.operations());
    }

    /** Moves the step at one place to just before the step at an earlier place, or just after one at a later place. */
    BuildEdit move(int from, int to) {
        steps.add(to, steps.remove(from));
        return this;
    }

    BuildEdit remove(int at) {
        steps.remove(at);
        return this;
    }

    BuildEdit waitBefore(int at, long seconds) {
        steps.add(
                at,
                new Operation(
                        0,
                        Kind.WAIT,
                        "wait-planted",
                        new Subject(steps.get(at).id(), List.of()),
                        steps.get(at).place(),
                        new Clock(0, seconds),
                        null,
                        null,
                        new Needs(List.of(), List.of(), ""),
                        new Order(List.of(), List.of(), false),
                        HoldUp.NONE));
        return this;
    }

    BuildEdit fasteners(int at, List<String> fasteners) {
        Operation step = steps.get(at);
        Tightening old = java.util.Objects.requireNonNull(step.tightening());
        Tightening changed = new Tightening(old.stage(), fasteners, old.torque(), old.angle(), old.threadState());
        steps.set(at, with(step, step.number(), step.place(), step.clock(), changed, step.needs(), step.holdUp()));
        return this;
    }

    BuildEdit needs(int at, Needs needs) {
        Operation step = steps.get(at);
        steps.set(at, with(step, step.number(), step.place(), step.clock(), step.tightening(), needs, step.holdUp()));
        return this;
    }

    BuildEdit holdUp(int at, HoldUp holdUp) {
        Operation step = steps.get(at);
        steps.set(at, with(step, step.number(), step.place(), step.clock(), step.tightening(), step.needs(), holdUp));
        return this;
    }

    private static Operation with(
            Operation step,
            int number,
            StripPlan.Place place,
            Clock clock,
            @org.jspecify.annotations.Nullable Tightening tightening,
            Needs needs,
            HoldUp holdUp) {
        return new Operation(
                number,
                step.kind(),
                step.id(),
                step.subject(),
                place,
                clock,
                tightening,
                step.handling(),
                needs,
                step.order(),
                holdUp);
    }

    /** The plan with the planted fault. */
    BuildPlan plan() {
        List<Operation> right = new ArrayList<>();
        String start = engine.workplace().startZone();
        String zone = start;
        List<String> tools = List.of();
        long clock = 0;
        long work = 0;
        long waiting = 0;
        long changeover = 0;
        for (Operation step : steps) {
            StripPlan.Place place = step.place();
            if (!Set.of(Kind.PLACE, Kind.SEAL, Kind.WAIT).contains(step.kind())) {
                List<String> inHand = tools;
                long taken = place.tools().stream()
                        .filter(tool -> !inHand.contains(tool))
                        .count();
                long cost =
                        travel(zone, place.zone()) + taken * engine.workplace().toolChangeSeconds();
                place = new StripPlan.Place(place.zone(), place.tools(), zone, cost);
                zone = place.zone();
                tools = place.tools();
                clock += cost;
                changeover += cost;
            }
            long seconds = step.clock().seconds();
            right.add(with(
                    step,
                    right.size() + 1,
                    place,
                    new Clock(clock, seconds),
                    step.tightening(),
                    step.needs(),
                    step.holdUp()));
            clock += seconds;
            work += step.kind() == Kind.WAIT ? 0 : seconds;
            waiting += step.kind() == Kind.WAIT ? seconds : 0;
        }
        changeover += travel(zone, start);
        BuildPlan.Totals totals =
                new BuildPlan.Totals(work, waiting, changeover, plan.totals().changeoverLowerBoundSeconds());
        return new BuildPlan(right, totals, plan.accounts(), plan.corrections(), plan.cures());
    }

    private long travel(String from, String to) {
        return from.equals(to)
                ? 0
                : engine.zone(from).backSeconds() + engine.zone(to).goSeconds();
    }
}
