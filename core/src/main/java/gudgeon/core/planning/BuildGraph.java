package gudgeon.core.planning;

import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Lack;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** The steps of a build and what must come before what. Always without circles. */
final class BuildGraph {
    /**
     * One step.
     *
     * @param about action of a joint or ready operation, index of a lift, circuit or check
     * @param stage 1-based stage; 0 for other steps
     * @param rank where the strip read backwards has it
     */
    record Node(Kind kind, String id, int about, int stage, double rank) {}

    /** @param min shortest time between; 0 for none */
    record Edge(int from, int to, long min, OptionalLong max) {}

    final List<Node> nodes = new ArrayList<>();
    private final List<List<Edge>> outgoing = new ArrayList<>();
    private final List<List<Edge>> incoming = new ArrayList<>();
    private final List<List<Lack>> lacks = new ArrayList<>();
    private final Map<String, Integer> byId = new HashMap<>();
    /** Whether every edge so far goes up in rank: then an edge that does cannot close a circle. */
    private boolean upward = true;

    int add(Kind kind, String id, int about, int stage, double rank) {
        int number = nodes.size();
        nodes.add(new Node(kind, id, about, stage, rank));
        outgoing.add(new ArrayList<>());
        incoming.add(new ArrayList<>());
        lacks.add(new ArrayList<>());
        byId.put(id, number);
        return number;
    }

    Node node(int number) {
        return nodes.get(number);
    }

    int size() {
        return nodes.size();
    }

    /** The step of an id, or -1. */
    int find(String id) {
        return byId.getOrDefault(id, -1);
    }

    List<Edge> into(int node) {
        return incoming.get(node);
    }

    List<Edge> outOf(int node) {
        return outgoing.get(node);
    }

    List<Lack> lacks(int node) {
        return lacks.get(node);
    }

    void lack(int node, Lack lack) {
        if (!lacks.get(node).contains(lack)) {
            lacks.get(node).add(lack);
        }
    }

    /** Puts one step before another, unless that closes a circle; returns whether it holds now. */
    boolean before(int first, int then) {
        return before(first, then, 0, OptionalLong.empty());
    }

    /** The same with times between them. */
    boolean before(int first, int then, long min, OptionalLong max) {
        if (first < 0 || then < 0) {
            return true;
        }
        for (Edge edge : outgoing.get(first)) {
            if (edge.to() == then && edge.min() >= min && max.isEmpty()) {
                return true;
            }
        }
        boolean up = nodes.get(first).rank() < nodes.get(then).rank();
        if (!(upward && up) && (first == then || reaches(then, first))) {
            return false;
        }
        upward &= up;
        Edge edge = new Edge(first, then, min, max);
        outgoing.get(first).add(edge);
        incoming.get(then).add(edge);
        return true;
    }

    boolean reaches(int from, int to) {
        return from == to || reachable(from).get(to);
    }

    /** Every step that must come after one. */
    BitSet reachable(int from) {
        BitSet seen = new BitSet(nodes.size());
        List<Integer> stack = new ArrayList<>(List.of(from));
        while (!stack.isEmpty()) {
            for (Edge edge : outgoing.get(stack.removeLast())) {
                if (!seen.get(edge.to())) {
                    seen.set(edge.to());
                    stack.add(edge.to());
                }
            }
        }
        return seen;
    }

    /** By step, every step that must come before it. */
    List<BitSet> ancestors() {
        List<BitSet> result = new ArrayList<>();
        nodes.forEach(_ -> result.add(new BitSet(nodes.size())));
        for (int node : topological()) {
            for (Edge edge : incoming.get(node)) {
                result.get(node).or(result.get(edge.from()));
                result.get(node).set(edge.from());
            }
        }
        return result;
    }

    private List<Integer> topological() {
        int[] open = new int[nodes.size()];
        List<Integer> order = new ArrayList<>();
        for (int n = 0; n < nodes.size(); n++) {
            open[n] = incoming.get(n).size();
            if (open[n] == 0) {
                order.add(n);
            }
        }
        for (int head = 0; head < order.size(); head++) {
            for (Edge edge : outgoing.get(order.get(head))) {
                if (--open[edge.to()] == 0) {
                    order.add(edge.to());
                }
            }
        }
        return order;
    }
}
