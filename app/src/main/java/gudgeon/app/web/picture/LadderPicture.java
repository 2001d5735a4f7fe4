package gudgeon.app.web.picture;

import gudgeon.core.fitting.Aim;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Values before and after a fit, each on a rung of its own: what is allowed as a hatched band, the best as a line, before as an open
 * circle, after as a filled one. All rungs have one scale, measured from the best.
 *
 * @param rungs from top to bottom; none when there is nothing to draw
 */
public record LadderPicture(List<Rung> rungs) {
    /** Width of the picture. */
    public static final int WIDTH = 328;

    /** Height of a rung. */
    public static final int RUNG = 44;

    /** No picture. */
    public static final LadderPicture NONE = new LadderPicture(List.of());

    private static final double MARGIN = 14;
    /** Outside the limits by more than this many times their width, a value is drawn at the edge. */
    private static final double FARTHEST = 3;

    public LadderPicture {
        rungs = List.copyOf(rungs);
    }

    /** What stands on a rung. @param before_mm as it comes @param after_mm as it becomes */
    public record Value(String name, double before_mm, double after_mm, Aim aim) {}

    /** A rung, drawn: places across. */
    public record Rung(
            String name, String words, double y, double from, double to, double best, double before, double after) {
        public String top() {
            return plain(y);
        }

        /** The line on which the circles sit. */
        public String line() {
            return plain(y + 30);
        }

        public String bandTop() {
            return plain(y + 22);
        }

        public String left() {
            return plain(from);
        }

        public String width() {
            return plain(to - from);
        }

        public String middle() {
            return plain(best);
        }

        public String was() {
            return plain(before);
        }

        public String is() {
            return plain(after);
        }

        /** The baseline of its words. */
        public String textY() {
            return plain(y + 15);
        }

        /** The foot of the line of the best. */
        public String foot() {
            return plain(y + 38);
        }
    }

    public boolean empty() {
        return rungs.isEmpty();
    }

    public String viewBox() {
        return "0 0 " + WIDTH + " " + (rungs.size() * RUNG + 4);
    }

    /** Draws values. */
    public static LadderPicture of(List<Value> values) {
        double most = 0;
        for (Value value : values) {
            Aim aim = value.aim();
            double side = Math.max(aim.most_mm() - aim.wanted_mm(), aim.wanted_mm() - aim.least_mm());
            double farthest = Math.max(off(value.before_mm(), aim), off(value.after_mm(), aim));
            most = Math.max(most, Math.max(side * 1.2, Math.min(farthest, side * FARTHEST)));
        }
        List<Rung> rungs = new ArrayList<>();
        for (Value value : values) {
            Aim aim = value.aim();
            rungs.add(new Rung(
                    value.name(),
                    String.format(Locale.ROOT, "%.3f → %.3f mm", value.before_mm(), value.after_mm()),
                    rungs.size() * (double) RUNG,
                    at(aim.least_mm() - aim.wanted_mm(), most),
                    at(aim.most_mm() - aim.wanted_mm(), most),
                    at(0, most),
                    at(value.before_mm() - aim.wanted_mm(), most),
                    at(value.after_mm() - aim.wanted_mm(), most)));
        }
        return new LadderPicture(rungs);
    }

    private static double off(double value_mm, Aim aim) {
        return Math.abs(value_mm - aim.wanted_mm());
    }

    private static double at(double off_mm, double most_mm) {
        double share = most_mm > 0 ? Math.clamp(off_mm / most_mm, -1, 1) : 0;
        return WIDTH / 2.0 + share * (WIDTH / 2.0 - MARGIN);
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }
}
