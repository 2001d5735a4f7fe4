package gudgeon.app.web.jobs;

import gudgeon.app.desk.FieldProblem;

/** What is wrong with a field, in words. */
final class FieldFaults {
    private FieldFaults() {}

    static String text(FieldProblem problem) {
        String near = problem.near().isEmpty() ? "" : " Maybe " + String.join(", or ", problem.near()) + "?";
        return switch (problem.kind()) {
            case EMPTY -> "Something is needed here.";
            case UNKNOWN -> "Nothing here is called “" + problem.given() + "”." + near;
            case TOO_LONG -> "That is too long to keep: shorten it.";
            case NUMBER -> "“" + problem.given() + "” is no number that makes sense here.";
            case FASTENERS -> "“" + problem.given() + "” cannot be read as fasteners. Write: 4 bolts M8x1.25 x 30 mm.";
            case TIGHTENING ->
                "“" + problem.given() + "” cannot be read. Write the stages and how the thread is: 30 N·m, 90°, oiled"
                        + " (or dry, locked, sealed).";
            case TWO_PARTS -> "A joint holds two parts or more together.";
            case ALREADY_DONE -> "That is done already.";
            case NOT_DONE -> "That is not done, so there is nothing to take back.";
            case NOTHING_TO_UNDO -> "There is nothing to undo.";
            case TAKEN -> "That name is taken.";
            case FILE -> problem.said();
            case NO_PICTURE ->
                "That is no picture that can be read here. JPEG, PNG and WebP can; set the camera to JPEG.";
            case PICTURE_TOO_LARGE -> "That picture is too large: at most 12 MB. Set the camera to a smaller size.";
            case PICTURE_BROKEN -> "That picture is damaged and cannot be read. Take it again.";
            case CHANGED_MEANWHILE -> "Somebody changed it in the meantime: look again.";
            case TURNED_ALREADY -> "That one has had its angle; it is never turned twice.";
            case LEFT_MIDWAY ->
                "This stage was left midway: it starts at number 1, every one in order. Back nothing off.";
            case MARKS_NOT_SAID -> "This stage was left midway: say first whose mark has moved.";
            case NOT_YET -> "Not yet: it comes after " + String.join(", ", problem.near()) + ".";
            case LACKS -> "It lacks something: " + String.join(", ", problem.near()) + ".";
            case NOT_BALANCED -> "It does not balance: " + problem.given() + ".";
        };
    }
}
