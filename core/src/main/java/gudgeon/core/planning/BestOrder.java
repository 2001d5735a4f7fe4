package gudgeon.core.planning;

import java.util.BitSet;
import java.util.Optional;

/**
 * Question 2, put together from searches: a dive for a first order; a search blind to loose pieces, whose optimum no order
 * can undercut; where the two differ, a search that heeds them; and for few operations one without closing, which decides.
 */
final class BestOrder {
    /** Up to so many operations a search without closing settles what loose pieces leave open. */
    private static final int MOST_WITHOUT_CLOSING = 24;

    private BestOrder() {}

    /** What is known about the orders of a set. */
    sealed interface Answer {
        /** The best order found, with what was proven about it. */
        record Known(OrderSearch.Found found) implements Answer {}

        /** It is proven that there is none. */
        record None() implements Answer {}

        /** None was found within the allowed number of states, and none was proven not to exist. */
        record Undecided() implements Answer {}
    }

    static Answer of(OrderProblem problem, long budget) {
        Precedences precedences = new Precedences(problem);
        OrderModes modes = new OrderModes(problem, precedences);
        if (modes.impossible()) {
            return new Answer.None();
        }
        SequencingSearch.Found sequence =
                new SequencingSearch(modes.sequencing, new SequencingBound(modes.sequencing), budget).run();
        if (sequence.contexts().length == 0 && sequence.lowerBound() == Integer.MAX_VALUE) {
            return new Answer.None();
        }
        Optional<OrderSearch.Found> followed =
                sequence.contexts().length == 0 ? Optional.empty() : modes.follow(sequence);
        return followed.isPresent()
                ? new Answer.Known(followed.get())
                : slowly(problem, precedences, budget);
    }

    private static Answer slowly(OrderProblem problem, Precedences precedences, long budget) {
        OrderBound bound = new OrderBound(problem, precedences);
        OrderSearch heeding = new OrderSearch(problem, bound, precedences, budget, true, true);
        Optional<OrderSearch.Found> first = heeding.first();
        long ceiling = cost(first);
        OrderSearch blind = new OrderSearch(problem, bound, precedences, budget, true, false);
        Optional<OrderSearch.Found> relaxed = blind.run(ceiling);
        if (relaxed.isPresent() && legal(problem, relaxed.get())) {
            return new Answer.Known(relaxed.get());
        }
        if (first.isPresent() && (blind.floor() >= ceiling || blind.exhausted())) {
            return known(first.get(), blind.floor(), blind.expanded());
        }
        if (first.isEmpty() && relaxed.isEmpty() && !blind.exhausted()) {
            return new Answer.None();
        }
        Optional<OrderSearch.Found> found = heeding.run(ceiling).or(() -> first);
        boolean decided = !heeding.looseCut() && !heeding.exhausted();
        long floor = heeding.looseCut() ? blind.floor() : Math.max(blind.floor(), heeding.floor());
        if (problem.size() <= MOST_WITHOUT_CLOSING && cost(found) > floor) {
            OrderSearch exact = new OrderSearch(problem, bound, precedences, budget, false, true);
            Optional<OrderSearch.Found> soFar = found;
            found = exact.run(cost(found)).or(() -> soFar);
            floor = Math.max(floor, exact.floor());
            decided |= !exact.exhausted();
        }
        if (found.isPresent()) {
            return known(found.get(), floor, blind.expanded() + heeding.expanded());
        }
        return decided ? new Answer.None() : new Answer.Undecided();
    }

    private static long cost(Optional<OrderSearch.Found> found) {
        return found.map(OrderSearch.Found::changeover).orElse(Long.MAX_VALUE);
    }

    private static Answer known(OrderSearch.Found found, long floor, long expanded) {
        long bound = Math.min(floor, found.changeover());
        return new Answer.Known(
                new OrderSearch.Found(found.steps(), found.changeover(), bound, found.method(), expanded));
    }

    /** Whether an order found without looking at loose pieces leaves none. */
    private static boolean legal(OrderProblem problem, OrderSearch.Found found) {
        State state = State.of(problem.model, problem.reach.initial().done, new BitSet());
        for (OrderSearch.Step step : found.steps()) {
            if (step.isLift()) {
                for (int part : step.lifted()) {
                    state.moved.set(part);
                }
            } else {
                if (!state.loose(problem.tolerated).isEmpty()) {
                    return false;
                }
                state.perform(step.action());
            }
        }
        return state.loose(problem.tolerated).isEmpty();
    }
}
