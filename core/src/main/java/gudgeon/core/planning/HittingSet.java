package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The cheapest set that hits every clause, exact, by depth-first branch and bound. Bound: a greedy packing of disjoint
 * clauses, each with its cheapest element. Worst case exponential in the number of clauses; the clauses of real engines
 * are few and small because everything that is needed for sure has been taken out before.
 */
final class HittingSet {
    private final long[] cost;
    private final List<BitSet> clauses;
    private long bestCost = Long.MAX_VALUE;
    private BitSet best = new BitSet();

    private HittingSet(List<BitSet> clauses, long[] cost) {
        this.clauses = clauses;
        this.cost = cost;
    }

    /** The cheapest hitting set; the clauses must not be empty. */
    static BitSet cheapest(List<BitSet> clauses, long[] cost) {
        HittingSet search = new HittingSet(minimal(clauses), cost);
        search.branch(new BitSet(), new BitSet(), 0);
        return search.best;
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

    private static boolean contains(BitSet whole, BitSet part) {
        BitSet missing = (BitSet) part.clone();
        missing.andNot(whole);
        return missing.isEmpty();
    }

    private void branch(BitSet taken, BitSet refused, long spent) {
        BitSet used = new BitSet();
        BitSet tightest = null;
        int tightestSize = Integer.MAX_VALUE;
        long bound = spent;
        for (BitSet clause : clauses) {
            if (clause.intersects(taken)) {
                continue;
            }
            BitSet open = (BitSet) clause.clone();
            open.andNot(refused);
            int size = open.cardinality();
            if (size == 0) {
                return;
            }
            if (size < tightestSize) {
                tightest = open;
                tightestSize = size;
            }
            if (!open.intersects(used)) {
                used.or(open);
                bound += cheapestIn(open);
            }
        }
        if (bound >= bestCost) {
            return;
        }
        if (tightest == null) {
            bestCost = spent;
            best = (BitSet) taken.clone();
            return;
        }
        takeEach(tightest, taken, refused, spent);
    }

    private void takeEach(BitSet clause, BitSet taken, BitSet refused, long spent) {
        BitSet barred = (BitSet) refused.clone();
        List<Integer> order = new ArrayList<>(clause.stream().boxed().toList());
        order.sort((a, b) -> Long.compare(cost[a], cost[b]));
        for (int element : order) {
            BitSet with = (BitSet) taken.clone();
            with.set(element);
            branch(with, barred, spent + cost[element]);
            barred.set(element);
        }
    }

    private long cheapestIn(BitSet elements) {
        return elements.stream().mapToLong(element -> cost[element]).min().orElse(0);
    }
}
