package gudgeon.app.web.measuring;

import gudgeon.core.measuring.FacePlane;
import gudgeon.core.measuring.FacePoint;
import gudgeon.core.measuring.FaceSurvey;
import java.util.ArrayList;
import java.util.List;

/**
 * A face seen from above: each point with its height over the lower of the two planes, in micrometres; those that hold the planes
 * are marked.
 *
 * @param height of the drawing
 * @param points in the order of the readings
 */
public record FaceMapView(double height, List<Point> points) {
    /** Width of the drawing. */
    public static final int WIDTH = 328;

    private static final double EDGE = 26;
    private static final double MOST_HEIGHT = 420;

    public FaceMapView {
        points = List.copyOf(points);
    }

    /**
     * A point, drawn.
     *
     * @param text height over the lower plane, in µm
     * @param style high, low, or neither
     * @param size radius, larger where higher
     */
    public record Point(String x, String y, String text, String style, String size) {}

    static FaceMapView of(FaceSurvey survey) {
        double left =
                survey.points().stream().mapToDouble(FacePoint::x_mm).min().orElse(0);
        double right =
                survey.points().stream().mapToDouble(FacePoint::x_mm).max().orElse(0);
        double low = survey.points().stream().mapToDouble(FacePoint::y_mm).min().orElse(0);
        double high =
                survey.points().stream().mapToDouble(FacePoint::y_mm).max().orElse(0);
        double scale = Math.min(
                (WIDTH - 2 * EDGE) / Math.max(1e-9, right - left),
                (MOST_HEIGHT - 2 * EDGE) / Math.max(1e-9, high - low));
        double margin = (WIDTH - (right - left) * scale) / 2;
        List<Integer> highs =
                survey.zone().highs().stream().map(FacePlane.Contact::point).toList();
        List<Integer> lows =
                survey.zone().lows().stream().map(FacePlane.Contact::point).toList();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < survey.points().size(); i++) {
            FacePoint point = survey.points().get(i);
            double over = survey.overLowest_mm(i);
            double share = survey.width_mm() > 0 ? over / survey.width_mm() : 0;
            points.add(new Point(
                    plain(margin + (point.x_mm() - left) * scale),
                    plain(EDGE + (high - point.y_mm()) * scale),
                    String.valueOf(Math.round(1000 * over)),
                    highs.contains(i) ? "high" : lows.contains(i) ? "low" : "between",
                    plain(4 + 9 * share)));
        }
        return new FaceMapView((high - low) * scale + 2 * EDGE, points);
    }

    public String viewBox() {
        return "0 0 " + WIDTH + " " + plain(height);
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
