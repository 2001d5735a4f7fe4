package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The sequence of least cost, by A* over closed states: whoever is in a context has done all that can be done there. A beam
 * finds a first sequence; then states come in the order of what a sequence through them costs at least, until one is
 * complete or the budget is used up. Where going through another context never saves anything, a state is passed over
 * when another one in the same context has done more for no more.
 */
final class SequencingSearch {
    private static final int BEAM = 40;
    /** Steps to improve the bound at the start; at later states a third of them. */
    private static final int STEPS = 90;

    private static final int FAR = Integer.MAX_VALUE / 2;

    private final Sequencing problem;
    private final SequencingBound bound;
    private final long budget;

    private final SetTable table;
    private int[] spent = new int[1024];
    private int[] estimate = new int[1024];
    private int[] parent = new int[1024];
    private boolean[] closed = new boolean[1024];
    private final StateQueue queue = new StateQueue();
    private final PassedOver passedOver;
    private long expanded;

    /**
     * A sequence of contexts, each entered to do all that can be done there.
     *
     * @param cost what it costs
     * @param lowerBound no sequence costs less
     * @param contexts where one is, one after another, the start first
     * @param expanded states looked at
     */
    record Found(int cost, int lowerBound, int[] contexts, long expanded) {}

    SequencingSearch(Sequencing problem, SequencingBound bound, long budget) {
        this.problem = problem;
        this.bound = bound;
        this.budget = budget;
        table = new SetTable(problem.words);
        passedOver = new PassedOver(problem.contexts, problem.words);
    }

    /** The best sequence. With none found it has no contexts, and when there is none its lower bound is the largest number. */
    Found run() {
        long[] done = new long[problem.words];
        problem.close(done, problem.start);
        int root = node(done, problem.start, 0, -1);
        if (Sequencing.count(done) == problem.operations) {
            return new Found(estimate[root], estimate[root], path(root), 0);
        }
        int[] dive = dive(root);
        int best = dive.length == 0 ? FAR : estimate[dive[0]];
        int[] bestPath = dive.length == 0 ? new int[0] : path(dive[0]);
        if (best < FAR) {
            sharpen(done, best, dive[0]);
        }
        forget();
        root = node(done, problem.start, 0, -1);
        queue.add(estimate[root], 0, root);
        long[] set = new long[problem.words];
        long[] after = new long[problem.words];
        while (!queue.isEmpty()) {
            int node = queue.remove();
            if (closed[node]) {
                continue;
            }
            if (estimate[node] >= best) {
                return new Found(best, best, bestPath, expanded);
            }
            if (expanded >= budget) {
                return new Found(best, estimate[node], bestPath, expanded);
            }
            closed[node] = true;
            table.copy(node, set);
            int context = table.tag(node);
            if (problem.metric && passedOver.covers(set, context, spent[node])) {
                continue;
            }
            if (problem.metric) {
                passedOver.add(set, context, spent[node]);
            }
            expanded++;
            for (int c = 0; c < problem.contexts; c++) {
                System.arraycopy(set, 0, after, 0, set.length);
                if (c == context || !problem.close(after, c)) {
                    continue;
                }
                int cost = spent[node] + problem.change[context][c];
                int child = visit(after, c, cost, node, best);
                if (child >= 0 && Sequencing.count(after) == problem.operations && estimate[child] < best) {
                    best = estimate[child];
                    bestPath = path(child);
                }
            }
        }
        return new Found(best, best == FAR ? Integer.MAX_VALUE : best, bestPath, expanded);
    }

    /** Improves the bound at the start and half way along the first sequence. */
    private void sharpen(long[] done, int best, int last) {
        bound.improve(done, problem.start, best, STEPS, false);
        List<Integer> nodes = new ArrayList<>();
        for (int n = last; n >= 0; n = parent[n]) {
            nodes.addFirst(n);
        }
        long[] set = new long[problem.words];
        for (int part = 1; part < 3; part++) {
            int node = nodes.get(nodes.size() * part / 3);
            table.copy(node, set);
            bound.improve(set, table.tag(node), best - spent[node], STEPS / 3, true);
        }
    }

    private void forget() {
        Arrays.fill(spent, 0, table.size(), FAR);
        Arrays.fill(closed, 0, table.size(), false);
    }

    private int node(long[] done, int context, int cost, int from) {
        int before = table.size();
        int node = table.number(done, context);
        if (node == spent.length) {
            spent = Arrays.copyOf(spent, 2 * node);
            estimate = Arrays.copyOf(estimate, 2 * node);
            parent = Arrays.copyOf(parent, 2 * node);
            closed = Arrays.copyOf(closed, 2 * node);
        }
        if (node == before || spent[node] >= FAR) {
            spent[node] = cost;
            parent[node] = from;
            estimate[node] = cost + remaining(done, context);
        }
        return node;
    }

    private int remaining(long[] done, int context) {
        return Sequencing.count(done) == problem.operations
                ? problem.leave[context]
                : bound.remaining(done, context);
    }

    /** Takes a state up when it is worth it; -1 when not. */
    private int visit(long[] done, int context, int cost, int from, int below) {
        int known = table.find(done, context);
        if (known >= 0 && spent[known] <= cost && spent[known] < FAR) {
            return -1;
        }
        int node = known >= 0 && spent[known] < FAR ? known : node(done, context, cost, from);
        if (known >= 0 && spent[node] > cost) {
            estimate[node] += cost - spent[node];
            spent[node] = cost;
            parent[node] = from;
            closed[node] = false;
        }
        if (estimate[node] < below) {
            queue.add(estimate[node], problem.operations - Sequencing.count(done), node);
        }
        return node;
    }

    /** A complete state at the end of a beam; empty when the beam died. */
    private int[] dive(int root) {
        List<Integer> level = List.of(root);
        int best = -1;
        long[] set = new long[problem.words];
        long[] after = new long[problem.words];
        while (!level.isEmpty()) {
            List<Integer> next = new ArrayList<>();
            for (int node : level) {
                table.copy(node, set);
                int context = table.tag(node);
                for (int c = 0; c < problem.contexts; c++) {
                    System.arraycopy(set, 0, after, 0, set.length);
                    if (c != context && problem.close(after, c)) {
                        int child = visit(after, c, spent[node] + problem.change[context][c], node, 0);
                        if (child >= 0 && Sequencing.count(after) == problem.operations) {
                            best = best < 0 || estimate[child] < estimate[best] ? child : best;
                        } else if (child >= 0) {
                            next.add(child);
                        }
                    }
                }
            }
            int limit = best < 0 ? FAR : estimate[best];
            level = next.stream()
                    .distinct()
                    .filter(node -> estimate[node] < limit)
                    .sorted((a, b) -> Integer.compare(estimate[a], estimate[b]))
                    .limit(BEAM)
                    .toList();
        }
        return best < 0 ? new int[0] : new int[] {best};
    }

    private int[] path(int last) {
        List<Integer> contexts = new ArrayList<>();
        for (int n = last; n >= 0; n = parent[n]) {
            contexts.addFirst(table.tag(n));
        }
        return contexts.stream().mapToInt(Integer::intValue).toArray();
    }
}
