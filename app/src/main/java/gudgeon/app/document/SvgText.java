package gudgeon.app.document;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Text, numbers and elements as they stand in an SVG or XHTML document. */
final class SvgText {
    private final StringBuilder out = new StringBuilder();

    SvgText add(String text) {
        out.append(text);
        return this;
    }

    SvgText line(String text) {
        out.append(text).append('\n');
        return this;
    }

    SvgText rect(String styleClass, double x, double y, double width, double height) {
        return line("<rect class=\"" + styleClass + "\" x=\"" + n(x) + "\" y=\"" + n(y) + "\" width=\"" + n(width)
                + "\" height=\"" + n(height) + "\"/>");
    }

    SvgText path(String styleClass, String data) {
        return line("<path class=\"" + styleClass + "\" d=\"" + data + "\"/>");
    }

    SvgText text(String styleClass, double x, double y, String text) {
        return line("<text class=\"" + styleClass + "\" x=\"" + n(x) + "\" y=\"" + n(y) + "\">" + escaped(text)
                + "</text>");
    }

    SvgText title(String text) {
        return line("<title>" + escaped(text) + "</title>");
    }

    @Override
    public String toString() {
        return out.toString();
    }

    /** At most one decimal, no exponent. */
    static String n(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }

    /** Text with the characters of markup escaped, and without characters that XML does not allow. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 8);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\t', '\n', '\r' -> safe.append(' ');
                default -> {
                    if (c >= 0x20 && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF)) {
                        safe.appendCodePoint(c);
                    }
                }
            }
        });
        return safe.toString();
    }
}
