package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/**
 * What a drawing, or one panel of it, shows, before it has a place on the sheet.
 *
 * @param boxes parts, joints of more than two parts, lists of parts that sit alike, groups that the plan does not concern
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
        KNOT,
        /** Parts with the same neighbours, one row each. */
        LIST
    }

    /**
     * @param rows text, one entry for each row; empty for a knot or a list
     * @param tag numbers of the steps that lift it; for a knot, that undo it; empty when none
     * @param title what a screen reader says
     */
    record Label(List<String> rows, String tag, String title) {
        Label {
            rows = List.copyOf(rows);
        }

        String name() {
            return String.join(" ", rows);
        }
    }

    /**
     * Where a box belongs.
     *
     * @param order boxes of one group have neighbouring numbers
     * @param group assembly; empty when none is given
     */
    record Seat(int order, String group, boolean base) {}

    /**
     * A joint to something on another panel, named instead of drawn as a line across the sheet.
     *
     * @param to names of the other parts
     * @param tag numbers of the steps that undo it; empty when it stays
     */
    record Reference(String to, String tag, boolean undone) {}

    /**
     * One part of a list.
     *
     * @param rows name, broken into rows
     * @param references names of what it is joined to on other panels, broken into rows
     * @param undo numbers of the steps that undo its joints
     * @param lift number of the step that lifts it
     */
    record Entry(List<String> rows, List<String> references, Shape shape, State state, String undo, String lift) {
        Entry {
            rows = List.copyOf(rows);
            references = List.copyOf(references);
        }
    }

    /**
     * @param references joints to other panels; empty in a drawing of one panel
     * @param entries rows of a list; empty for other shapes
     */
    record Box(
            String id,
            Shape shape,
            State state,
            Label label,
            Seat seat,
            List<Reference> references,
            List<Entry> entries) {
        Box {
            references = List.copyOf(references);
            entries = List.copyOf(entries);
        }

        static Box plain(String id, Shape shape, State state, Label label, Seat seat) {
            return new Box(id, shape, state, label, seat, List.of(), List.of());
        }

        boolean base() {
            return seat.base();
        }

        Box with(List<Reference> others) {
            return new Box(id, shape, state, label, seat, others, entries);
        }
    }

    /**
     * @param tag numbers of the steps that undo it, to be shown at the line; empty when none is
     * @param undone whether the plan undoes every joint that this line stands for
     * @param flexible whether every joint that it stands for is flexible
     */
    record Line(String from, String to, String tag, boolean undone, boolean flexible, String title) {}

    /**
     * Joints between the same boxes.
     *
     * @param ends ids of the boxes, the one farthest from the base first
     * @param undoneIn numbers of the steps that undo them
     */
    record Tie(List<String> ends, List<Integer> undoneIn, boolean undone, boolean flexible, String title) {
        Tie {
            ends = List.copyOf(ends);
            undoneIn = List.copyOf(undoneIn);
        }

        String tag() {
            return PlanMarks.shortened(undoneIn);
        }

        private Line line(String from, String to, String tag) {
            return new Line(from, to, tag, undone, flexible, title);
        }
    }

    /** Boxes with every tie drawn: as a line, or as a knot with lines when it joins more than two. */
    static DrawnEngine of(List<Box> boxes, List<Tie> ties) {
        List<Box> all = new ArrayList<>(boxes);
        List<Line> lines = new ArrayList<>();
        for (Tie tie : ties) {
            List<String> ends = tie.ends();
            if (ends.size() == 2) {
                lines.add(tie.line(ends.get(0), ends.get(1), tie.tag()));
                continue;
            }
            String id = "knot " + String.join(" ", ends);
            State state = tie.undone() ? State.OFF : State.IN_PLACE;
            all.add(Box.plain(
                    id,
                    Shape.KNOT,
                    state,
                    new Label(List.of(), tie.tag(), tie.title()),
                    seatOf(boxes, ends.getFirst())));
            ends.subList(0, ends.size() - 1).forEach(end -> lines.add(tie.line(end, id, "")));
            lines.add(tie.line(id, ends.getLast(), ""));
        }
        return new DrawnEngine(all, lines);
    }

    private static Seat seatOf(List<Box> boxes, String id) {
        return boxes.stream()
                .filter(box -> box.id().equals(id))
                .map(box -> new Seat(box.seat().order(), box.seat().group(), false))
                .findFirst()
                .orElse(new Seat(0, "", false));
    }
}
