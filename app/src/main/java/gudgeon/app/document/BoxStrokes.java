package gudgeon.app.document;

import java.util.List;

/** Draws single boxes: parts, pipes, joints of several parts. */
final class BoxStrokes {
    private BoxStrokes() {}

    /** @param body the box itself, without signs and room for step numbers */
    static void part(SvgText out, LaidOut.Placed body) {
        DrawnEngine.Box box = body.box();
        String style = switch (box.state()) {
            case IN_PLACE -> box.base() ? "base" : "part";
            case OFF -> "off";
            case TARGET -> "goal";
            case ASIDE -> "aside";
            case GROUPED -> "group";
        };
        double head = box.base() ? body.height() : headOf(body);
        if (box.state() == DrawnEngine.State.OFF) {
            out.rect("patch", body.x(), body.y(), body.width(), body.height());
            out.rect("hatched", body.x(), body.y(), body.width(), head);
        }
        out.rect(style, body.x(), body.y(), body.width(), body.height());
        if (box.state() == DrawnEngine.State.GROUPED) {
            out.rect("group", body.x() + 3, body.y() + 3, body.width() - 6, body.height() - 6);
        }
        boolean aside = box.state() == DrawnEngine.State.ASIDE;
        double textHeight = head - (aside ? 16 : 0);
        String name = box.state() == DrawnEngine.State.TARGET || box.base() ? "goal-name" : "name";
        rows(out, box, body.x() + body.width() / 2, body.y() + textHeight / 2, BoxSize.ROW, name);
        if (aside) {
            asideSign(out, body.x() + body.width() / 2, body.y() + head - 19);
        }
        references(out, body, head);
        if (box.base()) {
            ground(out, body.x(), body.y() + body.height(), body.width());
        }
    }

    private static void rows(
            SvgText out, DrawnEngine.Box box, double x, double middle, double rowHeight, String style) {
        List<String> rows = box.label().rows();
        boolean small = box.shape() == DrawnEngine.Shape.PIPE;
        double size = small ? RowBreaker.PIPE_SIZE : RowBreaker.PART_SIZE;
        double top = middle - rows.size() * rowHeight / 2;
        if (box.state() == DrawnEngine.State.OFF) {
            double width = RowBreaker.widest(rows, Typeface.SHEET_500, size) + 6;
            out.rect("patch", x - width / 2, top - 1, width, rows.size() * rowHeight + 2);
        }
        for (int i = 0; i < rows.size(); i++) {
            out.text(style, x, top + (i + 1) * rowHeight - rowHeight * 0.24, rows.get(i));
        }
    }

    static void pipe(SvgText out, LaidOut.Placed body) {
        double x = body.x();
        double y = body.y();
        out.rect("patch", x, y, body.width(), body.height());
        double head = headOf(body);
        if (body.box().state() == DrawnEngine.State.OFF) {
            out.rect("hatched", x, y, body.width(), head);
        }
        out.path(
                "rules",
                "M" + SvgText.n(x) + " " + SvgText.n(y) + "h" + SvgText.n(body.width()) + "M" + SvgText.n(x) + " "
                        + SvgText.n(y + body.height()) + "h" + SvgText.n(body.width()));
        rows(out, body.box(), x + body.width() / 2, y + head / 2, BoxSize.PIPE_ROW, "pipe-name");
        references(out, body, head);
    }

    /** Height of the part with the name; the whole box when nothing stands below it. */
    private static double headOf(LaidOut.Placed body) {
        return body.box().references().isEmpty()
                ? body.height()
                : BoxSize.of(body.box()).head();
    }

    /** Joints to other panels, below the name. */
    private static void references(SvgText out, LaidOut.Placed body, double head) {
        List<DrawnEngine.Reference> references = body.box().references();
        if (references.isEmpty()) {
            return;
        }
        double y = body.y() + head;
        out.path("row", "M" + SvgText.n(body.x() + 2) + " " + SvgText.n(y) + "h" + SvgText.n(body.width() - 4));
        y += 3;
        for (DrawnEngine.Reference reference : references) {
            double x = body.x() + 8;
            if (!reference.tag().isEmpty()) {
                DrawingStrokes.number(
                        out, "tag", "number", reference.tag(), x + BoxSize.tag(reference.tag()) / 2 - 3, y + 1);
                x += BoxSize.tag(reference.tag());
            }
            for (String row : BoxSize.referenceRows(reference)) {
                out.text("reference", x, y + 13, row);
                y += BoxSize.PIPE_ROW;
            }
            y += BoxSize.REFERENCE_ROW - BoxSize.PIPE_ROW;
        }
    }

    static void knot(SvgText out, LaidOut.Placed body) {
        boolean undone = body.box().state() == DrawnEngine.State.OFF;
        double x = body.x() + body.width() / 2;
        double y = body.y() + body.height() / 2;
        if (!undone) {
            out.path("joint", "M" + SvgText.n(x) + " " + SvgText.n(body.y()) + "v" + SvgText.n(body.height()));
        }
        out.rect(undone ? "knot-undone" : "knot", body.x(), y - 2.5, body.width(), 5);
        if (!body.box().label().tag().isEmpty()) {
            DrawingStrokes.number(out, "tag", "number", body.box().label().tag(), x, y - 7.5);
        }
    }

    /** The word "aside" with a hook before it. */
    static void asideSign(SvgText out, double x, double y) {
        out.path("hook", "M" + SvgText.n(x - 22) + " " + SvgText.n(y) + "v6a4 4 0 1 1 -8 0");
        out.text("name", x + 4, y + 11, "aside");
    }

    /** Ground under what stays put. */
    static void ground(SvgText out, double x, double y, double width) {
        StringBuilder data = new StringBuilder();
        for (double at = x + 8; at <= x + width; at += 14) {
            data.append('M')
                    .append(SvgText.n(at))
                    .append(' ')
                    .append(SvgText.n(y))
                    .append("l-9 10");
        }
        out.path("joint", data.toString());
    }
}
