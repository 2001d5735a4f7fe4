package gudgeon.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Tightening as a manual writes it: {@code 30 N·m, 60 N·m, then 90°, oiled}. Stages in order, torques with their unit, angles in
 * degrees, and one word for the thread. Without that word, and where {@code 30,60} may be two stages or one with decimals, it is refused: the same torque on an oiled thread pulls a bolt much
 * harder than on a dry one.
 */
final class TightenWords {
    private static final Pattern ANGLE = Pattern.compile("([0-9]{1,4})\\s*(?:°|deg|degrees?)");
    private static final Pattern TORQUE = Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?)\\s*([a-z·*./ ]{1,12})");
    /** Two stages, or one with decimals? A torque has at most one decimal behind a comma. */
    private static final Pattern UNCLEAR = Pattern.compile("[0-9],[0-9]{2}");

    private static final List<String> THREADS = List.of("dry", "oiled", "locked", "sealed");

    private TightenWords() {}

    /** What was written, as the value of {@code tighten} in the engine file; empty when it cannot be read. */
    static Optional<String> yaml(String words) {
        if (UNCLEAR.matcher(words).find()) {
            return Optional.empty();
        }
        String plain = words.strip().toLowerCase(Locale.ROOT).replaceAll("(?<=[0-9]),(?=[0-9])", ".");
        List<String> pieces = Stream.of(plain.split("[,;+\\n]|\\bthen\\b|\\band\\b", -1))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
        List<String> threads =
                pieces.stream().filter(THREADS::contains).distinct().toList();
        if (threads.size() != 1) {
            return Optional.empty();
        }
        List<String> stages = new ArrayList<>();
        for (String piece : pieces) {
            Optional<String> stage = THREADS.contains(piece) ? Optional.of("") : stage(piece);
            if (stage.isEmpty()) {
                return Optional.empty();
            }
            if (!stage.get().isEmpty()) {
                stages.add("{ " + stage.get() + ", thread: " + threads.getFirst() + " }");
            }
        }
        return stages.isEmpty() ? Optional.empty() : Optional.of("[" + String.join(", ", stages) + "]");
    }

    private static Optional<String> stage(String piece) {
        Matcher angle = ANGLE.matcher(piece);
        if (angle.matches()) {
            return Optional.of("angle: " + angle.group(1) + " °");
        }
        Matcher torque = TORQUE.matcher(piece);
        return torque.matches()
                ? Optional.of("torque: " + torque.group(1) + " "
                        + unit(torque.group(2).strip()))
                : Optional.empty();
    }

    /** The spelling of the unit that the engine file wants; any other word is left for the check of the file to refuse. */
    private static String unit(String word) {
        return word.matches("n[·*. ]?m") ? "N·m" : word;
    }
}
