package gudgeon.app.cli;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** The fasteners of a joint as they lie on their face, in characters: each stands with its number in the order. */
final class PatternSketch {
    private static final int WIDTH = 44;
    private static final int ROWS = 7;

    private PatternSketch() {}

    /** Prints in which order a joint is loosened; whether there is an order and every place is known. */
    static boolean loosening(Joint joint, Layout layout) {
        List<String> order = joint.makeup().loosen().order().stream()
                .map(position -> joint.makeup().fasteners().get(position - 1).id())
                .toList();
        List<String> lines = order.isEmpty() ? List.of() : of(joint, order);
        lines.forEach(line -> layout.line("      " + line));
        return !lines.isEmpty();
    }

    /**
     * The lines of the sketch, the lowest place last; empty when a place is not known.
     *
     * @param order fastener ids in the order in which they are turned
     */
    static List<String> of(Joint joint, List<String> order) {
        List<Fastener> fasteners = joint.makeup().fasteners();
        if (fasteners.stream()
                .anyMatch(one ->
                        one.place().x_mm().isEmpty() || one.place().y_mm().isEmpty())) {
            return List.of();
        }
        List<Double> columns = distinct(fasteners.stream().map(PatternSketch::x).toList());
        List<Double> rows = distinct(fasteners.stream().map(PatternSketch::y).toList());
        int gap = Math.max(4, Math.min(9, WIDTH / columns.size()));
        if (rows.size() > 3 * ROWS || columns.size() > WIDTH / 2) {
            return List.of();
        }
        char[][] cells = new char[rows.size()][gap * columns.size()];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        for (Fastener fastener : fasteners) {
            String number = String.format(Locale.ROOT, "%3d", order.indexOf(fastener.id()) + 1);
            int row = rows.size() - 1 - rows.indexOf(y(fastener));
            int column = gap * columns.indexOf(x(fastener));
            number.getChars(0, number.length(), cells[row], column);
        }
        List<String> lines = new ArrayList<>();
        for (char[] row : cells) {
            lines.add(new String(row).stripTrailing());
        }
        return lines;
    }

    private static List<Double> distinct(List<Double> values) {
        return List.copyOf(new ArrayList<>(new TreeSet<>(values)));
    }

    private static double x(Fastener fastener) {
        return fastener.place().x_mm().orElse(0);
    }

    private static double y(Fastener fastener) {
        return fastener.place().y_mm().orElse(0);
    }
}
