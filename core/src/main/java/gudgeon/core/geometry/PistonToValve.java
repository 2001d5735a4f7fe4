package gudgeon.core.geometry;

import java.util.List;

/**
 * Whether a valve can touch the piston: its lift, as read off a dial over a turn of the crank, against the piston's way down.
 *
 * @param crank crank and rod
 * @param lift the lift along the valve, over crank angle
 * @param depth_at_tdc_mm how far the closed valve's lowest edge is from the piston's pocket at top dead centre, along the
 *     valve, in mm: found by pressing the valve down until it touches
 * @param valve_tilt_deg angle between the valve's stem and the cylinder's axis, in degrees, 0 to below 80
 */
public record PistonToValve(SliderCrank crank, List<Lift> lift, double depth_at_tdc_mm, double valve_tilt_deg) {
    /**
     * A point of the lift curve.
     *
     * @param crank_deg crank degrees from the top dead centre at the overlap; between readings the lift is taken straight
     * @param lift_mm how far the valve is open, in mm, 0 or more
     */
    public record Lift(double crank_deg, double lift_mm) {
        public Lift {
            Guard.finite("An angle of the lift curve", crank_deg, "°");
            Guard.notNegative("A lift", lift_mm, "mm");
        }
    }

    /**
     * The nearest approach.
     *
     * @param clearance_mm the least distance, along the valve, in mm; negative when they meet
     * @param crank_deg where, in crank degrees from top dead centre
     */
    public record Nearest(double clearance_mm, double crank_deg) {}

    public PistonToValve {
        lift = List.copyOf(lift);
        Guard.finite("The depth at top dead centre", depth_at_tdc_mm, "mm");
        Guard.between("The valve's tilt", valve_tilt_deg, 0, 80, "°");
        if (lift.size() < 2) {
            throw new IllegalArgumentException("A lift curve needs two readings at least, not " + lift.size() + ".");
        }
        for (int i = 1; i < lift.size(); i++) {
            if (lift.get(i).crank_deg() <= lift.get(i - 1).crank_deg()) {
                throw new IllegalArgumentException("The angles of the lift curve must grow: after "
                        + lift.get(i - 1).crank_deg() + "° comes " + lift.get(i).crank_deg() + "°.");
            }
        }
    }

    /**
     * The least distance with the camshaft moved, looked for at every tenth of a degree within the curve.
     *
     * @param late_deg how late the camshaft stands, in crank degrees; negative is early
     */
    public Nearest nearest(double late_deg) {
        Guard.finite("The camshaft's error", late_deg, "°");
        double first = lift.getFirst().crank_deg() + late_deg;
        double last = lift.getLast().crank_deg() + late_deg;
        long steps = Math.round((last - first) * 10);
        Nearest nearest = new Nearest(Double.POSITIVE_INFINITY, first);
        for (long step = 0; step <= steps; step++) {
            double angle = first + step / 10.0;
            double clearance = depth_at_tdc_mm
                    + crank.pistonDrop_mm(angle) * Math.cos(Math.toRadians(valve_tilt_deg))
                    - liftAt(angle - late_deg);
            if (clearance < nearest.clearance_mm()) {
                nearest = new Nearest(clearance, angle);
            }
        }
        return nearest;
    }

    private double liftAt(double angle_deg) {
        for (int i = 1; i < lift.size(); i++) {
            Lift to = lift.get(i);
            if (angle_deg <= to.crank_deg()) {
                Lift from = lift.get(i - 1);
                double share = (angle_deg - from.crank_deg()) / (to.crank_deg() - from.crank_deg());
                return from.lift_mm() + Math.max(0, share) * (to.lift_mm() - from.lift_mm());
            }
        }
        return lift.getLast().lift_mm();
    }
}
