package gudgeon.core.planning;

import gudgeon.core.engine.Engine;

/**
 * Plans how to reach a target: question 1 and question 2 of docs/planning.md.
 */
public final class StripPlanner {
    private StripPlanner() {}

    /**
     * The plan for a request, or why there is none.
     *
     * @throws IllegalArgumentException when the request names something the engine does not have
     */
    public static StripAnswer plan(Engine engine, StripRequest request) {
        throw new UnsupportedOperationException("being written");
    }
}
