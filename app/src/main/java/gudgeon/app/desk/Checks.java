package gudgeon.app.desk;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** What is refused in a field whatever it is about. */
final class Checks {
    /** Longer texts are refused, not cut: a page of writing. */
    static final int LONGEST_TEXT = 4_000;

    private static final int LONGEST_NAME = 120;
    private static final int MOST_FASTENERS = 999;
    private static final double MOST_MINUTES = 10_000;

    private Checks() {}

    static List<FieldProblem> unknown(String field, NameSearch names) {
        return names.unknown().stream()
                .map(name -> name.word().isBlank()
                        ? FieldProblem.of(field, FieldProblem.Kind.EMPTY, "")
                        : FieldProblem.unknown(field, name))
                .toList();
    }

    static List<FieldProblem> counts(OptionalInt count, double minutes) {
        return Stream.concat(count(count).stream(), minutes(minutes).stream()).toList();
    }

    static List<FieldProblem> count(OptionalInt count) {
        return count.isPresent() && (count.getAsInt() < 0 || count.getAsInt() > MOST_FASTENERS)
                ? List.of(FieldProblem.of("count", FieldProblem.Kind.NUMBER, String.valueOf(count.getAsInt())))
                : List.of();
    }

    static List<FieldProblem> minutes(double minutes) {
        return minutes >= 0 && minutes <= MOST_MINUTES
                ? List.of()
                : List.of(FieldProblem.of("minutes", FieldProblem.Kind.NUMBER, String.valueOf(minutes)));
    }

    static List<FieldProblem> bag(String bag) {
        return name("bag", bag);
    }

    static List<FieldProblem> name(String field, String text) {
        return text.length() > LONGEST_NAME || text.chars().anyMatch(Character::isISOControl)
                ? List.of(FieldProblem.of(field, FieldProblem.Kind.TOO_LONG, shortened(text)))
                : List.of();
    }

    static List<FieldProblem> text(String field, String text) {
        return text.length() > LONGEST_TEXT
                ? List.of(FieldProblem.of(field, FieldProblem.Kind.TOO_LONG, shortened(text)))
                : List.of();
    }

    static String shortened(String text) {
        return text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME) + " ..." : text;
    }
}
