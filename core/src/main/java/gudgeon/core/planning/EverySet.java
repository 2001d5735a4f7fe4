package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Question 1 for every part at once. One sweep tells what can be reached at all; the closures without one action each tell,
 * for all parts together, what no plan does without; where that already reaches a part it is the cheapest set. Else the
 * hitting sets are gone on with, and a landmark found for one part serves all that are not reached beside it.
 */
final class EverySet {
    private final Standing standing;
    private final Reach reach;
    private final OpeningSearch search;
    private final BitSet start;
    private final State full;
    private final BitSet useful;
    private final BitSet tolerated;
    private final BitSet[] forced;
    private final Map<BitSet, State> ends = new HashMap<>();
    private final List<Known> pool = new ArrayList<>();

    /** A landmark, and what is off when none of it is done: it is none of theirs. */
    private record Known(BitSet landmark, BitSet offWithout) {}

    EverySet(Standing standing) {
        this.standing = standing;
        this.reach = standing.reach();
        this.search = new OpeningSearch(reach, standing.cost());
        State initial = reach.initial();
        start = off(initial);
        full = reach.sweep(standing.permitted());
        useful = (BitSet) full.done.clone();
        useful.and(standing.permitted());
        tolerated = standing.openings(goal(standing.model().base)).tolerated();
        forced = new BitSet[standing.model().parts];
        BitSet reachable = off(full);
        reachable.stream().forEach(part -> forced[part] = new BitSet());
        AllButOne.visit(reach, useful, (action, state) -> {
            BitSet missing = (BitSet) reachable.clone();
            missing.andNot(off(state));
            missing.stream().forEach(part -> forced[part].set(action));
        });
    }

    /** Parts that are off and moved. */
    static BitSet off(State state) {
        BitSet off = (BitSet) state.moved.clone();
        off.andNot(state.linked());
        return off;
    }

    static Goal goal(int part) {
        BitSet parts = new BitSet();
        parts.set(part);
        return new Goal(parts, parts, new BitSet(), List.of());
    }

    /** Parts that are off before anything is done. */
    BitSet start() {
        return start;
    }

    /** Parts that are loose before anything is done. */
    BitSet tolerated() {
        return tolerated;
    }

    /** Everything that can be done, done. */
    State full() {
        return full;
    }

    /** Whether a part can be off when everything is done that can be, whatever is loose. */
    boolean isReachable(int part) {
        return start.get(part) || forced[part] != null;
    }

    /** The cheapest set that leaves nothing loose, or empty when there is none. */
    Optional<BitSet> cheapest(int part) {
        if (start.get(part)) {
            return Optional.of(new BitSet());
        }
        if (forced[part] == null) {
            return Optional.empty();
        }
        BitSet set = forced[part];
        if (!off(end(set)).get(part)) {
            set = search(part);
        }
        if (!end(set).loose(tolerated).isEmpty()) {
            return standing.openings(goal(part))
                    .next()
                    .map(candidate -> candidate.found().chosen());
        }
        return Optional.of(set);
    }

    /** The closure of a set. */
    State end(BitSet set) {
        return ends.computeIfAbsent(set, reach::sweep);
    }

    private BitSet search(int part) {
        List<BitSet> known = pool.stream()
                .filter(one -> !one.offWithout().get(part))
                .map(Known::landmark)
                .filter(landmark -> !landmark.intersects(forced[part]))
                .toList();
        OpeningSearch.Found found = search.complete(useful, forced[part], useful, known, goal(part));
        for (BitSet landmark : found.landmarks()) {
            if (landmark.cardinality() > 1 && !known.contains(landmark)) {
                BitSet rest = (BitSet) useful.clone();
                rest.andNot(landmark);
                pool.add(new Known(landmark, off(reach.sweep(rest))));
            }
        }
        return found.chosen();
    }
}
