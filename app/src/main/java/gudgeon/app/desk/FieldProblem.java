package gudgeon.app.desk;

import java.util.List;

/**
 * Something wrong with one field of what a person said. The words for each kind are {@code document.FieldWords}'.
 *
 * @param field the field: name, between, fasteners, count, bag, joint, part ...
 * @param given what was written there
 * @param near what may have been meant; empty when nothing is near
 * @param said more on it, from the check of the engine file; empty for most
 */
public record FieldProblem(String field, Kind kind, String given, List<String> near, String said) {
    public FieldProblem {
        near = List.copyOf(near);
    }

    /** What is wrong. */
    public enum Kind {
        /** Nothing was written and something is needed. */
        EMPTY,
        /** It names nothing. */
        UNKNOWN,
        /** It is longer than is kept. */
        TOO_LONG,
        /** It is no number, or one that makes no sense here. */
        NUMBER,
        /** It cannot be read as fasteners. */
        FASTENERS,
        /** It cannot be read as stages of tightening with the state of the thread. */
        TIGHTENING,
        /** A joint needs two parts or more. */
        TWO_PARTS,
        /** It is done already. */
        ALREADY_DONE,
        /** It is not done, so there is nothing to take back. */
        NOT_DONE,
        /** There is nothing to undo. */
        NOTHING_TO_UNDO,
        /** The name is taken. */
        TAKEN,
        /** The engine file would have a fault; {@link FieldProblem#said} tells it. */
        FILE,
        /** It is neither JPEG nor PNG nor WebP. */
        NO_PICTURE,
        /** It is larger than {@link PhotoTaken#MOST_BYTES}, or has more dots than can be worked on. */
        PICTURE_TOO_LARGE,
        /** It begins like a picture and cannot be read to its end. */
        PICTURE_BROKEN,
        /** Somebody changed it in the meantime. */
        CHANGED_MEANWHILE,
        /** A fastener has had its angle; it is never turned twice. */
        TURNED_ALREADY,
        /** A torque stage was left midway; it starts again at its first fastener, and near names the order. */
        LEFT_MIDWAY,
        /** An angle stage was left midway; first it is said which fasteners bear a mark. */
        MARKS_NOT_SAID,
        /** A step before it is not done, or it lacks something. */
        NOT_YET,
        /** It lacks something: near names the sort of lack and what is lacking. */
        LACKS,
        /** The ledgers do not balance. */
        NOT_BALANCED
    }

    static FieldProblem of(String field, Kind kind, String given) {
        return new FieldProblem(field, kind, given, List.of(), "");
    }

    static FieldProblem unknown(String field, UnknownName name) {
        return new FieldProblem(field, Kind.UNKNOWN, name.word(), name.told(), "");
    }
}
