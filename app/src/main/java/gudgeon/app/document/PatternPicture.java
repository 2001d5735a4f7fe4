package gudgeon.app.document;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pattern of a joint's fasteners as they lie on their face, each with its place in the order of tightening. */
final class PatternPicture {
    private static final double HOLE_MM = 7.2;
    private static final double MOST_WIDTH_MM = 110;
    private static final double MOST_HEIGHT_MM = 46;

    private PatternPicture() {}

    /** A fastener of the picture: place in millimetres on paper, number in the order. */
    private record Hole(double x, double y, int number) {}

    /**
     * The picture; empty when a position is missing, or there is only one fastener.
     *
     * @param order fastener ids in the order in which they are turned
     */
    static Optional<Xhtml> of(Joint joint, List<String> order) {
        List<Fastener> fasteners = joint.makeup().fasteners();
        if (!places(joint)) {
            return Optional.empty();
        }
        double left = fasteners.stream().mapToDouble(PatternPicture::x).min().orElse(0);
        double right = fasteners.stream().mapToDouble(PatternPicture::x).max().orElse(0);
        double low = fasteners.stream().mapToDouble(PatternPicture::y).min().orElse(0);
        double high = fasteners.stream().mapToDouble(PatternPicture::y).max().orElse(0);
        double scale = Math.min(
                (MOST_WIDTH_MM - 2 * HOLE_MM) / Math.max(right - left, 1),
                (MOST_HEIGHT_MM - 2 * HOLE_MM) / Math.max(high - low, 1));
        List<Hole> holes = new ArrayList<>();
        for (Fastener fastener : fasteners) {
            int number = order.indexOf(fastener.id()) + 1;
            holes.add(new Hole((x(fastener) - left) * scale, (high - y(fastener)) * scale, number));
        }
        return Optional.of(drawn(holes, (right - left) * scale, (high - low) * scale));
    }

    /** Whether the joint has two fasteners or more and the place of each is known. */
    static boolean places(Joint joint) {
        List<Fastener> fasteners = joint.makeup().fasteners();
        return fasteners.size() > 1
                && fasteners.stream()
                        .allMatch(fastener -> fastener.place().x_mm().isPresent()
                                && fastener.place().y_mm().isPresent());
    }

    private static Xhtml drawn(List<Hole> holes, double width, double height) {
        Xhtml out = new Xhtml();
        double margin = HOLE_MM * 0.9;
        out.openStyled("div", "pattern", "width:" + mm(width + 2 * margin) + ";height:" + mm(height + 2 * margin));
        for (Hole hole : holes) {
            out.openStyled(
                    "div",
                    "hole",
                    "left:" + mm(hole.x() + margin - HOLE_MM / 2) + ";top:" + mm(hole.y() + margin - HOLE_MM / 2));
            out.text(hole.number() > 0 ? String.valueOf(hole.number()) : "–").close();
        }
        return out.close();
    }

    private static double x(Fastener fastener) {
        return fastener.place().x_mm().orElse(0);
    }

    private static double y(Fastener fastener) {
        return fastener.place().y_mm().orElse(0);
    }

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.1fmm", value);
    }
}
