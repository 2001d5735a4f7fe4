package gudgeon.app.document;

/** Draws a list of parts that sit alike: a row each, with step numbers, state and what it is joined to elsewhere. */
final class ListStrokes {
    private ListStrokes() {}

    static void draw(SvgText out, LaidOut.Placed body) {
        BoxSize.ListColumns columns = BoxSize.ListColumns.of(body.box().entries());
        out.rect("list", body.x(), body.y(), body.width(), body.height());
        double y = body.y() + 2;
        boolean first = true;
        for (DrawnEngine.Entry entry : body.box().entries()) {
            if (!first) {
                out.path("row", "M" + SvgText.n(body.x()) + " " + SvgText.n(y) + "h" + SvgText.n(body.width()));
            }
            row(out, entry, columns, body.x() + 4, y, body.x() + body.width());
            first = false;
            y += BoxSize.entryHeight(entry);
        }
    }

    private static void row(
            SvgText out, DrawnEngine.Entry entry, BoxSize.ListColumns columns, double left, double y, double right) {
        double x = left;
        if (!entry.undo().isEmpty()) {
            DrawingStrokes.number(out, "tag", "number", entry.undo(), x + BoxSize.tag(entry.undo()) / 2, y + 2);
        }
        x += columns.undo_w();
        state(out, entry, x, y + 4);
        x += BoxSize.STATE_SIGN;
        double text = y + 14;
        for (String row : entry.rows()) {
            out.text("row-name", x, text, row);
            text += BoxSize.PIPE_ROW;
        }
        for (String row : entry.references()) {
            out.text("reference", x, text, row);
            text += BoxSize.PIPE_ROW;
        }
        if (!entry.lift().isEmpty()) {
            double middle = right - 4 - BoxSize.tag(entry.lift()) / 2;
            DrawingStrokes.number(out, "lift", "lift-number", entry.lift(), middle, y + 2);
        }
    }

    /** A small box or pipe in the part's state. */
    private static void state(SvgText out, DrawnEngine.Entry entry, double x, double y) {
        if (entry.shape() == DrawnEngine.Shape.PIPE) {
            if (entry.state() == DrawnEngine.State.OFF) {
                out.rect("hatched", x, y, 16, 11);
            }
            out.path(
                    "rules",
                    "M" + SvgText.n(x) + " " + SvgText.n(y) + "h16M" + SvgText.n(x) + " " + SvgText.n(y + 11) + "h16");
            return;
        }
        switch (entry.state()) {
            case OFF -> {
                out.rect("hatched", x, y, 16, 11);
                out.rect("off", x, y, 16, 11);
            }
            case ASIDE -> {
                out.rect("aside", x, y, 16, 11);
                out.path("hook", "M" + SvgText.n(x + 10) + " " + SvgText.n(y + 2) + "v3a2.5 2.5 0 1 1 -5 0");
            }
            case IN_PLACE, TARGET, GROUPED -> out.rect("part", x, y, 16, 11);
        }
    }
}
