package gudgeon.app.format;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Reads a number with its unit at the edge of the program. Units that mean two things are asked about, never guessed; a
 * decimal comma is refused.
 */
final class Quantities {
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:\\d{1,12}(?:\\.\\d{0,12})?|\\.\\d{1,12}))\\s*(.*)");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+.*");
    /** Blanks of all widths, and those that do not break, as they come with pasted text. */
    private static final String BLANK = "[\\s\\u00a0\\u2007\\u2009\\u200a\\u202f]+";

    private static final int LONGEST = 40;

    private Quantities() {}

    /**
     * A quantity as read.
     *
     * @param value in the unit of its kind
     * @param typed as the user wrote it
     */
    record Measure(double value, String typed) {}

    /**
     * What is believed of a quantity, in the unit of its kind, ends included.
     *
     * @param words the same in words, for the user
     */
    record Range(double from, double to, String words) {}

    /** Reads a quantity of a kind within a range; what is wrong becomes a problem and nothing is returned. */
    static Optional<Measure> read(Node node, QuantityKind kind, Range range, Problems problems) {
        if (!(node instanceof ScalarNode scalar)) {
            problems.fault(node, "a list or map where " + kind.words() + " belongs", advice(kind));
            return Optional.empty();
        }
        Optional<Measure> measure = parse(scalar, kind, problems);
        if (measure.isPresent()) {
            double value = measure.get().value();
            if (value < range.from() || value > range.to()) {
                problems.fault(
                        node, Wording.shown(scalar.getValue()) + " is not a plausible value here", range.words());
                return Optional.empty();
            }
        }
        return measure;
    }

    private static Optional<Measure> parse(ScalarNode node, QuantityKind kind, Problems problems) {
        String typed = node.getValue().strip();
        return switch (parse(typed, kind)) {
            case Parsed.Sound sound -> Optional.of(sound.measure());
            case Parsed.Wrong wrong -> {
                problems.fault(node, wrong.what(), wrong.advice());
                yield Optional.empty();
            }
        };
    }

    /** What became of a text. */
    sealed interface Parsed {
        /** It is a quantity of the kind. */
        record Sound(Measure measure) implements Parsed {}

        /** It is none, why, and what would be right. */
        record Wrong(String what, String advice) implements Parsed {}
    }

    /** Reads a text as a quantity of a kind. */
    static Parsed parse(String text, QuantityKind kind) {
        String typed = text.replaceAll(BLANK, " ").strip();
        String shown = Wording.shown(typed);
        if (COMMA.matcher(typed).matches() && typed.length() <= LONGEST) {
            return new Parsed.Wrong("a decimal comma in " + shown, "write " + typed.replaceFirst(",", "."));
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(typed);
        if (typed.length() > LONGEST || !matcher.matches()) {
            return new Parsed.Wrong(shown + " is not " + kind.words(), advice(kind));
        }
        String unit = matcher.group(2);
        if (unit.isEmpty()) {
            return new Parsed.Wrong(shown + " has no unit", advice(kind));
        }
        Optional<String> question = UnitWords.question(unit);
        if (question.isPresent()) {
            return new Parsed.Wrong("the unit in " + shown + " can mean more than one thing", question.get());
        }
        Optional<UnitWords.Meaning> meaning = UnitWords.find(unit);
        if (meaning.isEmpty()) {
            return new Parsed.Wrong("the unit " + Wording.shown(unit) + " is not known", advice(kind));
        }
        QuantityKind found = QuantityKind.valueOf(meaning.get().kind());
        if (kind == QuantityKind.TORQUE && found == QuantityKind.MASS) {
            return new Parsed.Wrong("the unit in " + shown + " is a weight, not a torque", "lbf·ft, lbf·in or kgf·m?");
        }
        if (found != kind) {
            return new Parsed.Wrong(
                    shown + " is " + found.words() + " where " + kind.words() + " belongs", advice(kind));
        }
        return new Parsed.Sound(
                new Measure(convert(matcher.group(1), meaning.get().unit(), kind.unit()), typed));
    }

    private static String advice(QuantityKind kind) {
        return "write " + kind.words() + " with its unit, for instance " + kind.example();
    }

    /** A number in one unit as a number in another of the same kind. */
    static double convert(String number, Unit<?> from, Unit<?> to) {
        BigDecimal decimal = new BigDecimal(number);
        if (from.equals(to)) {
            return decimal.doubleValue();
        }
        try {
            return from.getConverterToAny(to).convert(decimal).doubleValue();
        } catch (IncommensurableException e) {
            throw new IllegalArgumentException("the units " + from + " and " + to + " measure different things", e);
        }
    }
}
