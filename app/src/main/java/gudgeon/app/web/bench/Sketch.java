package gudgeon.app.web.bench;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import java.util.ArrayList;
import java.util.List;

/**
 * The fasteners of a joint as they lie on their face, for a picture {@value #WIDTH} wide.
 *
 * @param height of the picture, in the same units
 * @param holes empty when the file does not say where every fastener sits, or there is only one
 */
public record Sketch(double height, List<Hole> holes) {
    /** Width of the picture. */
    public static final int WIDTH = 328;

    /** No picture. */
    public static final Sketch NONE = new Sketch(0, List.of());

    private static final double RADIUS = 16;
    private static final double MOST_HEIGHT = 150;

    public Sketch {
        holes = List.copyOf(holes);
    }

    /**
     * One fastener.
     *
     * @param number its place in the order; empty when any order will do
     */
    public record Hole(String x, String y, String number) {}

    public boolean empty() {
        return holes.isEmpty();
    }

    /** As it stands in the picture's view box. */
    public String viewBox() {
        return "0 0 " + WIDTH + " " + plain(height);
    }

    /** The fasteners of a joint, numbered in the order in which they are loosened. */
    public static Sketch of(Joint joint) {
        List<Fastener> fasteners = joint.makeup().fasteners();
        boolean known = fasteners.stream()
                .allMatch(one -> one.place().x_mm().isPresent() && one.place().y_mm().isPresent());
        if (fasteners.size() < 2 || !known) {
            return NONE;
        }
        double left = fasteners.stream().mapToDouble(Sketch::x).min().orElse(0);
        double right = fasteners.stream().mapToDouble(Sketch::x).max().orElse(0);
        double low = fasteners.stream().mapToDouble(Sketch::y).min().orElse(0);
        double high = fasteners.stream().mapToDouble(Sketch::y).max().orElse(0);
        double scale = Math.min(
                (WIDTH - 4 * RADIUS) / Math.max(right - left, 1), (MOST_HEIGHT - 4 * RADIUS) / Math.max(high - low, 1));
        double margin = (WIDTH - (right - left) * scale) / 2;
        List<Integer> order = joint.makeup().loosen().order();
        List<Hole> holes = new ArrayList<>();
        for (int i = 0; i < fasteners.size(); i++) {
            Fastener one = fasteners.get(i);
            int place = order.indexOf(i + 1);
            holes.add(new Hole(
                    plain(margin + (x(one) - left) * scale),
                    plain(2 * RADIUS + (high - y(one)) * scale),
                    place < 0 ? "" : String.valueOf(place + 1)));
        }
        return new Sketch((high - low) * scale + 4 * RADIUS, holes);
    }

    private static double x(Fastener fastener) {
        return fastener.place().x_mm().orElse(0);
    }

    private static double y(Fastener fastener) {
        return fastener.place().y_mm().orElse(0);
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
