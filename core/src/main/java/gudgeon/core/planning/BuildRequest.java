package gudgeon.core.planning;

import gudgeon.core.engine.LiftingWay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is asked of the planner of the way back: what was really undone, and what the person has in hand. Every default is
 * explicit here.
 *
 * @param steps what was done in the strip, in the order in which it was done
 * @param ways ways of lifting that the person has now, at least one
 * @param missing specifications of new pieces, sealants and fluids that are not in hand
 * @param confirmed ids of features whose typical limits the person has confirmed from their manual
 */
public record BuildRequest(List<Step> steps, List<LiftingWay> ways, List<String> missing, List<String> confirmed) {
    public BuildRequest {
        steps = List.copyOf(steps);
        ways = List.copyOf(ways);
        missing = List.copyOf(missing);
        confirmed = List.copyOf(confirmed);
        if (ways.isEmpty()) {
            throw new IllegalArgumentException(
                    "at least one way of lifting is needed. Maybe take the engine's own list?");
        }
    }

    /**
     * One thing done in the strip.
     *
     * @param kind what sort of thing
     * @param id joint or ready operation; any name for a lift
     * @param parts the parts of a lift; ignored for the other kinds
     */
    public record Step(StripPlan.Kind kind, String id, List<String> parts) {
        public Step {
            parts = List.copyOf(parts);
        }
    }

    /** The way back after exactly this strip, with everything in hand and no limit confirmed. */
    public static BuildRequest after(StripPlan strip, List<LiftingWay> ways) {
        List<Step> steps = strip.operations().stream()
                .map(operation -> new Step(
                        operation.kind(),
                        operation.id(),
                        operation.kind() == StripPlan.Kind.LIFT ? operation.pieces() : List.of()))
                .toList();
        return new BuildRequest(steps, ways, List.of(), List.of());
    }

    /** The same with steps that had been done before the first one. */
    public BuildRequest withEarlier(List<Step> earlier) {
        return new BuildRequest(Stream.concat(earlier.stream(), steps.stream()).toList(), ways, missing, confirmed);
    }

    /** The same with what was really done in place of the planned steps. */
    public BuildRequest withSteps(List<Step> done) {
        return new BuildRequest(done, ways, missing, confirmed);
    }

    /** The same with further specifications not in hand. */
    public BuildRequest withMissing(List<String> specs) {
        return new BuildRequest(steps, ways, joined(missing, specs), confirmed);
    }

    /** The same with further features whose typical limits are confirmed. */
    public BuildRequest withConfirmed(List<String> features) {
        return new BuildRequest(steps, ways, missing, joined(confirmed, features));
    }

    private static List<String> joined(List<String> first, List<String> second) {
        List<String> all = new ArrayList<>(first);
        all.addAll(second);
        return all.stream().distinct().toList();
    }
}
