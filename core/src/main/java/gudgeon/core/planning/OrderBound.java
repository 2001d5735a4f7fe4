package gudgeon.core.planning;

import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An admissible bound of the changeover that is left: what the visits must cost together ({@link TourBound}), what the tools
 * of each zone must cost by itself ({@link ZoneBound}), and the way back from the present zone. The cost of a visit, its
 * way there and back, is shared out between the three: most to the tour, one tool change to the zone itself, so that it
 * does not pay there to leave and come back, and one to the zones that cost nothing. For a tool may come in hand from
 * another zone: into a zone that costs time to enter, the first tool set counts as brought along; into the zones that cost
 * nothing it is paid, with what every visit elsewhere has left for it.
 */
final class OrderBound {
    private final OrderProblem problem;
    private final Precedences precedences;
    private final List<ZoneBound> bounds = new ArrayList<>();
    private final List<Integer> classes = new ArrayList<>();
    private final TourBound tour;
    /** What every visit leaves for a tool that is carried on from it. */
    private final long share;

    OrderBound(OrderProblem problem, Precedences precedences) {
        this.problem = problem;
        this.precedences = precedences;
        List<Zone> zones = problem.model.engine.workplace().zones();
        long least = problem.model.engine.workplace().toolChangeSeconds();
        for (int z = 0; z < zones.size(); z++) {
            if (weight(z) > 0 && !inClass(z).isEmpty()) {
                least = Math.min(least, weight(z));
            }
        }
        share = least;
        BitSet free = (BitSet) problem.benchable.clone();
        free.or(inClass(problem.start));
        tour = new TourBound(precedences, free);
        for (int z = 0; z < zones.size(); z++) {
            BitSet members = zoneClass(z) == z ? inClass(z) : new BitSet();
            if (!members.isEmpty()) {
                classes.add(z);
                if (weight(z) > 0) {
                    tour.count(z, members, weight(z) - share - own(z));
                }
                bounds.add(bound(z, members));
            }
        }
    }

    private ZoneBound bound(int zone, BitSet members) {
        Map<Integer, Integer> uses = new HashMap<>();
        members.stream().forEach(o -> uses.merge(problem.toolSet[o], 1, Integer::sum));
        List<Integer> toolSets = new ArrayList<>(uses.keySet());
        toolSets.sort((a, b) -> {
            int byUse = Integer.compare(uses.getOrDefault(b, 0), uses.getOrDefault(a, 0));
            return byUse != 0 ? byUse : Integer.compare(a, b);
        });
        List<Integer> counted = toolSets.subList(0, Math.min(ZoneBound.MOST_TOOL_SETS, toolSets.size()));
        BitSet counting = (BitSet) members.clone();
        members.stream().filter(o -> !counted.contains(problem.toolSet[o])).forEach(counting::clear);
        return new ZoneBound(precedences, problem, counting, counted, passage(zone));
    }

    private ZoneBound.Passage passage(int zone) {
        int n = problem.toolSets.size();
        long[] first = new long[n];
        long[] leaving = new long[n];
        long each = problem.model.engine.workplace().toolChangeSeconds();
        for (int t = 0; t < n; t++) {
            long common = problem.toolSets.get(t).stream()
                    .filter(tool -> usedElsewhere(tool, zone))
                    .count();
            first[t] = each * (problem.toolSets.get(t).size() - common);
            if (weight(zone) == 0) {
                first[t] += Math.min(each * common, share);
            } else {
                leaving[t] = common == 0 ? share : 0;
            }
        }
        return new ZoneBound.Passage(weight(zone) == 0 ? 0 : own(zone), first, leaving);
    }

    private boolean usedElsewhere(String tool, int zone) {
        for (int o = 0; o < problem.size(); o++) {
            boolean elsewhere = problem.benchable.get(o) || zoneClass(problem.zone[o]) != zone;
            if (elsewhere && problem.toolSets.get(problem.toolSet[o]).contains(tool)) {
                return true;
            }
        }
        return false;
    }

    /** What of a visit's cost the zone's own tools are bounded with. */
    private long own(int zone) {
        return Math.min(share, weight(zone) - share);
    }

    private long weight(int zone) {
        return problem.travel[problem.start][zone] + problem.travel[zone][problem.start];
    }

    /** Zones that cost nothing to enter count as one. */
    private int zoneClass(int zone) {
        return weight(zone) == 0 ? problem.start : zone;
    }

    private BitSet inClass(int zone) {
        BitSet members = new BitSet();
        for (int o = 0; o < problem.size(); o++) {
            members.set(o, !problem.benchable.get(o) && zoneClass(problem.zone[o]) == zone);
        }
        return members;
    }

    /** Lower bound of the changeover from here to the end, the way back to the start zone included. */
    long remaining(BitSet done, int zone, int toolSet) {
        long seconds = problem.travel[zone][problem.start];
        if (done.cardinality() == problem.size()) {
            return seconds;
        }
        int here = zoneClass(zone);
        if (weight(zone) > 0) {
            seconds -= share;
        }
        seconds += tour.remaining(done, here);
        for (int k = 0; k < bounds.size(); k++) {
            seconds += bounds.get(k).remaining(done, classes.get(k) == here, toolSet);
        }
        return seconds;
    }
}
