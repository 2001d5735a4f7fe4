package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/** The title block at the foot of a drawing: labelled cells in a grid, texts broken into rows. */
final class TitleBlock {
    private static final double LABEL_ROW = 16;
    private static final double TEXT_ROW = 17;
    private static final double SIZE = 15;

    private final List<Cell> cells;
    private final double width;
    private final double[] shares;

    /** One cell. */
    record Cell(String label, String text) {}

    TitleBlock(List<Cell> cells, int columns, double width) {
        this.cells = List.copyOf(cells);
        this.width = width;
        this.shares = columns == 3 ? new double[] {0.3, 0.42, 0.28} : new double[] {0.42, 0.58};
    }

    double height() {
        double height = 0;
        for (int row = 0; row * shares.length < cells.size(); row++) {
            height += rowHeight(row);
        }
        return height;
    }

    private double rowHeight(int row) {
        int most = 1;
        for (int column = 0; column < shares.length; column++) {
            most = Math.max(most, rows(row, column).size());
        }
        return LABEL_ROW + most * TEXT_ROW + 7;
    }

    private List<String> rows(int row, int column) {
        int index = row * shares.length + column;
        return index < cells.size()
                ? RowBreaker.rows(cells.get(index).text(), Typeface.SHEET_600, SIZE, width * shares[column] - 16)
                : new ArrayList<>();
    }

    void draw(SvgText out, double left, double top) {
        out.rect("patch", left, top, width, height());
        double y = top;
        for (int row = 0; row * shares.length < cells.size(); row++) {
            double height = rowHeight(row);
            double x = left;
            out.path("thin", "M" + SvgText.n(left) + " " + SvgText.n(y) + "h" + SvgText.n(width));
            for (int column = 0; column < shares.length; column++) {
                out.path("thin", "M" + SvgText.n(x) + " " + SvgText.n(y) + "v" + SvgText.n(height));
                cell(out, row, column, x + 8, y);
                x += width * shares[column];
            }
            y += height;
        }
    }

    private void cell(SvgText out, int row, int column, double x, double y) {
        int index = row * shares.length + column;
        if (index >= cells.size()) {
            return;
        }
        out.text("label", x, y + 14, cells.get(index).label());
        List<String> rows = rows(row, column);
        for (int i = 0; i < rows.size(); i++) {
            out.text("cell", x, y + LABEL_ROW + (i + 1) * TEXT_ROW - 3, rows.get(i));
        }
    }
}
