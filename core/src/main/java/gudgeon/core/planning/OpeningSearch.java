package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

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
        BitSet forced = new BitSet();
        List<BitSet> landmarks = new ArrayList<>();
        for (int a = plan.nextSetBit(0); a >= 0; a = plan.nextSetBit(a + 1)) {
            BitSet without = (BitSet) useful.clone();
            without.clear(a);
            if (!reach.reaches(without, goal)) {
                forced.set(a);
                landmarks.add(single(a));
            }
        }
        return Optional.of(complete(useful, forced, landmarks, goal));
    }

    private Found complete(BitSet useful, BitSet forced, List<BitSet> landmarks, Goal goal) {
        List<BitSet> clauses = new ArrayList<>();
        while (true) {
            BitSet chosen = HittingSet.cheapest(clauses, cost);
            chosen.or(forced);
            State state = reach.sweep(chosen);
            if (goal.reached(state)) {
                BitSet thinned = thin(chosen, goal);
                landmarks.addAll(clauses);
                return new Found(thinned, total(thinned), landmarks);
            }
            // several landmarks a round: take the cheapest member of each new one and go on until the goal is reached
            BitSet allowed = chosen;
            while (!goal.reached(state)) {
                BitSet landmark = landmark(state, allowed, useful, goal);
                clauses.add(landmark);
                allowed.set(cheapestIn(landmark));
                reach.extend(state, allowed);
            }
        }
    }

    /**
     * The free actions outside a maximal set that still fails; any plan does one of them. Cheap actions are let in first,
     * so that dear ones are left outside and the landmark counts for much.
     */
    private BitSet landmark(State failing, BitSet allowed, BitSet useful, Goal goal) {
        State state = failing.copy();
        BitSet inside = (BitSet) allowed.clone();
        for (int a : cheapFirst(useful)) {
            if (!inside.get(a)) {
                State larger = state.copy();
                BitSet permitted = (BitSet) inside.clone();
                permitted.set(a);
                reach.extend(larger, permitted);
                if (!goal.reached(larger)) {
                    inside.set(a);
                    state = larger;
                }
            }
        }
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

    /** A subset that reaches the goal and of which nothing can be left out; halves are tried before single actions. */
    private BitSet thin(BitSet plan, Goal goal) {
        BitSet kept = (BitSet) plan.clone();
        for (int size = Math.max(1, kept.cardinality() / 4); ; size /= 2) {
            int[] members = kept.stream().toArray();
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

    private List<Integer> cheapFirst(BitSet actions) {
        List<Integer> order = new ArrayList<>(actions.stream().boxed().toList());
        order.sort((a, b) -> Long.compare(cost[a], cost[b]));
        return order;
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
