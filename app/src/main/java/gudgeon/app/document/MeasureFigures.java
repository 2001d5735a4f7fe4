package gudgeon.app.document;

import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Estimate;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Measured values in the user's units: as many figures as their uncertainty bears (two of it), lengths never to less than a
 * hundredth or more than a tenth of a micrometre.
 *
 * @param inch whether lengths are shown in inch
 */
public record MeasureFigures(boolean inch) {
    private static final double MM_PER_INCH = 25.4;
    private static final int LEAST_PLACES = 2;
    private static final int MOST_PLACES = 4;

    /** Value and expanded uncertainty: "86.130 mm ± 0.009 mm". */
    public String value(Derived.Trait trait, Estimate estimate) {
        String unit = unit(trait);
        double scale = scale(trait);
        int places = places(estimate.expanded() * scale, trait);
        String value = plain(estimate.value() * scale, places) + " " + unit;
        return estimate.standardUncertainty() == 0
                ? value
                : value + " ± " + plain(estimate.expanded() * scale, places) + " " + unit;
    }

    /** A length to a tenth of a micrometre, trailing zeros cut back to three places: "0.0148 mm". */
    public String length(double value_mm) {
        double value = inch ? value_mm / MM_PER_INCH : value_mm;
        BigDecimal exact = BigDecimal.valueOf(value).setScale(inch ? 5 : 4, RoundingMode.HALF_UP);
        int places = Math.max(3, exact.stripTrailingZeros().scale());
        return exact.setScale(places, RoundingMode.HALF_UP).toPlainString() + (inch ? " in" : " mm");
    }

    /** A value of a trait without its uncertainty. */
    public String of(Derived.Trait trait, double value) {
        return isLength(trait) ? length(value) : plain(value, 3) + " " + unit(trait);
    }

    /** A component of uncertainty, two figures: "0.0029 mm". */
    public String component(Derived.Trait trait, double component) {
        double value = component * scale(trait);
        int places = value == 0 ? 4 : Math.clamp(1 - (int) Math.floor(Math.log10(value)), 0, 6);
        return plain(value, places) + " " + unit(trait);
    }

    /** A probability: "97.3 %", "above 99.9 %", "below 0.1 %". */
    public static String probability(double share) {
        if (share > 0.999) {
            return "above 99.9 %";
        }
        if (share < 0.001) {
            return "below 0.1 %";
        }
        return plain(100 * share, 1) + " %";
    }

    private int places(double expanded, Derived.Trait trait) {
        int more = inch && isLength(trait) ? 1 : 0;
        if (!(expanded > 0)) {
            return 3 + more;
        }
        int places = 1 - (int) Math.floor(Math.log10(expanded));
        return Math.clamp(places, LEAST_PLACES, MOST_PLACES + more);
    }

    private double scale(Derived.Trait trait) {
        return inch && isLength(trait) ? 1 / MM_PER_INCH : 1;
    }

    private static boolean isLength(Derived.Trait trait) {
        return switch (trait) {
            case LOAD, RATE, SQUARENESS, BEND, TWIST -> false;
            default -> true;
        };
    }

    private String unit(Derived.Trait trait) {
        return switch (trait) {
            case LOAD -> "N";
            case RATE -> "N/mm";
            case SQUARENESS -> "°";
            case BEND, TWIST -> "mm over 100 mm";
            default -> inch ? "in" : "mm";
        };
    }

    private static String plain(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(places).toPlainString() : rounded.toPlainString();
    }
}
