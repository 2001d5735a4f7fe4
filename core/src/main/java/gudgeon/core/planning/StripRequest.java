package gudgeon.core.planning;

import gudgeon.core.engine.LiftingWay;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of the strip planner. Every default is explicit here.
 *
 * @param target what is to be reached
 * @param undone joints already undone before the plan starts
 * @param done ready operations already done before the plan starts
 * @param willNotCome joints that will not come; they are left alone unless the engine file gives a destructive way
 * @param means the person's means
 * @param underway how a strip stands that has begun; empty for an engine as it was found
 */
public record StripRequest(
        Target target,
        List<String> undone,
        List<String> done,
        List<String> willNotCome,
        Means means,
        Optional<Underway> underway) {
    /** A request for an engine as it was found. */
    public StripRequest(
            Target target, List<String> undone, List<String> done, List<String> willNotCome, Means means) {
        this(target, undone, done, willNotCome, means, Optional.empty());
    }

    /**
     * A strip that has begun: what it has made loose is lifted before anything else is done, where it can be.
     *
     * @param away parts moved already; parts that still hang together with them count as moved too, the base piece never
     */
    public record Underway(List<String> away) {
        public Underway {
            away = List.copyOf(away);
        }
    }

    public StripRequest {
        undone = List.copyOf(undone);
        done = List.copyOf(done);
        willNotCome = List.copyOf(willNotCome);
    }

    /**
     * What is to be reached; all of it.
     *
     * @param off parts to be off and moved
     * @param aside parts to be moved, off or hanging by flexible joints
     * @param open joints to be undone
     * @param measure features to be reachable
     */
    public record Target(List<String> off, List<String> aside, List<String> open, List<String> measure) {
        public Target {
            off = List.copyOf(off);
            aside = List.copyOf(aside);
            open = List.copyOf(open);
            measure = List.copyOf(measure);
        }

        /** The target that one part is off. */
        public static Target off(String... parts) {
            return new Target(List.of(parts), List.of(), List.of(), List.of());
        }
    }

    /**
     * The person's means.
     *
     * @param ways ways of lifting that they have, at least one
     * @param worthPerHour what an hour is worth to them, in the currency of the prices; 0 leaves money out of the choice
     * @param orderStates how many states the order search may expand; when they are used up the best order found is returned
     *     with its proven gap
     */
    public record Means(List<LiftingWay> ways, double worthPerHour, long orderStates) {
        public Means {
            ways = List.copyOf(ways);
            if (ways.isEmpty()) {
                throw new IllegalArgumentException("at least one way of lifting is needed. Maybe take the engine's own list?");
            }
            if (!(worthPerHour >= 0)) {
                throw new IllegalArgumentException("an hour is worth 0 or more, not " + worthPerHour);
            }
        }
    }
}
