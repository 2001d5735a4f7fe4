package gudgeon.core.quantity;

/**
 * A tightening or turning torque in newton metres.
 *
 * @param newtonMetres the value; finite
 * @param typed the text as the user wrote it, with its unit
 */
public record Torque(double newtonMetres, String typed) {
    public Torque {
        if (!Double.isFinite(newtonMetres)) {
            throw new IllegalArgumentException("Torque must be finite, not " + newtonMetres);
        }
    }

    /** The value without a typed text of its own; it is shown as a plain decimal with the unit. */
    public static Torque ofNewtonMetres(double newtonMetres) {
        return new Torque(newtonMetres, Decimals.plain(newtonMetres) + " N·m");
    }
}
