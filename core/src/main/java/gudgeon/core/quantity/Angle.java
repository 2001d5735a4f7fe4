package gudgeon.core.quantity;

/**
 * A turned angle in degrees.
 *
 * @param degrees the value; finite
 * @param typed the text as the user wrote it, with its unit
 */
public record Angle(double degrees, String typed) {
    public Angle {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("Angle must be finite, not " + degrees);
        }
    }

    /** The value without a typed text of its own; it is shown as a plain decimal with the unit. */
    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees, Decimals.plain(degrees) + " °");
    }
}
