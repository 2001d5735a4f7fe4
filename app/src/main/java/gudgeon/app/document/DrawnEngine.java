package gudgeon.app.document;

import java.util.List;

/**
 * What a drawing shows, before it has a place on the sheet.
 *
 * @param boxes parts, joints of more than two parts, and groups of parts that the plan does not concern
 * @param lines joints, from the end farther from the base to the nearer one
 */
record DrawnEngine(List<Box> boxes, List<Line> lines) {
    DrawnEngine {
        boxes = List.copyOf(boxes);
        lines = List.copyOf(lines);
    }

    /** What becomes of a part in the plan. */
    enum State {
        IN_PLACE("stays in place"),
        OFF("comes off"),
        TARGET("the goal"),
        ASIDE("set aside"),
        GROUPED("stays in place, several parts drawn as one");

        private final String words;

        State(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** How a box is drawn. */
    enum Shape {
        PART,
        /** A hose, pipe, loom or cable: two rules, open at the ends. */
        PIPE,
        /** A joint of more than two parts. */
        KNOT
    }

    /**
     * @param rows text, one entry for each row; empty for a knot
     * @param tag number of the step that lifts it or undoes it; empty when none
     * @param order boxes of one group have neighbouring numbers
     * @param title what a screen reader says
     */
    record Box(
            String id, Shape shape, State state, List<String> rows, String tag, boolean base, int order, String title) {
        Box {
            rows = List.copyOf(rows);
        }
    }

    /**
     * @param tag numbers of the steps that undo it; empty when it stays
     * @param undone whether the plan undoes every joint that this line stands for
     * @param flexible whether every joint that it stands for is flexible
     * @param count how many joints it stands for
     */
    record Line(String from, String to, String tag, boolean undone, boolean flexible, int count, String title) {}
}
