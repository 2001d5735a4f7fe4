package gudgeon.core.bolting;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A metric ISO thread by its nominal diameter and pitch; all derived sizes are basic sizes, without tolerance.
 *
 * <p>Source: [ISO68-1] profile; [ISO724] d2 and D1; [ISO898-1] stress area; [ISO261] the coarse series.
 *
 * @param diameter_mm nominal diameter d, above 0 and at most 300
 * @param pitch_mm pitch P, above 0 and less than half the diameter
 */
public record MetricThread(double diameter_mm, double pitch_mm) {
    private static final Pattern WRITTEN = Pattern.compile(
            "M\\s?(\\d{1,3}(?:\\.\\d{1,2})?)(?:\\s?[x×X*]\\s?(\\d{1,2}(?:\\.\\d{1,3})?))?(?:\\s?(LH|RH))?");
    private static final int FIGURES = 3;

    /** Pitches of the coarse series, by nominal diameter in millimetres. */
    private static final Map<String, Double> COARSE_mm = Map.ofEntries(
            Map.entry("1", 0.25),
            Map.entry("1.2", 0.25),
            Map.entry("1.4", 0.3),
            Map.entry("1.6", 0.35),
            Map.entry("1.8", 0.35),
            Map.entry("2", 0.4),
            Map.entry("2.5", 0.45),
            Map.entry("3", 0.5),
            Map.entry("3.5", 0.6),
            Map.entry("4", 0.7),
            Map.entry("4.5", 0.75),
            Map.entry("5", 0.8),
            Map.entry("6", 1.0),
            Map.entry("7", 1.0),
            Map.entry("8", 1.25),
            Map.entry("10", 1.5),
            Map.entry("12", 1.75),
            Map.entry("14", 2.0),
            Map.entry("16", 2.0),
            Map.entry("18", 2.5),
            Map.entry("20", 2.5),
            Map.entry("22", 2.5),
            Map.entry("24", 3.0),
            Map.entry("27", 3.0),
            Map.entry("30", 3.5),
            Map.entry("33", 3.5),
            Map.entry("36", 4.0),
            Map.entry("39", 4.0),
            Map.entry("42", 4.5),
            Map.entry("45", 4.5),
            Map.entry("48", 5.0),
            Map.entry("52", 5.0),
            Map.entry("56", 5.5),
            Map.entry("60", 5.5),
            Map.entry("64", 6.0),
            Map.entry("68", 6.0));

    public MetricThread {
        if (!(diameter_mm > 0 && diameter_mm <= 300)) {
            throw new IllegalArgumentException("a metric thread of " + diameter_mm + " mm diameter is not known. Maybe"
                    + " the diameter is not in millimetres?");
        }
        if (!(pitch_mm > 0 && pitch_mm < diameter_mm / 2)) {
            throw new IllegalArgumentException("a pitch of " + pitch_mm + " mm does not go with a diameter of "
                    + diameter_mm + " mm. Maybe it is threads per inch?");
        }
    }

    /** A thread as it is written: M8x1.25, M8 × 1, M8 (coarse), M12x1.25 LH; empty when it is not a metric thread so written. */
    public static Optional<MetricThread> find(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double diameter_mm = Double.parseDouble(matcher.group(1));
        String size = BigDecimal.valueOf(diameter_mm).stripTrailingZeros().toPlainString();
        Double pitch_mm = matcher.group(2) != null ? Double.valueOf(matcher.group(2)) : COARSE_mm.get(size);
        if (pitch_mm == null || !(pitch_mm > 0 && pitch_mm < diameter_mm / 2 && diameter_mm <= 300)) {
            return Optional.empty();
        }
        return Optional.of(new MetricThread(diameter_mm, pitch_mm));
    }

    /** As it is written: M8x1.25. */
    public String designation() {
        return "M" + plain(diameter_mm) + "x" + plain(pitch_mm);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** Basic pitch diameter d2 = d - 0.649519 P, millimetres. */
    public double pitchDiameter_mm() {
        return diameter_mm - 0.649519 * pitch_mm;
    }

    /** Basic minor diameter of the nut thread D1 = d - 1.082532 P, millimetres. */
    public double minorDiameter_mm() {
        return diameter_mm - 1.082532 * pitch_mm;
    }

    /** Diameter at the rounded root of the bolt thread d3 = d - 1.226869 P, millimetres. */
    public double rootDiameter_mm() {
        return diameter_mm - 1.226869 * pitch_mm;
    }

    /** Diameter of the stress area (d2 + d3) / 2, millimetres. */
    public double stressDiameter_mm() {
        return (pitchDiameter_mm() + rootDiameter_mm()) / 2;
    }

    /** Stress area pi/4 ((d2 + d3) / 2)², square millimetres, unrounded. */
    public double stressArea_mm2() {
        double d_mm = stressDiameter_mm();
        return Math.PI / 4 * d_mm * d_mm;
    }

    /** Nominal stress area: rounded to three figures, as the tables of loads have it; square millimetres. */
    public double nominalStressArea_mm2() {
        return BigDecimal.valueOf(stressArea_mm2())
                .round(new MathContext(FIGURES, RoundingMode.HALF_UP))
                .doubleValue();
    }

    /** Depth of the bolt thread h3 = 0.61343 P, millimetres. */
    public double externalDepth_mm() {
        return 0.61343 * pitch_mm;
    }

    /** Depth on which bolt and nut thread bear H1 = 0.54127 P, millimetres. */
    public double bearingDepth_mm() {
        return 0.54127 * pitch_mm;
    }

    /** Lead angle at the pitch diameter atan(P / (pi d2)), degrees. */
    public double leadAngle_deg() {
        return Math.toDegrees(Math.atan(pitch_mm / (Math.PI * pitchDiameter_mm())));
    }
}
