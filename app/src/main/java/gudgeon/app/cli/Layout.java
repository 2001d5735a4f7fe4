package gudgeon.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Lays text out in the columns of a screen. Widths count characters; trade text is narrow. */
final class Layout {
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private final Screen screen;

    Layout(Screen screen) {
        this.screen = screen;
    }

    void blank() {
        screen.out().println();
    }

    /** A heading with a rule to the right edge. */
    void heading(String text) {
        String rule = "─".repeat(Math.max(3, screen.width() - text.length() - 1));
        screen.out().println(Ink.HEAD.on(screen, text) + " " + Ink.SOFT.on(screen, rule));
    }

    /** A line as it is, cut nowhere. */
    void line(String text) {
        screen.out().println(text);
    }

    /** Wrapped text, every line indented. */
    void paragraph(int indent, String text, Ink... ink) {
        hanging(" ".repeat(indent), indent, text, ink);
    }

    /** Wrapped text: the first line begins with {@code lead}, the others are indented to {@code indent}. */
    void hanging(String lead, int indent, String text, Ink... ink) {
        String begin = lead;
        for (String line : wrap(text, screen.width() - indent)) {
            screen.out().println(begin + inked(line, ink));
            begin = " ".repeat(indent);
        }
    }

    /** Wrapped text with a short figure at the right edge of its first line. */
    void withFigure(String lead, int indent, String text, String figure, Ink... ink) {
        List<String> lines = wrap(text, screen.width() - indent - figure.length() - 2);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (i == 0) {
                String gap = " ".repeat(Math.max(1, screen.width() - indent - line.length() - figure.length()));
                screen.out().println(lead + inked(line, ink) + gap + figure);
            } else {
                screen.out().println(" ".repeat(indent) + inked(line, ink));
            }
        }
    }

    /** Phrases as sentences on end: "socket 13 mm. Photo first." becomes one text, never two full stops together. */
    static String sentences(List<String> phrases) {
        return phrases.stream()
                .map(String::strip)
                .filter(phrase -> !phrase.isEmpty())
                .map(phrase -> phrase.endsWith(".") ? phrase.substring(0, phrase.length() - 1) : phrase)
                .collect(Collectors.joining(". "));
    }

    private String inked(String text, Ink... ink) {
        return ink.length == 0 ? text : ink[0].on(screen, text);
    }

    /** Breaks text at spaces into lines of at most {@code width} characters; a longer word stands alone. At least one line. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BLANKS.split(text.strip(), -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
