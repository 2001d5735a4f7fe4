package gudgeon.core.engine;

import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Torque;
import java.util.List;
import java.util.Optional;

/**
 * What a joint is made of and how it is tightened.
 *
 * @param fasteners every single fastener, in file order; identity is joint and position
 * @param spends what undoing the joint destroys
 * @param stages tightening stages in order; empty when it is not tightened by torque or angle
 * @param pattern order of tightening as 1-based fastener positions; empty when any order will do
 * @param loosen how it is loosened
 * @param sealant sealant or thread-lock that goes on; empty when none
 * @param after build marks that must be reached before this joint may be placed, see docs/engine-file.md
 */
public record Makeup(
        List<Fastener> fasteners,
        List<Spend> spends,
        List<Stage> stages,
        List<Integer> pattern,
        Loosen loosen,
        Optional<Sealant> sealant,
        List<String> after) {
    public static final Makeup PLAIN = new Makeup(
            List.of(), List.of(), List.of(), List.of(), new Loosen(1, List.of()), Optional.empty(), List.of());

    public Makeup {
        fasteners = List.copyOf(fasteners);
        spends = List.copyOf(spends);
        stages = List.copyOf(stages);
        pattern = List.copyOf(pattern);
        after = List.copyOf(after);
    }

    /**
     * One tightening stage.
     *
     * @param torque target torque; empty for an angle stage
     * @param angle angle to turn on; empty for a torque stage
     * @param threadState dry, oiled, locked ...; empty when the file does not say, which blocks the step
     * @param after build marks that must be reached first: "joint", "joint/snug" or "joint/2"
     */
    public record Stage(Optional<Torque> torque, Optional<Angle> angle, String threadState, List<String> after) {
        public Stage {
            after = List.copyOf(after);
            if (torque.isPresent() == angle.isPresent()) {
                throw new IllegalArgumentException("a stage has either a torque or an angle");
            }
        }
    }

    /** Passes and order of loosening; an empty order means any. */
    public record Loosen(int passes, List<Integer> order) {
        public Loosen {
            order = List.copyOf(order);
        }
    }

    /**
     * Sealant or thread-lock.
     *
     * @param spec what to buy
     * @param openSeconds longest time from applying to the first tightening; 0 when it does not matter
     * @param cureSeconds shortest time from the last tightening to filling or starting; 0 when it does not matter
     */
    public record Sealant(String spec, long openSeconds, long cureSeconds) {}
}
