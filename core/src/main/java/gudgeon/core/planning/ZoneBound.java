package gudgeon.core.planning;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least that the operations of one zone can still cost, everything outside the zone being free but for the precedences
 * through it: visits to the zone, and tools taken up within a visit. Exact for the zone alone, by recursion over what has
 * been done in it; results are kept, so that a search that comes by again pays nothing. States: what can be done in the
 * zone times the tool set in hand; with more than {@link #MOST_TOOL_SETS} tool sets, the rarer ones count as free.
 */
final class ZoneBound {
    static final int MOST_TOOL_SETS = 12;

    private final Precedences precedences;
    private final int[] toolSetOf;
    private final long[][] pickUp;
    private final BitSet members;
    /** Operations outside the zone that some member waits for, earlier ones first. */
    private final int[] outside;

    private final int[] inside;
    private final int[] toolSets;
    private final Passage passage;
    private final Map<BitSet, Long> away = new HashMap<>();
    private final Map<InHand, Long> present = new HashMap<>();

    /**
     * What coming and going costs.
     *
     * @param seconds cost of a visit
     * @param first by tool set: cost of taking it up on entering, where some of it may have come in hand
     * @param leaving by tool set: what is not needed of the share left for carrying it on, since nobody else uses it
     */
    record Passage(long seconds, long[] first, long[] leaving) {}

    private record InHand(BitSet done, int toolSet) {
        @Override
        public int hashCode() {
            long hash = toolSet;
            for (long word : done.toLongArray()) {
                hash = (hash ^ word) * 0x9E3779B97F4A7C15L;
                hash ^= hash >>> 29;
            }
            return (int) (hash ^ (hash >>> 32));
        }
    }

    ZoneBound(Precedences precedences, OrderProblem problem, BitSet members, List<Integer> toolSets, Passage passage) {
        this.precedences = precedences;
        this.toolSetOf = problem.toolSet;
        this.pickUp = problem.pickUp;
        this.members = members;
        this.passage = passage;
        this.toolSets = toolSets.stream().mapToInt(Integer::intValue).toArray();
        BitSet ancestors = new BitSet();
        members.stream().forEach(o -> ancestors.or(precedences.before(o)));
        ancestors.andNot(members);
        outside = precedences.sorted(ancestors);
        inside = precedences.sorted(members);
    }

    /** The least cost from here; {@code present} when the person stands in the zone with a tool set in hand. */
    long remaining(BitSet done, boolean here, int toolSet) {
        BitSet own = (BitSet) done.clone();
        own.and(members);
        boolean finished = own.cardinality() == inside.length;
        if (!here) {
            return finished ? 0 : away(own);
        }
        if (finished) {
            return passage.leaving[toolSet];
        }
        for (int o : outside) {
            own.set(o, done.get(o));
        }
        return present(own, toolSet);
    }

    private long away(BitSet own) {
        Long known = away.get(own);
        if (known != null) {
            return known;
        }
        BitSet done = (BitSet) own.clone();
        for (int o : outside) {
            if (precedences.allow(o, done)) {
                done.set(o);
            }
        }
        long least = Long.MAX_VALUE / 4;
        for (int toolSet : toolSets) {
            BitSet after = run(done, toolSet);
            if (after != null) {
                long entry = passage.seconds + passage.first[toolSet];
                least = Math.min(least, entry + present(after, toolSet));
            }
        }
        away.put((BitSet) own.clone(), least);
        return least;
    }

    private long present(BitSet done, int toolSet) {
        BitSet own = (BitSet) done.clone();
        own.and(members);
        if (own.cardinality() == inside.length) {
            return passage.leaving[toolSet];
        }
        InHand key = new InHand(done, toolSet);
        Long known = present.get(key);
        if (known != null) {
            return known;
        }
        long least = passage.leaving[toolSet] + away(own);
        for (int next : toolSets) {
            BitSet after = run(done, next);
            if (after != null) {
                least = Math.min(least, pickUp[toolSet][next] + present(after, next));
            }
        }
        present.put(key, least);
        return least;
    }

    /** Everything in the zone that one tool set can do now; null when that is nothing. */
    private @org.jspecify.annotations.Nullable BitSet run(BitSet done, int toolSet) {
        BitSet after = null;
        for (int o : inside) {
            if (toolSetOf[o] == toolSet && !done.get(o) && precedences.allow(o, after == null ? done : after)) {
                if (after == null) {
                    after = (BitSet) done.clone();
                }
                after.set(o);
            }
        }
        return after;
    }
}
