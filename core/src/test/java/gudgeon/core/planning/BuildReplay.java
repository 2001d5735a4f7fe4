package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Operation;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Walks a way back step by step and says which rule of docs/build.md it breaks where. Written from that page; it shares no
 * code with the planner.
 */
public final class BuildReplay {
    /** The rules. */
    public enum Rule {
        MASS,
        LIFT,
        HANGS,
        PARTS_LEFT_OVER,
        JOINT_LEFT_OPEN,
        MEETS,
        ROOM,
        NEEDS,
        HOLD,
        STAGES,
        FASTENERS,
        THREAD_STATE,
        LOOSE,
        SEALANT,
        OPEN_TIME,
        CURE,
        MARK,
        CHECK,
        GATE,
        FILL,
        TAKEN_BACK_EARLY,
        LEFT_IN,
        ELECTRIC_LAST,
        INPUT,
        ACCOUNT,
        CLOCK,
        DEPENDS,
        UNKNOWN_STEP
    }

    /** One broken rule. */
    public record Fault(Rule rule, String step, String text) {}

    private final BuildEvidence told;
    private final BuildReplaySteps steps;

    private BuildReplay(BuildEvidence told) {
        this.told = told;
        steps = new BuildReplaySteps(told);
    }

    /** Every rule that a plan breaks; empty when it keeps them all. */
    public static List<Fault> faults(Engine engine, BuildRequest request, BuildPlan plan) {
        BuildReplay replay = new BuildReplay(new BuildEvidence(engine, request, plan));
        replay.walk();
        return replay.told.faults;
    }

    private void walk() {
        dependencies();
        long clock = 0;
        String zone = told.engine.workplace().startZone();
        List<String> tools = List.of();
        long changeover = 0;
        long waited = 0;
        long worked = 0;
        for (Operation step : told.plan.operations()) {
            boolean moves = !Set.of(Kind.PLACE, Kind.SEAL, Kind.WAIT).contains(step.kind());
            long cost = moves ? changeover(zone, tools, step) : 0;
            if (step.place().changeoverSeconds() != cost
                    || step.clock().startSeconds() != clock + cost
                    || (moves && !step.place().fromZone().equals(zone))) {
                told.fault(Rule.CLOCK, step, "changeover or start is wrong");
            }
            clock = step.clock().startSeconds() + step.clock().seconds();
            changeover += cost;
            if (step.kind() == Kind.WAIT) {
                waited += step.clock().seconds();
            } else {
                worked += step.clock().seconds();
            }
            if (moves) {
                zone = step.place().zone();
                tools = step.place().tools();
            }
            steps.perform(step);
        }
        changeover += travel(zone, told.engine.workplace().startZone());
        BuildPlan.Totals totals = told.plan.totals();
        if (totals.changeoverSeconds() != changeover
                || totals.waitSeconds() != waited
                || totals.workSeconds() != worked
                || totals.changeoverLowerBoundSeconds() > changeover) {
            told.faults.add(new Fault(Rule.CLOCK, "", "the totals are wrong"));
        }
        steps.leftOver();
        BuildReplayOrder order = new BuildReplayOrder(told);
        order.stages();
        order.sealants();
        order.marks();
        order.checks();
        order.fills();
        order.takenBack();
        order.electricLast();
        BuildReplayAccounts accounts = new BuildReplayAccounts(told);
        accounts.inputs();
        accounts.accounts();
    }

    private long travel(String from, String to) {
        return from.equals(to)
                ? 0
                : told.engine.zone(from).backSeconds() + told.engine.zone(to).goSeconds();
    }

    private long changeover(String zone, List<String> tools, Operation step) {
        long taken = step.place().tools().stream()
                .distinct()
                .filter(tool -> !tools.contains(tool))
                .count();
        return travel(zone, step.place().zone()) + taken * told.engine.workplace().toolChangeSeconds();
    }

    private void dependencies() {
        Set<String> blocked = new LinkedHashSet<>();
        Set<String> seen = new HashSet<>();
        int number = 0;
        for (Operation step : told.plan.operations()) {
            number++;
            if (!seen.add(step.id()) || step.number() != number) {
                told.fault(Rule.UNKNOWN_STEP, step, "its number or id is wrong");
            }
            Set<String> all = new LinkedHashSet<>();
            for (String before : step.order().after()) {
                if (!told.ancestors.containsKey(before)) {
                    told.fault(Rule.DEPENDS, step, "it comes before " + before);
                    continue;
                }
                all.add(before);
                all.addAll(told.ancestors.get(before));
            }
            told.ancestors.put(step.id(), all);
            Set<String> waits = new LinkedHashSet<>(blocked);
            waits.retainAll(all);
            if (!waits.equals(new LinkedHashSet<>(step.holdUp().waitsFor()))) {
                told.fault(Rule.DEPENDS, step, "it does not say what it waits for");
            }
            if (!step.holdUp().blockedBy().isEmpty()) {
                blocked.add(step.id());
            }
        }
    }
}
