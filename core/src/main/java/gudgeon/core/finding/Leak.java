package gudgeon.core.finding;

/**
 * Where gas gets out of a closed cylinder, each path as a share of the effective area of a 0.040 inch tester orifice (0.811
 * mm²), 0 or more.
 *
 * @param exhaust past the exhaust valve
 * @param intake past the intake valve
 * @param rings past the piston
 * @param coolant into the coolant
 * @param neighbour into the next cylinder
 * @param outside to the open air
 * @param oilway into an oilway
 */
public record Leak(
        double exhaust, double intake, double rings, double coolant, double neighbour, double outside, double oilway) {
    /** No leak. */
    public static final Leak NONE = new Leak(0, 0, 0, 0, 0, 0, 0);

    public Leak {
        for (double area : new double[] {exhaust, intake, rings, coolant, neighbour, outside, oilway}) {
            if (!(area >= 0) || area > 1000) {
                throw new IllegalArgumentException("a leak of " + area + " orifices; 0 to 1000 is read");
            }
        }
    }

    /** All paths together. */
    public double total() {
        return exhaust + intake + rings + coolant + neighbour + outside + oilway;
    }

    /** Both leaks together. */
    public Leak plus(Leak other) {
        return new Leak(
                exhaust + other.exhaust,
                intake + other.intake,
                rings + other.rings,
                coolant + other.coolant,
                neighbour + other.neighbour,
                outside + other.outside,
                oilway + other.oilway);
    }
}
