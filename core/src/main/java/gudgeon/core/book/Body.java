package gudgeon.core.book;

import java.util.UUID;

/** What an entry says happened. Every kind is a record; docs/book.md tells what each means. */
public sealed interface Body permits Setup, Strip, Fault, Keeping, Fluid, Gauging, Build, Word {
    /**
     * An earlier entry no longer counts. It stays in the book, struck through. What is withdrawn may be a withdrawal.
     *
     * @param entry id of the entry
     * @param why a word on it; may be empty
     */
    static Word.Withdrawn withdrawn(UUID entry, String why) {
        return new Word.Withdrawn(entry, why);
    }
}
