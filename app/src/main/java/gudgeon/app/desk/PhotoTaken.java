package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import gudgeon.app.store.EntryStore;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Word;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A photo is kept, and stands in the book.
 *
 * @param bytes the picture: JPEG, PNG or WebP, at most 12 MB
 * @param caption may be empty
 * @param about what it shows
 * @param x place that is meant, from the left, 0 to 1; negative when the whole is meant
 * @param y from the top
 */
public record PhotoTaken(byte[] bytes, String caption, List<Ref> about, double x, double y) {
    /** More is refused. */
    public static final int MOST_BYTES = 12 * 1024 * 1024;

    public PhotoTaken {
        about = List.copyOf(about);
    }

    /** Keeps it and writes it down. */
    public Workshop.Noted note(Workshop workshop, Job job, Who who, Optional<UUID> id) {
        Optional<String> type = type(bytes);
        if (type.isEmpty() || bytes.length > MOST_BYTES) {
            return new Workshop.Noted.Refused(
                    List.of(FieldProblem.of("photo", FieldProblem.Kind.NO_PICTURE, bytes.length + " bytes")));
        }
        String sha256 = EngineText.sha256(bytes);
        Say say = new Say(new Word.Photo(sha256, caption.strip(), x, y), about);
        if (say.tell(job) instanceof Deed.Telling.Facts) {
            workshop.store()
                    .keep(new EntryStore.Photo(sha256, type.get(), bytes)); // the picture first, then what names it
        }
        return workshop.note(job, say, who, id);
    }

    /** The picture of an entry; empty when it is not in this store. */
    public static Optional<EntryStore.Photo> find(Workshop workshop, String sha256) {
        return sha256.matches("[0-9a-f]{64}") ? workshop.store().findPhoto(sha256) : Optional.empty();
    }

    /** The kind of picture by its first bytes. */
    private static Optional<String> type(byte[] bytes) {
        if (starts(bytes, 0, 0xFF, 0xD8, 0xFF)) {
            return Optional.of("image/jpeg");
        }
        if (starts(bytes, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return Optional.of("image/png");
        }
        if (starts(bytes, 0, 'R', 'I', 'F', 'F') && starts(bytes, 8, 'W', 'E', 'B', 'P')) {
            return Optional.of("image/webp");
        }
        return Optional.empty();
    }

    private static boolean starts(byte[] bytes, int at, int... head) {
        if (bytes.length < at + head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[at + i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }
}
