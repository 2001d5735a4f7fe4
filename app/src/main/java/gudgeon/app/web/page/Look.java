package gudgeon.app.web.page;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The colours of the pages. */
public enum Look {
    /** Paper or dark, whichever the device prefers. */
    AUTO("auto", "As the device"),
    /** Ink on workshop paper. */
    PAPER("paper", "Paper"),
    /** For the lamp at night. */
    DARK("dark", "Dark"),
    /** Dark, and dimmer. */
    DIM("dim", "Dim"),
    /** White and black, no washes, for sunlight. */
    SUN("sun", "Sun");

    private final String word;
    private final String label;

    Look(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /** As it stands in the cookie, the form and the page's root element. */
    public String word() {
        return word;
    }

    /** As a person reads it. */
    public String label() {
        return label;
    }

    /** The look of this word; {@link #AUTO} for any other word and for none. */
    public static Look of(@Nullable String word) {
        return Arrays.stream(values())
                .filter(look -> look.word.equals(word))
                .findFirst()
                .orElse(AUTO);
    }
}
