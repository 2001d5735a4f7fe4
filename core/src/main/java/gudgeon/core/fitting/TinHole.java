package gudgeon.core.fitting;

import gudgeon.core.bolting.MetricThread;
import java.util.Locale;
import java.util.Optional;

/**
 * Holes of one kind: alike in all that matters for which bolt goes in.
 *
 * @param name what they are called
 * @param count how many, above 0
 * @param thread the thread in them
 * @param leftHand whether it is a left-hand thread
 * @param clamped_mm thickness between head and thread: cover, gasket, washers; at least 0
 * @param ground what the thread is cut in and how deep
 * @param behind what lies behind
 */
public record TinHole(
        String name,
        int count,
        MetricThread thread,
        boolean leftHand,
        double clamped_mm,
        Ground ground,
        Behind behind) {
    public TinHole {
        if (count < 1 || count > 500) {
            throw new IllegalArgumentException("holes " + name + ": 1 to 500 of a kind, not " + count);
        }
        if (!(clamped_mm >= 0 && clamped_mm < 2000)) {
            throw new IllegalArgumentException(
                    "holes " + name + ": a clamped thickness of " + clamped_mm + " mm. Maybe the unit?");
        }
    }

    /**
     * What a thread is cut in.
     *
     * @param material of the wall
     * @param depth_mm usable depth of thread, from the face inward, above 0
     * @param through whether the hole goes through the wall
     */
    public record Ground(Material material, double depth_mm, boolean through) {
        public Ground {
            if (!(depth_mm > 0 && depth_mm < 2000)) {
                throw new IllegalArgumentException("a hole is " + depth_mm + " mm deep. Maybe the unit?");
            }
        }
    }

    /**
     * What lies behind a hole that goes through.
     *
     * @param moves whether something moves there (a belt, a chain, a rotor)
     * @param room_mm how far a bolt may stand out behind before it touches; infinite when there is nothing to touch
     * @param opensTo oil, coolant, combustion ...: the thread needs sealing; empty when nothing
     */
    public record Behind(boolean moves, double room_mm, String opensTo) {
        /** Nothing there. */
        public static final Behind NOTHING = new Behind(false, Double.POSITIVE_INFINITY, "");

        public Behind {
            if (!(room_mm >= 0)) {
                throw new IllegalArgumentException("room behind a hole is at least 0, not " + room_mm);
            }
        }
    }

    /** Materials with the length of engaged thread they ask for, in diameters of the bolt. Typical, common practice. */
    public enum Material {
        STEEL(1.0, 1.0),
        CAST_IRON(1.25, 1.5),
        ALUMINIUM(2.0, 2.0),
        /** Not known: short only by the measure of steel, good only by that of aluminium. */
        UNKNOWN(1.0, 2.0);

        private final double least;
        private final double good;

        Material(double least, double good) {
            this.least = least;
            this.good = good;
        }

        /** Below this many diameters a thread is short. */
        public double leastDiameters() {
            return least;
        }

        /** From this many diameters it is good. */
        public double goodDiameters() {
            return good;
        }

        /** The material that words of an engine file name; empty for other words. */
        public static Optional<Material> find(String words) {
            String key = words.strip().toLowerCase(Locale.ROOT);
            if (key.contains("alumin")
                    || key.contains("alloy") && !key.contains("steel")
                    || key.contains("magnesium")) {
                return Optional.of(ALUMINIUM);
            }
            if (key.contains("iron")) {
                return Optional.of(CAST_IRON);
            }
            return key.contains("steel") ? Optional.of(STEEL) : Optional.empty();
        }
    }
}
