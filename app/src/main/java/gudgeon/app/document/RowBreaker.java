package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/** Breaks names into rows of nearly equal width, so that no name leaves its box. */
final class RowBreaker {
    static final double PART_SIZE = 15;
    static final double PIPE_SIZE = 13.5;
    /** Size of the names of joined parts on other panels. */
    static final double SMALL = 13;

    private static final double PART_WIDTH = 104;
    private static final double PIPE_WIDTH = 112;

    private RowBreaker() {}

    /** Rows of a name for a box of this shape. */
    static List<String> rows(String name, DrawnEngine.Shape shape) {
        return shape == DrawnEngine.Shape.PIPE
                ? rows(name, Typeface.SHEET_500, PIPE_SIZE, PIPE_WIDTH)
                : rows(name, Typeface.SHEET_500, PART_SIZE, PART_WIDTH);
    }

    /** Rows no wider than {@code most}, as long as no single word is; the last rows are not left nearly empty. */
    static List<String> rows(String text, Typeface face, double size, double most) {
        List<String> greedy = filled(text, face, size, most);
        if (greedy.size() < 2) {
            return greedy;
        }
        List<String> best = greedy;
        double low = 0;
        double high = most;
        for (int i = 0; i < 12; i++) {
            double middle = (low + high) / 2;
            List<String> narrower = filled(text, face, size, middle);
            if (narrower.size() == greedy.size() && widest(narrower, face, size) <= most) {
                best = narrower;
                high = middle;
            } else {
                low = middle;
            }
        }
        return best;
    }

    static double widest(List<String> rows, Typeface face, double size) {
        return rows.stream().mapToDouble(row -> face.width(row, size)).max().orElse(0);
    }

    private static List<String> filled(String text, Typeface face, double size, double most) {
        List<String> rows = new ArrayList<>();
        String row = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = row.isEmpty() ? word : row + " " + word;
            if (row.isEmpty() || face.width(longer, size) <= most) {
                row = longer;
            } else {
                rows.add(row);
                row = word;
            }
        }
        rows.add(row);
        return List.copyOf(rows);
    }
}
