package gudgeon.core.quantity;

/**
 * A mass in kilograms.
 *
 * @param kilograms the value; finite
 * @param typed the text as the user wrote it, with its unit
 */
public record Mass(double kilograms, String typed) {
    public Mass {
        if (!Double.isFinite(kilograms)) {
            throw new IllegalArgumentException("Mass must be finite, not " + kilograms);
        }
    }

    /** The value without a typed text of its own; it is shown as a plain decimal with the unit. */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(kilograms, Decimals.plain(kilograms) + " kg");
    }
}
