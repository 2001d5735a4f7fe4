package gudgeon.app.web.strip;

import gudgeon.app.format.Caution;
import java.util.List;

/**
 * One step as a page shows it.
 *
 * @param number 1-based
 * @param instruction one line
 * @param tools what to take in the hand; empty for none
 * @param fasteners what it undoes, one entry for each different fastener
 * @param notes what to mind
 * @param renew what it destroys; empty for nothing
 * @param time how long it takes
 * @param warnings before the action
 * @param why reasons
 * @param bag number of the bag; empty when there is none
 * @param stuck where the plan without this joint is; empty when the step undoes no joint
 */
public record StepView(
        int number,
        String instruction,
        String tools,
        List<String> fasteners,
        List<String> notes,
        List<String> renew,
        String time,
        List<Warning> warnings,
        List<String> why,
        String bag,
        String stuck) {
    public StepView {
        fasteners = List.copyOf(fasteners);
        notes = List.copyOf(notes);
        renew = List.copyOf(renew);
        warnings = List.copyOf(warnings);
        why = List.copyOf(why);
    }

    /**
     * A caution of a step.
     *
     * @param seenAt the step where it is written out; 0 when here
     */
    public record Warning(Caution caution, int seenAt) {
        public boolean danger() {
            return caution.level() == Caution.Level.DANGER;
        }
    }

    /** Consecutive steps in one place. */
    public record Run(String zone, String time, List<StepView> steps) {
        public Run {
            steps = List.copyOf(steps);
        }
    }
}
