package gudgeon.core.bolting;

/**
 * The ring on which the turned head or nut bears.
 *
 * @param outer_mm diameter of the bearing face dw
 * @param hole_mm diameter of the hole below dh, smaller than the face
 */
public record Bearing(double outer_mm, double hole_mm) {
    public Bearing {
        if (!(hole_mm > 0 && outer_mm > hole_mm && outer_mm < 1000)) {
            throw new IllegalArgumentException("a bearing face of " + outer_mm + " mm does not lie round a hole of "
                    + hole_mm + " mm. Maybe the two are swapped?");
        }
    }

    /** Effective diameter for friction DKm = (dw + dh) / 2, millimetres. */
    public double effective_mm() {
        return (outer_mm + hole_mm) / 2;
    }

    /**
     * A typical hexagon head of that thread: face about 1.45 d across, hole about 1.1 d. Within 2 % of the usual sizes from 6
     * to 16 mm; common practice, to be replaced by what is measured.
     */
    public static Bearing typical(MetricThread thread) {
        return new Bearing(1.45 * thread.diameter_mm(), 1.1 * thread.diameter_mm());
    }
}
