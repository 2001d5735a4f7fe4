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
    /** By operation: operations that come before it in every order. */
    private final BitSet[] before;

    private final int[] topological;
    /** By operation: the nearest of those, the others being theirs. */
    private final int[][] nearest;
    private final List<Group> zoneGroups = new ArrayList<>();
    private final List<ToolGroups> toolGroups = new ArrayList<>();
    private final long toolSeconds;
    private final long cheapestEntry;
    private final int largestSet;
    private final int[] zoneClass;

    /** Operations of one resource; {@code neutral} ones may be done with or without it. */
    private record Group(int key, BitSet members, BitSet neutral, long weight) {}

    /** The operations left, earlier ones first, and room to play them through. */
    private static final class Left {
        final int[] operations;
        final boolean[] done;
        final boolean[] scratch;
        int count;

        Left(int n) {
            operations = new int[n];
            done = new boolean[n];
            scratch = new boolean[n];
        }
    }

    private Left left(BitSet doneOperations) {
        Left left = new Left(n);
        for (int o : topological) {
            left.done[o] = doneOperations.get(o);
            if (!left.done[o]) {
                left.operations[left.count++] = o;
            }
        }
        return left;
    }

    private record ToolGroups(String tool, Group overall, List<Group> byZone) {}

    OrderBound(OrderProblem problem) {
        this.problem = problem;
        n = problem.size();
        before = necessary(problem);
        topological = topological();
        nearest = nearest();
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
        Left left = left(doneOperations);
        long entries = 0;
        long zoneSeconds = problem.travel[zone][problem.start];
        for (Group group : zoneGroups) {
            int runs = runs(left, group, group.key == zone);
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
            int together = runs(left, groups.overall, inHand);
            int byZone = 0;
            for (Group group : groups.byZone) {
                byZone += runs(left, group, inHand && group.key == zoneNow);
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
    private int runs(Left left, Group group, boolean inside) {
        int members = 0;
        for (int k = 0; k < left.count; k++) {
            members += group.members.get(left.operations[k]) ? 1 : 0;
        }
        if (members == 0) {
            return 0;
        }
        System.arraycopy(left.done, 0, left.scratch, 0, n);
        int begun = 0;
        boolean with = inside;
        while (true) {
            members -= sweep(left, group, with);
            if (members == 0) {
                return begun;
            }
            with = !with;
            if (with) {
                begun++;
            }
        }
    }

    /** Does what can be done with the resource, or without it, and returns how many of its members that were. */
    private int sweep(Left left, Group group, boolean with) {
        int members = 0;
        boolean[] done = left.scratch;
        for (int k = 0; k < left.count; k++) {
            int o = left.operations[k];
            if (!done[o] && (group.members.get(o) == with || group.neutral.get(o)) && allDone(done, nearest[o])) {
                done[o] = true;
                members += group.members.get(o) ? 1 : 0;
            }
        }
        return members;
    }

    private static boolean allDone(boolean[] done, int[] operations) {
        for (int o : operations) {
            if (!done[o]) {
                return false;
            }
        }
        return true;
    }

    private int[] topological() {
        Integer[] order = new Integer[n];
        Arrays.setAll(order, o -> o);
        Arrays.sort(order, (a, b) -> Integer.compare(before[a].cardinality(), before[b].cardinality()));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    private int[][] nearest() {
        int[][] near = new int[n][];
        for (int o = 0; o < n; o++) {
            BitSet far = new BitSet(n);
            before[o].stream().forEach(p -> far.or(before[p]));
            near[o] = before[o].stream().filter(p -> !far.get(p)).toArray();
        }
        return near;
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
