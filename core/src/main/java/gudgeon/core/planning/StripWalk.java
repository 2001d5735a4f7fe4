package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Walks through the operations of a plan one by one, also in another order or with some left out: says what can be done next and
 * what would hang or lie loose if one stopped there. Meanings: docs/planning.md. Immutable; each step gives a new walk.
 */
public final class StripWalk {
    private final OrderProblem problem;
    private final Stand stand;

    /** Where the walk is: what is done and moved, where the person stands, what they have in hand. */
    private record Stand(State state, String zone, List<String> inHand) {}

    private StripWalk(OrderProblem problem, Stand stand) {
        this.problem = problem;
        this.stand = stand;
    }

    /**
     * At the start of a plan, in the start zone with empty hands.
     *
     * @throws IllegalArgumentException when the request or the plan names something the engine does not have
     */
    public static StripWalk along(Engine engine, StripRequest request, StripPlan plan) {
        Model model = new Model(engine);
        BitSet start = new BitSet();
        request.undone().forEach(id -> start.set(model.action(id)));
        request.done().forEach(id -> start.set(model.action(id)));
        request.underway().ifPresent(underway -> markAway(model, underway, start));
        Reach reach = new Reach(
                model, new Lifting(model, Model.heaviest(request.means().ways()), false), start);
        BitSet chosen = new BitSet();
        plan.operations().stream()
                .filter(operation -> operation.kind() != StripPlan.Kind.LIFT)
                .forEach(operation -> chosen.set(model.action(operation.id())));
        BitSet tolerated = Openings.tolerated(reach, request.underway().isPresent());
        OrderProblem problem =
                new OrderProblem(reach, request, chosen, tolerated, OrderProblem.constraints(model, chosen));
        State state = new State(model, start);
        state.refresh();
        return new StripWalk(problem, new Stand(state, engine.workplace().startZone(), List.of()));
    }

    private static void markAway(Model model, StripRequest.Underway underway, BitSet start) {
        State state = new State(model, start);
        state.refresh();
        for (String id : underway.away()) {
            int part = model.part(id);
            if (state.piece[part] != state.piece[model.base]) {
                IntStream.of(state.partsOfPiece(state.piece[part])).forEach(model.away::set);
            }
        }
    }

    /** Whether an operation of the plan can be done now: free, its pairs kept, held, spoiling no hold; a lift as it is. */
    public boolean isPossible(StripPlan.Operation operation) {
        if (operation.kind() == StripPlan.Kind.LIFT) {
            BitSet pieces = parts(operation);
            return problem.reach.lifting().all(stand.state().copy()).stream()
                    .anyMatch(set -> asSet(set).equals(pieces));
        }
        int action = problem.model.action(operation.id());
        int o = IntStream.range(0, problem.size())
                .filter(i -> problem.action[i] == action)
                .findFirst()
                .orElse(-1);
        return o >= 0 && !stand.state().done.get(action) && problem.permitted(stand.state(), o);
    }

    /** Whether a joint or ready operation can be got at here, whatever else it may want. */
    public boolean isInReach(StripPlan.Operation operation) {
        int action = problem.model.action(operation.id());
        int judge = problem.model.judgedAt[action];
        return stand.state()
                .holds(problem.model.access[action], judge < 0 ? null : problem.model.jointParts[judge]);
    }

    /** The walk after an operation. Whether it is possible is the caller's business. */
    public StripWalk after(StripPlan.Operation operation) {
        State next = stand.state().copy();
        if (operation.kind() == StripPlan.Kind.LIFT) {
            next.moved.or(parts(operation));
            next.refresh();
            return new StripWalk(problem, new Stand(next, stand.zone(), stand.inHand()));
        }
        next.perform(problem.model.action(operation.id()));
        next.refresh();
        return new StripWalk(
                problem,
                new Stand(next, operation.place().zone(), operation.place().tools()));
    }

    /** Seconds to go where an operation is done and to take up its tools; none for a lift. */
    public long changeoverSeconds(StripPlan.Operation operation) {
        if (operation.kind() == StripPlan.Kind.LIFT) {
            return 0;
        }
        int from = problem.zones.indexOf(stand.zone());
        int to = problem.zones.indexOf(operation.place().zone());
        long tools = operation.place().tools().stream()
                .distinct()
                .filter(tool -> !stand.inHand().contains(tool))
                .count();
        return problem.travel[from][to]
                + tools * problem.model.engine.workplace().toolChangeSeconds();
    }

    /** Parts that would be loose if one stopped here: neither fixed, moved, resting nor carried. In file order. */
    public List<String> loose() {
        return ids(stand.state().loose(problem.tolerated));
    }

    /** Parts that are moved and still hang on the engine by a flexible joint, in file order. */
    public List<String> aside() {
        BitSet aside = stand.state().linked();
        aside.and(stand.state().moved);
        return ids(aside);
    }

    /** Whether a part is moved here. */
    public boolean isMoved(String part) {
        return stand.state().moved.get(problem.model.part(part));
    }

    /** Whether a feature of the engine can be reached here. */
    public boolean isReachable(Feature feature) {
        int[] parts = feature.parts().stream().mapToInt(problem.model::part).toArray();
        return stand.state().holds(problem.model.compile(feature.access()), parts);
    }

    /** Joints and ready operations that are done here, in file order. */
    public List<String> done() {
        return stand.state().done.stream().mapToObj(problem.model::actionId).toList();
    }

    private List<String> ids(BitSet parts) {
        return parts.stream().mapToObj(problem.model::partId).toList();
    }

    private BitSet parts(StripPlan.Operation lift) {
        BitSet parts = new BitSet();
        lift.pieces().forEach(id -> parts.set(problem.model.part(id)));
        return parts;
    }

    private static BitSet asSet(int[] parts) {
        BitSet set = new BitSet();
        for (int part : parts) {
            set.set(part);
        }
        return set;
    }
}
