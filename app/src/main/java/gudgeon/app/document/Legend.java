package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/** The signs that a drawing uses, with their words. */
final class Legend {
    private static final double SWATCH = 36;
    private static final double GAP = 20;

    private final List<Entry> entries;

    private Legend(List<Entry> entries) {
        this.entries = entries;
    }

    private record Entry(Sign sign, String words) {
        double width() {
            return SWATCH + 8 + Typeface.SHEET_500.width(words, 14) + GAP;
        }
    }

    private interface Sign {
        void draw(SvgText out, double x, double y);
    }

    /** Only signs that this drawing has. */
    static Legend of(LaidOut laidOut, PlanMarks marks) {
        List<Entry> entries = new ArrayList<>();
        boolean plan = !marks.hasNone();
        add(entries, any(laidOut, DrawnEngine.State.TARGET), "the goal", box("goal"));
        add(entries, any(laidOut, DrawnEngine.State.OFF), "comes off", Legend::off);
        add(entries, any(laidOut, DrawnEngine.State.ASIDE), "set aside, still hanging", Legend::aside);
        add(entries, true, plan ? "stays in place" : "part", box("part"));
        add(entries, any(laidOut, DrawnEngine.State.GROUPED), "several parts that stay", Legend::grouped);
        add(entries, laidOut.boxes().stream().anyMatch(placed -> pipe(placed.box())), "hose, pipe, loom", Legend::pipe);
        add(entries, true, "stays put", Legend::base);
        add(entries, laidOut.routes().stream().anyMatch(route -> solid(route.line())), "joint", line("joint"));
        add(
                entries,
                laidOut.routes().stream()
                        .anyMatch(route ->
                                route.line().flexible() && !route.line().undone()),
                "flexible joint",
                line("flexible"));
        add(
                entries,
                laidOut.routes().stream().anyMatch(route -> route.line().undone()),
                "joint undone",
                line("undone"));
        add(
                entries,
                laidOut.boxes().stream().anyMatch(placed -> placed.box().shape() == DrawnEngine.Shape.KNOT),
                "joint of three parts or more",
                Legend::knot);
        add(
                entries,
                !laidOut.frames().isEmpty(),
                "joined to a part of another panel",
                (out, x, y) -> out.text("reference", x, y + 14, "to ..."));
        add(
                entries,
                plan,
                "step that undoes a joint",
                (out, x, y) -> DrawingStrokes.number(out, "tag", "number", "12", x + SWATCH / 2, y + 2.5));
        add(
                entries,
                plan,
                "step that lifts a part",
                (out, x, y) -> DrawingStrokes.number(out, "lift", "lift-number", "13", x + SWATCH / 2, y + 2.5));
        return new Legend(entries);
    }

    private static void add(List<Entry> entries, boolean used, String words, Sign sign) {
        if (used) {
            entries.add(new Entry(sign, words));
        }
    }

    private static boolean any(LaidOut laidOut, DrawnEngine.State state) {
        return laidOut.boxes().stream()
                .map(LaidOut.Placed::box)
                .anyMatch(box -> box.state() == state && box.shape() != DrawnEngine.Shape.KNOT
                        || box.entries().stream().anyMatch(entry -> entry.state() == state));
    }

    private static boolean pipe(DrawnEngine.Box box) {
        return box.shape() == DrawnEngine.Shape.PIPE
                || box.entries().stream().anyMatch(entry -> entry.shape() == DrawnEngine.Shape.PIPE);
    }

    private static boolean solid(DrawnEngine.Line line) {
        return !line.undone() && !line.flexible();
    }

    double height(double width, double rowHeight) {
        double x = 0;
        int rows = 1;
        for (Entry entry : entries) {
            if (x > 0 && x + entry.width() > width) {
                x = 0;
                rows++;
            }
            x += entry.width();
        }
        return rows * rowHeight;
    }

    void draw(SvgText out, double left, double top, double width, double rowHeight) {
        double x = 0;
        double y = top;
        for (Entry entry : entries) {
            if (x > 0 && x + entry.width() > width) {
                x = 0;
                y += rowHeight;
            }
            entry.sign().draw(out, left + x, y + 3);
            out.text("legend", left + x + SWATCH + 8, y + 17.5, entry.words());
            x += entry.width();
        }
    }

    private static Sign box(String style) {
        return (out, x, y) -> out.rect(style, x + 1, y + 1, SWATCH - 2, 18);
    }

    private static Sign line(String style) {
        return (out, x, y) -> out.path(style, "M" + SvgText.n(x) + " " + SvgText.n(y + 10) + "h" + SvgText.n(SWATCH));
    }

    private static void off(SvgText out, double x, double y) {
        out.rect("hatched", x + 1, y + 1, SWATCH - 2, 18);
        out.rect("off", x + 1, y + 1, SWATCH - 2, 18);
    }

    private static void aside(SvgText out, double x, double y) {
        out.rect("aside", x + 1, y + 1, SWATCH - 2, 18);
        out.path("hook", "M" + SvgText.n(x + 22) + " " + SvgText.n(y + 5) + "v6a4 4 0 1 1 -8 0");
    }

    private static void grouped(SvgText out, double x, double y) {
        out.rect("group", x + 1, y + 1, SWATCH - 2, 18);
        out.rect("group", x + 4, y + 4, SWATCH - 8, 12);
    }

    private static void pipe(SvgText out, double x, double y) {
        out.path(
                "rules",
                "M" + SvgText.n(x) + " " + SvgText.n(y + 3) + "h" + SvgText.n(SWATCH) + "M" + SvgText.n(x) + " "
                        + SvgText.n(y + 17) + "h" + SvgText.n(SWATCH));
    }

    private static void base(SvgText out, double x, double y) {
        out.rect("base", x + 1, y, SWATCH - 2, 11);
        BoxStrokes.ground(out, x + 1, y + 11, SWATCH - 2);
    }

    private static void knot(SvgText out, double x, double y) {
        out.rect("knot", x + 3, y + 7.5, SWATCH - 6, 5);
        out.path("joint", "M" + SvgText.n(x + SWATCH / 2) + " " + SvgText.n(y) + "v20");
    }
}
