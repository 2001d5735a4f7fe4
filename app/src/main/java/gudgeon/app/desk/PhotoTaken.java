package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import gudgeon.app.photo.Darkroom;
import gudgeon.app.store.EntryStore;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Word;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A photo is kept, and stands in the book. What is kept is a print of it (see {@link Darkroom}): upright, of a size that shows
 * a thread, without the place and time that a camera writes beside the picture.
 *
 * @param bytes the picture: JPEG, PNG or WebP, at most {@link #MOST_BYTES}
 * @param caption may be empty
 * @param about what it shows
 * @param x place that is meant, from the left, 0 to 1; negative when the whole is meant
 * @param y from the top
 */
public record PhotoTaken(byte[] bytes, String caption, List<Ref> about, double x, double y) {
    /** More is refused. */
    public static final int MOST_BYTES = Darkroom.MOST_BYTES;

    public PhotoTaken {
        about = List.copyOf(about);
        if (!(x <= 1 && y <= 1)) {
            throw new IllegalArgumentException("a place on a picture is from 0 to 1, not " + x + ", " + y);
        }
    }

    /** A photo of which the whole is meant. */
    public static PhotoTaken whole(byte[] bytes, String caption, List<Ref> about) {
        return new PhotoTaken(bytes, caption, about, -1, -1);
    }

    /** Keeps it and writes it down. */
    public Workshop.Noted note(Workshop workshop, Job job, Who who, Optional<UUID> id) {
        return switch (Darkroom.develop(bytes)) {
            case Darkroom.Print print -> kept(workshop, job, who, id, print);
            case Darkroom.Spoilt spoilt ->
                new Workshop.Noted.Refused(List.of(FieldProblem.of("photo", kind(spoilt.reason()), size())));
        };
    }

    private Workshop.Noted kept(Workshop workshop, Job job, Who who, Optional<UUID> id, Darkroom.Print print) {
        String sha256 = EngineText.sha256(print.jpeg());
        Say say = new Say(new Word.Photo(sha256, caption.strip(), x, y), about);
        if (say.tell(job) instanceof Deed.Telling.Facts) {
            workshop.store()
                    .keep(new EntryStore.Photo(
                            sha256, Darkroom.Print.TYPE, print.jpeg())); // the picture first, then what names it
        }
        return workshop.note(job, say, who, id);
    }

    private static FieldProblem.Kind kind(Darkroom.Reason reason) {
        return switch (reason) {
            case TOO_LARGE -> FieldProblem.Kind.PICTURE_TOO_LARGE;
            case NO_PICTURE -> FieldProblem.Kind.NO_PICTURE;
            case BROKEN -> FieldProblem.Kind.PICTURE_BROKEN;
        };
    }

    private String size() {
        return bytes.length < 10_000 ? bytes.length + " bytes" : bytes.length / 1_000 + " kB";
    }
}
