package gudgeon.app.format;

import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * A quantity that a person typed, with its unit, outside an engine file: on the command line or in a form.
 *
 * @param value in the unit that {@link QuantityKind} names
 * @param typed as it was typed
 */
public record Amount(double value, String typed) {
    /**
     * Reads a quantity of a kind.
     *
     * @param text a number and a unit
     * @param kind what it must be
     * @param locale where a comma is the decimal sign it is taken for one; elsewhere it is refused
     * @throws IllegalArgumentException with one sentence that says what is wrong and what would be right
     */
    public static Amount parse(String text, QuantityKind kind, Locale locale) {
        String typed = text.strip();
        String read = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ','
                ? typed.replaceFirst("^([+-]?[0-9]*),([0-9])", "$1.$2")
                : typed;
        return switch (Quantities.parse(read, kind)) {
            case Quantities.Parsed.Sound sound -> new Amount(sound.measure().value(), typed);
            case Quantities.Parsed.Wrong wrong ->
                throw new IllegalArgumentException(wrong.what() + "; " + wrong.advice());
        };
    }
}
