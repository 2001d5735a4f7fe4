package gudgeon.core.planning;

import gudgeon.core.planning.BuildPlan.Kind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the way from one step to a state where nothing is loose and no sealant waits: depth first, the steps that settle
 * most directly first, every set of finished steps once.
 */
final class BuildPaths {
    private static final int STATES = 4000;

    private final BuildNet net;
    private final List<BitSet> ancestors;
    private final boolean keepsOpenTimes;
    private final Set<BitSet> seen = new HashSet<>();

    BuildPaths(BuildNet net, List<BitSet> ancestors, boolean keepsOpenTimes) {
        this.net = net;
        this.ancestors = ancestors;
        this.keepsOpenTimes = keepsOpenTimes;
    }

    /** The steps from a ready one to the next calm state, that step first. */
    Optional<List<Integer>> from(BuildSite site, int first) {
        seen.clear();
        List<Integer> path = new ArrayList<>();
        return walk(site, first, path) ? Optional.of(path) : Optional.empty();
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
        List<Integer> wet = next.wet();
        if (loose.isEmpty() && wet.isEmpty()) {
            return true;
        }
        if (seen.size() < STATES && seen.add(next.finished)) {
            for (int candidate : candidates(next, loose, wet)) {
                if (walk(next, candidate, path)) {
                    return true;
                }
            }
        }
        path.removeLast();
        return false;
    }

    private List<Integer> candidates(BuildSite site, BitSet loose, List<Integer> wet) {
        BitSet goals = new BitSet();
        wet.forEach(j -> goals.set(net.snug[j]));
        loose.stream().forEach(part -> {
            for (int j : net.model.jointsOfPart[part]) {
                if (net.snug[j] >= 0 && !site.finished.get(net.snug[j])) {
                    goals.set(net.snug[j]);
                }
            }
        });
        BitSet wanted = (BitSet) goals.clone();
        goals.stream().forEach(goal -> wanted.or(ancestors.get(goal)));
        wanted.andNot(site.finished);
        return wanted.stream()
                .filter(site::ready)
                .filter(node -> loose.isEmpty() || holdsStill(node, loose))
                .boxed()
                .sorted(Comparator.comparing((Integer node) -> !goals.get(node))
                        .thenComparing(node -> net.graph.node(node).rank())
                        .thenComparing(node -> node))
                .toList();
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
