package gudgeon.core.geometry;

/**
 * When the valves open and close, in crank degrees, each at the lift that the four figures were given for.
 *
 * @param inlet_opens_btdc before top dead centre; negative is after
 * @param inlet_closes_abdc after bottom dead centre
 * @param exhaust_opens_bbdc before bottom dead centre
 * @param exhaust_closes_atdc after top dead centre; negative is before
 */
public record ValveTiming(
        double inlet_opens_btdc, double inlet_closes_abdc, double exhaust_opens_bbdc, double exhaust_closes_atdc) {
    public ValveTiming {
        Guard.between("The inlet's opening", inlet_opens_btdc, -180, 180, "°");
        Guard.between("The inlet's closing", inlet_closes_abdc, -180, 180, "°");
        Guard.between("The exhaust's opening", exhaust_opens_bbdc, -180, 180, "°");
        Guard.between("The exhaust's closing", exhaust_closes_atdc, -180, 180, "°");
    }

    /** How long a valve stays open that opens before one dead centre and closes after the next, in crank degrees. */
    public static double duration_deg(double opensBefore_deg, double closesAfter_deg) {
        return opensBefore_deg + 180 + closesAfter_deg;
    }

    /** When a valve closes, after the next dead centre, that opens before one and stays open so long. */
    public static double closing_deg(double opensBefore_deg, double duration_deg) {
        return duration_deg - 180 - opensBefore_deg;
    }

    /** How long the inlet is open, in crank degrees. */
    public double inletDuration_deg() {
        return duration_deg(inlet_opens_btdc, inlet_closes_abdc);
    }

    /** How long the exhaust is open, in crank degrees. */
    public double exhaustDuration_deg() {
        return duration_deg(exhaust_opens_bbdc, exhaust_closes_atdc);
    }

    /** How long both are open around top dead centre, in crank degrees; negative when neither is for so long. */
    public double overlap_deg() {
        return inlet_opens_btdc + exhaust_closes_atdc;
    }

    /** Where the inlet lobe points, in crank degrees after top dead centre, for a lobe of equal flanks. */
    public double inletLobeCentre_atdc() {
        return inletDuration_deg() / 2 - inlet_opens_btdc;
    }

    /** Where the exhaust lobe points, in crank degrees before top dead centre, for a lobe of equal flanks. */
    public double exhaustLobeCentre_btdc() {
        return exhaustDuration_deg() / 2 - exhaust_closes_atdc;
    }

    /** The angle between the lobes, in degrees of the camshaft. */
    public double lobeSeparation_camDeg() {
        return (inletLobeCentre_atdc() + exhaustLobeCentre_btdc()) / 2;
    }

    /** Crank degrees from ignition before firing top dead centre to the inlet's next opening, four-stroke. */
    public static double ignitionToInlet_deg(double ignition_btdc, double inletOpens_btdc) {
        return ignition_btdc + 360 - inletOpens_btdc;
    }

    /**
     * A lobe's centre and duration from two readings of a degree disc: where the follower reaches a lift on the way up and
     * where it comes back to it.
     *
     * @param up_deg where it reaches the lift going up, in crank degrees on any scale that grows with the crank
     * @param down_deg where it comes back to it; more than the first
     */
    public static Lobe lobe(double up_deg, double down_deg) {
        Guard.finite("The reading going up", up_deg, "°");
        Guard.positive("From the reading going up to that coming down", down_deg - up_deg, "°");
        return new Lobe((up_deg + down_deg) / 2, down_deg - up_deg);
    }

    /**
     * A lobe as read from a degree disc.
     *
     * @param centre_deg where it points, on the scale of the readings
     * @param duration_deg how long it holds at least that lift
     */
    public record Lobe(double centre_deg, double duration_deg) {
        /** How far it is late against where it ought to point, in crank degrees; negative is early. */
        public double late_deg(double wanted_deg) {
            return centre_deg - wanted_deg;
        }
    }
}
