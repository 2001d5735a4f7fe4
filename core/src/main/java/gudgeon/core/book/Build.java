package gudgeon.core.book;

import java.util.List;

/** What goes together again. */
public sealed interface Build extends Body {
    /**
     * A step of the build plan is done.
     *
     * @param step id of the step in the plan: {@code head-studs/snug}, {@code fill/oil}
     * @param parts the parts of a placing, by which it is known again; empty for other steps
     * @param minutes how long it took; 0 when not said
     */
    record StepBuilt(String step, List<String> parts, double minutes) implements Build {
        public StepBuilt {
            parts = List.copyOf(parts);
            Said.minutes(minutes);
        }
    }

    /**
     * Fasteners have reached the torque of a stage.
     *
     * @param stage 1-based number of the stage in the file
     */
    record StageReached(String joint, int stage, List<String> fasteners) implements Build {
        public StageReached {
            fasteners = List.copyOf(fasteners);
        }
    }

    /** Fasteners were turned on by the angle of a stage and marked. */
    record AngleTurned(String joint, int stage, List<String> fasteners) implements Build {
        public AngleTurned {
            fasteners = List.copyOf(fasteners);
        }
    }

    /**
     * A stage was broken off.
     *
     * @param certain whether every fastener that was turned bears a mark or an entry
     */
    record Interrupted(String joint, int stage, boolean certain) implements Build {}

    /** All fasteners of a joint are taken out and renewed; its stages begin again. */
    record StartedAgain(String joint, String why) implements Build {}

    /** How hard it turns by hand. */
    record TurningForce(String after, double newtonMetres, String note) implements Build {}

    /** A check of the file was done and is answered for. */
    record CheckSigned(String check, String note) implements Build {}

    /** Licensed work was done on a joint. @param by who */
    record LicensedDone(String joint, String by) implements Build {}
}
