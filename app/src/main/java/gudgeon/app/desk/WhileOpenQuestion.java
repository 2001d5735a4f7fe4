package gudgeon.app.desk;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.EveryPart;
import gudgeon.core.planning.EveryPartPlanner;
import gudgeon.core.planning.OtherWays;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.planning.WhileOpen;

/**
 * While that is open, what else pays? And what would the plan have cost another way?
 *
 * @param engine the engine
 * @param request what was asked; the present state of a job is in it
 * @param plan what is to be done, or what is left of it
 */
public record WhileOpenQuestion(Engine engine, StripRequest request, StripPlan plan) {
    /** Orders of small sets are looked for, so that a saving is proven. */
    private static final int ORDERED = 12;

    private static final long STATES = 200;
    private static final int WAYS_ORDERED = 5;

    /** The question about a plan. */
    public static WhileOpenQuestion of(StripQuestion.Reply.Planned planned) {
        return new WhileOpenQuestion(planned.engine(), planned.request(), planned.plan());
    }

    /**
     * The answer.
     *
     * @param request the engine as the plan leaves it: what the answer starts from
     */
    public record Reply(StripRequest request, WhileOpen parts) {}

    /** Every part at once. */
    public Reply ask() {
        StripRequest open = open();
        return new Reply(open, new WhileOpen(now(open), later(open)));
    }

    StripRequest open() {
        return quick(WhileOpen.after(request, plan));
    }

    EveryPart now(StripRequest open) {
        return EveryPartPlanner.plan(engine, open, ORDERED);
    }

    EveryPart later(StripRequest open) {
        return EveryPartPlanner.plan(engine, WhileOpen.whole(open), 0);
    }

    /** The alternatives that the plan did not take. */
    public OtherWays otherWays() {
        return OtherWays.of(engine, request, plan, WAYS_ORDERED);
    }

    private static StripRequest quick(StripRequest request) {
        return new StripRequest(
                request.target(),
                request.undone(),
                request.done(),
                request.willNotCome(),
                new StripRequest.Means(request.means().ways(), request.means().worthPerHour(), STATES),
                request.underway());
    }
}
