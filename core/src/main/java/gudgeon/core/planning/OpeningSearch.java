package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * Question 1 without the constraint on loose pieces: the cheapest set of actions from which a goal is reached. Implicit
 * hitting sets over landmarks: clauses "at least one of these must be done", the cheapest set that hits them all, sweep,
 * and where the goal is not reached a new landmark from a maximal set that still fails. Departure from the papers: what
 * every plan needs is taken out first, found by leaving out each member of one minimal plan. Sources: [HST2012], [BH2010].
 */
final class OpeningSearch {
    private final Reach reach;
    private final long[] cost;

    OpeningSearch(Reach reach, long[] cost) {
        this.reach = reach;
        this.cost = cost;
    }

    /**
     * @param chosen the cheapest set
     * @param cost its cost, which is also its proven lower bound
     * @param landmarks the clauses that prove it: single ones first
     */
    record Found(BitSet chosen, long cost, List<BitSet> landmarks) {}

    /** The cheapest set of permitted actions, or empty when the goal cannot be reached. */
    Optional<Found> cheapest(BitSet permitted, Goal goal) {
        State full = reach.sweep(permitted);
        if (!goal.reached(full)) {
            return Optional.empty();
        }
        BitSet useful = (BitSet) full.done.clone();
        useful.and(permitted);
        BitSet plan = thin(useful, goal);
        BitSet forced = forced(useful, plan, goal);
        return Optional.of(complete(useful, forced, plan, List.of(), goal));
    }

    /**
     * The cheapest set, when something of it is known.
     *
     * @param useful everything that can be done at all
     * @param forced what no plan does without
     * @param plan a set that reaches the goal
     * @param known further landmarks of this goal, without anything forced
     */
    Found complete(BitSet useful, BitSet forced, BitSet plan, List<BitSet> known, Goal goal) {
        List<BitSet> landmarks = new ArrayList<>();
        forced.stream().forEach(a -> landmarks.add(single(a)));
        List<BitSet> clauses = new ArrayList<>(known);
        BitSet best = plan;
        while (true) {
            BitSet chosen = HittingSet.cheapest(clauses, cost);
            chosen.or(forced);
            if (total(chosen) >= total(best)) {
                landmarks.addAll(clauses);
                return new Found(best, total(best), landmarks);
            }
            // several landmarks a round: the cheapest member of each new one is taken until the goal is reached, or until
            // that way is dearer than the best plan known
            State state = reach.sweep(chosen);
            if (goal.reached(state)) {
                BitSet cheapest = withoutIdle(chosen, goal);
                landmarks.addAll(clauses);
                return new Found(cheapest, total(cheapest), landmarks);
            }
            BitSet allowed = chosen;
            while (!goal.reached(state) && total(allowed) < total(best)) {
                BitSet landmark = landmark(state, allowed, useful, goal);
                clauses.add(landmark);
                allowed.set(cheapestIn(landmark));
                reach.extend(state, allowed);
            }
            if (total(allowed) < total(best)) {
                best = thin(allowed, goal);
            }
        }
    }

    /** Nothing that costs something can be left out of a cheapest set; what costs nothing may be idle. */
    private BitSet withoutIdle(BitSet cheapest, Goal goal) {
        BitSet kept = (BitSet) cheapest.clone();
        for (int a = cheapest.nextSetBit(0); a >= 0; a = cheapest.nextSetBit(a + 1)) {
            if (cost[a] == 0) {
                kept.clear(a);
                kept.set(a, !reach.reaches(kept, goal));
            }
        }
        return kept;
    }

    /** The members of a plan without which nothing that is permitted reaches the goal. */
    private BitSet forced(BitSet useful, BitSet plan, Goal goal) {
        BitSet forced = new BitSet();
        BitSet inside = (BitSet) useful.clone();
        inside.andNot(plan);
        leaveOneOut(reach.sweep(inside), inside, plan.stream().toArray(), goal, forced);
        return forced;
    }

    /**
     * Finds which of the members the goal needs each by itself, everything else being permitted: half of them is let in
     * while the other half is looked at, so that each closure carries on from one before.
     *
     * @param state the closure of {@code inside}, everything but the members
     */
    private void leaveOneOut(State state, BitSet inside, int[] members, Goal goal, BitSet forced) {
        if (goal.reached(state)) {
            return;
        }
        if (members.length == 1) {
            forced.set(members[0]);
            return;
        }
        int middle = members.length / 2;
        int[] left = Arrays.copyOf(members, middle);
        int[] right = Arrays.copyOfRange(members, middle, members.length);
        withAll(state, inside, right, (larger, permitted) -> leaveOneOut(larger, permitted, left, goal, forced));
        withAll(state, inside, left, (larger, permitted) -> leaveOneOut(larger, permitted, right, goal, forced));
    }

    private void withAll(State state, BitSet inside, int[] actions, BiConsumer<State, BitSet> then) {
        State larger = state.copy();
        BitSet permitted = (BitSet) inside.clone();
        Arrays.stream(actions).forEach(permitted::set);
        reach.extend(larger, permitted);
        then.accept(larger, permitted);
    }

    /**
     * The free actions outside a maximal set that still fails; any plan does one of them. Cheap actions are let in first,
     * so that dear ones are left outside and the landmark counts for much. As many as possible are let in at once: what is
     * let in is what one after the other would let in, because reaching is monotone.
     */
    private BitSet landmark(State failing, BitSet allowed, BitSet useful, Goal goal) {
        BitSet inside = (BitSet) allowed.clone();
        BitSet outside = (BitSet) useful.clone();
        outside.andNot(inside);
        int[] order = cheapFirst(outside);
        State state = order.length == 0 ? failing.copy() : letIn(failing, inside, order, 0, order.length, goal);
        BitSet landmark = (BitSet) useful.clone();
        landmark.andNot(inside);
        state.refresh();
        for (int a = landmark.nextSetBit(0); a >= 0; a = landmark.nextSetBit(a + 1)) {
            if (!state.free(a)) {
                landmark.clear(a);
            }
        }
        return landmark;
    }

    /**
     * Lets actions {@code from} to before {@code to} in, each unless the goal would be reached.
     *
     * @param inside what is permitted; grows
     * @return the closure of what is then permitted
     */
    private State letIn(State state, BitSet inside, int[] order, int from, int to, Goal goal) {
        BitSet permitted = (BitSet) inside.clone();
        for (int k = from; k < to; k++) {
            permitted.set(order[k]);
        }
        State larger = state.copy();
        reach.extend(larger, permitted);
        if (!goal.reached(larger)) {
            inside.or(permitted);
            return larger;
        }
        if (to - from == 1) {
            return state;
        }
        int middle = (from + to) >>> 1;
        return letIn(letIn(state, inside, order, from, middle, goal), inside, order, middle, to, goal);
    }

    /** A subset that reaches the goal and of which nothing can be left out; many dear ones are tried before single ones. */
    private BitSet thin(BitSet plan, Goal goal) {
        BitSet kept = (BitSet) plan.clone();
        for (int size = Math.max(1, kept.cardinality() / 4); ; size /= 2) {
            int[] members = cheapFirst(kept);
            for (int from = members.length; from > 0; from -= size) {
                BitSet smaller = (BitSet) kept.clone();
                for (int k = Math.max(0, from - size); k < from; k++) {
                    smaller.clear(members[k]);
                }
                if (reach.reaches(smaller, goal)) {
                    kept = smaller;
                }
            }
            if (size == 1) {
                return kept;
            }
        }
    }

    long total(BitSet actions) {
        return actions.stream().mapToLong(action -> cost[action]).sum();
    }

    private int[] cheapFirst(BitSet actions) {
        return actions.stream()
                .boxed()
                .sorted(Comparator.comparingLong(action -> cost[action]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private int cheapestIn(BitSet elements) {
        int best = -1;
        for (int a = elements.nextSetBit(0); a >= 0; a = elements.nextSetBit(a + 1)) {
            if (best < 0 || cost[a] < cost[best]) {
                best = a;
            }
        }
        return best;
    }

    private static BitSet single(int action) {
        BitSet set = new BitSet();
        set.set(action);
        return set;
    }
}
