package gudgeon.core.planning;

import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plan to reach a target: the cheapest set of joints and ready operations, and the order of least changeover among all
 * orders of exactly those. The total is not claimed to be minimal.
 *
 * @param operations in order
 * @param opening the set, its cost and its proof
 * @param order the changeover and its proof
 * @param lifts lifts, stated apart because they depend on the pieces
 * @param destroyed everything single-use or cut that the plan destroys, merged by specification, in order of appearance
 */
public record StripPlan(
        List<Operation> operations, Opening opening, Order order, Lifts lifts, List<Spend> destroyed)
        implements StripAnswer {
    public StripPlan {
        operations = List.copyOf(operations);
        destroyed = List.copyOf(destroyed);
    }

    public long totalSeconds() {
        return opening.jointsSeconds() + opening.readySeconds() + order.changeoverSeconds() + lifts.seconds();
    }

    /**
     * Question 1.
     *
     * @param chosen ids of the joints and ready operations, in the order of the plan
     * @param costSeconds the objective: time, plus money turned into time at the person's worth
     * @param lowerBoundSeconds proven lower bound of the objective
     * @param proven whether {@code costSeconds} is the optimum
     * @param jointsSeconds time of the joints, expected seizure included
     * @param readySeconds time of the ready operations
     * @param money value of what is destroyed, where prices are known
     * @param landmarks clauses "at least one of these must be done" that prove the bound, single ones first
     */
    public record Opening(
            List<String> chosen,
            long costSeconds,
            long lowerBoundSeconds,
            boolean proven,
            long jointsSeconds,
            long readySeconds,
            OptionalDouble money,
            List<List<String>> landmarks) {
        public Opening {
            chosen = List.copyOf(chosen);
            landmarks = landmarks.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Question 2.
     *
     * @param changeoverSeconds zone times and tool changes, start and end counted
     * @param lowerBoundSeconds proven lower bound over all orders of the same operations
     * @param method how it was found
     * @param expanded states expanded
     */
    public record Order(long changeoverSeconds, long lowerBoundSeconds, String method, long expanded) {
        public boolean proven() {
            return changeoverSeconds == lowerBoundSeconds;
        }
    }

    /** Number and time of lifts. */
    public record Lifts(int count, long seconds) {}

    /** What sort of operation it is. */
    public enum Kind {
        UNDO,
        CUT,
        CRACK_LOOSE,
        RECORD,
        MAKE_SAFE,
        DRAIN,
        SUPPORT,
        STRAP,
        PIN,
        HOLDING_TOOL,
        LIFT;

        /** The kind of step that a ready operation makes. */
        public static Kind of(ReadyKind ready) {
            return switch (ready) {
                case RECORD -> RECORD;
                case MAKE_SAFE -> MAKE_SAFE;
                case DRAIN -> DRAIN;
                case SUPPORT -> SUPPORT;
                case STRAP -> STRAP;
                case PIN -> PIN;
                case HOLDING_TOOL -> HOLDING_TOOL;
                case CRACK_LOOSE -> CRACK_LOOSE;
            };
        }
    }

    /**
     * One step.
     *
     * @param number 1-based
     * @param id joint id, ready operation id, or "lift-" and a number
     * @param pieces parts lifted, or parts of the joint
     * @param lift how a lift is done; its mass and way; null for other kinds
     * @param place where and with what
     * @param seconds time of the step itself, expected seizure included
     * @param destroys what the step destroys
     * @param cautions caution ids, to be read before the action
     * @param why why this step is in the plan
     * @param after parts that have become off or aside by this step
     */
    public record Operation(
            int number,
            Kind kind,
            String id,
            List<String> pieces,
            @org.jspecify.annotations.Nullable Lift lift,
            Place place,
            long seconds,
            List<Spend> destroys,
            List<String> cautions,
            List<Why> why,
            After after) {
        public Operation {
            pieces = List.copyOf(pieces);
            destroys = List.copyOf(destroys);
            cautions = List.copyOf(cautions);
            why = List.copyOf(why);
        }
    }

    /** Mass, way of lifting, and whether the pieces stay on the engine by flexible joints (set aside) or are off. */
    public record Lift(double massKilograms, String way, boolean aside, List<String> hangsOn) {
        public Lift {
            hangsOn = List.copyOf(hangsOn);
        }
    }

    /**
     * Where a step is done. A lift is done where the person stands; the tool is laid down beside and taken up again
     * without a changeover.
     */
    public record Place(String zone, List<String> tools, String fromZone, long changeoverSeconds) {
        public Place {
            tools = List.copyOf(tools);
        }
    }

    /**
     * State after a step: parts off and parts set aside, all that hold then, in file order, and what the step lets run out.
     */
    public record After(List<String> off, List<String> aside, List<Spills.Loss> losses) {
        public After {
            off = List.copyOf(off);
            aside = List.copyOf(aside);
            losses = List.copyOf(losses);
        }

        /** A step that lets nothing out. */
        public After(List<String> off, List<String> aside) {
            this(off, aside, List.of());
        }
    }

    /**
     * One reason for a step.
     *
     * @param kind what sort of reason
     * @param ids the ids it is about: the target part, the joint whose access asks for it, the circuit, the landmark ...
     */
    public record Why(WhyKind kind, List<String> ids) {
        public Why {
            ids = List.copyOf(ids);
        }
    }

    /** Sorts of reason. */
    public enum WhyKind {
        /** It is the target, or holds it. */
        TARGET,
        /** A joint holds this part, which must move. */
        HOLDS,
        /** It gives access to a later operation. */
        ACCESS,
        /** It lets a part be lifted. */
        LIFT,
        /** A circuit must be ready before a later operation. */
        CIRCUIT,
        /** A later operation needs it done first. */
        NEEDED_BY,
        /** Something must carry or strap this part. */
        CARRIES,
        /** No plan does without it: it is a landmark by itself. */
        LANDMARK,
        /** It is the cheapest of these alternatives. */
        CHEAPEST_OF
    }
}
