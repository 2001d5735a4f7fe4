package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room a box takes, without the room for step numbers below it.
 *
 * @param width of the box
 * @param height of the box
 * @param head height of the part with the name; below it stand joints to other panels
 */
record BoxSize(double width, double height, double head) {
    static final double ROW = 16;
    static final double PIPE_ROW = 14;
    static final double REFERENCE_ROW = 17;
    static final double STATE_SIGN = 20;

    static BoxSize of(DrawnEngine.Box box) {
        return switch (box.shape()) {
            case PART -> {
                double width = RowBreaker.widest(box.label().rows(), Typeface.SHEET_600, RowBreaker.PART_SIZE) + 22;
                double aside = box.state() == DrawnEngine.State.ASIDE ? ROW : 0;
                yield withReferences(box, width, Math.max(2, box.label().rows().size()) * ROW + 12 + aside);
            }
            case PIPE -> {
                double width = RowBreaker.widest(box.label().rows(), Typeface.SHEET_500, RowBreaker.PIPE_SIZE) + 14;
                yield withReferences(box, width, box.label().rows().size() * PIPE_ROW + 8);
            }
            case KNOT -> new BoxSize(Math.max(30, tag(box.label().tag()) + 6), 18, 18);
            case LIST -> {
                double height =
                        box.entries().stream().mapToDouble(BoxSize::entryHeight).sum() + 4;
                yield new BoxSize(ListColumns.of(box.entries()).width(), height, height);
            }
        };
    }

    private static BoxSize withReferences(DrawnEngine.Box box, double width, double head) {
        if (box.references().isEmpty()) {
            return new BoxSize(width, head, head);
        }
        double widest = width;
        double height = head + 5;
        for (DrawnEngine.Reference reference : box.references()) {
            List<String> rows = referenceRows(reference);
            double text = RowBreaker.widest(rows, Typeface.SHEET_500, RowBreaker.SMALL);
            widest = Math.max(widest, text + tag(reference.tag()) + 16);
            height += REFERENCE_ROW + (rows.size() - 1) * PIPE_ROW;
        }
        return new BoxSize(widest, height + 2, head);
    }

    static List<String> referenceRows(DrawnEngine.Reference reference) {
        return RowBreaker.rows("to " + reference.to(), Typeface.SHEET_500, RowBreaker.SMALL, Panels.referenceWidth());
    }

    static double entryHeight(DrawnEngine.Entry entry) {
        return 5 + (entry.rows().size() + entry.references().size()) * PIPE_ROW;
    }

    /** Width of the box of a step number; 0 for none. */
    static double tag(String tag) {
        return tag.isEmpty() ? 0 : Math.max(15, Typeface.TEXT_700.width(tag, 12) + 8);
    }

    /** Columns of a list: number of undoing, state, name, number of lifting. */
    record ListColumns(double undo_w, double name_w, double lift_w) {
        static ListColumns of(List<DrawnEngine.Entry> entries) {
            double undo = 0;
            double name = 0;
            double lift = 0;
            for (DrawnEngine.Entry entry : entries) {
                undo = Math.max(undo, tag(entry.undo()) + (entry.undo().isEmpty() ? 0 : 4));
                List<String> rows = new ArrayList<>(entry.rows());
                name = Math.max(name, RowBreaker.widest(rows, Typeface.SHEET_500, RowBreaker.PIPE_SIZE));
                name = Math.max(name, RowBreaker.widest(entry.references(), Typeface.SHEET_500, RowBreaker.SMALL));
                lift = Math.max(lift, tag(entry.lift()) + (entry.lift().isEmpty() ? 0 : 6));
            }
            return new ListColumns(undo, name, lift);
        }

        double width() {
            return undo_w + STATE_SIGN + name_w + lift_w + 12;
        }
    }
}
