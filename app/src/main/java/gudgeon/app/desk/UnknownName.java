package gudgeon.app.desk;

import java.util.List;

/**
 * A word that names nothing.
 *
 * @param sort what it should name
 * @param word as written
 * @param near what may have been meant, nearest first; empty when nothing is near
 */
public record UnknownName(Sort sort, String word, List<String> near) {
    public UnknownName {
        near = List.copyOf(near);
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
