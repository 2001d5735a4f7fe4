package gudgeon.core.book;

import java.util.UUID;

/** Words and pictures, and words about earlier entries. */
public sealed interface Word extends Body {
    /** A note about what the entry names. */
    record Note(String text) implements Word {
        public Note {
            Said.something(text, "a note");
        }
    }

    /**
     * A photo about what the entry names.
     *
     * @param sha256 hash of the picture
     * @param caption may be empty
     * @param x place that is meant, from the left, 0 to 1; negative when the whole is meant
     * @param y from the top
     */
    record Photo(String sha256, String caption, double x, double y) implements Word {}

    /** An earlier entry no longer counts. */
    record Withdrawn(UUID entry, String why) implements Word {}

    /**
     * Written by a newer version: kept and shown, and without effect here.
     *
     * @param type its kind there
     * @param json its body as it came
     */
    record Newer(String type, String json) implements Word {}
}
