package gudgeon.app.desk;

import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.Resume;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Torque;
import java.util.List;

/**
 * Where to start again after an interruption, for a stage that stands in no job.
 *
 * @param angle whether it is an angle stage
 * @param order the fasteners in the order in which they are turned
 * @param marked those that bear a mark or are known to have been turned
 * @param certain whether every one that was turned is among them
 */
public record RestartQuestion(boolean angle, List<String> order, List<String> marked, boolean certain) {
    public RestartQuestion {
        order = List.copyOf(order);
        marked = List.copyOf(marked);
    }

    /** Asks. @throws IllegalArgumentException when a fastener is named that the stage does not turn */
    public Resume ask() {
        if (order.isEmpty() || order.stream().distinct().count() != order.size()) {
            throw new IllegalArgumentException("order: name every fastener of the stage once, in the order of turning");
        }
        return Resume.after(
                new BuildPlan.Tightening(
                        1, order, angle ? null : Torque.ofNewtonMetres(1), angle ? Angle.ofDegrees(90) : null, "oiled"),
                marked,
                certain);
    }
}
