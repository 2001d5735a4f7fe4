package gudgeon.app.store;

import gudgeon.core.book.Entry;
import java.util.List;
import java.util.Optional;

/**
 * The books of all jobs, and their photos. May be used by several threads, and by several processes on the same store.
 * Every method throws {@link StoreFailed} when the world fails it.
 */
public interface EntryStore extends AutoCloseable {
    /** A picture. @param type media type: image/jpeg, image/png or image/webp */
    record Photo(String sha256, String type, byte[] bytes) {}

    /**
     * Adds entries to their job's book, all or none, and returns only when they are durable. An entry whose id is there
     * already is not added again: sending twice is harmless.
     *
     * @param entries entries of one job, at least one; their seq does not matter
     * @return the entries as they stand in the book, with their places
     * @throws IdTaken when an id is there already with another body or in another job
     */
    List<Entry> add(List<Entry> entries);

    /** The entries of a job after a place in its book, in order; all for 0. Empty for an unknown job. */
    List<Entry> entries(String job, long after);

    /** Jobs that have a book, the one begun last first. */
    List<String> jobs();

    /** The place of the last entry of a job; 0 for an unknown job. */
    long lastSeq(String job);

    /** Keeps a picture under the hash of its bytes, once. */
    void keep(Photo photo);

    Optional<Photo> findPhoto(String sha256);

    @Override
    void close();
}
