package gudgeon.app.format;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Words for problems: what the YAML library means, a shortened quotation, the nearest name. */
final class Wording {
    private static final int LONGEST_QUOTATION = 60;

    private Wording() {}

    /** The user's text in quotes, shortened when long, on one line. */
    static String shown(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        if (line.codePointCount(0, line.length()) > LONGEST_QUOTATION) {
            line = line.substring(0, line.offsetByCodePoints(0, LONGEST_QUOTATION)) + "...";
        }
        return "'" + line + "'";
    }

    static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    /** What the parser stumbled over, in plain words. */
    static String ofYaml(MarkedYamlEngineException e) {
        String problem = String.valueOf(e.getProblem());
        String context = String.valueOf(e.getContext());
        if (problem.contains("mapping values are not allowed")) {
            return "a colon where no key can stand";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a line without the colon that a key needs";
        }
        if (problem.contains("expected ',' or")) {
            return "a bracket or brace that is not closed before this, or a comma missing";
        }
        if (problem.contains("expected <block end>")) {
            return "this line's indentation fits no line above it";
        }
        if (problem.contains("found unexpected end of stream")) {
            return "the file ends inside a quotation that began earlier";
        }
        if (problem.contains("that cannot start any token")) {
            return "a character that cannot begin a value here";
        }
        return "this is not YAML: " + firstLine(problem)
                + (e.getContext() == null ? "" : " (" + firstLine(context) + ")");
    }

    /** What would be right instead. */
    static String adviceOfYaml(MarkedYamlEngineException e) {
        String problem = String.valueOf(e.getProblem());
        if (problem.contains("mapping values are not allowed")) {
            return "put text that has a colon in quotes, and check the indentation of this line";
        }
        if (problem.contains("could not find expected ':'")) {
            return "write 'key: value'";
        }
        if (problem.contains("expected ',' or")) {
            return "close every [ with ] and every { with }, and put commas between";
        }
        if (problem.contains("expected <block end>")) {
            return "put it under the column of its neighbours";
        }
        if (problem.contains("found unexpected end of stream")) {
            return "close the quotation";
        }
        return problem.contains("cannot start any token") ? "put the value in quotes" : "";
    }

    /** "Maybe X?" with the known name nearest to the wrong one; {@code otherwise} when none is near. */
    static String maybe(String wrong, Collection<String> known, String otherwise) {
        return nearest(wrong, known).map(name -> "maybe " + name + "?").orElse(otherwise);
    }

    /** The known name with the fewest changed letters, when they are few for its length. */
    static Optional<String> nearest(String wrong, Collection<String> known) {
        if (wrong.length() > LONGEST_QUOTATION) {
            return Optional.empty();
        }
        String lower = wrong.toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(name -> Math.abs(name.length() - lower.length()) <= 3)
                .map(name -> new Near(name, distance(lower, name.toLowerCase(Locale.ROOT))))
                .filter(near -> near.distance <= Math.max(1, Math.min(3, near.name.length() / 3)))
                .min(Comparator.comparingInt((Near near) -> near.distance).thenComparing(near -> near.name))
                .map(near -> near.name);
    }

    private record Near(String name, int distance) {}

    /** Number of letters to insert, delete, change or swap with their neighbour. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
