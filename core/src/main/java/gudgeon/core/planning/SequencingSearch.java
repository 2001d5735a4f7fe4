package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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

    /** So many states are looked at before the bound is improved. */
    private static final int EASY = 400;

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
    private int best = FAR;
    private int bestNode = -1;
    private int[] bestPath = new int[0];

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
        begin(done);
        if (best < FAR && Sequencing.count(done) == problem.operations) {
            return new Found(best, best, path(bestNode), 0);
        }
        Found found = explore(Math.min(budget, EASY));
        if (found.cost() > found.lowerBound() && budget > EASY) {
            if (best < FAR) {
                sharpen(done);
            }
            begin(done);
            found = explore(budget);
        }
        return found;
    }

    /** Starts afresh, with a first sequence from a beam. */
    private void begin(long[] done) {
        forget();
        dive(node(done, problem.start, 0, -1));
        forget();
        queue.clear();
        passedOver.clear();
        int root = node(done, problem.start, 0, -1);
        if (Sequencing.count(done) == problem.operations) {
            take(root);
        }
        queue.add(estimate[root], 0, root);
    }

    private void take(int complete) {
        if (estimate[complete] < best) {
            best = estimate[complete];
            bestNode = complete;
            bestPath = path(complete);
        }
    }

    private Found explore(long limit) {
        long[] set = new long[problem.words];
        while (!queue.isEmpty()) {
            int node = queue.remove();
            if (closed[node]) {
                continue;
            }
            if (estimate[node] >= best) {
                return new Found(best, best, bestPath, expanded);
            }
            if (expanded >= limit) {
                return new Found(best, estimate[node], bestPath, expanded);
            }
            closed[node] = true;
            table.copy(node, set);
            if (!superfluous(set, table.tag(node), spent[node])) {
                expanded++;
                expand(node, set);
            }
        }
        return new Found(best, best == FAR ? Integer.MAX_VALUE : best, bestPath, expanded);
    }

    private boolean superfluous(long[] done, int context, int cost) {
        if (!problem.metric) {
            return false;
        }
        if (passedOver.covers(done, context, cost)) {
            return true;
        }
        passedOver.add(done, context, cost);
        return false;
    }

    private void expand(int node, long[] set) {
        int context = table.tag(node);
        long[] after = new long[set.length];
        for (int c = 0; c < problem.contexts; c++) {
            System.arraycopy(set, 0, after, 0, set.length);
            if (c != context && problem.close(after, c)) {
                int child = visit(after, c, spent[node] + problem.change[context][c], node, best);
                if (child >= 0 && Sequencing.count(after) == problem.operations) {
                    take(child);
                }
            }
        }
    }

    /** Improves the bound at the start and half way along the first sequence. */
    private void sharpen(long[] done) {
        bound.improve(done, problem.start, best, STEPS, false);
        List<Integer> nodes = new ArrayList<>();
        for (int n = bestNode; n >= 0; n = parent[n]) {
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

    /** A sequence by keeping the most promising few states of each length. */
    private void dive(int root) {
        List<Integer> level = List.of(root);
        long[] set = new long[problem.words];
        long[] after = new long[problem.words];
        while (!level.isEmpty()) {
            Set<Integer> next = new LinkedHashSet<>();
            for (int node : level) {
                table.copy(node, set);
                int context = table.tag(node);
                for (int c = 0; c < problem.contexts; c++) {
                    System.arraycopy(set, 0, after, 0, set.length);
                    if (c != context && problem.close(after, c)) {
                        int child = visit(after, c, spent[node] + problem.change[context][c], node, 0);
                        if (child >= 0 && Sequencing.count(after) == problem.operations) {
                            take(child);
                        } else if (child >= 0) {
                            next.add(child);
                        }
                    }
                }
            }
            level = next.stream()
                    .filter(node -> estimate[node] < best)
                    .sorted((a, b) -> Integer.compare(estimate[a], estimate[b]))
                    .limit(BEAM)
                    .toList();
        }
    }

    private int[] path(int last) {
        List<Integer> contexts = new ArrayList<>();
        for (int n = last; n >= 0; n = parent[n]) {
            contexts.addFirst(table.tag(n));
        }
        return contexts.stream().mapToInt(Integer::intValue).toArray();
    }
}
