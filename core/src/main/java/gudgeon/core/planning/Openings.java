package gudgeon.core.planning;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Openings that leave no loose piece, cheapest first. When the relaxed optimum leaves one, the ways out are exhaustive: a
 * joint that cut it free is left alone, a joint that rests is undone beside it, a support carries it, or it must move. An opening that turns out to have no order
 * is refused by branching on every single difference from it.
 */
final class Openings {
    private static final int MOST_SEARCHES = 4000;

    private final OpeningSearch search;
    private final Reach reach;
    private final BitSet tolerated;
    private final PriorityQueue<Node> queue = new PriorityQueue<>();
    private final Set<List<BitSet>> seen = new HashSet<>();
    private int searches;
    private long sequence;
    private BitSet lastLoose = new BitSet();

    private record Node(BitSet permitted, Goal goal, long bound, long sequence, Optional<OpeningSearch.Found> found)
            implements Comparable<Node> {
        @Override
        public int compareTo(Node other) {
            int byBound = Long.compare(bound, other.bound);
            return byBound != 0 ? byBound : Long.compare(sequence, other.sequence);
        }
    }

    /** An opening with what it was searched under. */
    record Candidate(BitSet permitted, Goal goal, OpeningSearch.Found found) {}

    /**
     * @param underway whether a strip has begun: then only what cannot be lifted may stay loose, and what was loose on the
     *     untouched engine
     */
    Openings(Reach reach, long[] cost, BitSet permitted, Goal goal, boolean underway) {
        this.reach = reach;
        this.search = new OpeningSearch(reach, cost);
        this.tolerated = tolerated(reach, underway);
        push(permitted, goal, 0);
    }

    /** Parts whose being loose is not the plan's doing. */
    static BitSet tolerated(Reach reach, boolean underway) {
        State start = reach.initial();
        if (!underway) {
            return State.of(reach.model(), start.done, new BitSet()).loose(new BitSet());
        }
        BitSet tolerated = start.loose(new BitSet());
        tolerated.or(new State(reach.model(), new BitSet()).loose(new BitSet()));
        return tolerated;
    }

    /** Parts that are loose before the plan starts; they are the state that was found, not the plan's doing. */
    BitSet tolerated() {
        return tolerated;
    }

    /** Parts that were loose in the last opening that was turned down for it. */
    BitSet lastLoose() {
        return lastLoose;
    }

    /** Whether the search for openings was given up, so that one may still exist. */
    boolean gaveUp() {
        return !queue.isEmpty() && searches >= MOST_SEARCHES;
    }

    /** The next cheapest opening, or empty when there is none. */
    Optional<Candidate> next() {
        while (!queue.isEmpty() && searches < MOST_SEARCHES) {
            Node node = queue.remove();
            if (node.found.isEmpty()) {
                searches++;
                search.cheapest(node.permitted, node.goal)
                        .ifPresent(found -> queue.add(new Node(
                                node.permitted, node.goal, found.cost(), sequence++, Optional.of(found))));
                continue;
            }
            OpeningSearch.Found found = node.found.get();
            State end = reach.sweep(found.chosen());
            BitSet loose = end.loose(tolerated);
            if (loose.isEmpty()) {
                return Optional.of(new Candidate(node.permitted, node.goal, found));
            }
            lastLoose = loose;
            branch(node, found, end, loose.nextSetBit(0));
        }
        return Optional.empty();
    }

    /**
     * Turns down an opening for which no order exists: the other sets are parted by the first action in which they differ
     * from it.
     */
    void refuse(Candidate candidate) {
        BitSet chosen = candidate.found.chosen();
        BitSet permitted = candidate.permitted;
        Goal goal = candidate.goal;
        for (int a = chosen.nextSetBit(0); a >= 0; a = chosen.nextSetBit(a + 1)) {
            push(without(permitted, a), goal, candidate.found.cost());
            goal = goal.withAction(a);
        }
        BitSet others = (BitSet) permitted.clone();
        others.andNot(chosen);
        for (int a = others.nextSetBit(0); a >= 0; a = others.nextSetBit(a + 1)) {
            push(permitted, goal.withAction(a), candidate.found.cost());
            permitted = without(permitted, a);
        }
    }

    private void branch(Node node, OpeningSearch.Found found, State end, int loosePart) {
        Model model = reach.model();
        BitSet group = restGroup(end, loosePart);
        for (int a = found.chosen().nextSetBit(0); a >= 0; a = found.chosen().nextSetBit(a + 1)) {
            if (a < model.joints && !model.flexible[a] && crosses(model.jointParts[a], group)) {
                push(without(node.permitted, a), node.goal, found.cost());
            }
        }
        for (int j = 0; j < model.joints; j++) {
            boolean settles = model.rests[j] && !end.done.get(j) && node.permitted.get(j);
            if (settles && crosses(model.jointParts[j], group)) {
                push(node.permitted, node.goal.withAction(j), found.cost());
            }
        }
        for (int a = model.joints; a < model.actions; a++) {
            boolean carries = IntStream.of(model.carries[a]).anyMatch(group::get);
            if (carries && !end.done.get(a) && node.permitted.get(a)) {
                push(node.permitted, node.goal.withAction(a), found.cost());
            }
        }
        push(node.permitted, node.goal.withMoved(group), found.cost());
    }

    /** The pieces that hang together with a loose one by undone joints that rest. */
    private BitSet restGroup(State end, int loosePart) {
        Model model = reach.model();
        BitSet group = new BitSet(model.parts);
        addPiece(end, group, loosePart);
        boolean again = true;
        while (again) {
            again = false;
            for (int j = 0; j < model.joints; j++) {
                if (model.rests[j] && end.done.get(j) && crosses(model.jointParts[j], group)) {
                    for (int p : model.jointParts[j]) {
                        addPiece(end, group, p);
                    }
                    again = true;
                }
            }
        }
        return group;
    }

    private static void addPiece(State state, BitSet group, int part) {
        for (int p : state.partsOfPiece(state.piece[part])) {
            group.set(p);
        }
    }

    private static boolean crosses(int[] joined, BitSet group) {
        boolean inside = false;
        boolean outside = false;
        for (int p : joined) {
            inside |= group.get(p);
            outside |= !group.get(p);
        }
        return inside && outside;
    }

    private void push(BitSet permitted, Goal goal, long bound) {
        if (seen.add(List.of(permitted, goal.moved(), goal.actions()))) {
            queue.add(new Node(permitted, goal, bound, sequence++, Optional.empty()));
        }
    }

    private static BitSet without(BitSet set, int action) {
        BitSet smaller = (BitSet) set.clone();
        smaller.clear(action);
        return smaller;
    }
}
