package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest set that hits every clause, exact: branch and bound on the covering problem. At every node clauses that
 * contain another are dropped, elements that another hits at least as much for no more are dropped, independent parts are
 * solved apart, and elements are fixed by their reduced cost under a Lagrangian bound ({@link CoverBound}). Worst case
 * exponential.
 */
final class HittingSet {
    private final long[] cost;

    private HittingSet(long[] cost) {
        this.cost = cost;
    }

    /** The cheapest hitting set; the clauses must not be empty. */
    static BitSet cheapest(List<BitSet> clauses, long[] cost) {
        List<BitSet> copies = new ArrayList<>();
        clauses.forEach(clause -> copies.add((BitSet) clause.clone()));
        return new HittingSet(cost)
                .solve(copies, Long.MAX_VALUE)
                .orElseThrow(() -> new IllegalArgumentException("an empty clause cannot be hit"));
    }

    /** A set cheaper than {@code below} that hits all clauses, the cheapest there is, or empty. */
    private Optional<BitSet> solve(List<BitSet> clauses, long below) {
        BitSet taken = new BitSet();
        if (!reduce(clauses, taken)) {
            return Optional.empty();
        }
        long room = below == Long.MAX_VALUE ? below : below - total(taken);
        if (room <= 0) {
            return Optional.empty();
        }
        if (clauses.isEmpty()) {
            return Optional.of(taken);
        }
        List<List<BitSet>> components = components(clauses);
        if (components.size() > 1) {
            return apart(components, room).map(rest -> union(taken, rest));
        }
        BitSet greedy = greedy(clauses);
        long ceiling = Math.min(room, total(greedy));
        CoverBound bound = new CoverBound(clauses, cost, ceiling);
        if (bound.value() >= ceiling) {
            return total(greedy) < room ? Optional.of(union(taken, greedy)) : Optional.empty();
        }
        BitSet useless = bound.useless(ceiling);
        if (!useless.isEmpty()) {
            Optional<BitSet> rest = solve(without(clauses, useless), ceiling);
            return rest.or(() -> total(greedy) < room ? Optional.of(greedy) : Optional.empty())
                    .map(set -> union(taken, set));
        }
        return branch(clauses, bound.promising(), greedy, room).map(rest -> union(taken, rest));
    }

    private Optional<BitSet> branch(List<BitSet> clauses, int element, BitSet greedy, long room) {
        Optional<BitSet> best = total(greedy) < room ? Optional.of(greedy) : Optional.empty();
        long ceiling = Math.min(room, total(greedy));
        List<BitSet> left = new ArrayList<>();
        for (BitSet clause : clauses) {
            if (!clause.get(element)) {
                left.add((BitSet) clause.clone());
            }
        }
        Optional<BitSet> with = solve(left, ceiling - cost[element]);
        if (with.isPresent()) {
            BitSet set = with.get();
            set.set(element);
            best = Optional.of(set);
            ceiling = total(set);
        }
        BitSet single = new BitSet();
        single.set(element);
        Optional<BitSet> other = solve(without(clauses, single), ceiling);
        return other.isPresent() ? other : best;
    }

    private Optional<BitSet> apart(List<List<BitSet>> components, long room) {
        BitSet all = new BitSet();
        for (List<BitSet> component : components) {
            long left = room == Long.MAX_VALUE ? room : room - total(all);
            Optional<BitSet> part = solve(component, left);
            if (part.isEmpty()) {
                return part;
            }
            all.or(part.get());
        }
        return Optional.of(all);
    }

    /** Drops what is superfluous and takes what is forced; false when a clause has become empty. */
    private boolean reduce(List<BitSet> clauses, BitSet taken) {
        boolean again = true;
        while (again) {
            again = false;
            dropLarger(clauses);
            for (BitSet clause : List.copyOf(clauses)) {
                if (clause.isEmpty()) {
                    return false;
                }
                if (clause.cardinality() == 1) {
                    taken.or(clause);
                    clauses.remove(clause);
                    again = true;
                }
            }
            again |= dropDominated(clauses);
        }
        return true;
    }

    private static void dropLarger(List<BitSet> clauses) {
        List<BitSet> sorted = new ArrayList<>(clauses);
        sorted.sort((a, b) -> Integer.compare(a.cardinality(), b.cardinality()));
        List<BitSet> kept = new ArrayList<>();
        for (BitSet clause : sorted) {
            if (kept.stream().noneMatch(other -> contains(clause, other))) {
                kept.add(clause);
            }
        }
        clauses.clear();
        clauses.addAll(kept);
    }

    private boolean dropDominated(List<BitSet> clauses) {
        BitSet elements = new BitSet();
        clauses.forEach(elements::or);
        int[] members = elements.stream().toArray();
        BitSet[] hits = new BitSet[members.length];
        for (int k = 0; k < members.length; k++) {
            hits[k] = new BitSet(clauses.size());
            for (int c = 0; c < clauses.size(); c++) {
                hits[k].set(c, clauses.get(c).get(members[k]));
            }
        }
        BitSet dropped = new BitSet();
        for (int k = 0; k < members.length; k++) {
            for (int other = 0; other < members.length && !dropped.get(members[k]); other++) {
                if (other != k && !dropped.get(members[other]) && beats(members, hits, other, k)) {
                    dropped.set(members[k]);
                }
            }
        }
        clauses.forEach(clause -> clause.andNot(dropped));
        return !dropped.isEmpty();
    }

    private boolean beats(int[] members, BitSet[] hits, int winner, int loser) {
        return cost[members[winner]] <= cost[members[loser]] && contains(hits[winner], hits[loser]);
    }

    private static List<List<BitSet>> components(List<BitSet> clauses) {
        List<List<BitSet>> components = new ArrayList<>();
        List<BitSet> left = new ArrayList<>(clauses);
        while (!left.isEmpty()) {
            List<BitSet> component = new ArrayList<>();
            BitSet elements = (BitSet) left.getFirst().clone();
            boolean again = true;
            while (again) {
                again = false;
                for (BitSet clause : List.copyOf(left)) {
                    if (clause.intersects(elements)) {
                        elements.or(clause);
                        component.add(clause);
                        left.remove(clause);
                        again = true;
                    }
                }
            }
            components.add(component);
        }
        return components;
    }

    /** A hitting set by taking what hits most for its cost, thinned. */
    private BitSet greedy(List<BitSet> clauses) {
        BitSet set = new BitSet();
        List<BitSet> left = new ArrayList<>(clauses);
        while (!left.isEmpty()) {
            int best = -1;
            double bestRatio = -1;
            BitSet elements = new BitSet();
            left.forEach(elements::or);
            for (int e = elements.nextSetBit(0); e >= 0; e = elements.nextSetBit(e + 1)) {
                int element = e;
                long hit = left.stream().filter(clause -> clause.get(element)).count();
                double ratio = hit / (cost[e] + 1e-3);
                if (ratio > bestRatio) {
                    bestRatio = ratio;
                    best = e;
                }
            }
            int chosen = best;
            set.set(chosen);
            left.removeIf(clause -> clause.get(chosen));
        }
        return thinned(clauses, set);
    }

    private BitSet thinned(List<BitSet> clauses, BitSet set) {
        List<Integer> dearest = new ArrayList<>(set.stream().boxed().toList());
        dearest.sort((a, b) -> Long.compare(cost[b], cost[a]));
        for (int element : dearest) {
            set.clear(element);
            if (!clauses.stream().allMatch(clause -> clause.intersects(set))) {
                set.set(element);
            }
        }
        return set;
    }

    private static List<BitSet> without(List<BitSet> clauses, BitSet elements) {
        List<BitSet> smaller = new ArrayList<>();
        for (BitSet clause : clauses) {
            BitSet rest = (BitSet) clause.clone();
            rest.andNot(elements);
            smaller.add(rest);
        }
        return smaller;
    }

    private static BitSet union(BitSet first, BitSet second) {
        BitSet both = (BitSet) first.clone();
        both.or(second);
        return both;
    }

    private static boolean contains(BitSet whole, BitSet part) {
        BitSet missing = (BitSet) part.clone();
        missing.andNot(whole);
        return missing.isEmpty();
    }

    private long total(BitSet elements) {
        return elements.stream().mapToLong(element -> cost[element]).sum();
    }
}
