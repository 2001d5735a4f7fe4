package gudgeon.core.quantity;

/**
 * A length in millimetres.
 *
 * @param millimetres the value; finite
 * @param typed the text as the user wrote it, with its unit
 */
public record Length(double millimetres, String typed) {
    public Length {
        if (!Double.isFinite(millimetres)) {
            throw new IllegalArgumentException("Length must be finite, not " + millimetres);
        }
    }

    /** The value without a typed text of its own; it is shown as a plain decimal with the unit. */
    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres, Decimals.plain(millimetres) + " mm");
    }
}
