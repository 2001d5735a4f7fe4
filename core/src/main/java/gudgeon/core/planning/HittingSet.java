package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest set that hits every clause, exact, by branch and bound. At every node it is first made smaller: clauses that
 * contain another one go, an element goes when a cheaper one hits all that it hits, a clause of one element takes it; what
 * falls apart into clauses without common elements is solved apart. Bound: dual ascent (every clause pays as much as its
 * elements still ask for), at least as strong as a packing of disjoint clauses. Worst case exponential in the number of
 * clauses. Ties are broken by the order of the clauses and by the smaller number, so the answer is always the same.
 */
final class HittingSet {
    private final long[] cost;

    private HittingSet(long[] cost) {
        this.cost = cost;
    }

    /** The cheapest hitting set; the clauses must not be empty. */
    static BitSet cheapest(List<BitSet> clauses, long[] cost) {
        BitSet found = new HittingSet(cost).solve(clauses, Long.MAX_VALUE);
        if (found == null) {
            throw new IllegalArgumentException("an empty clause cannot be hit");
        }
        return found;
    }

    /** The cheapest hitting set that costs less than the limit, or null. */
    private @Nullable BitSet solve(List<BitSet> clauses, long limit) {
        BitSet taken = new BitSet();
        List<BitSet> open = reduce(clauses, taken);
        long spent = total(taken);
        if (open.stream().anyMatch(BitSet::isEmpty) || spent >= limit) {
            return null;
        }
        if (open.isEmpty()) {
            return taken;
        }
        List<List<BitSet>> parts = apart(open);
        long bound = parts.stream().mapToLong(this::bound).sum();
        for (List<BitSet> part : parts) {
            long own = bound(part);
            if (limit != Long.MAX_VALUE && spent + bound >= limit) {
                return null;
            }
            long allowance = limit == Long.MAX_VALUE ? limit : limit - spent - (bound - own);
            BitSet best = branch(part, allowance);
            if (best == null) {
                return null;
            }
            taken.or(best);
            spent += total(best);
            bound -= own;
        }
        return spent < limit ? taken : null;
    }

    /** Takes the most useful element, then goes without it. */
    private @Nullable BitSet branch(List<BitSet> clauses, long limit) {
        int element = mostUseful(clauses);
        List<BitSet> rest = new ArrayList<>();
        List<BitSet> without = new ArrayList<>();
        for (BitSet clause : clauses) {
            if (!clause.get(element)) {
                rest.add(clause);
            }
            BitSet smaller = (BitSet) clause.clone();
            smaller.clear(element);
            without.add(smaller);
        }
        long left = limit == Long.MAX_VALUE ? limit : limit - cost[element];
        BitSet best = left <= 0 ? null : solve(rest, left);
        if (best != null) {
            best.set(element);
        }
        BitSet other = solve(without, best == null ? limit : total(best));
        return other == null ? best : other;
    }

    private int mostUseful(List<BitSet> clauses) {
        int[] hits = new int[cost.length];
        clauses.forEach(clause -> clause.stream().forEach(element -> hits[element]++));
        int best = -1;
        for (int e = 0; e < hits.length; e++) {
            if (hits[e] > 0 && (best < 0 || hits[e] * (cost[best] + 1) > hits[best] * (cost[e] + 1))) {
                best = e;
            }
        }
        return best;
    }

    /** The clauses that are left to decide; what must be taken is added to {@code taken}. */
    private List<BitSet> reduce(List<BitSet> clauses, BitSet taken) {
        List<BitSet> open = clauses;
        while (true) {
            open = minimal(open);
            BitSet forced = new BitSet();
            open.stream().filter(clause -> clause.cardinality() == 1).forEach(forced::or);
            if (!forced.isEmpty()) {
                taken.or(forced);
                open = open.stream().filter(clause -> !clause.intersects(forced)).toList();
            }
            BitSet useless = dominated(open);
            if (useless.isEmpty()) {
                return open;
            }
            open = open.stream()
                    .map(clause -> {
                        BitSet smaller = (BitSet) clause.clone();
                        smaller.andNot(useless);
                        return smaller;
                    })
                    .toList();
        }
    }

    /** The clauses that contain no other clause. */
    private static List<BitSet> minimal(List<BitSet> clauses) {
        List<BitSet> kept = new ArrayList<>();
        List<BitSet> sorted = new ArrayList<>(clauses);
        sorted.sort((a, b) -> Integer.compare(a.cardinality(), b.cardinality()));
        for (BitSet clause : sorted) {
            if (kept.stream().noneMatch(other -> contains(clause, other))) {
                kept.add(clause);
            }
        }
        return kept;
    }

    /** Elements for which another one, not dearer, hits everything that they hit. */
    private BitSet dominated(List<BitSet> clauses) {
        BitSet[] hit = new BitSet[cost.length];
        BitSet elements = new BitSet();
        for (int c = 0; c < clauses.size(); c++) {
            int number = c;
            clauses.get(c).stream().forEach(element -> {
                if (hit[element] == null) {
                    hit[element] = new BitSet();
                }
                hit[element].set(number);
                elements.set(element);
            });
        }
        BitSet useless = new BitSet();
        for (int e = elements.nextSetBit(0); e >= 0; e = elements.nextSetBit(e + 1)) {
            BitSet rivals = (BitSet) clauses.get(hit[e].nextSetBit(0)).clone();
            rivals.andNot(useless);
            rivals.clear(e);
            int own = e;
            boolean worse = rivals.stream()
                    .anyMatch(rival -> cost[rival] <= cost[own]
                            && contains(hit[rival], hit[own])
                            && (cost[rival] < cost[own] || !hit[rival].equals(hit[own]) || rival < own));
            if (worse) {
                useless.set(e);
            }
        }
        return useless;
    }

    /** The clauses in groups without common elements. */
    private static List<List<BitSet>> apart(List<BitSet> clauses) {
        List<List<BitSet>> groups = new ArrayList<>();
        List<BitSet> elements = new ArrayList<>();
        for (BitSet clause : clauses) {
            List<BitSet> group = new ArrayList<>(List.of(clause));
            BitSet all = (BitSet) clause.clone();
            for (int g = groups.size() - 1; g >= 0; g--) {
                if (elements.get(g).intersects(clause)) {
                    group.addAll(0, groups.remove(g));
                    all.or(elements.remove(g));
                }
            }
            groups.add(group);
            elements.add(all);
        }
        return groups;
    }

    /** Dual ascent: no hitting set is cheaper. */
    private long bound(List<BitSet> clauses) {
        long[] left = cost.clone();
        long sum = 0;
        for (BitSet clause : clauses) {
            long pays = clause.stream().mapToLong(element -> left[element]).min().orElse(0);
            if (pays > 0) {
                clause.stream().forEach(element -> left[element] -= pays);
                sum += pays;
            }
        }
        return sum;
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
