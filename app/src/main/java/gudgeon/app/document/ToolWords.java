package gudgeon.app.document;

import gudgeon.core.book.Keeping;

/** What is said of a tool. */
public final class ToolWords {
    private ToolWords() {}

    /** "yours", "borrowed from Ann", "not there". */
    public static String of(Keeping.ToolMarked said) {
        return switch (said.whose()) {
            case OWNED -> "yours";
            case BORROWED -> "borrowed" + (said.from().isBlank() ? "" : " from " + said.from());
            case MISSING -> "not there";
        };
    }
}
