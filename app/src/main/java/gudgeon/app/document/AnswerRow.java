package gudgeon.app.document;

/**
 * A line of an answer: what it is, and what it comes to.
 *
 * @param label what it is; empty for a remark that stands by itself
 * @param text what it comes to
 */
public record AnswerRow(String label, String text) {
    /** A remark. */
    public static AnswerRow remark(String text) {
        return new AnswerRow("", text);
    }
}
