package gudgeon.app.web.jobs;

import gudgeon.app.document.Names;
import gudgeon.core.book.Facts;

/** What does not fit together, as sentences. */
public final class ContradictionWords {
    private ContradictionWords() {}

    /** One contradiction. */
    public static String of(Facts.Contradiction contradiction, Names names) {
        String about = names.any(contradiction.about());
        return switch (contradiction.sort()) {
            case ALREADY_OUT -> about + ": undone twice.";
            case NOT_OUT -> about + ": put back without having been undone.";
            case COUNTS_DIFFER -> about + ": two counts differ.";
            case RESTS_ON_WITHDRAWN -> about + ": rests on an entry that was withdrawn.";
            case TURNED_TWICE -> about + ": turned by its angle twice.";
            case MORE_OUT_THAN_IN -> about + ": more came out than went in.";
            case WITHDRAWS_NOTHING -> "An entry withdraws something that is not there.";
        };
    }
}
