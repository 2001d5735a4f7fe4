package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;

/**
 * The alternatives that a plan did not take, with their price: for everything in the plan that could be done without, the
 * cheapest plan without it. Cheapest alternative first.
 *
 * @param ways different from each other
 * @param noWayRound ids of what no plan does without, in the order of the plan
 */
public record OtherWays(List<Way> ways, List<String> noWayRound) {
    public OtherWays {
        ways = List.copyOf(ways);
        noWayRound = List.copyOf(noWayRound);
    }

    /**
     * One alternative.
     *
     * @param without what is left out
     * @param instead ids that are not needed then, the left out one among them
     * @param by ids that are needed then, instead
     * @param price what it costs more
     */
    public record Way(String without, List<String> instead, List<String> by, Price price) {
        public Way {
            instead = List.copyOf(instead);
            by = List.copyOf(by);
        }
    }

    /**
     * What an alternative costs more than the plan.
     *
     * @param workSeconds joints and ready operations, exact; negative where money was worth more than the time
     * @param totalSeconds with changeover and lifts, in the best order found; empty when no order was looked for
     * @param money destroyed pieces, where prices are known; empty when none is
     */
    public record Price(long workSeconds, OptionalLong totalSeconds, OptionalDouble money) {}

    /**
     * The alternatives of a plan.
     *
     * @param ordered for so many of the cheapest an order is looked for, with the states of the request
     */
    public static OtherWays of(Engine engine, StripRequest request, StripPlan plan, int ordered) {
        return new Search(Standing.of(engine, request), plan).ways(ordered);
    }

    private static final class Search {
        private final Standing standing;
        private final StripPlan plan;
        private final Goal goal;
        private final BitSet chosen = new BitSet();

        /** A set that does without something. */
        private record Found(int without, BitSet set, long cost) {}

        Search(Standing standing, StripPlan plan) {
            this.standing = standing;
            this.plan = plan;
            this.goal = Goal.of(standing.model(), standing.request().target());
            plan.opening().chosen().forEach(id -> chosen.set(standing.model().action(id)));
        }

        OtherWays ways(int ordered) {
            BitSet forced = AllButOne.forced(standing.reach(), standing.permitted(), goal);
            List<Found> found = new ArrayList<>();
            Set<BitSet> seen = new HashSet<>();
            for (String id : plan.opening().chosen()) {
                int action = standing.model().action(id);
                if (!forced.get(action)) {
                    without(action).filter(other -> seen.add(other.set())).ifPresent(found::add);
                }
            }
            found.sort(Comparator.comparingLong(Found::cost));
            List<Way> ways = new ArrayList<>();
            for (Found other : found) {
                way(other, ways.size() < ordered).ifPresent(ways::add);
            }
            return new OtherWays(
                    ways,
                    plan.opening().chosen().stream()
                            .filter(id -> forced.get(standing.model().action(id)))
                            .toList());
        }

        private Optional<Found> without(int action) {
            BitSet permitted = (BitSet) standing.permitted().clone();
            permitted.clear(action);
            return openings(permitted)
                    .next()
                    .map(candidate -> new Found(
                            action,
                            candidate.found().chosen(),
                            candidate.found().chosen().stream()
                                    .mapToLong(a -> standing.cost()[a])
                                    .sum()));
        }

        private Openings openings(BitSet permitted) {
            return new Openings(
                    standing.reach(),
                    standing.cost(),
                    permitted,
                    goal,
                    standing.request().underway().isPresent());
        }

        private Optional<Way> way(Found other, boolean ordered) {
            OptionalLong total = OptionalLong.empty();
            if (ordered) {
                BestOrder.Answer answer = BestOrder.of(
                        new OrderProblem(
                                standing.reach(),
                                standing.request(),
                                other.set(),
                                openings(standing.permitted()).tolerated(),
                                OrderProblem.constraints(standing.model(), other.set())),
                        standing.request().means().orderStates());
                if (answer instanceof BestOrder.Answer.None) {
                    return Optional.empty();
                }
                if (answer instanceof BestOrder.Answer.Known known) {
                    Trip trip = new TripSums(standing)
                            .trip(
                                    standing.model().base,
                                    other.set(),
                                    standing.reach().sweep(other.set()),
                                    Optional.of(known.found()));
                    total = OptionalLong.of(trip.strip().foundSeconds().orElseThrow() - plan.totalSeconds());
                }
            }
            return Optional.of(new Way(
                    standing.model().actionId(other.without()),
                    ids(chosen, other.set()),
                    ids(other.set(), chosen),
                    new Price(seconds(other.set()) - seconds(chosen), total, money(other.set()))));
        }

        private List<String> ids(BitSet some, BitSet others) {
            BitSet only = (BitSet) some.clone();
            only.andNot(others);
            return only.stream().mapToObj(standing.model()::actionId).toList();
        }

        private long seconds(BitSet set) {
            return set.stream()
                    .mapToLong(a -> Steps.seconds(standing.model(), standing.request(), a))
                    .sum();
        }

        private OptionalDouble money(BitSet set) {
            List<Spend> spends = set.stream()
                    .boxed()
                    .flatMap(a -> Steps.spends(standing.model(), standing.request(), a).stream())
                    .toList();
            OptionalDouble value = StripPlanner.value(spends);
            OptionalDouble before = plan.opening().money();
            return value.isEmpty() && before.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(value.orElse(0) - before.orElse(0));
        }
    }
}
