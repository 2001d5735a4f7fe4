package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plans how to reach a target: question 1 and question 2 of docs/planning.md. Pure and deterministic: the same engine and
 * request give the same plan.
 */
public final class StripPlanner {
    /** So many states are enough to see whether there is an order at all. */
    private static final int FEW = 500;

    private final Model model;
    private final StripRequest request;
    private final Reach reach;
    private final BitSet permitted;
    private final long[] cost;

    private StripPlanner(Standing standing) {
        model = standing.model();
        request = standing.request();
        reach = standing.reach();
        permitted = standing.permitted();
        cost = standing.cost();
    }

    /**
     * The plan for a request, or why there is none.
     *
     * @throws IllegalArgumentException when the request names something the engine does not have
     */
    public static StripAnswer plan(Engine engine, StripRequest request) {
        return new StripPlanner(Standing.of(engine, request)).plan();
    }

    private StripAnswer plan() {
        Goal goal = Goal.of(model, request.target());
        Openings openings =
                new Openings(reach, cost, permitted, goal, request.underway().isPresent());
        Optional<Openings.Candidate> candidate = openings.next();
        if (candidate.isEmpty() && openings.gaveUp()) {
            return undecided(goal);
        }
        if (candidate.isEmpty()) {
            return new Diagnosis(model, request, permitted, goal).blocked(openings.lastLoose());
        }
        boolean first = true;
        while (candidate.isPresent()) {
            OpeningSearch.Found opening = candidate.get().found();
            BitSet chosen = opening.chosen();
            List<OrderProblem.Constraint> constraints = OrderProblem.constraints(model, chosen);
            switch (order(
                    chosen, openings.tolerated(), constraints, request.means().orderStates())) {
                case BestOrder.Answer.Known order -> {
                    return new PlanWriter(model, request, reach, cost).plan(opening, order.found());
                }
                case BestOrder.Answer.Undecided undecided -> {
                    return undecided(goal);
                }
                case BestOrder.Answer.None none -> {
                    if (!constraints.isEmpty()
                            && order(chosen, openings.tolerated(), List.of(), FEW) instanceof BestOrder.Answer.Known) {
                        return contradiction(chosen, openings.tolerated(), constraints);
                    }
                }
            }
            if (first && !LooseFreePath.mayExist(reach, permitted, goal, openings.tolerated())) {
                return new Blocked(
                        List.of(reason(Blocked.Kind.LOOSE, looseOrTarget(openings.lastLoose(), goal))), List.of());
            }
            first = false;
            openings.refuse(candidate.get());
            candidate = openings.next();
        }
        return openings.gaveUp()
                ? undecided(goal)
                : new Blocked(
                        List.of(reason(Blocked.Kind.LOOSE, looseOrTarget(openings.lastLoose(), goal))), List.of());
    }

    private BestOrder.Answer order(
            BitSet chosen, BitSet tolerated, List<OrderProblem.Constraint> constraints, long states) {
        OrderProblem problem = new OrderProblem(reach, request, chosen, tolerated, constraints);
        return BestOrder.of(problem, states);
    }

    private Blocked undecided(Goal goal) {
        return new Blocked(List.of(reason(Blocked.Kind.UNDECIDED, looseOrTarget(new BitSet(), goal))), List.of());
    }

    private List<String> looseOrTarget(BitSet loose, Goal goal) {
        if (!loose.isEmpty()) {
            return partIds(loose);
        }
        List<String> target = new ArrayList<>(partIds(goal.moved()));
        goal.actions().stream().mapToObj(model::actionId).forEach(target::add);
        target.addAll(request.target().measure());
        return target;
    }

    private static Blocked.Reason reason(Blocked.Kind kind, List<String> about) {
        return new Blocked.Reason(kind, about, 0, List.of());
    }

    /** Leaves out constraints one by one; those that cannot be left out contradict each other. */
    private Blocked contradiction(BitSet chosen, BitSet tolerated, List<OrderProblem.Constraint> constraints) {
        List<OrderProblem.Constraint> guilty = new ArrayList<>(constraints);
        for (OrderProblem.Constraint constraint : constraints) {
            List<OrderProblem.Constraint> fewer = new ArrayList<>(guilty);
            fewer.remove(constraint);
            if (order(chosen, tolerated, fewer, FEW) instanceof BestOrder.Answer.None) {
                guilty = fewer;
            }
        }
        return new Blocked(
                guilty.stream()
                        .map(constraint -> reason(Blocked.Kind.ORDER, about(constraint)))
                        .toList(),
                List.of());
    }

    private static List<String> about(OrderProblem.Constraint constraint) {
        return switch (constraint) {
            case OrderProblem.Constraint.Before before ->
                List.of(before.pair().first(), before.pair().then());
            case OrderProblem.Constraint.Held held -> {
                List<String> about = new ArrayList<>(List.of(held.operation()));
                about.addAll(held.joints());
                yield List.copyOf(about);
            }
        };
    }

    private List<String> partIds(BitSet parts) {
        return parts.stream().mapToObj(model::partId).toList();
    }

    /** The value of what is destroyed where prices are known; empty when none is. */
    static OptionalDouble value(List<Spend> spends) {
        return spends.stream()
                .filter(spend -> spend.priceEach().isPresent())
                .mapToDouble(spend -> spend.count() * spend.priceEach().getAsDouble())
                .reduce(Double::sum);
    }
}
