package gudgeon.app.document;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Draws boxes, lines and step numbers of a laid-out drawing. */
final class DrawingStrokes {
    private static final double TAG_HEIGHT = 15;

    private final LaidOut laidOut;
    private final Set<String> withTags = new HashSet<>();
    private final Map<String, Double> bottoms = new HashMap<>();

    DrawingStrokes(LaidOut laidOut) {
        this.laidOut = laidOut;
        for (LaidOut.Route route : laidOut.routes()) {
            if (!route.line().tag().isEmpty()) {
                withTags.add(route.line().from());
            }
        }
        for (LaidOut.Placed placed : laidOut.boxes()) {
            bottoms.put(placed.box().id(), bottom(placed));
        }
    }

    void draw(SvgText out) {
        laidOut.routes().forEach(route -> line(out, route));
        laidOut.boxes().forEach(placed -> box(out, placed));
        laidOut.routes().forEach(route -> tag(out, route));
    }

    /** The lower edge of what is drawn; below it is room for step numbers. */
    private double bottom(LaidOut.Placed placed) {
        double room = withTags.contains(placed.box().id()) ? LayeredPlacing.TAG_ROOM : 0;
        return placed.y() + placed.height() - room;
    }

    private void line(SvgText out, LaidOut.Route route) {
        if (route.points().isEmpty()) {
            return;
        }
        LaidOut.Point start = route.points().getFirst();
        StringBuilder data = new StringBuilder("M" + SvgText.n(start.x()) + " "
                + SvgText.n(bottoms.getOrDefault(route.line().from(), start.y())));
        route.points().forEach(point ->
                data.append('L').append(SvgText.n(point.x())).append(' ').append(SvgText.n(point.y())));
        String style = route.line().undone() ? "undone" : route.line().flexible() ? "flexible" : "joint";
        out.line("<g>").title(route.line().title()).path(style, data.toString()).line("</g>");
    }

    private void tag(SvgText out, LaidOut.Route route) {
        String tag = route.line().tag();
        if (tag.isEmpty() || route.points().isEmpty()) {
            return;
        }
        double x = route.points().getFirst().x();
        double y = bottoms.getOrDefault(route.line().from(), 0.0) + 3;
        number(out, "tag", "number", tag, x, y);
    }

    /** A step number centred on x, its upper edge at y. */
    static void number(SvgText out, String boxStyle, String textStyle, String tag, double x, double y) {
        double width = Math.max(15, LayeredPlacing.tagWidth(tag));
        out.rect(boxStyle, x - width / 2, y, width, TAG_HEIGHT);
        out.text(textStyle, x, y + 12, tag);
    }

    private void box(SvgText out, LaidOut.Placed placed) {
        DrawnEngine.Box box = placed.box();
        double height = bottom(placed) - placed.y();
        out.line("<g>").title(box.title());
        switch (box.shape()) {
            case PART -> part(out, placed, height);
            case PIPE -> pipe(out, placed, height);
            case KNOT -> knot(out, placed, height);
        }
        if (!box.tag().isEmpty() && box.shape() != DrawnEngine.Shape.KNOT) {
            double width = Math.max(15, LayeredPlacing.tagWidth(box.tag()));
            number(out, "lift", "lift-number", box.tag(), placed.x() + width / 2, placed.y() - TAG_HEIGHT + 5);
        }
        out.line("</g>");
    }

    private void part(SvgText out, LaidOut.Placed placed, double height) {
        DrawnEngine.Box box = placed.box();
        String style = switch (box.state()) {
            case IN_PLACE -> box.base() ? "base" : "part";
            case OFF -> "off";
            case TARGET -> "goal";
            case ASIDE -> "aside";
            case GROUPED -> "group";
        };
        if (box.state() == DrawnEngine.State.OFF) {
            out.rect("patch", placed.x(), placed.y(), placed.width(), height);
        }
        out.rect(style, placed.x(), placed.y(), placed.width(), height);
        if (box.state() == DrawnEngine.State.GROUPED) {
            out.rect("group", placed.x() + 3, placed.y() + 3, placed.width() - 6, height - 6);
        }
        boolean aside = box.state() == DrawnEngine.State.ASIDE;
        double textHeight = height - (aside ? 16 : 0);
        String name = box.state() == DrawnEngine.State.TARGET || box.base() ? "goal-name" : "name";
        rows(out, box, placed.x() + placed.width() / 2, placed.y() + textHeight / 2, 16, name);
        if (aside) {
            asideSign(out, placed.x() + placed.width() / 2, placed.y() + height - 19);
        }
        if (box.base()) {
            ground(out, placed.x(), placed.y() + height, placed.width());
        }
    }

    private static void rows(SvgText out, DrawnEngine.Box box, double x, double middle, double rowHeight, String style) {
        List<String> rows = box.rows();
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

    private static void pipe(SvgText out, LaidOut.Placed placed, double height) {
        double x = placed.x();
        double y = placed.y();
        boolean off = placed.box().state() == DrawnEngine.State.OFF;
        out.rect("patch", x, y, placed.width(), height);
        if (off) {
            out.line("<rect fill=\"url(#hatch)\" x=\"" + SvgText.n(x) + "\" y=\"" + SvgText.n(y) + "\" width=\""
                    + SvgText.n(placed.width()) + "\" height=\"" + SvgText.n(height) + "\"/>");
        }
        out.path("rules", "M" + SvgText.n(x) + " " + SvgText.n(y) + "h" + SvgText.n(placed.width()) + "M" + SvgText.n(x)
                + " " + SvgText.n(y + height) + "h" + SvgText.n(placed.width()));
        rows(out, placed.box(), x + placed.width() / 2, y + height / 2, 14, "pipe-name");
    }

    private static void knot(SvgText out, LaidOut.Placed placed, double height) {
        boolean undone = placed.box().state() == DrawnEngine.State.OFF;
        double x = placed.x() + placed.width() / 2;
        double y = placed.y() + height / 2;
        if (undone) {
            out.rect("knot-undone", placed.x(), placed.y(), placed.width(), height);
            number(out, "tag", "number", placed.box().tag(), x, y - TAG_HEIGHT / 2);
        } else {
            out.rect("knot", placed.x(), y - 2.5, placed.width(), 5);
            out.path("joint", "M" + SvgText.n(x) + " " + SvgText.n(placed.y()) + "v" + SvgText.n(height));
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
            data.append('M').append(SvgText.n(at)).append(' ').append(SvgText.n(y)).append("l-9 10");
        }
        out.path("joint", data.toString());
    }
}
