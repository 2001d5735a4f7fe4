package gudgeon.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * In which order to try repairs when exactly one thing is wrong. An action is tried at a cost, and mends what it mends at a
 * further cost; it may need a level of opening, and every level up to it is opened once. Expected cost of an order: for each
 * action what is still wrong times (opening not yet done + trying) plus the chance that it is this one times mending. Source:
 * [TROUBLE]; the best order is found exactly over subsets of actions, because dividing chance by cost is not optimal when
 * actions share faults or openings.
 */
public final class RepairOrder {
    private static final int MOST_ACTIONS = 16;
    private static final double NOTHING_LEFT = 1e-12;

    private final double[] chances;
    private final double[] openings;
    private final List<Action> actions;
    private final double[] left; // by set of actions done
    private final double[] spent; // opening, by set of actions done

    /**
     * One thing that can be tried.
     *
     * @param name its name
     * @param mends which faults it mends, by index
     * @param tryCost paid when it is tried
     * @param mendCost paid when it turns out to be the one
     * @param level the level of opening that it needs; -1 for none
     */
    public record Action(String name, List<Integer> mends, double tryCost, double mendCost, int level) {
        public Action {
            mends = List.copyOf(mends);
            if (!(tryCost >= 0 && mendCost >= 0) || level < -1) {
                throw new IllegalArgumentException(name + " has a negative cost or level");
            }
        }
    }

    /**
     * An order of actions and what it costs on average.
     *
     * @param names the actions in order, those that are still needed when they come
     * @param cost expected cost, in the unit of the costs
     */
    public record Costed(List<String> names, double cost) {
        public Costed {
            names = List.copyOf(names);
        }
    }

    /**
     * @param chances for each fault the chance that it is the one
     * @param openings for each level what it costs to open it when the level before is open
     * @param actions what can be tried, at most 16
     */
    public RepairOrder(double[] chances, double[] openings, List<Action> actions) {
        this.chances = chances.clone();
        this.openings = openings.clone();
        this.actions = List.copyOf(actions);
        if (actions.size() > MOST_ACTIONS) {
            throw new IllegalArgumentException(actions.size() + " actions; at most " + MOST_ACTIONS + " are ordered exactly");
        }
        for (Action action : actions) {
            if (action.level() >= openings.length) {
                throw new IllegalArgumentException(action.name() + " needs level " + action.level()
                        + ", the deepest is " + (openings.length - 1));
            }
        }
        left = new double[1 << actions.size()];
        spent = new double[left.length];
        byDone();
    }

    /** What is left and what opening has cost, for every set of actions done, from the set without its last action. */
    private void byDone() {
        if (chances.length > Long.SIZE) {
            throw new IllegalArgumentException(chances.length + " faults; at most " + Long.SIZE + " are ordered");
        }
        long[] mended = new long[left.length];
        int[] opened = new int[left.length];
        left[0] = Arrays.stream(chances).sum();
        opened[0] = -1;
        for (int done = 1; done < left.length; done++) {
            int before = done & done - 1;
            Action last = actions.get(Integer.numberOfTrailingZeros(done));
            mended[done] = mended[before];
            left[done] = left[before];
            for (int fault : last.mends()) {
                if ((mended[done] & 1L << fault) == 0) {
                    mended[done] |= 1L << fault;
                    left[done] -= chances[fault];
                }
            }
            opened[done] = Math.max(opened[before], last.level());
            spent[done] = spent[before];
            for (int level = opened[before] + 1; level <= last.level(); level++) {
                spent[done] += openings[level];
            }
        }
    }

    /** Expected cost of trying the actions in this order. */
    public double cost(List<String> order) {
        int done = 0;
        double cost = 0;
        for (String name : order) {
            int action = index(name);
            if (left(done) < NOTHING_LEFT) {
                break;
            }
            cost += step(done, action);
            done |= 1 << action;
        }
        return cost;
    }

    /** The cheapest order that leaves nothing unmended that any action mends. */
    public Costed best() {
        int all = (1 << actions.size()) - 1;
        double[] cost = new double[all + 1];
        int[] choice = new int[all + 1];
        double reachable = left(all);
        for (int done = all; done >= 0; done--) {
            if (left(done) - reachable < NOTHING_LEFT) {
                choice[done] = -1;
                continue;
            }
            cost[done] = Double.POSITIVE_INFINITY;
            for (int action = 0; action < actions.size(); action++) {
                if ((done & 1 << action) == 0) {
                    double total = step(done, action) + cost[done | 1 << action];
                    if (total < cost[done]) {
                        cost[done] = total;
                        choice[done] = action;
                    }
                }
            }
        }
        List<String> names = new ArrayList<>();
        for (int done = 0; choice[done] >= 0; done |= 1 << choice[done]) {
            names.add(actions.get(choice[done]).name());
        }
        return new Costed(names, cost[0]);
    }

    /**
     * The order by chance of what is still wrong over cost of trying, the usual rule of thumb: optimal when each action mends
     * one fault of its own and nothing is opened.
     */
    public Costed byRatio() {
        List<String> names = new ArrayList<>();
        int done = 0;
        while (names.size() < actions.size()) {
            int best = -1;
            double most = -1;
            for (int action = 0; action < actions.size(); action++) {
                double ratio = (left(done) - left(done | 1 << action)) / actions.get(action).tryCost();
                if ((done & 1 << action) == 0 && ratio > most) {
                    best = action;
                    most = ratio;
                }
            }
            names.add(actions.get(best).name());
            done |= 1 << best;
        }
        return new Costed(names, cost(names));
    }

    private int index(String name) {
        for (int i = 0; i < actions.size(); i++) {
            if (actions.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no action is called " + name);
    }

    private double step(int done, int action) {
        Action next = actions.get(action);
        int then = done | 1 << action;
        return left[done] * (spent[then] - spent[done] + next.tryCost()) + (left[done] - left[then]) * next.mendCost();
    }

    private double left(int done) {
        return left[done];
    }

    @Override
    public String toString() {
        return actions + " for " + Arrays.toString(chances);
    }
}
