package gudgeon.app.web.measuring;

import gudgeon.app.document.MeasureFigures;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Verdict;

/**
 * A value with its uncertainty beside its limits, drawn as a rule: hatched is beyond.
 *
 * @param lower where the lower limit stands; negative when there is none
 * @param upper where the upper limit stands; negative when there is none
 * @param value where the value stands
 * @param from where its uncertainty begins
 * @param to where it ends
 * @param lowerText the lower limit
 * @param upperText the upper limit
 */
public record ScaleView(
        double lower, double upper, double value, double from, double to, String lowerText, String upperText) {
    /** Width of the drawing. */
    public static final int WIDTH = 320;

    private static final double EDGE = 16;

    static ScaleView of(Derived.Trait trait, Verdict verdict, MeasureFigures figures) {
        double at = verdict.result().value();
        double expanded = verdict.result().expanded();
        double least = Math.min(at - expanded, verdict.limits().lower().orElse(at - expanded));
        double most = Math.max(at + expanded, verdict.limits().upper().orElse(at + expanded));
        double margin = Math.max((most - least) * 0.15, 1e-9);
        double start = least - margin;
        double scale = (WIDTH - 2 * EDGE) / (most - least + 2 * margin);
        return new ScaleView(
                verdict.limits().lower().isPresent()
                        ? EDGE + (verdict.limits().lower().getAsDouble() - start) * scale
                        : -1,
                verdict.limits().upper().isPresent()
                        ? EDGE + (verdict.limits().upper().getAsDouble() - start) * scale
                        : -1,
                EDGE + (at - start) * scale,
                EDGE + (at - expanded - start) * scale,
                EDGE + (at + expanded - start) * scale,
                verdict.limits().lower().isPresent()
                        ? figures.of(trait, verdict.limits().lower().getAsDouble())
                        : "",
                verdict.limits().upper().isPresent()
                        ? figures.of(trait, verdict.limits().upper().getAsDouble())
                        : "");
    }

    public boolean hasLower() {
        return lower >= 0;
    }

    public boolean hasUpper() {
        return upper >= 0;
    }

    /** Where the zone within begins and how wide it is. */
    public String zoneLeft() {
        return plain(hasLower() ? lower : 0);
    }

    public String zoneWidth() {
        return plain((hasUpper() ? upper : WIDTH) - (hasLower() ? lower : 0));
    }

    public String lowerX() {
        return plain(lower);
    }

    public String upperX() {
        return plain(upper);
    }

    public String valueX() {
        return plain(value);
    }

    public String fromX() {
        return plain(from);
    }

    public String width() {
        return plain(to - from);
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
