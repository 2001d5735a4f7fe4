package gudgeon.core.planning;

import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * An admissible bound of the changeover that is left. Zone costs and tool costs are counted apart. How often a zone must
 * still be entered, a tool still be taken up, or a tool be used in a zone in one go, is found exactly for each of them
 * alone: do everything that can be done without it, then everything that can be done with it, and so on, under the
 * precedences that hold in every order. A tool may stay in hand across a change of zone, but each change saves at most one
 * tool set, and more changes cost more entries. Cost: a few passes over the remaining operations for every zone, tool and
 * pair of both.
 */
final class OrderBound {
    private final OrderProblem problem;
    private final int n;
    /** By operation: operations that come before it in every order; indices sorted so that these come first. */
    private final BitSet[] before;

    private final int[] topological;
    private final List<Group> zoneGroups = new ArrayList<>();
    private final List<ToolGroups> toolGroups = new ArrayList<>();
    private final long toolSeconds;
    private final long cheapestEntry;
    private final int largestSet;
    private final int[] zoneClass;

    /** Operations of one resource; {@code neutral} ones may be done with or without it. */
    private record Group(int key, BitSet members, BitSet neutral, long weight) {}

    private record ToolGroups(String tool, Group overall, List<Group> byZone) {}

    OrderBound(OrderProblem problem) {
        this.problem = problem;
        n = problem.size();
        before = necessary(problem);
        topological = topological();
        toolSeconds = problem.model.engine.workplace().toolChangeSeconds();
        largestSet = problem.toolSets.stream().mapToInt(List::size).max().orElse(0);
        List<Zone> zones = problem.model.engine.workplace().zones();
        zoneClass = new int[zones.size()];
        long cheapest = Long.MAX_VALUE;
        for (int z = 0; z < zones.size(); z++) {
            long weight = problem.travel[problem.start][z] + problem.travel[z][problem.start];
            zoneClass[z] = weight == 0 ? problem.start : z;
            if (weight > 0) {
                cheapest = Math.min(cheapest, weight);
                zoneGroups.add(new Group(z, inZone(z), problem.benchable, weight));
            }
        }
        cheapestEntry = cheapest;
        for (String tool : problem.toolSets.stream().flatMap(List::stream).distinct().toList()) {
            toolGroups.add(toolGroups(tool));
        }
    }

    private BitSet inZone(int zone) {
        BitSet members = new BitSet(n);
        for (int o = 0; o < n; o++) {
            members.set(o, !problem.benchable.get(o) && zoneClass(problem.zone[o]) == zoneClass(zone));
        }
        return members;
    }

    private int zoneClass(int zone) {
        return problem.travel[problem.start][zone] + problem.travel[zone][problem.start] == 0 ? problem.start : zone;
    }

    private ToolGroups toolGroups(String tool) {
        BitSet users = new BitSet(n);
        for (int o = 0; o < n; o++) {
            users.set(o, uses(problem.toolSet[o], tool));
        }
        List<Group> byZone = new ArrayList<>();
        BitSet wandering = (BitSet) users.clone();
        wandering.and(problem.benchable);
        for (int z = 0; z < problem.zones.size(); z++) {
            if (zoneClass(z) == z) {
                BitSet members = inZone(z);
                members.and(users);
                if (!members.isEmpty()) {
                    byZone.add(new Group(z, members, wandering, toolSeconds));
                }
            }
        }
        return new ToolGroups(tool, new Group(0, users, new BitSet(), toolSeconds), byZone);
    }

    private boolean uses(int toolSet, String tool) {
        return problem.toolSets.get(toolSet).contains(tool);
    }

    /** Lower bound of the changeover from here to the end, the way back to the start zone included. */
    long remaining(BitSet doneOperations, int zone, int toolSet) {
        long entries = 0;
        long zoneSeconds = problem.travel[zone][problem.start];
        for (Group group : zoneGroups) {
            int runs = runs(doneOperations, group, group.key == zone);
            entries += runs;
            zoneSeconds += runs * group.weight;
        }
        if (toolSeconds == 0) {
            return zoneSeconds;
        }
        long takenUp = 0;
        long apart = 0;
        int zoneNow = zoneClass[zone];
        for (ToolGroups groups : toolGroups) {
            boolean inHand = uses(toolSet, groups.tool);
            int together = runs(doneOperations, groups.overall, inHand);
            int byZone = 0;
            for (Group group : groups.byZone) {
                byZone += runs(doneOperations, group, inHand && group.key == zoneNow);
            }
            takenUp += together;
            apart += Math.max(together, byZone);
        }
        long changes = zoneNow == problem.start ? 2 * entries : 2 * entries + 1;
        return zoneSeconds + carried(takenUp, apart, changes);
    }

    /** Tool seconds and further zone entries that trade against each other. */
    private long carried(long atLeast, long apart, long changes) {
        long now = toolSeconds * Math.max(atLeast, apart - largestSet * changes);
        if (cheapestEntry >= 2L * largestSet * toolSeconds || now == toolSeconds * atLeast) {
            return now;
        }
        long saved = apart - largestSet * changes - atLeast;
        long further = saved / (2L * largestSet);
        long rest = saved - further * 2L * largestSet;
        return Math.min(now, further * cheapestEntry + toolSeconds * (atLeast + rest));
    }

    /** How often a resource must still be begun: alternately everything without it and everything with it. */
    private int runs(BitSet doneOperations, Group group, boolean inside) {
        BitSet left = (BitSet) group.members.clone();
        left.andNot(doneOperations);
        if (left.isEmpty()) {
            return 0;
        }
        BitSet done = (BitSet) doneOperations.clone();
        int begun = 0;
        boolean with = inside;
        while (true) {
            if (with) {
                sweep(done, group, true);
            } else {
                sweep(done, group, false);
            }
            left.andNot(done);
            if (left.isEmpty()) {
                return begun;
            }
            with = !with;
            if (with) {
                begun++;
            }
        }
    }

    private void sweep(BitSet done, Group group, boolean with) {
        for (int o : topological) {
            if (!done.get(o)
                    && (group.members.get(o) == with || group.neutral.get(o))
                    && containsAll(done, before[o])) {
                done.set(o);
            }
        }
    }

    private static boolean containsAll(BitSet whole, BitSet part) {
        for (int i = part.nextSetBit(0); i >= 0; i = part.nextSetBit(i + 1)) {
            if (!whole.get(i)) {
                return false;
            }
        }
        return true;
    }

    private int[] topological() {
        Integer[] order = new Integer[n];
        Arrays.setAll(order, o -> o);
        BitSet[] all = new BitSet[n];
        for (int o = 0; o < n; o++) {
            all[o] = (BitSet) before[o].clone();
        }
        Arrays.sort(order, (a, b) -> Integer.compare(before[a].cardinality(), before[b].cardinality()));
        // only the nearest predecessors need to be looked at: the others are theirs
        for (int o = 0; o < n; o++) {
            BitSet far = new BitSet(n);
            for (int p = all[o].nextSetBit(0); p >= 0; p = all[o].nextSetBit(p + 1)) {
                far.or(all[p]);
            }
            before[o].andNot(far);
        }
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    /** For each operation, what is missing from the closure of all others when one is left out. */
    private static BitSet[] necessary(OrderProblem problem) {
        int n = problem.size();
        BitSet[] before = new BitSet[n];
        for (int o = 0; o < n; o++) {
            before[o] = new BitSet(n);
        }
        for (int left = 0; left < n; left++) {
            BitSet reached = closure(problem, left);
            for (int o = 0; o < n; o++) {
                if (o != left && !reached.get(o)) {
                    before[o].set(left);
                }
            }
        }
        return before;
    }

    private static BitSet closure(OrderProblem problem, int left) {
        State state = problem.reach.initial();
        BitSet reached = new BitSet();
        boolean again = true;
        while (again) {
            again = false;
            state.refresh();
            for (int o = 0; o < problem.size(); o++) {
                if (o != left && !reached.get(o) && unheld(problem, state, o)) {
                    state.perform(problem.action[o]);
                    reached.set(o);
                    again = true;
                }
            }
            if (again) {
                problem.reach.lifting().close(state);
            }
        }
        return reached;
    }

    /** Permitted but for holds, which are not monotone. */
    private static boolean unheld(OrderProblem problem, State state, int operation) {
        for (int earlier : problem.earlier[operation]) {
            if (!state.done.get(problem.action[earlier])) {
                return false;
            }
        }
        return state.free(problem.action[operation]);
    }
}
