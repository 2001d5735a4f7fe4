package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;

/** The order search as a thing of its own: for whoever has a sequencing problem in numbers, or wants one of an engine. */
public final class Sequencer {
    private Sequencer() {}

    /**
     * A sequencing problem laid open, so that others can solve the same one.
     *
     * @param modes by operation: the ways of doing it; what a mode needs is closed, it names all that must be done before
     * @param change cost of going from one context to another
     * @param leave cost of ending in a context
     * @param place by context: a number for the place it is at
     * @param start the context in which one begins
     */
    public record Numbers(
            List<List<Sequencing.Mode>> modes, int[][] change, int[] leave, int[] place, int start) {
        public Numbers {
            modes = modes.stream().map(List::copyOf).toList();
            change = Arrays.stream(change).map(int[]::clone).toArray(int[][]::new);
            leave = leave.clone();
            place = place.clone();
        }

        /** The problem itself. */
        public Sequencing problem() {
            return new Sequencing(modes, change, leave, place, start);
        }
    }

    /**
     * The best sequence.
     *
     * @param states how many states may be looked at; when they are used up the best sequence so far is returned with a bound
     */
    public static SequencingAnswer best(Sequencing problem, long states) {
        SequencingSearch.Found found = new SequencingSearch(problem, new SequencingBound(problem), states).run();
        boolean any = found.contexts().length > 0;
        return new SequencingAnswer(
                any,
                found.cost(),
                found.lowerBound(),
                Arrays.stream(found.contexts()).boxed().toList(),
                found.expanded());
    }

    /**
     * Question 2 of a request as numbers. Loose pieces and holds with alternatives are left out, so that no order of the
     * engine can cost less than the best sequence.
     *
     * @param chosen the joints and ready operations that question 1 chose
     * @throws IllegalArgumentException when something is named that the engine does not have
     */
    public static Numbers numbers(Engine engine, StripRequest request, List<String> chosen) {
        Model model = new Model(engine);
        BitSet start = new BitSet();
        request.undone().forEach(id -> start.set(model.action(id)));
        request.done().forEach(id -> start.set(model.action(id)));
        Lifting lifting = new Lifting(model, Model.heaviest(request.means().ways()), false);
        Reach reach = new Reach(model, lifting, start);
        BitSet actions = new BitSet();
        chosen.forEach(id -> actions.set(model.action(id)));
        OrderProblem problem = new OrderProblem(
                reach, request, actions, new BitSet(), OrderProblem.constraints(model, actions));
        return open(new OrderModes(problem, new Precedences(problem)).sequencing);
    }

    private static Numbers open(Sequencing problem) {
        List<List<Sequencing.Mode>> modes = new ArrayList<>();
        for (int o = 0; o < problem.operations; o++) {
            modes.add(new ArrayList<>());
        }
        for (int c = 0; c < problem.contexts; c++) {
            for (int i = 0; i < problem.here[c].length; i++) {
                TreeSet<Integer> needs = new TreeSet<>();
                for (int o = 0; o < problem.operations; o++) {
                    if ((problem.needs[c][i][o >> 6] & 1L << o) != 0) {
                        needs.add(o);
                    }
                }
                modes.get(problem.here[c][i]).add(new Sequencing.Mode(c, List.copyOf(needs)));
            }
        }
        return new Numbers(modes, problem.change, problem.leave, problem.place, problem.start);
    }
}
