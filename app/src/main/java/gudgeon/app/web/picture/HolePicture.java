package gudgeon.app.web.picture;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * The fasteners of a joint as they lie on their face, each with its number and a sign for its state. State is shape as well as
 * fill: an open circle, a ring, a filled circle with a cross.
 *
 * @param height in the units of {@link #WIDTH}
 * @param holes empty when the file does not say where every fastener sits, or there is only one
 */
public record HolePicture(double height, List<Hole> holes) {
    /** Width of the picture. */
    public static final int WIDTH = 328;

    /** No picture. */
    public static final HolePicture NONE = new HolePicture(0, List.of());

    private static final double RADIUS = 17;
    private static final double MOST_HEIGHT = 190;

    public HolePicture {
        holes = List.copyOf(holes);
    }

    /** How a hole is drawn. */
    public enum State {
        /** Nothing is said of it. */
        PLAIN,
        /** The one to turn now. */
        NOW,
        /** Done: crossed and filled. */
        DONE,
        /** Spent: must be renewed. */
        SPENT
    }

    /** What stands in a hole. */
    public record Sign(String number, State state) {
        /** The number of a fastener in its joint, nothing more said. */
        public static Sign plain(Fastener fastener, int number) {
            return new Sign(String.valueOf(number), State.PLAIN);
        }
    }

    /** One fastener, drawn. */
    public record Hole(double x, double y, String number, State state) {
        public String style() {
            return switch (state) {
                case PLAIN -> "hole";
                case NOW -> "hole now";
                case DONE -> "hole done";
                case SPENT -> "hole spent";
            };
        }

        public boolean crossed() {
            return state == State.DONE || state == State.SPENT;
        }

        /** The cross of a hole that is done. */
        public String cross() {
            double arm = RADIUS * 0.7;
            return "M" + plain(x - arm) + " " + plain(y - arm) + "L" + plain(x + arm) + " " + plain(y + arm) + "M"
                    + plain(x + arm) + " " + plain(y - arm) + "L" + plain(x - arm) + " " + plain(y + arm);
        }

        public String left() {
            return plain(x);
        }

        public String top() {
            return plain(y);
        }
    }

    public boolean empty() {
        return holes.isEmpty();
    }

    /** As it stands in the picture's view box. */
    public String viewBox() {
        return "0 0 " + WIDTH + " " + plain(height);
    }

    /**
     * The fasteners of a joint.
     *
     * @param sign what stands in the hole of a fastener; the number is its place in the file, from 1
     */
    public static HolePicture of(Joint joint, BiFunction<Fastener, Integer, Sign> sign) {
        List<Fastener> all = joint.makeup().fasteners();
        List<Double> xs = all.stream()
                .map(one -> one.place().x_mm())
                .flatMap(HolePicture::known)
                .toList();
        List<Double> ys = all.stream()
                .map(one -> one.place().y_mm())
                .flatMap(HolePicture::known)
                .toList();
        if (all.size() < 2 || xs.size() < all.size() || ys.size() < all.size()) {
            return NONE;
        }
        double left = least(xs);
        double low = least(ys);
        double width = most(xs) - left;
        double high = most(ys) - low;
        double edge = 2 * RADIUS;
        double scale = Math.min((WIDTH - 2 * edge) / Math.max(width, 1), (MOST_HEIGHT - 2 * edge) / Math.max(high, 1));
        double margin = (WIDTH - width * scale) / 2;
        List<Hole> holes = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Sign one = sign.apply(all.get(i), i + 1);
            double x = margin + (xs.get(i) - left) * scale;
            double y = edge + (low + high - ys.get(i)) * scale;
            holes.add(new Hole(x, y, one.number(), one.state()));
        }
        return new HolePicture(high * scale + 2 * edge, holes);
    }

    private static Stream<Double> known(OptionalDouble value) {
        return value.stream().boxed();
    }

    private static double least(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    private static double most(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
