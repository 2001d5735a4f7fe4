package gudgeon.core.bearing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance zone of the system of limits and fits, like H7 or g6: which side of the nominal size, and how wide. Source:
 * [ISO286-2], the tables up to 500 mm, from memory; the rows that could be read are checked in the tests.
 *
 * @param hole whether it is a hole's (capital letter) or a shaft's
 * @param position the letter or letters, in small letters
 * @param grade the grade, 1 to 18
 */
public record ToleranceZone(boolean hole, String position, int grade) {
    private static final Pattern FORM = Pattern.compile("([A-Za-z]{1,2})([0-9]{1,2})");

    public ToleranceZone {
        if (grade < 1 || grade > 18) {
            throw new IllegalArgumentException("The grade is " + grade + "; it must be 1 to 18.");
        }
        if (!FundamentalDeviations.knows(position)) {
            throw new IllegalArgumentException(
                    "No zone begins with " + position + " here. Known are " + FundamentalDeviations.letters() + ".");
        }
    }

    /** A zone as it is written, like {@code H7} or {@code js6}. */
    public static ToleranceZone parse(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is no tolerance zone. Write it like H7 or g6.");
        }
        String letters = form.group(1);
        boolean hole = Character.isUpperCase(letters.charAt(0));
        return new ToleranceZone(hole, letters.toLowerCase(java.util.Locale.ROOT), Integer.parseInt(form.group(2)));
    }

    /**
     * The deviations of a nominal size.
     *
     * @param nominal_mm above 0, up to 500
     */
    public Limits limits(double nominal_mm) {
        return FundamentalDeviations.limits(this, nominal_mm);
    }

    /**
     * Deviations from the nominal size.
     *
     * @param upper_um the upper one, in µm
     * @param lower_um the lower one, in µm
     */
    public record Limits(double upper_um, double lower_um) {}

    /**
     * The clearance of a fit.
     *
     * @param least_um least clearance in µm; negative is interference
     * @param most_um greatest clearance in µm
     */
    public record Fit(double least_um, double most_um) {
        /** The fit of a shaft in a hole of one nominal size. */
        public static Fit of(ToleranceZone hole, ToleranceZone shaft, double nominal_mm) {
            if (!hole.hole() || shaft.hole()) {
                throw new IllegalArgumentException(
                        "A fit is a hole with a shaft, like H7 with g6: a capital letter first, then a small one.");
            }
            Limits outside = hole.limits(nominal_mm);
            Limits inside = shaft.limits(nominal_mm);
            return new Fit(outside.lower_um() - inside.upper_um(), outside.upper_um() - inside.lower_um());
        }
    }
}
