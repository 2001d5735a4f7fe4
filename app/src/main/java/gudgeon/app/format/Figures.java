package gudgeon.app.format;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.Node;

/** Numbers as instruments and people write them, with their units. */
final class Figures {
    static final double PSI = 6894.757293168;
    static final double BAR = 1e5;
    private static final double TECHNICAL = 98066.5;
    private static final double INCH = 0.0254;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern QUANTITY =
            Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*([^\\d\\s].*)?");
    private static final Pattern ORIFICE = Pattern.compile("(\\d*\\.?\\d+)\\s*(in\\b|inch|\"|mm)");
    private static final Pattern SUPPLY = Pattern.compile("(\\d+\\.?\\d*)\\s*(psi|bar|kpa)");

    private Figures() {}

    /** A number and the unit after it, as written. */
    record Quantity(double value, String unit) {}

    static OptionalDouble number(String text) {
        return NUMBER.matcher(text.strip()).matches()
                ? OptionalDouble.of(Double.parseDouble(text.strip()))
                : OptionalDouble.empty();
    }

    static Optional<Quantity> quantity(String text) {
        Matcher matcher = QUANTITY.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String unit = matcher.group(2);
        return Optional.of(new Quantity(Double.parseDouble(matcher.group(1)), unit == null ? "" : unit.strip()));
    }

    /** Pa of a pressure unit; empty for a unit that is none. Whether it is absolute is another question. */
    static OptionalDouble pascals(String unit) {
        String plain = unit.toLowerCase(Locale.ROOT).replaceAll("\\(.*\\)|absolute|gauge|abs\\b|[ .]", "");
        return switch (plain) {
            case "bar", "bara", "barg" -> OptionalDouble.of(BAR);
            case "psi", "psig", "psia", "lb/in2", "lbf/in2" -> OptionalDouble.of(PSI);
            case "kpa" -> OptionalDouble.of(1000);
            case "mpa" -> OptionalDouble.of(1e6);
            case "pa" -> OptionalDouble.of(1);
            case "kg/cm2", "kgf/cm2", "kp/cm2", "at" -> OptionalDouble.of(TECHNICAL);
            default -> OptionalDouble.empty();
        };
    }

    /** Whether a unit or a description says that the pressure counts from nothing. */
    static boolean absolute(String words) {
        String plain = words.toLowerCase(Locale.ROOT).strip();
        return plain.contains("abs") || plain.equals("psia") || plain.equals("bara");
    }

    /** Diameter in m of an orifice named in a text such as {@code 0.040 in, 80 psi}. */
    static OptionalDouble orifice(String text) {
        Matcher matcher = ORIFICE.matcher(text.toLowerCase(Locale.ROOT));
        if (!matcher.find()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        return OptionalDouble.of(value * (matcher.group(2).equals("mm") ? 0.001 : INCH));
    }

    /** Gauge pressure in Pa of a supply named in such a text. */
    static OptionalDouble supply(String text) {
        Matcher matcher = SUPPLY.matcher(text.toLowerCase(Locale.ROOT));
        if (!matcher.find()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                Double.parseDouble(matcher.group(1)) * pascals(matcher.group(2)).orElse(PSI));
    }

    /** The number at a node within bounds; a fault, told with its place, when it is none or beyond them. */
    static OptionalDouble within(Node node, String text, double least, double most, String what, Problems problems) {
        OptionalDouble number = number(text);
        if (number.isEmpty() || !(number.getAsDouble() >= least && number.getAsDouble() <= most)) {
            problems.fault(
                    node,
                    Wording.shown(text) + " cannot be " + what,
                    "a number from " + plain(least) + " to " + plain(most) + " is right");
            return OptionalDouble.empty();
        }
        return number;
    }

    static String plain(double value) {
        return new java.math.BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
