package gudgeon.core.engine;

import java.util.List;
import java.util.Optional;

/**
 * What holds two or more parts together; undone once, it releases them all.
 *
 * @param id ASCII, unique among parts, joints and ready operations
 * @param name what a mechanic calls it
 * @param kind the kind of fastening, see {@link JointKind}
 * @param between ids of the joined parts, two or more, distinct
 * @param hang present when the joint is flexible: what may hang on it
 * @param freedom when it may be undone
 * @param work where, with what and how long
 * @param makeup what it is made of and how it is tightened
 */
public record Joint(
        String id,
        String name,
        JointKind kind,
        List<String> between,
        Optional<Hang> hang,
        Freedom freedom,
        Work work,
        Makeup makeup) {
    public Joint {
        between = List.copyOf(between);
    }

    public boolean flexible() {
        return hang.isPresent();
    }

    /**
     * What a flexible joint carries when the part on it is set aside.
     *
     * @param holdsKilograms the mass that may hang on it; 0 when it is short and lets nothing be set aside
     * @param strap id of the ready operation after which any mass may hang; empty when there is none
     */
    public record Hang(double holdsKilograms, Optional<String> strap) {}

    /**
     * When a joint may be undone.
     *
     * @param access conditions for undoing
     * @param accessBuild further conditions for tightening it on the way back, beside {@code access}
     * @param needs ready operations that must be done first
     * @param opens circuits that undoing it opens
     * @param drains circuits that it is a drain of; it is exempt from their readiness
     * @param licensed whether only licensed practice may undo it; the planner never does
     * @param engineState whether the engine must be cold or warm
     * @param hold what must be intact while it is cracked loose
     * @param rests whether what it held sits safely in place when undone
     */
    public record Freedom(
            Condition access,
            Condition accessBuild,
            List<String> needs,
            List<String> opens,
            List<String> drains,
            boolean licensed,
            EngineState engineState,
            Hold hold,
            boolean rests) {
        public Freedom {
            needs = List.copyOf(needs);
            opens = List.copyOf(opens);
            drains = List.copyOf(drains);
        }
    }

    /** Whether the engine must be cold or warm for an action. */
    public enum EngineState {
        ANY,
        COLD,
        WARM
    }

    /**
     * What keeps a shaft from turning while its bolt is cracked loose: alternatives, each a list of joints that must all
     * still be intact. Empty when nothing is needed, or when a tool of the step does it.
     */
    public record Hold(List<List<String>> alternatives) {
        public static final Hold NONE = new Hold(List.of());

        public Hold {
            alternatives = alternatives.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Where, with what and how long.
     *
     * @param zone zone id
     * @param tools for undoing it: tool names, in the words printed on them; hands only when empty
     * @param buildTools for the way back, the same when the file does not tell them apart
     * @param undo how the undo time comes about
     * @param buildSeconds time to fit and tighten it on the way back
     * @param cut the destructive way when it will not come; empty when there is none
     * @param cautions caution ids that stand in the step, before the action
     * @param note a word to the person doing it; empty when none
     * @param photo whether a photo is wished before it is undone
     */
    public record Work(
            String zone,
            List<String> tools,
            List<String> buildTools,
            UndoTime undo,
            long buildSeconds,
            Optional<Cut> cut,
            List<String> cautions,
            String note,
            boolean photo) {
        public Work {
            tools = List.copyOf(tools);
            buildTools = List.copyOf(buildTools);
            cautions = List.copyOf(cautions);
        }

        /** Work with the same tools both ways. */
        public Work(
                String zone,
                List<String> tools,
                UndoTime undo,
                long buildSeconds,
                Optional<Cut> cut,
                List<String> cautions,
                String note,
                boolean photo) {
            this(zone, tools, tools, undo, buildSeconds, cut, cautions, note, photo);
        }
    }

    /** The way round a joint that will not come: what it costs in time and what more it destroys. */
    public record Cut(long seconds, List<Spend> destroys, List<String> tools) {
        public Cut {
            destroys = List.copyOf(destroys);
            tools = List.copyOf(tools);
        }
    }
}
