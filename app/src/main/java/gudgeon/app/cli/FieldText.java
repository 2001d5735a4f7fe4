package gudgeon.app.cli;

import gudgeon.app.desk.FieldProblem;
import java.util.Locale;

/** What is wrong with a field, in one line, with what would be right. */
final class FieldText {
    private FieldText() {}

    static String of(FieldProblem problem) {
        String near = problem.near().isEmpty() ? "" : " Maybe " + String.join(", or ", problem.near()) + "?";
        String given = problem.given().isEmpty() ? "" : " '" + problem.given() + "'";
        return switch (problem.kind()) {
            case EMPTY -> problem.field() + " is empty, and is needed";
            case UNKNOWN -> problem.field() + given + " is not known here." + near;
            case TOO_LONG -> problem.field() + given + " is longer than is kept, or holds what is no text";
            case NUMBER -> problem.field() + given + " is no number that makes sense here";
            case TIGHTENING ->
                problem.field() + given + " cannot be read. Maybe 30 N·m, 90°, oiled (or dry, locked, sealed)?";
            case FASTENERS -> problem.field() + given + " cannot be read. Maybe 4 x M8x25, or slide?";
            case TWO_PARTS -> "a joint joins two parts or more, not" + given + ". Maybe: pump bracket, engine block?";
            case ALREADY_DONE -> "this is done already:" + given;
            case NOT_DONE -> "this is not done, so there is nothing to take back:" + given;
            case NOTHING_TO_UNDO -> "there is nothing to undo" + given;
            case TAKEN -> "this is written once for several copies; put the file itself right:" + given;
            case FILE -> problem.field() + ": " + problem.said();
            case NO_PICTURE -> "this is no picture that can be read; JPEG, PNG and WebP can:" + given;
            case PICTURE_TOO_LARGE -> "this picture is too large, at most 12 MB:" + given;
            case PICTURE_BROKEN -> "this picture is damaged and cannot be read:" + given;
            case CHANGED_MEANWHILE -> "somebody changed it in the meantime; look again:" + given;
            case TURNED_ALREADY -> "an angle is never turned twice: " + String.join(", ", problem.near());
            case LEFT_MIDWAY ->
                "this stage was left midway: start at the first, back nothing off. Maybe --fastener "
                        + numbers(problem) + "?";
            case MARKS_NOT_SAID ->
                "this stage was left midway, and an angle is never turned twice: look at the marks, then say"
                        + " --broken-off, with --fastener for each whose mark has moved, or --uncertain";
            case NOT_YET -> given.strip() + " comes after " + String.join(", ", problem.near());
            case LACKS ->
                given.strip() + " lacks something: "
                        + String.join(", ", problem.near())
                                .toLowerCase(Locale.ROOT)
                                .replace('_', ' ');
            case NOT_BALANCED ->
                "does not balance: " + problem.given() + ", "
                        + String.join(", ", problem.near())
                                .toLowerCase(Locale.ROOT)
                                .replace('_', ' ');
        };
    }

    private static String numbers(FieldProblem problem) {
        return String.join(
                ",",
                problem.near().stream()
                        .map(id -> id.substring(id.lastIndexOf('/') + 1))
                        .toList());
    }
}
