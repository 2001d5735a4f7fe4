package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Works out {@link EveryPart}: question 1 for all parts at once ({@link EverySet}), and an order of the small sets. Pure and
 * deterministic.
 */
public final class EveryPartPlanner {
    private final Standing standing;
    private final EverySet sets;
    private final TripSums sums;
    private final int ordered;
    private final Map<BitSet, BestOrder.Answer> orders = new HashMap<>();
    private final Hindrances hindrances;

    private EveryPartPlanner(Standing standing, int ordered) {
        this.standing = standing;
        this.sets = new EverySet(standing);
        this.sums = new TripSums(standing);
        this.ordered = ordered;
        this.hindrances = new Hindrances(standing, sets.full());
    }

    /**
     * Every part from the state of a request; its target does not matter.
     *
     * @param ordered up to so many operations an order is looked for, with the states of the request; larger sets have bounds
     *     only
     * @throws IllegalArgumentException when the request names something the engine does not have
     */
    public static EveryPart plan(Engine engine, StripRequest request, int ordered) {
        return new EveryPartPlanner(Standing.of(engine, request), ordered).plan();
    }

    private EveryPart plan() {
        List<EveryPart.Reach> reaches = new ArrayList<>();
        Model model = standing.model();
        for (int part = 0; part < model.parts; part++) {
            if (part != model.base) {
                reaches.add(reach(part));
            }
        }
        return new EveryPart(reaches);
    }

    private EveryPart.Reach reach(int part) {
        String id = standing.model().partId(part);
        Optional<BitSet> set = sets.cheapest(part);
        if (set.isEmpty() && sets.isReachable(part)) {
            return planned(part);
        }
        if (set.isEmpty()) {
            return new EveryPart.Reach.Never(id, hindrances.of(part));
        }
        if (set.get().isEmpty()) {
            return new EveryPart.Reach.Off(id);
        }
        BitSet chosen = set.get();
        if (chosen.cardinality() > ordered) {
            return by(part, chosen, Optional.empty());
        }
        return switch (orders.computeIfAbsent(chosen, this::order)) {
            case BestOrder.Answer.Known known -> by(part, chosen, Optional.of(known.found()));
            case BestOrder.Answer.Undecided undecided -> by(part, chosen, Optional.empty());
            case BestOrder.Answer.None none -> planned(part);
        };
    }

    private EveryPart.Reach.By by(int part, BitSet chosen, Optional<OrderSearch.Found> order) {
        return new EveryPart.Reach.By(standing.model().partId(part), sums.trip(part, chosen, sets.end(chosen), order));
    }

    private BestOrder.Answer order(BitSet chosen) {
        OrderProblem problem = new OrderProblem(
                standing.reach(),
                standing.request(),
                chosen,
                sets.tolerated(),
                OrderProblem.constraints(standing.model(), chosen));
        return BestOrder.of(problem, standing.request().means().orderStates());
    }

    /** Where pieces or the order stand in the way of the cheapest set: by itself, as a plan of its own. */
    private EveryPart.Reach planned(int part) {
        StripRequest from = standing.request();
        String id = standing.model().partId(part);
        StripRequest alone = new StripRequest(
                StripRequest.Target.off(id),
                from.undone(),
                from.done(),
                from.willNotCome(),
                from.means(),
                from.underway());
        return switch (StripPlanner.plan(standing.model().engine, alone)) {
            case Blocked blocked -> new EveryPart.Reach.Never(id, blocked.reasons());
            case StripPlan plan -> {
                BitSet chosen = new BitSet();
                plan.opening()
                        .chosen()
                        .forEach(action -> chosen.set(standing.model().action(action)));
                yield by(
                        part,
                        chosen,
                        order(chosen) instanceof BestOrder.Answer.Known known
                                ? Optional.of(known.found())
                                : Optional.empty());
            }
        };
    }
}
