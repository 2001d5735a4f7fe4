package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * How to go on with a tightening step that was interrupted.
 *
 * <p>A torque stage starts again at its first fastener and nothing is backed off: a fastener that has reached the torque
 * does not turn further. An angle adds to what is there, so no fastener is ever turned twice: only those that have neither a
 * mark on them nor an entry get the angle. When it is not certain which were turned, none may be turned and all are spent.
 * Source: common practice.
 *
 * @param turn fasteners to turn, in order
 * @param leave fasteners to leave as they are, in order
 * @param spent fasteners to take out and renew, in order; the joint then starts again from its first stage
 */
public record Resume(List<String> turn, List<String> leave, List<String> spent) {
    public Resume {
        turn = List.copyOf(turn);
        leave = List.copyOf(leave);
        spent = List.copyOf(spent);
    }

    /**
     * How to go on.
     *
     * @param stage the step that was interrupted
     * @param marked fasteners of it that bear a mark or have an entry of having been turned
     * @param certain whether every fastener that was turned is sure to be among {@code marked}
     * @throws IllegalArgumentException when {@code marked} names a fastener that is not of this step
     */
    public static Resume after(BuildPlan.Tightening stage, Collection<String> marked, boolean certain) {
        for (String fastener : marked) {
            if (!stage.fasteners().contains(fastener)) {
                throw new IllegalArgumentException("the step turns no fastener " + fastener);
            }
        }
        if (stage.angle() == null) {
            return new Resume(stage.fasteners(), List.of(), List.of());
        }
        if (!certain) {
            return new Resume(List.of(), List.of(), stage.fasteners());
        }
        List<String> turn = new ArrayList<>(stage.fasteners());
        turn.removeAll(marked);
        return new Resume(
                turn, stage.fasteners().stream().filter(marked::contains).toList(), List.of());
    }
}
