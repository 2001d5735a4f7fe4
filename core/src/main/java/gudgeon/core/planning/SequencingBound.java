package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * What a sequencing problem still costs at least: the greatest of several sums over projections, each with its own shares of
 * the costs ({@link SharedCosts}). One projection looks at the places alone and at all operations, the others at what is
 * done in one place and at every context.
 */
final class SequencingBound {
    private static final int MOST_VALUES = 200_000;

    private final Sequencing problem;
    private final List<Projection> projections = new ArrayList<>();
    private final List<SharedCosts> shares = new ArrayList<>();
    private final int[] states;
    /** All costs are multiples of it, so that bounds may be rounded up to the next. */
    private final int grain;

    SequencingBound(Sequencing problem) {
        this.problem = problem;
        grain = grain();
        long[] all = new long[problem.words];
        TreeMap<Integer, long[]> atPlace = new TreeMap<>();
        for (int c = 0; c < problem.contexts; c++) {
            for (int o : problem.here[c]) {
                all[o >> 6] |= 1L << o;
                atPlace.computeIfAbsent(problem.place[c], key -> new long[problem.words])[o >> 6] |= 1L << o;
            }
        }
        List<Integer> owners = new ArrayList<>();
        take(new Projection(problem, all, dense(problem.place)), -1, owners);
        atPlace.forEach((place, own) -> richest(place, own, owners));
        states = new int[projections.size()];
        if (!projections.isEmpty()) {
            shares.add(first(owners));
        }
    }

    /** The projection of a place that tells most without having too many states. */
    private void richest(int place, long[] own, List<Integer> owners) {
        int[] useful = new int[problem.contexts];
        int[] elsewhere = new int[problem.contexts];
        for (int c = 0; c < problem.contexts; c++) {
            elsewhere[c] = problem.place[c] == place ? problem.contexts + c : problem.place[c];
            useful[c] = bringsNothing(c, place) ? problem.place[c] : problem.contexts + c;
        }
        long[] between = between(own);
        if (!take(new Projection(problem, between, dense(useful)), place, owners)
                && !take(new Projection(problem, between, dense(elsewhere)), place, owners)) {
            take(new Projection(problem, own, dense(useful)), place, owners);
        }
    }

    /** Whether coming to a place from a context elsewhere is no better than from any other context where that is. */
    private boolean bringsNothing(int context, int place) {
        if (problem.place[context] == place) {
            return false;
        }
        for (int c = 0; c < problem.contexts; c++) {
            for (int other = 0; other < problem.contexts; other++) {
                if (problem.place[c] == place
                        && problem.place[other] == problem.place[context]
                        && problem.change[other][c] > problem.change[context][c]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A set with the operations elsewhere that some of its members wait for and that wait for some themselves. */
    private long[] between(long[] own) {
        long[] ancestors = new long[problem.words];
        boolean[] waits = new boolean[problem.operations];
        for (int c = 0; c < problem.contexts; c++) {
            for (int i = 0; i < problem.here[c].length; i++) {
                int o = problem.here[c][i];
                long met = 0;
                for (int w = 0; w < own.length; w++) {
                    met |= problem.needs[c][i][w] & own[w];
                    if ((own[o >> 6] & 1L << o) != 0) {
                        ancestors[w] |= problem.needs[c][i][w];
                    }
                }
                waits[o] |= met != 0;
            }
        }
        long[] result = own.clone();
        for (int o = 0; o < problem.operations; o++) {
            if (waits[o] && (ancestors[o >> 6] & 1L << o) != 0) {
                result[o >> 6] |= 1L << o;
            }
        }
        return result;
    }

    private boolean take(Projection projection, int place, List<Integer> owners) {
        if (projection.from(projection.root(), MOST_VALUES / projection.groups).length == 0) {
            return false;
        }
        projections.add(projection);
        owners.add(place);
        return true;
    }

    private static int[] dense(int[] place) {
        int[] distinct = Arrays.stream(place).distinct().sorted().toArray();
        return Arrays.stream(place).map(p -> Arrays.binarySearch(distinct, p)).toArray();
    }

    private int grain() {
        int divisor = 0;
        for (int c = 0; c < problem.contexts; c++) {
            divisor = divisor(divisor, problem.leave[c]);
            for (int cost : problem.change[c]) {
                divisor = divisor(divisor, cost);
            }
        }
        return Math.max(1, divisor);
    }

    private static int divisor(int a, int b) {
        return b == 0 ? a : divisor(b, a % b);
    }

    /**
     * Shares to begin with: the way between places, less one change of context within a place, to the projection of all
     * places; the rest to the places at both ends.
     */
    private SharedCosts first(List<Integer> owners) {
        int k = problem.contexts;
        int m = projections.size();
        int[][][] change = new int[m][k][k];
        int[][] leave = new int[m][k];
        int within = within();
        for (int c = 0; c < k; c++) {
            for (int d = 0; d < k; d++) {
                int travel = way(problem.place[c], problem.place[d]);
                int tour = Math.max(0, travel - within) * SharedCosts.FINE;
                int rest = problem.change[c][d] * SharedCosts.FINE - tour;
                change[0][c][d] += tour;
                int from = owners.indexOf(problem.place[c]);
                int to = owners.indexOf(problem.place[d]);
                int half = travel > 0 && from >= 0 && to >= 0 ? rest / 2 : rest;
                change[Math.max(0, to)][c][d] += half;
                change[Math.max(0, from)][c][d] += rest - half;
            }
            int tour = Math.max(0, problem.leave[c] - within) * SharedCosts.FINE;
            leave[0][c] += tour;
            leave[Math.max(0, owners.indexOf(problem.place[c]))][c] += problem.leave[c] * SharedCosts.FINE - tour;
        }
        return new SharedCosts(problem, projections, change, leave);
    }

    /** The least that a change of context within a place costs. */
    private int within() {
        int least = Integer.MAX_VALUE;
        for (int c = 0; c < problem.contexts; c++) {
            for (int d = 0; d < problem.contexts; d++) {
                if (problem.place[c] == problem.place[d] && problem.change[c][d] > 0) {
                    least = Math.min(least, problem.change[c][d]);
                }
            }
        }
        return least == Integer.MAX_VALUE ? 0 : least;
    }

    private int way(int from, int to) {
        int least = Integer.MAX_VALUE;
        for (int c = 0; c < problem.contexts; c++) {
            for (int d = 0; d < problem.contexts; d++) {
                if (problem.place[c] == from && problem.place[d] == to) {
                    least = Math.min(least, problem.change[c][d]);
                }
            }
        }
        return from == to ? 0 : least;
    }

    /** Improves the bound where it will be asked for: at a state, against what is known to be enough from there. */
    void improve(long[] done, int context, long enough, int steps, boolean apart) {
        if (shares.isEmpty()) {
            return;
        }
        SharedCosts improved = apart ? shares.getFirst().copy() : shares.getFirst();
        int[] at = new int[states.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = projections.get(i).state(done, context);
        }
        improved.improve(at, context, enough * SharedCosts.FINE, steps);
        if (apart) {
            shares.add(improved);
        }
    }

    /** Lower bound of what is left when some operations are done and one is in a context. */
    int remaining(long[] done, int context) {
        for (int i = 0; i < states.length; i++) {
            states[i] = projections.get(i).state(done, context);
        }
        long least = 0;
        for (SharedCosts share : shares) {
            least = Math.max(least, share.remaining(states, context));
        }
        long unit = (long) grain * SharedCosts.FINE;
        return (int) ((least + unit - 1) / unit * grain);
    }
}
