package gudgeon.core.quantity;

/**
 * A volume of fluid in litres.
 *
 * @param litres the value; finite
 * @param typed the text as the user wrote it, with its unit
 */
public record Volume(double litres, String typed) {
    public Volume {
        if (!Double.isFinite(litres)) {
            throw new IllegalArgumentException("Volume must be finite, not " + litres);
        }
    }

    /** The value without a typed text of its own; it is shown as a plain decimal with the unit. */
    public static Volume ofLitres(double litres) {
        return new Volume(litres, Decimals.plain(litres) + " l");
    }
}
