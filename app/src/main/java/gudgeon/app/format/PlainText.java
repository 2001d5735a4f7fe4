package gudgeon.app.format;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The first gate of a file: its bytes must be plain UTF-8 text of bounded size, indented with blanks. What fails here is
 * not parsed at all.
 */
final class PlainText {
    /** Larger files are refused before anything else is done with them. */
    static final int MOST_BYTES = 4 * 1024 * 1024;

    private static final int MOST_TABS_TOLD = 20;

    private PlainText() {}

    /** The text of the bytes, without byte order mark; empty when it was refused. */
    static Optional<String> of(byte[] bytes, Problems problems) {
        if (bytes.length > MOST_BYTES) {
            problems.add(
                    Severity.FAULT,
                    0,
                    0,
                    "the file has more than the " + MOST_BYTES + " bytes that are read",
                    "an engine file is text of a few hundred kilobytes at most. Maybe it is another file?");
            return Optional.empty();
        }
        if (bytes.length == 0) {
            problems.add(Severity.FAULT, 0, 0, "the file is empty", "start it with 'format: 1'");
            return Optional.empty();
        }
        Optional<String> wide = wideEncoding(bytes);
        if (wide.isPresent()) {
            problems.add(Severity.FAULT, 1, 1, "the file is saved as " + wide.get(), "save it as UTF-8");
            return Optional.empty();
        }
        Optional<String> text = decode(bytes, problems);
        if (text.isPresent() && (strangeCharacter(text.get(), problems) | tabs(text.get(), problems))) {
            return Optional.empty();
        }
        return text;
    }

    private static Optional<String> wideEncoding(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE, 0, 0) || startsWith(bytes, 0, 0, 0xFE, 0xFF)) {
            return Optional.of("UTF-32");
        }
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            return Optional.of("UTF-16");
        }
        return Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        if (bytes.length < head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }

    private static Optional<String> decode(byte[] bytes, Problems problems) {
        int from = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int bad = bytes[in.position()] & 0xFF;
            problems.add(
                    Severity.FAULT,
                    lineOf(text, text.length()),
                    columnOf(text, text.length()),
                    String.format("byte 0x%02X is not UTF-8 text", bad),
                    "save the file as UTF-8 (an old Latin-1 file has such bytes for ° and µ)");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private static boolean strangeCharacter(String text, Problems problems) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
            boolean strange =
                    control || c == 0x7F || (c >= 0x80 && c < 0xA0 && c != 0x85) || c >= 0xFFFE || c == 0xFEFF;
            if (strange) {
                String what = c == 0
                        ? "a zero byte: this is a binary file, or text saved as UTF-16"
                        : String.format("the control character U+%04X does not belong in text", (int) c);
                problems.add(
                        Severity.FAULT, lineOf(text, i), columnOf(text, i), what, "an engine file is plain UTF-8 text");
                return true;
            }
        }
        return false;
    }

    private static boolean tabs(String text, Problems problems) {
        int line = 1;
        int told = 0;
        boolean indentation = true;
        for (int i = 0; i < text.length() && told < MOST_TABS_TOLD; i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
                indentation = true;
            } else if (c == '\t' && indentation && !restIsBlank(text, i)) {
                problems.add(
                        Severity.FAULT,
                        line,
                        columnOf(text, i),
                        "a tab in the indentation of line " + line,
                        "YAML is indented with blanks; put two blanks for each step");
                told++;
                indentation = false;
            } else if (c != ' ' && c != '\t') {
                indentation = false;
            }
        }
        return told > 0;
    }

    private static boolean restIsBlank(String text, int from) {
        int end = text.indexOf('\n', from);
        return text.substring(from, end < 0 ? text.length() : end).isBlank();
    }

    private static int lineOf(String text, int index) {
        return (int) text.substring(0, index).chars().filter(c -> c == '\n').count() + 1;
    }

    private static int columnOf(String text, int index) {
        int start = text.lastIndexOf('\n', index - 1) + 1;
        return text.codePointCount(start, index) + 1;
    }
}
