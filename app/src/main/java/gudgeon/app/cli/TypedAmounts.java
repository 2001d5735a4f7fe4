package gudgeon.app.cli;

import gudgeon.app.format.Amount;
import gudgeon.app.format.QuantityKind;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Quantities among the options of a command; what cannot be read is wrong usage that names the option. */
record TypedAmounts(CommandLine line) {
    /** A length in mm. */
    double mm(String option, String text) {
        return read(option, text, QuantityKind.LENGTH);
    }

    /** A volume in cm³. */
    double cm3(String option, String text) {
        return 1000 * read(option, text, QuantityKind.VOLUME);
    }

    /** A height in m. */
    double metres(String option, String text) {
        return mm(option, text) / 1000;
    }

    /** An angle in degrees; a bare number is taken for degrees, the only unit in use for a crank. */
    double degrees(String option, String text) {
        return read(option, text.strip().matches("[+-]?[0-9.]+") ? text.strip() + " °" : text, QuantityKind.ANGLE);
    }

    private double read(String option, String text, QuantityKind kind) {
        try {
            return Amount.parse(text, kind, Locale.getDefault(Locale.Category.FORMAT)).value();
        } catch (IllegalArgumentException e) {
            throw new ParameterException(line, option + ": " + e.getMessage());
        }
    }
}
