package gudgeon.bench.selective;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An AND/OR graph of subassemblies: to take a node apart one of its arcs is chosen, at its cost, and all nodes of that arc
 * are there. Trees of arcs are enumerated; the cheapest that takes all apart, and the cheapest that sets one node free.
 */
final class AndOrGraph {
    private record Arc(long cost, List<String> children) {}

    private final Map<String, List<Arc>> arcs = new LinkedHashMap<>();
    private final Set<String> nodes = new LinkedHashSet<>();
    private String root = "";

    /** Reads the text form: a head line, a line for each node, then for each arc "count parent cost" and its children. */
    static AndOrGraph read(Path file) throws IOException {
        AndOrGraph graph = new AndOrGraph();
        List<String> lines =
                Files.readAllLines(file).stream().map(String::strip).filter(l -> !l.isEmpty()).toList();
        String[] head = lines.getFirst().split("\\s+");
        int count = Integer.parseInt(head[1]);
        graph.root = head[2];
        for (String line : lines.subList(1, count + 1)) {
            graph.nodes.add(line.split("\\s+")[0]);
        }
        for (int at = count + 1; at < lines.size(); ) {
            String[] arc = lines.get(at).split("\\s+");
            int children = Integer.parseInt(arc[0]);
            graph.arcs
                    .computeIfAbsent(arc[1], key -> new ArrayList<>())
                    .add(new Arc(Long.parseLong(arc[2]), List.copyOf(lines.subList(at + 1, at + 1 + children))));
            at += 1 + children;
        }
        return graph;
    }

    /** Nodes that cannot be taken apart, in file order. */
    List<String> parts() {
        return nodes.stream().filter(node -> !arcs.containsKey(node)).toList();
    }

    /** What each way of taking everything apart costs. */
    List<Long> complete() {
        return complete(root).stream().sorted().toList();
    }

    private List<Long> complete(String node) {
        if (!arcs.containsKey(node)) {
            return List.of(0L);
        }
        List<Long> costs = new ArrayList<>();
        for (Arc arc : arcs.getOrDefault(node, List.of())) {
            List<Long> sums = List.of(arc.cost());
            for (String child : arc.children()) {
                List<Long> more = complete(child);
                sums = sums.stream()
                        .flatMap(sum -> more.stream().map(cost -> sum + cost))
                        .toList();
            }
            costs.addAll(sums);
        }
        return costs;
    }

    /** The least cost of having a node on its own. */
    long free(String wanted) {
        return free(root, wanted);
    }

    private long free(String node, String wanted) {
        if (node.equals(wanted)) {
            return 0;
        }
        long least = Long.MAX_VALUE;
        for (Arc arc : arcs.getOrDefault(node, List.of())) {
            for (String child : arc.children()) {
                long more = free(child, wanted);
                least = more == Long.MAX_VALUE ? least : Math.min(least, arc.cost() + more);
            }
        }
        return least;
    }
}
