package gudgeon.app.document;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Draws boxes, lines and step numbers of a laid-out drawing. */
final class DrawingStrokes {
    private static final double TAG_HEIGHT = 15;

    private final LaidOut laidOut;
    private final Function<String, Optional<String>> links;
    private final Set<String> withTags = new HashSet<>();
    private final Map<String, Double> bottoms = new HashMap<>();

    DrawingStrokes(LaidOut laidOut) {
        this(laidOut, id -> Optional.empty());
    }

    /** @param links where a part leads, by its id */
    DrawingStrokes(LaidOut laidOut, Function<String, Optional<String>> links) {
        this.laidOut = laidOut;
        this.links = links;
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
        laidOut.frames().forEach(frame -> frame(out, frame));
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
        route.points()
                .forEach(point -> data.append('L')
                        .append(SvgText.n(point.x()))
                        .append(' ')
                        .append(SvgText.n(point.y())));
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
        double width = BoxSize.tag(tag);
        out.rect(boxStyle, x - width / 2, y, width, TAG_HEIGHT);
        out.text(textStyle, x, y + 12, tag);
    }

    private void box(SvgText out, LaidOut.Placed placed) {
        DrawnEngine.Box box = placed.box();
        LaidOut.Placed body =
                new LaidOut.Placed(box, placed.x(), placed.y(), placed.width(), bottom(placed) - placed.y());
        Optional<String> link = links.apply(box.id());
        link.ifPresent(href -> out.line("<a href=\"" + SvgText.escaped(href) + "\">"));
        out.line("<g>").title(box.label().title());
        switch (box.shape()) {
            case PART -> BoxStrokes.part(out, body);
            case PIPE -> BoxStrokes.pipe(out, body);
            case KNOT -> BoxStrokes.knot(out, body);
            case LIST -> ListStrokes.draw(out, body);
        }
        String tag = box.label().tag();
        if (!tag.isEmpty() && box.shape() != DrawnEngine.Shape.KNOT) {
            double above = box.shape() == DrawnEngine.Shape.PIPE ? TAG_HEIGHT : TAG_HEIGHT - 5;
            number(out, "lift", "lift-number", tag, placed.x() + BoxSize.tag(tag) / 2, placed.y() - above);
        }
        out.line("</g>");
        link.ifPresent(href -> out.line("</a>"));
    }

    private static void frame(SvgText out, LaidOut.Frame frame) {
        out.rect("panel", frame.x(), frame.y(), frame.width(), frame.height());
        out.text("heading", frame.x() + 10, frame.y() + 21, frame.heading());
    }
}
