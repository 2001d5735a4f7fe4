package gudgeon.app.document;

/**
 * The paper of a drawing that is printed: A3 across, with a margin that printers leave white. Units of the drawing are chosen
 * so that its smallest text, 12 units high, is printed 9 points high.
 *
 * @param number of this sheet, from 1
 * @param count of sheets
 */
record PaperSheet(int number, int count) {
    static final double WIDTH_MM = 420;
    static final double HEIGHT_MM = 297;

    /** Smallest text of a drawing. */
    static final double SMALLEST_TEXT = 12;

    private static final double SMALLEST_PT = 9;
    private static final double PT_PER_MM = 72 / 25.4;
    private static final double MARGIN_MM = 7;

    /** Millimetres on paper of one unit; rounded up a little, never below what the smallest text needs. */
    static final double UNIT_MM = Math.ceil(SMALLEST_PT / PT_PER_MM / SMALLEST_TEXT * 10_000) / 10_000;

    static double margin() {
        return MARGIN_MM / UNIT_MM;
    }

    /** Width inside the margins, in units. */
    static double width() {
        return WIDTH_MM / UNIT_MM - 2 * margin();
    }

    /** Height inside the margins, in units. */
    static double height() {
        return HEIGHT_MM / UNIT_MM - 2 * margin();
    }
}
