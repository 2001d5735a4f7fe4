package gudgeon.app.format;

/**
 * Something wrong or remarkable in a file, and what would be right.
 *
 * @param file name of the file as the user gave it
 * @param line 1-based line; 0 when the file as a whole is meant
 * @param column 1-based column in characters; 0 when the file as a whole is meant
 * @param severity how grave it is
 * @param what what is wrong
 * @param wouldBeRight what would be right; empty when nothing can be said
 */
public record Problem(String file, int line, int column, Severity severity, String what, String wouldBeRight) {
    public Problem {
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("a place in a file is not negative: " + line + ":" + column);
        }
    }

    /** One line for a person: {@code file:line:column: what; what would be right}. Places that are 0 are left out. */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
            if (column > 0) {
                text.append(':').append(column);
            }
        }
        text.append(": ");
        switch (severity) {
            case FAULT -> {}
            case WARNING -> text.append("warning: ");
            case REMARK -> text.append("remark: ");
        }
        text.append(what);
        if (!wouldBeRight.isEmpty()) {
            text.append("; ").append(wouldBeRight);
        }
        return text.toString();
    }
}
