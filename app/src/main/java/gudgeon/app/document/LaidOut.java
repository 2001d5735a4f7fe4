package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing with a place for everything; y grows downwards.
 *
 * @param width of all boxes and lines
 * @param height of all boxes and lines
 * @param frames panels; empty in a drawing of one panel
 */
record LaidOut(double width, double height, List<Placed> boxes, List<Route> routes, List<Frame> frames) {
    LaidOut {
        boxes = List.copyOf(boxes);
        routes = List.copyOf(routes);
        frames = List.copyOf(frames);
    }

    record Placed(DrawnEngine.Box box, double x, double y, double width, double height) {}

    record Point(double x, double y) {}

    record Route(DrawnEngine.Line line, List<Point> points) {
        Route {
            points = List.copyOf(points);
        }
    }

    /** The outline of a panel with its heading. */
    record Frame(String heading, double x, double y, double width, double height) {}

    /** The same in the middle of {@code most}. */
    LaidOut centred(double most) {
        LaidOut moved = moved((most - width) / 2, 0);
        return new LaidOut(most, height, moved.boxes(), moved.routes(), moved.frames());
    }

    /** The same, moved. */
    LaidOut moved(double dx, double dy) {
        List<Placed> placed = boxes.stream()
                .map(one -> new Placed(one.box(), one.x() + dx, one.y() + dy, one.width(), one.height()))
                .toList();
        List<Route> lines = new ArrayList<>();
        for (Route route : routes) {
            lines.add(new Route(
                    route.line(),
                    route.points().stream()
                            .map(point -> new Point(point.x() + dx, point.y() + dy))
                            .toList()));
        }
        List<Frame> outlines = frames.stream()
                .map(one -> new Frame(one.heading(), one.x() + dx, one.y() + dy, one.width(), one.height()))
                .toList();
        return new LaidOut(width, height, placed, lines, outlines);
    }
}
