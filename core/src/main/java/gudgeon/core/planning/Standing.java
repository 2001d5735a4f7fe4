package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * An engine under a request: what is done and away already, what may still be done, and what each action costs.
 *
 * @param permitted joints and ready operations that may still be done
 * @param cost by action: seconds, with money turned into time at the person's worth
 */
record Standing(Model model, StripRequest request, Reach reach, BitSet permitted, long[] cost) {
    /** @throws IllegalArgumentException when the request names something the engine does not have */
    static Standing of(Engine engine, StripRequest request) {
        Model model = new Model(engine);
        BitSet start = new BitSet();
        request.undone().forEach(id -> start.set(model.action(id)));
        request.done().forEach(id -> start.set(model.action(id)));
        request.underway().ifPresent(underway -> moveAway(model, underway, start));
        long limit = Model.heaviest(request.means().ways());
        Reach reach = new Reach(model, new Lifting(model, limit, false), start);
        long[] cost = new long[model.actions];
        for (int a = 0; a < model.actions; a++) {
            cost[a] = cost(model, request, a);
        }
        return new Standing(model, request, reach, permitted(model, request, start), cost);
    }

    private static void moveAway(Model model, StripRequest.Underway underway, BitSet start) {
        State state = new State(model, start);
        state.refresh();
        for (String id : underway.away()) {
            int part = model.part(id);
            if (state.piece[part] != state.piece[model.base]) {
                IntStream.of(state.partsOfPiece(state.piece[part])).forEach(model.away::set);
            }
        }
    }

    private static BitSet permitted(Model model, StripRequest request, BitSet start) {
        BitSet result = new BitSet();
        for (int a = 0; a < model.actions; a++) {
            result.set(a, !model.licensed[a] && !start.get(a));
        }
        for (String id : request.willNotCome()) {
            int a = model.action(id);
            if (a >= model.joints) {
                throw new IllegalArgumentException("no joint is called " + id);
            }
            if (model.engine.joints().get(a).work().cut().isEmpty()) {
                result.clear(a);
            }
        }
        return result;
    }

    private static long cost(Model model, StripRequest request, int action) {
        long seconds = Steps.seconds(model, request, action);
        double worth = request.means().worthPerHour();
        if (worth <= 0) {
            return seconds;
        }
        double money = StripPlanner.value(Steps.spends(model, request, action)).orElse(0);
        return seconds + Math.round(money / worth * 3600);
    }

    /** Openings that reach a goal, cheapest first. */
    Openings openings(Goal goal) {
        return new Openings(reach, cost, permitted, goal, request.underway().isPresent());
    }
}
