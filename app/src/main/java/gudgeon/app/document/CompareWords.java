package gudgeon.app.document;

import gudgeon.core.book.Keeping;
import java.util.List;

/** How a new piece differs from the old one. */
public final class CompareWords {
    private CompareWords() {}

    /** "length: old 90, new 85"; parted by semicolons. */
    public static String differences(List<Keeping.Compared> facts) {
        return String.join(
                "; ",
                facts.stream()
                        .map(fact -> fact.fact() + ": old " + fact.was() + ", new " + fact.now())
                        .toList());
    }
}
