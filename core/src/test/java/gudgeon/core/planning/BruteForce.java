package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Answers both questions of docs/planning.md by trying everything, over explicit states. For engines of up to about a dozen
 * operations and seven parts; exponential in both.
 *
 * <p>Readings of the page: nothing is moved at the start; what hangs loose in the untouched state has not become loose by an
 * operation and may stay as it hangs; several lifts may follow one operation.
 */
final class BruteForce {
    final BruteModel model;
    private final long looseFromTheStart;

    BruteForce(BruteModel model) {
        this.model = model;
        this.looseFromTheStart = model.loose(model.start(), 0);
    }

    /**
     * Question 1.
     *
     * @param costSeconds least cost; -1 when no set reaches the target
     * @param sets every set of least cost, start included
     * @param states states looked at
     */
    record Opening(long costSeconds, List<Long> sets, int states) {}

    /** A way to habitually choose the next step, to show that the habit is dearer than the free choice. */
    enum Habit {
        /** Everything is tried. */
        NONE,
        /** At once: what can be done in this zone with tools that are in hand. */
        TOOLS_IN_HAND,
        /** At once: what can be done in this zone. */
        SAME_ZONE,
        /** At once: what can be done in this zone with exactly these tools, whatever it sets free. */
        SAME_TOOLS,
        /** At once: what can be done in this zone with exactly these tools, unless it lets something be lifted. */
        SAME_TOOLS_NO_LIFT,
        /** At once: whatever can be lifted. */
        LIFTS
    }

    /** One step: an operation, or a lift of this set when the operation is negative. */
    record Step(int op, long lifted) {}

    /** An order and its changeover, the way back included. */
    record Tour(long changeoverSeconds, List<Step> steps) {}

    private record Node(long cost, long done, long moved) {}

    /** Pieces that must be lifted before anything else is done. */
    private long mustLift(long done, long moved) {
        return model.loose(done, moved) & ~looseFromTheStart;
    }

    private boolean goal(long done, long moved) {
        return model.reached(done, moved) && mustLift(done, moved) == 0;
    }

    /** Question 1, with the closure taken after every operation. */
    Opening opening() {
        PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingLong(Node::cost));
        Map<Long, Long> best = new HashMap<>();
        List<Long> goals = new ArrayList<>();
        long goalCost = Long.MAX_VALUE;
        best.put(model.start(), 0L);
        queue.add(new Node(0, model.start(), model.closure(model.start(), 0, false)));
        while (!queue.isEmpty() && queue.element().cost() <= goalCost) {
            Node node = queue.remove();
            if (node.cost() > best.getOrDefault(node.done(), Long.MAX_VALUE)) {
                continue;
            }
            if (goal(node.done(), node.moved())) {
                goalCost = node.cost();
                if (!goals.contains(node.done())) {
                    goals.add(node.done());
                }
            }
            for (int o = 0; o < model.ops; o++) {
                long done = node.done() | 1L << o;
                long cost = node.cost() + model.cost(o);
                boolean better = done != node.done() && cost < best.getOrDefault(done, Long.MAX_VALUE);
                if (better && model.free(o, node.done(), node.moved())) {
                    long moved = model.closure(done, node.moved(), false);
                    if (mustLift(done, moved) == 0) {
                        best.put(done, cost);
                        queue.add(new Node(cost, done, moved));
                    }
                }
            }
        }
        return new Opening(goals.isEmpty() ? -1 : goalCost, goals, best.size());
    }

    /** Question 1, with every choice of what to lift and when: literally the page, much slower. */
    long openingWithEveryLift() {
        PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingLong(Node::cost));
        Map<Node, Long> best = new HashMap<>();
        push(queue, best, 0, model.start(), 0);
        while (!queue.isEmpty()) {
            Node node = queue.remove();
            long known = best.getOrDefault(new Node(0, node.done(), node.moved()), Long.MAX_VALUE);
            if (node.cost() > known) {
                continue;
            }
            if (goal(node.done(), node.moved())) {
                return node.cost();
            }
            for (long set : model.lifts(node.done(), node.moved(), false)) {
                push(queue, best, node.cost(), node.done(), node.moved() | set);
            }
            for (int o = 0; o < model.ops; o++) {
                boolean open = (node.done() >> o & 1) == 0 && mustLift(node.done(), node.moved()) == 0;
                if (open && model.free(o, node.done(), node.moved())) {
                    push(queue, best, node.cost() + model.cost(o), node.done() | 1L << o, node.moved());
                }
            }
        }
        return -1;
    }

    private static void push(PriorityQueue<Node> queue, Map<Node, Long> best, long cost, long done, long moved) {
        Node key = new Node(0, done, moved);
        if (cost < best.getOrDefault(key, Long.MAX_VALUE)) {
            best.put(key, cost);
            queue.add(new Node(cost, done, moved));
        }
    }

    private record State(long done, long moved, int last, String zone) {}

    private record Arrival(long cost, State state) {}

    private record Trace(State from, Step step) {}

    /** Question 2: the order of least changeover of exactly this set (start included); empty when there is none. */
    Optional<Tour> order(long set, Habit habit) {
        PriorityQueue<Arrival> queue = new PriorityQueue<>(Comparator.comparingLong(Arrival::cost));
        Map<State, Long> best = new HashMap<>();
        Map<State, Trace> trace = new HashMap<>();
        String home = model.engine.workplace().startZone();
        State start = new State(model.start(), 0, -1, home);
        State end = new State(-1, -1, -1, home);
        best.put(start, 0L);
        queue.add(new Arrival(0, start));
        while (!queue.isEmpty()) {
            Arrival at = queue.remove();
            State state = at.state();
            if (at.cost() > best.getOrDefault(state, Long.MAX_VALUE)) {
                continue;
            }
            if (state.equals(end)) {
                return Optional.of(new Tour(at.cost(), steps(trace, start, end)));
            }
            if (state.done() == set && goal(set, state.moved())) {
                Step back = new Step(-1, 0);
                arrive(queue, best, trace, at, end, model.travel(state.zone(), home), back);
            }
            for (Step step : steps(state, set, habit)) {
                State next = after(state, step);
                arrive(queue, best, trace, at, next, changeover(state, step), step);
            }
        }
        return Optional.empty();
    }

    private static void arrive(
            PriorityQueue<Arrival> queue,
            Map<State, Long> best,
            Map<State, Trace> trace,
            Arrival from,
            State next,
            long edge,
            Step step) {
        long cost = from.cost() + edge;
        if (cost < best.getOrDefault(next, Long.MAX_VALUE)) {
            best.put(next, cost);
            trace.put(next, new Trace(from.state(), step));
            queue.add(new Arrival(cost, next));
        }
    }

    private static List<Step> steps(Map<State, Trace> trace, State start, State end) {
        List<Step> steps = new ArrayList<>();
        State at = end;
        while (!at.equals(start)) {
            Trace back = trace.get(at);
            if (back == null) {
                throw new IllegalStateException("no trace to " + at);
            }
            steps.addFirst(back.step());
            at = back.from();
        }
        steps.removeLast();
        return steps;
    }

    private long changeover(State state, Step step) {
        if (step.op() < 0) {
            return 0;
        }
        List<String> hand = state.last() < 0 ? List.of() : model.tools(state.last());
        String zone = model.zone(step.op(), state.moved());
        return model.travel(state.zone(), zone) + model.toolChanges(hand, model.tools(step.op()));
    }

    private State after(State state, Step step) {
        if (step.op() < 0) {
            return new State(state.done(), state.moved() | step.lifted(), state.last(), state.zone());
        }
        long done = state.done() | 1L << step.op();
        return new State(done, state.moved(), step.op(), model.zone(step.op(), state.moved()));
    }

    /** All steps that the page allows here, or only those that the habit takes. */
    private List<Step> steps(State state, long set, Habit habit) {
        List<Step> lifts = new ArrayList<>();
        for (long lifted : model.lifts(state.done(), state.moved(), false)) {
            lifts.add(new Step(-1, lifted));
        }
        List<Step> ops = new ArrayList<>();
        if (mustLift(state.done(), state.moved()) == 0) {
            for (int o = 0; o < model.ops; o++) {
                boolean open = (set & ~state.done() & 1L << o) != 0;
                boolean free = open && model.free(o, state.done(), state.moved());
                if (free && model.inOrder(o, state.done(), set)) {
                    ops.add(new Step(o, 0));
                }
            }
        }
        if (habit == Habit.LIFTS && !lifts.isEmpty()) {
            return lifts;
        }
        List<Step> forced =
                ops.stream().filter(step -> forced(state, step.op(), habit)).toList();
        if (!forced.isEmpty()) {
            return forced.subList(0, 1);
        }
        lifts.addAll(ops);
        return lifts;
    }

    private boolean forced(State state, int o, Habit habit) {
        if (state.last() < 0 || !state.zone().equals(model.zone(o, state.moved()))) {
            return false;
        }
        List<String> hand = model.tools(state.last());
        List<String> tools = model.tools(o);
        boolean same = hand.containsAll(tools) && tools.containsAll(hand);
        return switch (habit) {
            case NONE, LIFTS -> false;
            case TOOLS_IN_HAND -> hand.containsAll(tools);
            case SAME_ZONE -> true;
            case SAME_TOOLS -> same;
            case SAME_TOOLS_NO_LIFT -> {
                long before = model.closure(state.done(), state.moved(), false);
                long after = model.closure(state.done() | 1L << o, state.moved(), false);
                yield same && before == after;
            }
        };
    }
}
