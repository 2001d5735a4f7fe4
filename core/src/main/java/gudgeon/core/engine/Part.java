package gudgeon.core.engine;

import gudgeon.core.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * A place in the engine that holds a physical item.
 *
 * @param id ASCII, unique among parts, joints and ready operations
 * @param name what a mechanic calls it
 * @param group the assembly it is drawn and listed with; empty when none is given
 * @param mass what it weighs; empty when the file does not say ({@link #UNKNOWN_MASS_KG} is then assumed)
 * @param lift what must be moved or undone before it can be lifted
 * @param care how it is handled once it is off
 */
public record Part(String id, String name, String group, Optional<Mass> mass, Condition lift, Care care) {
    /** Assumed for a part without a mass: just more than one person may lift close to the body (common practice: 25 kg). */
    public static final double UNKNOWN_MASS_KG = 26.0;

    public double massKilograms() {
        return mass.map(Mass::kilograms).orElse(UNKNOWN_MASS_KG);
    }

    /**
     * Handling of a part off the engine.
     *
     * @param material what it is made of; empty when not given
     * @param rest how it may lie on a bench; empty when any way will do
     * @param keep what must be kept with it: position, orientation, code; empty when nothing
     * @param suppliedAs the set it is only supplied in; empty when by itself
     * @param cautions caution ids from the catalogue that belong to handling it
     * @param note routing or handling note; empty when none
     * @param photo whether a photo is wished before it comes off
     * @param otherNames further names, British and American, for search
     */
    public record Care(
            String material,
            String rest,
            List<String> keep,
            String suppliedAs,
            List<String> cautions,
            String note,
            boolean photo,
            List<String> otherNames) {
        public static final Care NONE = new Care("", "", List.of(), "", List.of(), "", false, List.of());

        public Care {
            keep = List.copyOf(keep);
            cautions = List.copyOf(cautions);
            otherNames = List.copyOf(otherNames);
        }
    }
}
