package gudgeon.core.bolting;

/**
 * A crow-foot or other adaptor between a torque wrench and a fastener: it moves the fastener away from the wrench's axis, so
 * that the setting is no longer the torque.
 *
 * <p>Setting = wanted L / (L + E cos a). In line with the wrench (a = 0) it must be set lower, turned back under the handle (180°)
 * higher; square to it (90°) it makes no difference.
 *
 * <p>Source: common practice; moments about the fastener, the hand in the middle of the grip and square to the wrench.
 *
 * @param wrench_mm L, middle of the square drive to middle of the grip, above 0
 * @param offset_mm E, middle of the square drive to middle of the fastener, at least 0
 * @param angle_deg a, from the wrench's line outward; 0 in line, 90 square to it
 */
public record Adaptor(double wrench_mm, double offset_mm, double angle_deg) {
    public Adaptor {
        if (!(wrench_mm > 0 && wrench_mm < 10_000)) {
            throw new IllegalArgumentException("a wrench is longer than 0 mm, not " + wrench_mm);
        }
        if (!(offset_mm >= 0 && offset_mm < wrench_mm)) {
            throw new IllegalArgumentException("an adaptor is shorter than its wrench, not " + offset_mm + " mm on "
                    + wrench_mm + " mm. Maybe the two are swapped?");
        }
        if (!(Math.abs(angle_deg) <= 180)) {
            throw new IllegalArgumentException("an adaptor stands at -180 to 180 degrees, not " + angle_deg);
        }
    }

    /** Torque at the fastener over torque at the wrench. */
    public double factor() {
        return (wrench_mm + offset_mm * Math.cos(Math.toRadians(angle_deg))) / wrench_mm;
    }

    /** What to set for a wanted torque, in the unit of that. */
    public double setting(double wanted) {
        return wanted / factor();
    }

    /** What the fastener gets from a setting, in the unit of that. */
    public double torque(double setting) {
        return setting * factor();
    }
}
