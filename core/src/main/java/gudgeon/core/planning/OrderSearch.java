package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The order of least changeover, by A* over closed states. A state is closed by doing at once what costs nothing and cannot
 * hurt: operations in the present zone with exactly the present tool set that no hold wants intact, and lifts after which
 * no remaining operation's zone can change. All else is branched on. Loose pieces are the one thing that doing something
 * early can spoil: a search that heeds them and closes states may miss orders, and says so.
 */
final class OrderSearch {
    private static final int BEAM = 60;

    private final OrderProblem problem;
    private final OrderBound bound;
    private final Precedences precedences;
    private final long budget;
    private final boolean closing;
    private final boolean heedLoose;
    private final Map<Key, Long> reached = new HashMap<>();
    private final Dominance dominance;
    private long expanded;
    private long sequence;
    private boolean looseCut;
    /** What the last run proved: no order costs less. */
    private long floor;

    /** What the last run proved: no order costs less. */
    long floor() {
        return floor;
    }

    long expanded() {
        return expanded;
    }

    /** Whether a run ended because no more states could be expanded. */
    boolean exhausted() {
        return expanded >= budget;
    }

    /** Whether a loose piece has cut a branch or a choice, so that what was not found may still exist. */
    boolean looseCut() {
        return looseCut;
    }

    /** The order that a dive alone finds, nothing being proven about it. */
    Optional<Found> first() {
        return dive(settle(root()), Long.MAX_VALUE).map(node -> result(node, 0));
    }

    /** One step: an action, or parts lifted. */
    record Step(int action, int[] lifted) {
        static final int LIFT = -1;

        boolean isLift() {
            return action == LIFT;
        }
    }

    /** An order with what was proven about it. */
    record Found(List<Step> steps, long changeover, long lowerBound, String method, long expanded) {}

    /** What makes two nodes the same state. The hash of a bit set is poor where few bits differ, so it is mixed here. */
    private record Key(BitSet operations, BitSet moved, int zone, int toolSet, int mixed) {
        static Key of(Node node) {
            long hash = node.zone * 31L + node.toolSet;
            for (long word : node.operations.toLongArray()) {
                hash = (hash ^ word) * 0x9E3779B97F4A7C15L;
                hash ^= hash >>> 29;
            }
            return new Key(node.operations, node.state.moved, node.zone, node.toolSet, (int) (hash ^ (hash >>> 32)));
        }

        @Override
        public int hashCode() {
            return mixed;
        }
    }

    private static final class Node implements Comparable<Node> {
        final State state;
        final BitSet operations;
        int zone;
        int toolSet;
        long spent;
        long estimate;
        long sequence;
        final @Nullable Node parent;
        final List<Step> steps = new ArrayList<>();

        Node(State state, BitSet operations, @Nullable Node parent) {
            this.state = state;
            this.operations = operations;
            this.parent = parent;
            if (parent != null) {
                zone = parent.zone;
                toolSet = parent.toolSet;
                spent = parent.spent;
            }
        }

        @Override
        public int compareTo(Node other) {
            int byEstimate = Long.compare(estimate, other.estimate);
            if (byEstimate != 0) {
                return byEstimate;
            }
            int byDepth = Integer.compare(other.operations.cardinality(), operations.cardinality());
            return byDepth != 0 ? byDepth : Long.compare(sequence, other.sequence);
        }
    }

    /**
     * @param budget states that may be expanded
     * @param closing whether states are closed
     * @param heedLoose whether loose pieces are looked at
     */
    OrderSearch(
            OrderProblem problem,
            OrderBound bound,
            Precedences precedences,
            long budget,
            boolean closing,
            boolean heedLoose) {
        this.problem = problem;
        this.bound = bound;
        this.precedences = precedences;
        this.budget = budget;
        this.closing = closing;
        this.heedLoose = heedLoose;
        dominance = new Dominance(problem);
    }

    /** The best order cheaper than a ceiling; empty when there is none or the budget ran out before one was found. */
    Optional<Found> run(long ceiling) {
        List<Node> roots = settle(root());
        Optional<Node> incumbent = dive(roots, ceiling);
        reached.clear();
        PriorityQueue<Node> queue = new PriorityQueue<>();
        long best = incumbent.map(node -> node.estimate).orElse(ceiling);
        floor = best;
        roots.forEach(root -> offer(queue, root, Long.MAX_VALUE));
        while (!queue.isEmpty()) {
            Node node = queue.remove();
            if (node.estimate >= best && incumbent.isPresent() || node.estimate >= ceiling) {
                break;
            }
            if (finished(node)) {
                floor = node.estimate;
                return Optional.of(result(node, node.estimate));
            }
            if (expanded >= budget) {
                long lowest = node.estimate;
                floor = lowest;
                return incumbent.map(found -> result(found, lowest));
            }
            if (stale(node) || (closing && superfluous(node))) {
                continue;
            }
            expanded++;
            dominance.add(node.operations, node.state.moved, node.zone, node.toolSet, node.spent);
            for (Node child : successors(node)) {
                if (child.estimate < best) {
                    offer(queue, child, best);
                }
            }
        }
        return incumbent.map(found -> result(found, found.estimate));
    }

    private boolean superfluous(Node node) {
        return dominance.dominated(node.operations, node.state.moved, node.zone, node.toolSet, node.spent);
    }

    private boolean stale(Node node) {
        Long known = reached.get(key(node));
        return known != null && known < node.spent;
    }

    private void offer(PriorityQueue<Node> queue, Node node, long below) {
        if (node.estimate >= below) {
            return;
        }
        Key key = key(node);
        Long known = reached.get(key);
        if (known == null || known > node.spent) {
            reached.put(key, node.spent);
            queue.add(node);
        }
    }

    private static Key key(Node node) {
        return Key.of(node);
    }

    /** A first order by keeping the most promising few states of each length. */
    private Optional<Node> dive(List<Node> roots, long ceiling) {
        List<Node> level = new ArrayList<>(roots);
        Node best = null;
        while (!level.isEmpty()) {
            List<Node> next = new ArrayList<>();
            for (Node node : level) {
                if (finished(node)) {
                    if (best == null || node.estimate < best.estimate) {
                        best = node;
                    }
                } else {
                    for (Node child : successors(node)) {
                        long limit = best == null ? ceiling : best.estimate;
                        Long known = reached.get(key(child));
                        if (child.estimate < limit && (known == null || known > child.spent)) {
                            reached.put(key(child), child.spent);
                            next.add(child);
                        }
                    }
                }
            }
            Collections.sort(next);
            level = next.size() > BEAM ? new ArrayList<>(next.subList(0, BEAM)) : next;
        }
        return Optional.ofNullable(best);
    }

    private boolean finished(Node node) {
        return node.operations.cardinality() == problem.size() && (!heedLoose || !isLoose(node.state));
    }

    private boolean isLoose(State state) {
        return !state.loose(problem.tolerated).isEmpty();
    }

    private Node root() {
        State state = State.of(problem.model, problem.reach.initial().done, new BitSet(), problem.frame);
        Node root = new Node(state, new BitSet(), null);
        root.zone = problem.start;
        return root;
    }

    private List<Node> successors(Node node) {
        List<Node> children = new ArrayList<>();
        node.state.refresh();
        boolean loose = heedLoose && isLoose(node.state);
        for (int[] set : problem.reach.lifting().all(node.state)) {
            Node child = new Node(node.state.copy(), (BitSet) node.operations.clone(), node);
            lift(child, set);
            children.addAll(settle(child));
        }
        if (loose) {
            looseCut = true;
            return children;
        }
        BitSet covered = new BitSet(problem.size());
        for (int o = 0; o < problem.size(); o++) {
            if (!node.operations.get(o) && !covered.get(o) && allowed(node, o)) {
                Node child = new Node(node.state.copy(), (BitSet) node.operations.clone(), node);
                perform(child, o);
                children.addAll(settle(child));
                if (!problem.held.get(o)) {
                    cover(covered, node, child);
                }
            }
        }
        return children;
    }

    private boolean allowed(Node node, int operation) {
        return precedences.allow(operation, node.operations) && problem.permitted(node.state, operation);
    }

    /** Operations that closing has done in the same go: begun with any of them, the go ends in the same state. */
    private void cover(BitSet covered, Node node, Node child) {
        for (int o = 0; o < problem.size(); o++) {
            if (child.operations.get(o)
                    && !problem.held.get(o)
                    && problem.toolSet[o] == child.toolSet
                    && problem.zoneIn(node.state, o) == child.zone) {
                covered.set(o);
            }
        }
    }

    private void perform(Node node, int operation) {
        int zone = problem.zoneIn(node.state, operation);
        int toolSet = problem.toolSet[operation];
        node.spent += problem.travel[node.zone][zone] + problem.pickUp[node.toolSet][toolSet];
        node.zone = zone;
        node.toolSet = toolSet;
        node.state.perform(problem.action[operation]);
        node.operations.set(operation);
        node.steps.add(new Step(problem.action[operation], new int[0]));
        node.state.refresh();
    }

    private static void lift(Node node, int[] set) {
        for (int part : set) {
            node.state.moved.set(part);
        }
        node.steps.add(new Step(Step.LIFT, set));
    }

    /** Closes a node; empty when it leaves a piece loose that nothing can lift. */
    private List<Node> settle(Node node) {
        liftHarmless(node);
        if (heedLoose && isLoose(node.state)) {
            if (problem.reach.lifting().all(node.state).isEmpty()) {
                looseCut = true;
                return List.of();
            }
        } else if (closing) {
            while (closeOne(node)) {
                liftHarmless(node);
            }
        }
        node.estimate = node.spent + bound.remaining(node.operations, node.zone, node.toolSet);
        node.sequence = sequence++;
        return List.of(node);
    }

    private void liftHarmless(Node node) {
        boolean again = true;
        while (again) {
            again = false;
            for (int[] set : problem.reach.lifting().all(node.state)) {
                if (problem.harmless(node.state, set)) {
                    lift(node, set);
                    again = true;
                    break;
                }
            }
        }
    }

    private boolean closeOne(Node node) {
        node.state.refresh();
        for (int o = 0; o < problem.size(); o++) {
            if (!node.operations.get(o)
                    && !problem.held.get(o)
                    && problem.toolSet[o] == node.toolSet
                    && problem.zoneIn(node.state, o) == node.zone
                    && allowed(node, o)
                    && !freesForGood(node, o)) {
                perform(node, o);
                return true;
            }
        }
        return false;
    }

    /** Whether an operation would leave a piece loose that cannot be lifted at once without a choice. */
    private boolean freesForGood(Node node, int operation) {
        if (!heedLoose) {
            return false;
        }
        Node trial = new Node(node.state.copy(), (BitSet) node.operations.clone(), node);
        perform(trial, operation);
        liftHarmless(trial);
        boolean loose = isLoose(trial.state);
        looseCut |= loose;
        return loose;
    }

    private Found result(Node node, long lowerBound) {
        List<Step> steps = new ArrayList<>();
        for (Node at = node; at != null; at = at.parent) {
            List<Step> own = new ArrayList<>(at.steps);
            Collections.reverse(own);
            steps.addAll(own);
        }
        Collections.reverse(steps);
        return new Found(
                List.copyOf(steps),
                node.estimate,
                lowerBound,
                closing ? "best first over closed states" : "best first over all states",
                expanded);
    }
}
