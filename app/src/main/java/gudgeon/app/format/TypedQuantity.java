package gudgeon.app.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity that a person typed, with the unit they think in: what follows from it can be shown in that unit again.
 *
 * @param value in the unit of its kind: millimetres, newton metres, kilograms, degrees ...
 * @param kind what it measures
 * @param unit as it is written in print: N·m, lbf·ft, mm, thou ...
 */
public record TypedQuantity(double value, QuantityKind kind, String unit) {
    private static final Map<String, String> PRINTED = Map.ofEntries(
            Map.entry("nm", "N·m"),
            Map.entry("kgfm", "kgf·m"),
            Map.entry("lbfft", "lbf·ft"),
            Map.entry("lbft", "lbf·ft"),
            Map.entry("ftlb", "lbf·ft"),
            Map.entry("ftlbf", "lbf·ft"),
            Map.entry("lbfin", "lbf·in"),
            Map.entry("lbin", "lbf·in"),
            Map.entry("inlb", "lbf·in"),
            Map.entry("inlbf", "lbf·in"),
            Map.entry("um", "µm"),
            Map.entry("inch", "in"),
            Map.entry("\"", "in"),
            Map.entry("lbs", "lb"),
            Map.entry("deg", "°"),
            Map.entry("cc", "cm³"),
            Map.entry("cm3", "cm³"));
    private static final Pattern SPAN =
            Pattern.compile("(.*?\\d[^-–\\d]*?)\\s*(?:\\bto\\b|-|–|\\.\\.)\\s*([+-]?[\\d.,]+)(.*)");

    /**
     * Reads what a person typed.
     *
     * @param field what it is for, as the message names it
     * @param comma whether the person's way of writing numbers has a decimal comma
     * @throws IllegalArgumentException with what is wrong and what would be right
     */
    public static TypedQuantity read(String field, String typed, QuantityKind kind, boolean comma) {
        String plain = comma ? typed.strip().replaceFirst("^([+-]?[0-9]*),([0-9])", "$1.$2") : typed.strip();
        return switch (Quantities.parse(plain, kind)) {
            case Quantities.Parsed.Sound sound ->
                new TypedQuantity(
                        sound.measure().value(),
                        kind,
                        printed(plain.replaceFirst("^[+-]?[0-9.]+[\\s\\u00a0\\u2007\\u2009\\u200a\\u202f]*", "")));
            case Quantities.Parsed.Wrong wrong ->
                throw new IllegalArgumentException(field + ": " + wrong.what() + "; " + wrong.advice());
        };
    }

    /**
     * A range: "5-25 N·m", "0.15 mm to 0.25 mm".
     *
     * @param least its lower end
     * @param most its upper end
     */
    public record Span(TypedQuantity least, TypedQuantity most) {}

    /**
     * Reads a range; a unit that stands only after the second number counts for both.
     *
     * @throws IllegalArgumentException with what is wrong and what would be right
     */
    public static Span readSpan(String field, String typed, QuantityKind kind, boolean comma) {
        Matcher matcher = SPAN.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException(field + ": " + Wording.shown(typed) + " is no range; write it like "
                    + kind.example() + " to " + kind.example());
        }
        String second = matcher.group(2) + matcher.group(3);
        String first = matcher.group(1).strip();
        if (first.matches("[+-]?[\\d.,]+")) {
            first += " " + matcher.group(3).strip();
        }
        Span span = new Span(read(field, first, kind, comma), read(field, second, kind, comma));
        if (span.least().value() > span.most().value()) {
            throw new IllegalArgumentException(
                    field + ": " + Wording.shown(typed) + " goes from more to less; swap its ends");
        }
        return span;
    }

    private static String printed(String unit) {
        String key = UnitWords.key(unit);
        return PRINTED.getOrDefault(key, unit.strip());
    }

    /** Another value of the same kind, in this unit, to so many figures: "53.3 N·m". */
    public String like(double other, int figures) {
        double one = Quantities.convert("1", UnitWords.find(unit).orElseThrow().unit(), kind.unit());
        BigDecimal shown = BigDecimal.valueOf(other / one).round(new MathContext(figures, RoundingMode.HALF_UP));
        int scale = Math.max(0, shown.stripTrailingZeros().scale());
        String blank = unit.equals("°") ? "" : " ";
        return shown.setScale(scale, RoundingMode.HALF_UP).toPlainString() + blank + unit;
    }
}
