package gudgeon.app.document;

import java.util.List;

/**
 * A drawing with a place for everything; y grows downwards.
 *
 * @param width of all boxes and lines
 * @param height of all boxes and lines
 */
record LaidOut(double width, double height, List<Placed> boxes, List<Route> routes) {
    LaidOut {
        boxes = List.copyOf(boxes);
        routes = List.copyOf(routes);
    }

    record Placed(DrawnEngine.Box box, double x, double y, double width, double height) {}

    record Point(double x, double y) {}

    record Route(DrawnEngine.Line line, List<Point> points) {
        Route {
            points = List.copyOf(points);
        }
    }
}
