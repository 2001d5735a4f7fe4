package gudgeon.app.document;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Builds well-formed XHTML; every text is escaped and kept to the shipped faces. */
final class Xhtml {
    /** A line end after these changes nothing on paper. */
    private static final List<String> BLOCKS = List.of("div", "p", "table", "tr", "h1", "h2");

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    Xhtml open(String element, String styleClass) {
        out.append('<').append(element);
        if (!styleClass.isEmpty()) {
            out.append(" class=\"").append(styleClass).append('"');
        }
        out.append('>');
        open.push(element);
        return this;
    }

    Xhtml openStyled(String element, String styleClass, String style) {
        out.append('<')
                .append(element)
                .append(" class=\"")
                .append(styleClass)
                .append("\" style=\"")
                .append(style)
                .append("\">");
        open.push(element);
        return this;
    }

    Xhtml close() {
        String element = open.pop();
        out.append("</").append(element).append('>');
        if (BLOCKS.contains(element)) {
            out.append('\n');
        }
        return this;
    }

    /** An element with only text in it. */
    Xhtml text(String element, String styleClass, String text) {
        return open(element, styleClass).text(text).close();
    }

    Xhtml text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** Markup that was built by another one of these. */
    Xhtml add(Xhtml other) {
        out.append(other);
        return this;
    }

    static String escaped(String text) {
        return SvgText.escaped(Glyphs.printable(text));
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("not closed: " + open);
        }
        return out.toString();
    }
}
