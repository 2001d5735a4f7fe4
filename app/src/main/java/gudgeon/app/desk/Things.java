package gudgeon.app.desk;

import gudgeon.core.book.Ref;
import gudgeon.core.engine.Engine;
import java.util.List;
import java.util.Optional;

/** What an entry may be about: a part, a joint or a preparation, by its id. */
public final class Things {
    private Things() {}

    /**
     * The references that words stand for. A word that means nothing stays as it is, as a part, so that the desk refuses it by its name.
     *
     * @param words ids
     */
    public static List<Ref> refs(Job job, List<String> words) {
        return words.stream()
                .map(word -> find(job.engine(), word).orElseGet(() -> Ref.part(word.isBlank() ? "?" : word)))
                .toList();
    }

    /** The references of those of these ids that the engine has. */
    public static List<Ref> known(Job job, List<String> ids) {
        return ids.stream().flatMap(id -> find(job.engine(), id).stream()).toList();
    }

    private static Optional<Ref> find(Engine engine, String id) {
        if (engine.findPart(id).isPresent()) {
            return Optional.of(Ref.part(id));
        }
        if (engine.findJoint(id).isPresent()) {
            return Optional.of(Ref.joint(id));
        }
        return engine.findReady(id).map(ready -> new Ref(Ref.Sort.READY, id));
    }
}
