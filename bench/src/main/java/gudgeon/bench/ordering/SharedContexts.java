package gudgeon.bench.ordering;

import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.Sequencing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sees the contexts in a problem: nodes between which one changes for nothing and which look alike from everywhere else are
 * done with the same tools at the same place. Where then the costs obey the triangle inequality, doing all that can be done
 * before changing never hurts, and the problem is one of contexts. Entries of -1 say nothing about the cost and agree with
 * any.
 *
 * @param members by context: its nodes; the first context is the first node alone
 * @param numbers the problem in contexts; its operations are the nodes 1 to n - 2, numbered from 0
 */
public record SharedContexts(List<List<Integer>> members, Sequencer.Numbers numbers) {
    public SharedContexts {
        members = members.stream().map(List::copyOf).toList();
    }

    /** The contexts of a problem; empty when fewer than half of the nodes share one or going round can be cheaper. */
    public static Optional<SharedContexts> find(SopInstance instance) {
        int[][] e = instance.entries();
        int n = e.length;
        List<List<Integer>> members = new ArrayList<>();
        members.add(new ArrayList<>(List.of(0)));
        for (int node = 1; node < n - 1; node++) {
            join(e, members, node);
        }
        if (2 * members.size() > n || !oneCost(e, members)) {
            return Optional.empty();
        }
        int[][] change = change(e, members);
        if (!closes(change)) {
            return Optional.empty();
        }
        int[] leave = new int[members.size()];
        for (int c = 1; c < leave.length; c++) {
            leave[c] = members.get(c).stream().mapToInt(node -> e[node][n - 1]).max().orElse(0);
        }
        return Optional.of(new SharedContexts(
                members, new Sequencer.Numbers(modes(instance, members), change, leave, places(change), 0)));
    }

    private static void join(int[][] e, List<List<Integer>> members, int node) {
        for (List<Integer> context : members.subList(1, members.size())) {
            if (context.stream().allMatch(other -> alike(e, node, other))) {
                context.add(node);
                return;
            }
        }
        members.add(new ArrayList<>(List.of(node)));
    }

    private static boolean alike(int[][] e, int a, int b) {
        if (e[a][b] > 0 || e[b][a] > 0) {
            return false;
        }
        for (int k = 0; k < e.length; k++) {
            boolean other = k != a && k != b;
            if (other && (!agree(e[a][k], e[b][k]) || !agree(e[k][a], e[k][b]))) {
                return false;
            }
        }
        return true;
    }

    private static boolean agree(int a, int b) {
        return a == b || a == -1 || b == -1;
    }

    /** Whether all that is known about the cost from one context to another is the same. */
    private static boolean oneCost(int[][] e, List<List<Integer>> members) {
        return members.stream().allMatch(a -> members.stream().allMatch(b -> a == b
                || a.stream().flatMapToInt(from -> b.stream().mapToInt(to -> e[from][to]))
                                .filter(cost -> cost >= 0)
                                .distinct()
                                .count()
                        <= 1));
    }

    /** Context to context; the first one is never gone back to. */
    private static int[][] change(int[][] e, List<List<Integer>> members) {
        int k = members.size();
        int[][] change = new int[k][k];
        int dearest = 0;
        for (int a = 0; a < k; a++) {
            for (int b = 1; b < k; b++) {
                int known = -1;
                for (int from : members.get(a)) {
                    for (int to : members.get(b)) {
                        known = a != b ? Math.max(known, e[from][to]) : 0;
                    }
                }
                change[a][b] = known;
                dearest = Math.max(dearest, known);
            }
        }
        for (int a = 1; a < k; a++) {
            change[a][0] = dearest;
        }
        return filled(change);
    }

    /** What no entry tells is the shortest way round: nobody ever changes there, since one side is done by then. */
    private static int[][] filled(int[][] change) {
        int k = change.length;
        long[][] way = new long[k][k];
        for (int a = 0; a < k; a++) {
            for (int b = 0; b < k; b++) {
                way[a][b] = change[a][b] < 0 ? 1_000_000 : change[a][b];
            }
        }
        for (int via = 0; via < k; via++) {
            for (int a = 0; a < k; a++) {
                for (int b = 0; b < k; b++) {
                    way[a][b] = Math.min(way[a][b], way[a][via] + way[via][b]);
                }
            }
        }
        int[][] result = new int[k][k];
        for (int a = 0; a < k; a++) {
            for (int b = 0; b < k; b++) {
                result[a][b] = change[a][b] < 0 ? (int) way[a][b] : change[a][b];
            }
        }
        return result;
    }

    private static boolean closes(int[][] change) {
        int k = change.length;
        return IntStream.range(0, k * k * k)
                .allMatch(i -> change[i / k / k][i / k % k] + change[i / k % k][i % k] >= change[i / k / k][i % k]);
    }

    private static List<List<Sequencing.Mode>> modes(SopInstance instance, List<List<Integer>> members) {
        int n = instance.size();
        boolean[][] closed = closed(instance.precedes());
        int[] context = new int[n];
        for (int c = 0; c < members.size(); c++) {
            for (int node : members.get(c)) {
                context[node] = c;
            }
        }
        List<List<Sequencing.Mode>> modes = new ArrayList<>();
        for (int node = 1; node < n - 1; node++) {
            List<Integer> needs = new ArrayList<>();
            for (int other = 1; other < n - 1; other++) {
                if (closed[other][node]) {
                    needs.add(other - 1);
                }
            }
            modes.add(List.of(new Sequencing.Mode(context[node], needs)));
        }
        return modes;
    }

    private static boolean[][] closed(boolean[][] precedes) {
        int n = precedes.length;
        for (int via = 0; via < n; via++) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; precedes[a][via] && b < n; b++) {
                    precedes[a][b] |= precedes[via][b];
                }
            }
        }
        return precedes;
    }

    /**
     * Places: contexts that are close to each other. The costs are cut at their widest relative gap where that leaves clear
     * clusters; else every context is a place of its own.
     */
    private static int[] places(int[][] change) {
        int k = change.length;
        int[] costs = IntStream.range(0, k * k)
                .filter(i -> i / k > 0 && i % k > 0 && i / k != i % k)
                .map(i -> change[i / k][i % k])
                .distinct()
                .sorted()
                .toArray();
        int[] place = IntStream.range(0, k).toArray();
        double widest = 1.5;
        for (int i = 1; i < costs.length; i++) {
            double gap = costs[i] / Math.max(0.5, costs[i - 1]);
            int[] clusters = clusters(change, costs[i - 1]);
            if (gap > widest && clusters.length > 0) {
                widest = gap;
                place = clusters;
            }
        }
        return place;
    }

    /** Clusters of contexts within a cost of each other; empty when they are not clear. */
    private static int[] clusters(int[][] change, int within) {
        int k = change.length;
        int[] place = new int[k];
        Arrays.fill(place, -1);
        for (int a = 0; a < k; a++) {
            for (int b = 0; b < k; b++) {
                if (place[b] < 0 && (a == b || (a > 0 && b > 0 && change[a][b] <= within && place[a] == a))) {
                    place[b] = a;
                }
            }
        }
        for (int a = 1; a < k; a++) {
            for (int b = 1; b < k; b++) {
                if (a != b && (place[a] == place[b]) != (change[a][b] <= within)) {
                    return new int[0];
                }
            }
        }
        return place;
    }

    /** An order of all nodes that goes through contexts and does in each all that can be done there. */
    public List<Integer> order(List<Integer> contexts, int size) {
        List<Integer> order = new ArrayList<>(List.of(0));
        boolean[] done = new boolean[size];
        for (int context : contexts) {
            boolean again = true;
            while (again) {
                again = false;
                for (int node : members.get(context)) {
                    if (node > 0 && !done[node - 1]
                            && numbers.modes().get(node - 1).getFirst().needs().stream().allMatch(o -> done[o])) {
                        done[node - 1] = true;
                        order.add(node);
                        again = true;
                    }
                }
            }
        }
        order.add(size - 1);
        return order;
    }
}
