package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least that visits to zones can still cost when tools cost nothing, exact under the precedences: in a zone everything
 * is done that can be done there, on the way to the next zone everything in the zones that cost nothing. Results are kept.
 */
final class TourBound {
    private final Precedences precedences;
    /** Operations of the zones that cost nothing, earlier ones first. */
    private final int[] free;

    private final List<int[]> visited = new ArrayList<>();
    private final List<Long> cost = new ArrayList<>();
    private final List<Integer> classes = new ArrayList<>();
    private final Map<BitSet, Long> known = new HashMap<>();

    TourBound(Precedences precedences, BitSet free) {
        this.precedences = precedences;
        this.free = precedences.sorted(free);
    }

    /** Counts visits to a zone. */
    void count(int zoneClass, BitSet members, long seconds) {
        classes.add(zoneClass);
        visited.add(precedences.sorted(members));
        cost.add(seconds);
    }

    long remaining(BitSet done, int zoneClass) {
        BitSet now = (BitSet) done.clone();
        int here = classes.indexOf(zoneClass);
        if (here >= 0) {
            close(now, visited.get(here));
        }
        close(now, free);
        return away(now);
    }

    private long away(BitSet done) {
        Long value = known.get(done);
        if (value != null) {
            return value;
        }
        boolean any = false;
        long least = Long.MAX_VALUE / 4;
        for (int z = 0; z < visited.size(); z++) {
            BitSet after = (BitSet) done.clone();
            if (close(after, visited.get(z))) {
                any = true;
                close(after, free);
                least = Math.min(least, cost.get(z) + away(after));
            }
        }
        long result = any ? least : 0;
        known.put(done, result);
        return result;
    }

    private boolean close(BitSet done, int[] operations) {
        boolean any = false;
        for (int o : operations) {
            if (!done.get(o) && precedences.allow(o, done)) {
                done.set(o);
                any = true;
            }
        }
        return any;
    }
}
