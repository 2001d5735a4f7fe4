package gudgeon.app.desk;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.util.List;

/**
 * What must be undone to reach this, and in what order? Words may be ids or names.
 *
 * @param engine the engine
 * @param goal what is to be reached; all of it
 * @param found what was found at the engine
 * @param means what the person has
 */
public record StripQuestion(Engine engine, Goal goal, Found found, Means means) {
    /** States of the order search that take about a second on a small machine. */
    public static final long STATES_PER_SECOND = 5_000;

    /** The way of lifting that everybody has. */
    public static final String ALONE = "alone";

    /**
     * What is to be reached.
     *
     * @param reach parts to be off
     * @param aside parts to be moved, off or hanging
     * @param open joints to be undone
     * @param measure features to be reachable
     */
    public record Goal(List<String> reach, List<String> aside, List<String> open, List<String> measure) {
        public Goal {
            reach = List.copyOf(reach);
            aside = List.copyOf(aside);
            open = List.copyOf(open);
            measure = List.copyOf(measure);
        }

        /** Whether nothing is asked for. */
        public boolean isEmpty() {
            return reach.isEmpty() && aside.isEmpty() && open.isEmpty() && measure.isEmpty();
        }

        /** To have parts off. */
        public static Goal reach(String... parts) {
            return new Goal(List.of(parts), List.of(), List.of(), List.of());
        }
    }

    /**
     * What was found at the engine.
     *
     * @param undone joints and ready operations already done
     * @param willNotCome joints that will not come
     */
    public record Found(List<String> undone, List<String> willNotCome) {
        /** An untouched engine on which nothing has resisted yet. */
        public static final Found NOTHING = new Found(List.of(), List.of());

        public Found {
            undone = List.copyOf(undone);
            willNotCome = List.copyOf(willNotCome);
        }
    }

    /**
     * What the person has.
     *
     * @param with ways of lifting by name, beside {@value StripQuestion#ALONE}
     * @param worthPerHour what an hour is worth, in the currency of the file's prices; 0 leaves money out of the choice
     * @param seconds about how long the order may be searched; counted in states, so that the answer is always the same
     */
    public record Means(List<String> with, double worthPerHour, int seconds) {
        public Means {
            with = List.copyOf(with);
        }
    }

    /** The answer. */
    public sealed interface Reply {
        /** A plan. */
        record Planned(Engine engine, StripRequest request, StripPlan plan) implements Reply {}

        /** No plan, and why. */
        record Stuck(Engine engine, StripRequest request, Blocked blocked) implements Reply {}

        /** Some words name nothing in the engine; nothing was planned. */
        record Unknown(List<UnknownName> names) implements Reply {
            public Unknown {
                names = List.copyOf(names);
            }
        }
    }

    /** The plan, why there is none, or which words mean nothing. */
    public Reply ask() {
        NameSearch names = new NameSearch(engine);
        StripRequest request = request(names);
        if (!names.unknown().isEmpty()) {
            return new Reply.Unknown(names.unknown());
        }
        return switch (StripPlanner.plan(engine, request)) {
            case StripPlan plan -> new Reply.Planned(engine, request, plan);
            case Blocked blocked -> new Reply.Stuck(engine, request, blocked);
        };
    }

    private StripRequest request(NameSearch names) {
        StripRequest.Target target = new StripRequest.Target(
                names.parts(goal.reach()),
                names.parts(goal.aside()),
                names.joints(goal.open()),
                names.features(goal.measure()));
        List<String> done = names.jointsOrReady(found.undone());
        List<String> undoneJoints =
                done.stream().filter(id -> engine.findJoint(id).isPresent()).toList();
        List<String> doneReady =
                done.stream().filter(id -> engine.findReady(id).isPresent()).toList();
        List<String> willNotCome = names.joints(found.willNotCome());
        return new StripRequest(target, undoneJoints, doneReady, willNotCome, means(names));
    }

    private StripRequest.Means means(NameSearch names) {
        List<String> wanted = names.ways(means.with());
        List<LiftingWay> ways = engine.workplace().waysOfLifting().stream()
                .filter(way -> way.name().equals(ALONE) || wanted.contains(way.name()))
                .toList();
        List<LiftingWay> some =
                ways.isEmpty() ? engine.workplace().waysOfLifting().subList(0, 1) : ways;
        return new StripRequest.Means(some, means.worthPerHour(), Math.max(1, means.seconds()) * STATES_PER_SECOND);
    }
}
