package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import gudgeon.core.engine.FastenerKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fasteners as a mechanic writes them: {@code 4 x M8x25}, {@code 2 bolts M10x1.25x60, hexagon 17 mm}, {@code 3 x 12 mm bolt + 1 worm
 * clip}. A number after the thread up to 3.5 is its pitch, a larger one the length; without a pitch the coarse one of ISO 261 is
 * meant. A size in mm alone is that of the head. Source of the pitches: [ISO724] (coarse series).
 */
final class FastenerWords {
    private static final double LARGEST_PITCH = 3.5;
    private static final Map<String, String> COARSE = new TreeMap<>(Map.ofEntries(
            Map.entry("3", "0.5"),
            Map.entry("4", "0.7"),
            Map.entry("5", "0.8"),
            Map.entry("6", "1"),
            Map.entry("7", "1"),
            Map.entry("8", "1.25"),
            Map.entry("10", "1.5"),
            Map.entry("12", "1.75"),
            Map.entry("14", "2"),
            Map.entry("16", "2"),
            Map.entry("18", "2.5"),
            Map.entry("20", "2.5"),
            Map.entry("22", "2.5"),
            Map.entry("24", "3")));
    private static final Pattern COUNT =
            Pattern.compile("^([0-9]{1,3})\\s*(?:x|×|\\*)?\\s+|^([0-9]{1,3})\\s*(?:x|×|\\*)\\s*");
    private static final Pattern THREAD = Pattern.compile(
            "\\bm([0-9]{1,2})(?:\\s*(?:x|×)\\s*([0-9.]{1,5}))?(?:\\s*(?:x|×)\\s*([0-9.]{1,5}))?(?:\\s*mm)?\\b");
    private static final Pattern HEAD =
            Pattern.compile("\\b(hexagon socket|hexagon|lobe socket|lobe|twelve-point)?\\s*([0-9]{1,2})\\s*mm\\b");
    private static final List<String> JOINT_KINDS = List.of(
            "hose clip", "union nut", "banjo", "press fit", "snap", "sealant", "plug", "clamp", "slide", "belt");

    private FastenerWords() {}

    /** What was written, as lines of the engine file; empty when it cannot be read. */
    static Optional<String> yaml(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT);
        if (JOINT_KINDS.contains(plain)) {
            return Optional.of("kind: " + plain + "\n");
        }
        List<String> lines = new ArrayList<>();
        for (String piece : plain.split("\\+|;|\\n| and ", -1)) {
            Optional<String> line = line(piece.strip());
            if (line.isEmpty()) {
                return Optional.empty();
            }
            lines.add("- " + line.get());
        }
        return Optional.of("fasteners:\n" + String.join("\n", lines) + "\n");
    }

    private static Optional<String> line(String piece) {
        Matcher counted = COUNT.matcher(piece);
        int count = 1;
        String rest = piece;
        if (counted.find()) {
            count = Integer.parseInt(counted.group(1) == null ? counted.group(2) : counted.group(1));
            rest = piece.substring(counted.end());
        }
        Matcher thread = THREAD.matcher(rest);
        boolean threaded = thread.find();
        String beside = threaded ? rest.substring(0, thread.start()) + " " + rest.substring(thread.end()) : rest;
        Matcher head = HEAD.matcher(beside);
        boolean headed = head.find();
        Optional<FastenerKind> kind = kind(beside);
        String unread = headed ? beside.substring(0, head.start()) + " " + beside.substring(head.end()) : beside;
        boolean strange = !leftOver(unread, kind).isEmpty();
        if (strange || count < 1 || (!threaded && !headed && kind.isEmpty())) {
            return Optional.empty();
        }
        StringBuilder line = new StringBuilder("{ count: " + count + ", kind: "
                + kind.orElse(FastenerKind.BOLT).word());
        if (threaded && !thread(thread, line)) {
            return Optional.empty();
        }
        if (headed) {
            String form = head.group(1) == null ? "hexagon" : head.group(1);
            line.append(", drive: ").append(EngineText.quoted(form + " " + head.group(2) + " mm"));
        }
        return Optional.of(line.append(" }").toString());
    }

    /** What was written and means nothing here. */
    private static String leftOver(String words, Optional<FastenerKind> kind) {
        String without = kind.isEmpty()
                ? words
                : words.replaceFirst(Pattern.quote(kind.get().word()) + "s?", " ");
        return without.replaceAll("[\\s,×]|\\bx\\b", "");
    }

    private static boolean thread(Matcher thread, StringBuilder line) {
        String diameter = thread.group(1);
        String second = thread.group(2);
        String third = thread.group(3);
        try {
            boolean pitched = second != null && (third != null || Double.parseDouble(second) <= LARGEST_PITCH);
            String pitch = pitched ? second : COARSE.get(diameter);
            String length = third != null ? third : pitched ? null : second;
            line.append(", thread: M").append(diameter).append(pitch == null ? "" : "x" + pitch);
            if (length != null) {
                Double.parseDouble(length);
                line.append(", length: ").append(length).append(" mm");
            }
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static Optional<FastenerKind> kind(String words) {
        FastenerKind best = null;
        for (FastenerKind kind : FastenerKind.values()) {
            boolean named = words.contains(kind.word());
            if (named && (best == null || kind.word().length() > best.word().length())) {
                best = kind;
            }
        }
        return Optional.ofNullable(best);
    }
}
