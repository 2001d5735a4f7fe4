package gudgeon.app.document;

import java.util.Map;

/** Keeps to the characters that the shipped faces draw: others are spelled out, so that no sheet shows an empty box. */
public final class Glyphs {
    private static final Map<Integer, String> SPELLED = Map.ofEntries(
            Map.entry((int) '\u2264', "at most "),
            Map.entry((int) '\u2265', "at least "),
            Map.entry((int) '\u2248', "about "),
            Map.entry((int) '\u2300', "\u00D8"),
            Map.entry((int) '\u03A9', "ohm"),
            Map.entry((int) '\u2126', "ohm"),
            Map.entry((int) '\u03BC', "\u00B5"),
            Map.entry((int) '\u2192', "to"),
            Map.entry((int) '\u2032', "'"),
            Map.entry((int) '\u2033', "\""),
            Map.entry((int) '\u2010', "-"),
            Map.entry((int) '\u2011', "-"),
            Map.entry((int) '\u00A0', " "),
            Map.entry((int) '\u2009', " "),
            Map.entry((int) '\u202F', " "),
            Map.entry((int) '\u2713', "yes"),
            Map.entry((int) '\u2717', "no"));

    private Glyphs() {}

    /** The text with every character that neither face has spelled out, or as a question mark when it has no spelling. */
    public static String printable(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            String spelled = SPELLED.get(c);
            if (spelled != null) {
                out.append(spelled);
            } else if (c < 0x20) {
                out.append(' ');
            } else if (drawn(c)) {
                out.appendCodePoint(c);
            } else {
                out.append('?');
            }
        });
        return out.toString();
    }

    /** Whether one of the faces draws it; a text in one face borrows single characters from the other. */
    static boolean drawn(int codePoint) {
        return Typeface.TEXT_400.has(codePoint) || Typeface.SHEET_500.has(codePoint);
    }
}
