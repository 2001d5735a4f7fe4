package gudgeon.app.desk;

import gudgeon.app.document.Names;
import java.util.List;

/**
 * A word that names nothing.
 *
 * @param sort what it should name
 * @param word as written
 * @param near what may have been meant, nearest first; empty when nothing is near
 */
public record UnknownName(Sort sort, String word, List<Near> near) {
    public UnknownName {
        near = List.copyOf(near);
    }

    /**
     * Something that may have been meant.
     *
     * @param id as commands take it; {@code injector-*} for all copies
     * @param name what it is called
     */
    public record Near(String id, String name) {
        /** "piston rings (ring-set)"; the name alone where the id says the same. Understood when it is typed. */
        public String told() {
            String called = Names.inSentence(name);
            return name.isBlank() || Nearest.plain(called).equals(Nearest.plain(id)) ? id : called + " (" + id + ")";
        }
    }

    /** What may have been meant, as it is told. */
    public List<String> told() {
        return near.stream().map(Near::told).toList();
    }

    /** What a word should name. */
    public enum Sort {
        PART,
        JOINT,
        JOINT_OR_READY,
        FEATURE,
        CIRCUIT,
        WAY_OF_LIFTING,
        SPECIFICATION
    }
}
