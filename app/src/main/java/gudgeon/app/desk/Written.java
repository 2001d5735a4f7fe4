package gudgeon.app.desk;

import gudgeon.app.format.QuantityKind;
import gudgeon.app.format.TypedQuantity;
import gudgeon.core.bolting.Friction;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.UnifiedThread;
import gudgeon.core.fitting.Aim;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers and trade words of bolts and fits as a person writes them. Whatever cannot be read is an IllegalArgumentException that
 * names the field, what is wrong and what would be right.
 *
 * @param comma whether the person's way of writing numbers has a decimal comma
 */
public record Written(boolean comma) {
    private static final Pattern UNIFIED = Pattern.compile(
            "(?:(\\d+)[ -])?(\\d{1,2})/(\\d{1,2})\\s*\"?\\s*-\\s*(\\d{1,2})(?:\\s*UN[A-Z]*)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PLAIN = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?");

    TypedQuantity quantity(String field, String text, QuantityKind kind) {
        return TypedQuantity.read(field, text, kind, comma);
    }

    double length_mm(String field, String text) {
        return quantity(field, text, QuantityKind.LENGTH).value();
    }

    List<Double> lengths_mm(String field, List<String> texts) {
        return texts.stream().map(text -> length_mm(field, text)).toList();
    }

    double mass_g(String field, String text) {
        return quantity(field, text, QuantityKind.MASS).value() * 1000;
    }

    double share(String field, String text) {
        return quantity(field, text, QuantityKind.SHARE).value() / 100;
    }

    TypedQuantity torque(String field, String text) {
        return quantity(field, text, QuantityKind.TORQUE);
    }

    /** What a clearance should be: a range, and the best if it is not its middle. */
    Aim aim(String field, String range, String best) {
        TypedQuantity.Span span = TypedQuantity.readSpan(field, range, QuantityKind.LENGTH, comma);
        double least = span.least().value();
        double most = span.most().value();
        return best.isEmpty() ? Aim.between(least, most) : new Aim(least, length_mm(field, best), most);
    }

    /** A plain number without a unit. */
    double number(String field, String text) {
        String plain = comma ? text.strip().replaceFirst(",", ".") : text.strip();
        if (!PLAIN.matcher(plain).matches()) {
            throw new IllegalArgumentException(field + ": '" + Checks.shortened(text) + "' is no plain number");
        }
        return Double.parseDouble(plain);
    }

    /** A whole number of at least 0. */
    int whole(String field, String text) {
        if (!text.strip().matches("\\d{1,6}")) {
            throw new IllegalArgumentException(field + ": '" + Checks.shortened(text) + "' is no whole number");
        }
        return Integer.parseInt(text.strip());
    }

    /** A metric thread, or a unified one in millimetres. */
    MetricThread thread(String field, String text) {
        return MetricThread.find(text)
                .or(() -> findUnified(text).map(UnifiedThread::inMillimetres))
                .orElseThrow(() -> new IllegalArgumentException(field + ": '" + Checks.shortened(text)
                        + "' is no thread that is known here; write M8x1.25, M8 (coarse) or 1/2-13"));
    }

    /** A unified thread, written 1/2-13 or 5/16-18 UNC. */
    static java.util.Optional<UnifiedThread> findUnified(String text) {
        Matcher matcher = UNIFIED.matcher(text.strip());
        if (!matcher.matches() || matcher.group(3).matches("0+")) {
            return java.util.Optional.empty();
        }
        double whole = matcher.group(1) == null ? 0 : Double.parseDouble(matcher.group(1));
        double inches = whole + Double.parseDouble(matcher.group(2)) / Double.parseDouble(matcher.group(3));
        return java.util.Optional.of(new UnifiedThread(inches, Double.parseDouble(matcher.group(4))));
    }

    PropertyClass grade(String text) {
        return PropertyClass.find(text)
                .orElseThrow(() -> new IllegalArgumentException("class: '" + Checks.shortened(text)
                        + "' is no property class; one of "
                        + String.join(
                                ", ",
                                Arrays.stream(PropertyClass.values())
                                        .map(PropertyClass::written)
                                        .toList())));
    }

    /** A range of friction: a state of the thread, one number, or two. */
    Friction.Range friction(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("thread: its state decides how much of a torque becomes preload;"
                    + " say dry, oiled, paste or locked, or a friction like 0.10-0.14");
        }
        java.util.Optional<Friction.State> state = Friction.State.find(text);
        if (state.isPresent()) {
            return state.get().range();
        }
        String[] ends = text.strip().split("\\s*(?:-|–|to)\\s*", -1);
        if (ends.length > 2
                || !Arrays.stream(ends).allMatch(end -> PLAIN.matcher(end).matches())) {
            throw new IllegalArgumentException("thread: '" + Checks.shortened(text)
                    + "' is no state of a thread; say dry, oiled, paste or locked, or a friction like 0.10-0.14");
        }
        return Friction.Range.of(Double.parseDouble(ends[0]), Double.parseDouble(ends[ends.length - 1]));
    }

    /**
     * A name and its values: "inlet 1: 0.10 mm, 2.70 mm".
     *
     * @param name before the colon
     * @param values between the commas after it
     */
    record Named(String name, List<String> values) {}

    /** Reads a name and so many values, or between two numbers of them. */
    Named named(String field, String text, int fewest, int most, String example) {
        int colon = text.indexOf(':');
        String name = colon < 0 ? "" : text.substring(0, colon).strip();
        List<String> values = values(text.substring(colon + 1));
        if (name.isEmpty() || name.length() > 60 || values.size() < fewest || values.size() > most) {
            throw new IllegalArgumentException(
                    field + ": '" + Checks.shortened(text) + "' cannot be read; write it like \"" + example + "\"");
        }
        return new Named(name, values);
    }

    /** Values between commas; where the comma is a decimal one, between semicolons. */
    public List<String> values(String text) {
        return Arrays.stream(text.split(comma ? ";" : ",", -1))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
    }
}
