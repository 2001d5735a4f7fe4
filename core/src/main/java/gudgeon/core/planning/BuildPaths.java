package gudgeon.core.planning;

import gudgeon.core.planning.BuildPlan.Kind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the way from one step to a state where nothing is loose and no sealant waits: depth first, the steps that settle
 * most directly first, every set of finished steps once. What was found is kept until a step is done that it rests on.
 */
final class BuildPaths {
    private static final int STATES = 1000;

    /** @param rested how many of the steps that it rests on were done when it was found */
    private record Known(Optional<List<Integer>> path, int rested) {}

    private final BuildNet net;
    private final List<BitSet> ancestors;
    private final boolean keepsOpenTimes;
    private final Set<BitSet> seen = new HashSet<>();
    private final Map<Integer, Known> known = new HashMap<>();
    private final Map<Integer, BitSet> restsOn = new HashMap<>();

    BuildPaths(BuildNet net, List<BitSet> ancestors, boolean keepsOpenTimes) {
        this.net = net;
        this.ancestors = ancestors;
        this.keepsOpenTimes = keepsOpenTimes;
    }

    /** Forgets what was found. */
    void forget() {
        known.clear();
    }

    /** The steps from a ready one to the next calm state, that step first. */
    Optional<List<Integer>> from(BuildSite site, int first) {
        BitSet rests = (BitSet) restsOn.computeIfAbsent(first, this::restsOn).clone();
        rests.and(site.finished);
        Known before = known.get(first);
        if (before != null && before.rested() == rests.cardinality()) {
            return before.path();
        }
        Optional<List<Integer>> path = search(site, first);
        known.put(first, new Known(path, rests.cardinality()));
        return path;
    }

    private Optional<List<Integer>> search(BuildSite site, int first) {
        seen.clear();
        List<Integer> path = new ArrayList<>();
        return walk(site, first, path) ? Optional.of(path) : Optional.empty();
    }

    /** Whether a path found earlier still keeps every rule; it is forgotten when it does not. */
    boolean stillLeads(BuildSite site, List<Integer> path) {
        BuildSite then = site.copy();
        for (int node : path) {
            BuildSite.Start start = then.start(node);
            if (!then.ready(node) || (keepsOpenTimes && !then.inTime(node, start))) {
                known.remove(path.getFirst());
                return false;
            }
            then.perform(node, start);
        }
        boolean calm = then.wet.isEmpty() && then.loose().isEmpty();
        if (!calm) {
            known.remove(path.getFirst());
        }
        return calm;
    }

    /** The steps before the joints that a step has to do with. */
    private BitSet restsOn(int first) {
        BuildGraph.Node node = net.graph.node(first);
        BitSet result = new BitSet();
        switch (node.kind()) {
            case PLACE -> net.history.lifts.get(node.about()).parts().stream().forEach(part -> before(part, result));
            case SEAL -> {
                for (int part : net.model.jointParts[node.about()]) {
                    before(part, result);
                }
            }
            default -> result.set(0, net.graph.size());
        }
        return result;
    }

    private void before(int part, BitSet result) {
        for (int j : net.model.jointsOfPart[part]) {
            if (net.snug[j] >= 0) {
                result.set(net.snug[j]);
                result.or(ancestors.get(net.snug[j]));
            }
        }
    }

    private boolean walk(BuildSite site, int node, List<Integer> path) {
        BuildSite.Start start = site.start(node);
        if (keepsOpenTimes && !site.inTime(node, start)) {
            return false;
        }
        BuildSite next = site.copy();
        next.perform(node, start);
        path.add(node);
        BitSet loose = next.loose();
        if (loose.isEmpty() && next.wet.isEmpty()) {
            return true;
        }
        if (!dries(next) && seen.size() < STATES && seen.add(next.finished)) {
            for (int candidate : candidates(next, loose)) {
                if (walk(next, candidate, path)) {
                    return true;
                }
            }
        }
        path.removeLast();
        return false;
    }

    /** Whether some sealant would be past its open time even if only what must come before its joint were done. */
    private boolean dries(BuildSite site) {
        for (int j = site.wet.nextSetBit(0); j >= 0 && keepsOpenTimes; j = site.wet.nextSetBit(j + 1)) {
            BitSet before = (BitSet) ancestors.get(net.snug[j]).clone();
            before.andNot(site.finished);
            long soonest = site.clock + before.stream().mapToLong(site::seconds).sum();
            if (soonest - site.end[net.seal[j]] > site.openSeconds(j)) {
                return true;
            }
        }
        return false;
    }

    /** Whether what is loose would be so even if everything that may be done meanwhile were done. */
    private boolean hopeless(BuildSite site, BitSet loose, BitSet wanted) {
        BuildSite then = site.copy();
        wanted.stream().mapToObj(net.graph::node).forEach(node -> {
            if (node.kind() == Kind.PLACE) {
                then.away.andNot(net.history.lifts.get(node.about()).parts());
            } else if (node.kind() == Kind.SNUG && !net.model.flexible[node.about()]) {
                then.open.clear(node.about());
            }
        });
        return then.loose().intersects(loose);
    }

    private List<Integer> candidates(BuildSite site, BitSet loose) {
        BitSet goals = new BitSet();
        BitSet wanted = new BitSet();
        site.wet.stream().forEach(j -> want(site, net.snug[j], loose, goals, wanted));
        loose.stream().forEach(part -> {
            for (int j : net.model.jointsOfPart[part]) {
                if (net.snug[j] >= 0 && !site.finished.get(net.snug[j])) {
                    want(site, net.snug[j], loose, goals, wanted);
                }
            }
        });
        if (!loose.isEmpty() && hopeless(site, loose, wanted)) {
            return List.of();
        }
        return wanted.stream()
                .filter(site::ready)
                .filter(node -> loose.isEmpty() || holdsStill(node, loose))
                .boxed()
                .sorted(Comparator.comparing((Integer node) -> !goals.get(node))
                        .thenComparing(node -> net.graph.node(node).rank())
                        .thenComparing(node -> node))
                .toList();
    }

    /** Takes in a joint to be put together, with what must come before, if that can be done while something is loose. */
    private void want(BuildSite site, int goal, BitSet loose, BitSet goals, BitSet wanted) {
        BitSet before = (BitSet) ancestors.get(goal).clone();
        before.andNot(site.finished);
        for (int node = before.nextSetBit(0); node >= 0 && !loose.isEmpty(); node = before.nextSetBit(node + 1)) {
            Kind kind = net.graph.node(node).kind();
            if (kind != Kind.PLACE && kind != Kind.SEAL && kind != Kind.SNUG) {
                return;
            }
        }
        goals.set(goal);
        wanted.set(goal);
        wanted.or(before);
    }

    /** Whether a step may be done while something is held by hand. */
    private boolean holdsStill(int node, BitSet loose) {
        BuildGraph.Node step = net.graph.node(node);
        if (step.kind() == Kind.SNUG) {
            for (int part : net.model.jointParts[step.about()]) {
                if (loose.get(part)) {
                    return true;
                }
            }
            return false;
        }
        return step.kind() == Kind.PLACE || step.kind() == Kind.SEAL;
    }
}
