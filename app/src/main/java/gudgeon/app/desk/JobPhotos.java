package gudgeon.app.desk;

import gudgeon.app.store.EntryStore;
import gudgeon.core.book.Entry;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The photos that stand in the book of a job; those that were taken back are left out. */
public final class JobPhotos {
    private JobPhotos() {}

    /**
     * A photo.
     *
     * @param entry the entry that holds it
     * @param photo its hash, its caption, the place that is meant
     */
    public record Shot(Entry entry, Word.Photo photo) {}

    /** All, in the order of the book. */
    public static List<Shot> all(Job job) {
        List<Shot> shots = new ArrayList<>();
        for (JobState.Told told : job.state().history()) {
            if (told.counts() && told.entry().body() instanceof Word.Photo photo) {
                shots.add(new Shot(told.entry(), photo));
            }
        }
        return shots;
    }

    /** Those about at least one of these parts, joints or preparations. */
    public static List<Shot> about(Job job, Collection<String> ids) {
        return all(job).stream()
                .filter(shot -> shot.entry().about().stream().map(Ref::id).anyMatch(ids::contains))
                .toList();
    }

    /** The picture itself; empty when the book of the job does not hold it. */
    public static Optional<EntryStore.Photo> find(Workshop workshop, Job job, String sha256) {
        boolean held = all(job).stream().anyMatch(shot -> shot.photo().sha256().equals(sha256));
        return held ? workshop.store().findPhoto(sha256) : Optional.empty();
    }
}
