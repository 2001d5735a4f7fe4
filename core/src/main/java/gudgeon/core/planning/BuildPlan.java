package gudgeon.core.planning;

import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Torque;
import gudgeon.core.quantity.Volume;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * The way back: every step in order, from the state after the strip to the closed engine. Meanings: docs/build.md. The order
 * keeps every rule; it is not claimed to be the one of least changeover. A step that lacks something stays in its place and
 * says so; the steps that depend on it say that they wait.
 *
 * @param operations in order
 * @param totals times, with a lower bound of the changeover
 * @param accounts everything that came off, went in or was used up, and the step that settles it
 * @param corrections conditions of the engine file that the strip as it really was contradicts
 * @param cures sealants that are still curing when the last step ends
 */
public record BuildPlan(
        List<Operation> operations,
        Totals totals,
        List<Account> accounts,
        List<Correction> corrections,
        List<Cure> cures) {
    public BuildPlan {
        operations = List.copyOf(operations);
        accounts = List.copyOf(accounts);
        corrections = List.copyOf(corrections);
        cures = List.copyOf(cures);
    }

    /** Steps that lack something, in order. */
    public List<Operation> blocked() {
        return operations.stream()
                .filter(operation -> !operation.holdUp().blockedBy().isEmpty())
                .toList();
    }

    /** What sort of step it is. */
    public enum Kind {
        /** Sealant or thread-lock goes on. */
        SEAL,
        /** Parts go to their place, as they were lifted. */
        PLACE,
        /** A joint is put together: fasteners run in and snug, a hose pushed on, a plug pushed home. */
        SNUG,
        /** A joint that was cracked loose is made tight where the file gives no figure. */
        TIGHTEN,
        /** One torque stage, all fasteners. */
        STAGE,
        /** One angle stage, all fasteners, each once. */
        ANGLE,
        /** A support, strap, pin, holding tool comes off, or a make-safe is taken back. */
        RESTORE,
        FILL,
        BLEED,
        CHECK,
        /** Nothing can be done but wait. */
        WAIT
    }

    /**
     * One step.
     *
     * @param number 1-based
     * @param id unique in the plan: {@code JOINT/seal}, {@code place-1}, {@code JOINT/snug}, {@code JOINT/2}, {@code
     *     JOINT/tight}, {@code READY/back}, {@code fill/CIRCUIT}, {@code bleed/CIRCUIT}, {@code check/CHECK}, {@code wait-1}
     * @param subject what it is about
     * @param place where and with what; a placing stands in the zone of the step that follows it and costs no changeover
     * @param clock when it starts and how long it takes
     * @param tightening fasteners in order and what they get; null for steps that turn none
     * @param handling mass and way of a placing; null for other steps
     * @param needs new pieces, cautions
     * @param order what it must wait for, lags to later steps
     * @param holdUp what it lacks
     */
    public record Operation(
            int number,
            Kind kind,
            String id,
            Subject subject,
            StripPlan.Place place,
            Clock clock,
            @Nullable Tightening tightening,
            @Nullable Handling handling,
            Needs needs,
            Order order,
            HoldUp holdUp) {}

    /**
     * @param ref id of the joint, ready operation, circuit or check; for a placing its own id; for a wait the id of the
     *     step that is waited for
     * @param parts parts placed, or parts of the joint; empty for the others
     */
    public record Subject(String ref, List<String> parts) {
        public Subject {
            parts = List.copyOf(parts);
        }
    }

    /**
     * @param startSeconds on a clock that starts with the plan and counts working and waiting time, changeover included
     * @param seconds how long the step takes
     */
    public record Clock(long startSeconds, long seconds) {
        public long endSeconds() {
            return startSeconds + seconds;
        }
    }

    /**
     * Fasteners turned by one step.
     *
     * @param stage 1-based number of the stage in the file; 0 for snug and for tight without a figure
     * @param fasteners every fastener of the joint once, in the order in which they are turned; empty when the joint has none
     * @param torque target of a torque stage; null otherwise
     * @param angle angle to turn on; null otherwise
     * @param threadState dry, oiled, locked, sealed; empty when the file does not say (a stage is then blocked)
     */
    public record Tightening(
            int stage,
            List<String> fasteners,
            @Nullable Torque torque,
            @Nullable Angle angle,
            String threadState) {
        public Tightening {
            fasteners = List.copyOf(fasteners);
        }
    }

    /**
     * How parts are placed.
     *
     * @param way lightest way of lifting of the request that carries it; empty when none does (the step is then blocked)
     * @param hangsOn flexible joints by which it hangs while it is placed
     * @param marks what was to be kept with each part: position, orientation, code, mate
     */
    public record Handling(double massKilograms, String way, List<String> hangsOn, List<Mark> marks) {
        public Handling {
            hangsOn = List.copyOf(hangsOn);
            marks = List.copyOf(marks);
        }
    }

    /** What was kept with a part when it came off. */
    public record Mark(String part, List<String> keep) {
        public Mark {
            keep = List.copyOf(keep);
        }
    }

    /**
     * @param inputs new pieces, sealant, fluid to have in hand before the step
     * @param cautions caution ids, to be read before the action
     * @param text restore text, bleed text or note of the file, as written; empty when there is none
     */
    public record Needs(List<Input> inputs, List<String> cautions, String text) {
        public Needs {
            inputs = List.copyOf(inputs);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * Something used up by the build.
     *
     * @param joint the joint it is for; for a fluid the circuit
     * @param count how many; 1 for sealants and fluids
     * @param volume capacity of the circuit, the most that goes in; null for other things and when not known
     */
    public record Input(
            InputKind kind,
            String joint,
            String spec,
            int count,
            @Nullable Volume volume) {}

    /** Sorts of input. */
    public enum InputKind {
        PIECE,
        SEALANT,
        FLUID
    }

    /**
     * @param after ids of the steps that must come before, direct ones only, in order
     * @param lags times to later steps
     * @param gate whether this is a point of no return: nothing after it starts until it is signed
     */
    public record Order(List<String> after, List<Lag> lags, boolean gate) {
        public Order {
            after = List.copyOf(after);
            lags = List.copyOf(lags);
        }
    }

    /**
     * Time from the end of this step to the start of another.
     *
     * @param to id of the other step
     * @param minSeconds shortest time; 0 when there is none
     * @param maxSeconds longest time; empty when there is none
     */
    public record Lag(String to, long minSeconds, OptionalLong maxSeconds) {}

    /**
     * @param blockedBy what this step itself lacks
     * @param waitsFor ids of the blocked steps that it depends on, directly or not
     */
    public record HoldUp(List<Lack> blockedBy, List<String> waitsFor) {
        public static final HoldUp NONE = new HoldUp(List.of(), List.of());

        public HoldUp {
            blockedBy = List.copyOf(blockedBy);
            waitsFor = List.copyOf(waitsFor);
        }
    }

    /**
     * One thing a step lacks.
     *
     * @param about ids or specifications it is about
     * @param unblockedBy what would unblock it: names of ways of lifting for {@code TOO_HEAVY}; empty for the others
     */
    public record Lack(LackKind kind, List<String> about, List<String> unblockedBy) {
        public Lack {
            about = List.copyOf(about);
            unblockedBy = List.copyOf(unblockedBy);
        }
    }

    /** Sorts of lack. */
    public enum LackKind {
        /** What is placed is heavier than every way of lifting allows. */
        TOO_HEAVY,
        /** The file does not say whether the thread is dry, oiled, locked or sealed. */
        THREAD_STATE,
        /** A new piece, sealant or fluid is not in hand. */
        NOT_IN_HAND,
        /** A gate rests on a typical limit that nobody has confirmed. */
        LIMIT_NOT_CONFIRMED,
        /** Parts that would have to be out of the way to tighten it did not come off in the strip. */
        NO_ROOM,
        /** Two rules of order contradict each other; {@code about} names the pair. */
        ORDER,
        /** The sealant would be past its open time before the joint can be put together. */
        OPEN_TIME,
        /** What is placed would be loose and nothing can be put together at once that holds it. */
        LOOSE,
        /** For licensed practice only. */
        LICENSED
    }

    /**
     * All in whole seconds.
     *
     * @param workSeconds all steps but waits
     * @param changeoverLowerBoundSeconds no order of these steps has less changeover
     */
    public record Totals(long workSeconds, long waitSeconds, long changeoverSeconds, long changeoverLowerBoundSeconds) {
        public long totalSeconds() {
            return workSeconds + waitSeconds + changeoverSeconds;
        }
    }

    /**
     * One thing accounted for.
     *
     * @param id fastener id, part id, joint id for a spend, ready operation id
     * @param detail specification for a spend and for what is renewed of a fastener; empty otherwise
     * @param by id of the step that settles it; empty when it was settled in the strip already
     * @param settled false while that step is blocked or waits
     */
    public record Account(AccountKind kind, String id, Outcome outcome, String detail, String by, boolean settled) {}

    /** Sorts of thing accounted for. */
    public enum AccountKind {
        FASTENER,
        PART,
        SPEND,
        DRAIN_PLUG,
        READY
    }

    /** What becomes of it. */
    public enum Outcome {
        REFITTED,
        /** The fastener goes back with a new nut or new washers. */
        REFITTED_PART_NEW,
        RENEWED,
        PLACED,
        /** A drain's plug went back at once, with its new washer. */
        BACK_AT_ONCE,
        REMOVED,
        RESTORED,
        /** Nothing is done about it on the way back. */
        NOTHING_TO_DO
    }

    /**
     * A condition of the file that the strip as it was contradicts; it was dropped for this plan.
     *
     * @param about id of the joint, part or ready operation whose condition it is
     * @param ids the part, joint, circuit or operation ids that the condition asked for
     */
    public record Correction(CorrectionKind kind, String about, List<String> ids) {
        public Correction {
            ids = List.copyOf(ids);
        }
    }

    /** Sorts of condition that the strip can contradict. */
    public enum CorrectionKind {
        /** It was undone although its access did not hold. */
        ACCESS,
        /** It was lifted although its lift condition did not hold. */
        LIFT,
        /** It was undone although something it needs was not done. */
        NEEDS,
        /** It was undone although a circuit was not ready. */
        CIRCUIT,
        /** It was cracked loose although nothing held it. */
        HOLD,
        /** It hung on a flexible joint that should not carry it. */
        HANGS
    }

    /** A sealant that still cures when the last step ends. */
    public record Cure(String joint, long secondsLeft) {}
}
