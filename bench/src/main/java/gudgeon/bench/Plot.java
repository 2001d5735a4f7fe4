package gudgeon.bench;

import java.util.List;
import java.util.Locale;

/**
 * A plot of points on two logarithmic axes as SVG.
 *
 * @param title what stands above
 * @param across what the horizontal axis is
 * @param up what the vertical axis is
 */
public record Plot(String title, String across, String up) {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 420;
    private static final int LEFT = 70;
    private static final int RIGHT = 20;
    private static final int TOP = 50;
    private static final int BOTTOM = 60;

    /** Points of one sort; both values above 0. */
    public record Series(String name, String colour, List<double[]> points) {
        public Series {
            points = List.copyOf(points);
        }
    }

    /** The drawing; decades are marked. */
    public String svg(List<Series> series) {
        double[] x = range(series, 0);
        double[] y = range(series, 1);
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
                        + " font-size=\"13\" fill=\"#222\">%n<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>%n",
                WIDTH,
                HEIGHT));
        text(out, LEFT, 22, "start", title);
        text(out, (LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 12, "middle", across);
        text(out, 12, TOP - 10, "start", up);
        for (double decade = x[0]; decade <= x[1]; decade++) {
            line(out, at(decade, x, LEFT, WIDTH - RIGHT), TOP, at(decade, x, LEFT, WIDTH - RIGHT), HEIGHT - BOTTOM);
            text(out, at(decade, x, LEFT, WIDTH - RIGHT), HEIGHT - BOTTOM + 18, "middle", label(decade));
        }
        for (double decade = y[0]; decade <= y[1]; decade++) {
            line(out, LEFT, at(decade, y, HEIGHT - BOTTOM, TOP), WIDTH - RIGHT, at(decade, y, HEIGHT - BOTTOM, TOP));
            text(out, LEFT - 6, at(decade, y, HEIGHT - BOTTOM, TOP) + 4, "end", label(decade));
        }
        double key = LEFT + 10;
        for (Series one : series) {
            for (double[] point : one.points()) {
                out.append(String.format(
                        Locale.ROOT,
                        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\" fill-opacity=\"0.7\"/>%n",
                        at(Math.log10(point[0]), x, LEFT, WIDTH - RIGHT),
                        at(Math.log10(point[1]), y, HEIGHT - BOTTOM, TOP),
                        one.colour()));
            }
            out.append(String.format(
                    Locale.ROOT, "<circle cx=\"%.1f\" cy=\"38\" r=\"4\" fill=\"%s\"/>%n", key, one.colour()));
            text(out, key + 8, 42, "start", one.name());
            key += 24 + 7.5 * one.name().length();
        }
        return out.append("</svg>\n").toString();
    }

    private static double[] range(List<Series> series, int axis) {
        double[] logs = series.stream()
                .flatMap(one -> one.points().stream())
                .mapToDouble(point -> Math.log10(point[axis]))
                .toArray();
        double least = java.util.Arrays.stream(logs).min().orElse(0);
        double most = java.util.Arrays.stream(logs).max().orElse(1);
        return new double[] {Math.floor(least), Math.max(Math.floor(least) + 1, Math.ceil(most))};
    }

    private static double at(double value, double[] range, double from, double to) {
        return from + (value - range[0]) / (range[1] - range[0]) * (to - from);
    }

    private static String label(double decade) {
        return decade < 0
                ? String.format(Locale.ROOT, "%." + (int) -decade + "f", Math.pow(10, decade))
                : String.format(Locale.ROOT, "%.0f", Math.pow(10, decade));
    }

    private static void text(StringBuilder out, double x, double y, String anchor, String words) {
        String safe = words.replace("&", "&amp;").replace("<", "&lt;");
        out.append(String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y, anchor, safe));
    }

    private static void line(StringBuilder out, double x1, double y1, double x2, double y2) {
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#ccc\"/>%n",
                x1,
                y1,
                x2,
                y2));
    }
}
