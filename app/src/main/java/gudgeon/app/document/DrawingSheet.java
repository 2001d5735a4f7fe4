package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import java.util.List;

/** Puts a laid-out drawing on its sheet: border with zone marks, legend, title block at the foot. Used once. */
final class DrawingSheet {
    private static final double TITLE_WIDTH = 520;
    private static final double LEGEND_ROW = 30;
    private static final double GAP = 34;

    private final Engine engine;
    private final PlanMarks marks;
    private final LaidOut laidOut;
    private final EngineDrawing.Options options;
    private final String subject;
    private final Issue issue;
    private final boolean wide;
    private final double width;
    private final double inset;

    DrawingSheet(
            Engine engine,
            PlanMarks marks,
            LaidOut laidOut,
            EngineDrawing.Options options,
            String subject,
            Issue issue) {
        this.engine = engine;
        this.marks = marks;
        this.laidOut = laidOut;
        this.options = options;
        this.subject = subject;
        this.issue = issue;
        this.wide = isWide(options.width());
        double least = wide ? Math.min(options.width(), 1000) : options.width();
        this.width = Math.max(least, laidOut.width() + margins(options.width()));
        this.inset = wide ? 24 : 3;
    }

    private static boolean isWide(int width) {
        return width >= 800;
    }

    /** Width that border and edges take of a sheet. */
    static double margins(int width) {
        return isWide(width) ? 80 : 22;
    }

    /** As a sheet that is as high as it needs to be. */
    String svg() {
        Foot foot = foot("1 of 1");
        double height = top() + laidOut.height() + GAP + foot.height() + inset;
        SvgText out = new SvgText();
        open(out, "0 0 " + SvgText.n(width) + " " + SvgText.n(height), SvgText.n(width), SvgText.n(height));
        out.rect("ground", 0, 0, width, height);
        return drawn(out, foot, height);
    }

    /** As a sheet of paper. */
    String svg(PaperSheet paper) {
        Foot foot = foot(paper.number() + " of " + paper.count());
        double margin = PaperSheet.margin();
        double height = Math.max(PaperSheet.height(), top() + laidOut.height() + GAP + foot.height() + inset);
        SvgText out = new SvgText();
        String box = SvgText.n(-margin) + " " + SvgText.n(-margin) + " " + SvgText.n(width + 2 * margin) + " "
                + SvgText.n(height + 2 * margin);
        open(out, box, SvgText.n(PaperSheet.WIDTH_MM) + "mm", SvgText.n(PaperSheet.HEIGHT_MM) + "mm");
        out.rect("ground", -margin, -margin, width + 2 * margin, height + 2 * margin);
        return drawn(out, foot, height);
    }

    /** Height that is left for the drawing on a sheet of paper, when it has all the signs of {@code whole}. */
    static double roomOnPaper(
            Engine engine, PlanMarks marks, LaidOut whole, EngineDrawing.Options options, String subject, Issue issue) {
        DrawingSheet sheet = new DrawingSheet(engine, marks, whole, options, subject, issue);
        return PaperSheet.height() - sheet.top() - GAP - sheet.foot("10 of 10").height() - sheet.inset;
    }

    /** What stands below the drawing. */
    private record Foot(Legend legend, double legendWidth, TitleBlock title, double height) {}

    private Foot foot(String sheet) {
        Legend legend = Legend.of(laidOut, marks);
        double inner = width - 2 * inset;
        double legendWidth = wide ? inner - TITLE_WIDTH - 30 : inner - 16;
        double legendHeight = legend.height(legendWidth, LEGEND_ROW);
        TitleBlock title = new TitleBlock(cells(sheet), wide ? 3 : 2, wide ? TITLE_WIDTH : inner);
        double height = wide ? Math.max(legendHeight + 12, title.height()) : legendHeight + 12 + title.height();
        return new Foot(legend, legendWidth, title, height);
    }

    private double top() {
        return inset + (wide ? 18 : 10);
    }

    private String drawn(SvgText out, Foot foot, double height) {
        double top = top();
        double inner = width - 2 * inset;
        double footTop = height - inset - foot.height();
        frame(out, height);
        out.line(
                "<g transform=\"translate(" + SvgText.n((width - laidOut.width()) / 2) + " " + SvgText.n(top) + ")\">");
        new DrawingStrokes(laidOut).draw(out);
        out.line("</g>");
        out.path("thin", "M" + SvgText.n(inset) + " " + SvgText.n(footTop) + "H" + SvgText.n(width - inset));
        foot.legend().draw(out, inset + 12, footTop + 8, foot.legendWidth(), LEGEND_ROW);
        TitleBlock title = foot.title();
        title.draw(out, width - inset - (wide ? TITLE_WIDTH : inner), height - inset - title.height());
        out.line("</svg>");
        return out.toString();
    }

    private List<TitleBlock.Cell> cells(String sheet) {
        String file = engine.identity().sha256();
        return List.of(
                new TitleBlock.Cell(issue.job().isBlank() ? "Engine" : "Job", job()),
                new TitleBlock.Cell("Drawing", subject),
                new TitleBlock.Cell(
                        "Engine file",
                        engine.identity().id()
                                + (file.isEmpty() ? "" : " · " + file.substring(0, Math.min(8, file.length())))),
                new TitleBlock.Cell(
                        "Parts and joints",
                        engine.parts().size() + " and " + engine.joints().size()),
                new TitleBlock.Cell("Date", issue.date().isBlank() ? "–" : issue.date()),
                new TitleBlock.Cell("Sheet", sheet));
    }

    private String job() {
        return issue.job().isBlank() ? engine.identity().name() : issue.job();
    }

    private void open(SvgText out, String box, String wideAs, String highAs) {
        out.line("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"engine-drawing\" viewBox=\"" + box + "\" width=\""
                + wideAs + "\" height=\"" + highAs + "\" role=\"img\" aria-labelledby=\"drawing-title drawing-desc\">");
        out.line("<title id=\"drawing-title\">"
                + SvgText.escaped(engine.identity().name() + ": " + subject) + "</title>");
        out.line("<desc id=\"drawing-desc\">" + SvgText.escaped(description()) + "</desc>");
        out.line("<style>").add(DrawingStyle.css(options)).line("</style>");
        out.line("<defs><pattern id=\"hatch\" width=\"7\" height=\"7\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><path class=\"hatching\" d=\"M0 0V7\"/></pattern></defs>");
    }

    private String description() {
        String base = "Parts are boxes, joints are lines, in layers; the "
                + new Names(engine).part(engine.workplace().base()) + " at the foot stays put. ";
        if (marks.hasNone()) {
            return base + Figures.count(engine.parts().size(), "part") + ", "
                    + Figures.count(engine.joints().size(), "joint") + ".";
        }
        return base
                + sentence("The goal: ", DrawnEngine.State.TARGET)
                + sentence("Comes off: ", DrawnEngine.State.OFF)
                + sentence("Set aside: ", DrawnEngine.State.ASIDE);
    }

    private String sentence(String lead, DrawnEngine.State state) {
        List<String> names = engine.parts().stream()
                .filter(part -> marks.state(part.id()) == state)
                .map(part -> Names.inSentence(part.name()))
                .toList();
        return names.isEmpty() ? "" : lead + Figures.list(names) + ". ";
    }

    private void frame(SvgText out, double height) {
        if (!wide) {
            out.rect("border", inset, inset, width - 2 * inset, height - 2 * inset);
            return;
        }
        out.rect("edge", 6, 6, width - 12, height - 12);
        out.rect("border", inset, inset, width - 2 * inset, height - 2 * inset);
        int columns = Math.max(2, 2 * (int) Math.round(width / 400));
        for (int i = 0; i < columns; i++) {
            double x = inset + (i + 0.5) * (width - 2 * inset) / columns;
            zone(out, String.valueOf(i + 1), x, 15, x, height - 15);
            if (i > 0) {
                double at = inset + i * (width - 2 * inset) / columns;
                out.path(
                        "thin",
                        "M" + SvgText.n(at) + " 6V" + SvgText.n(inset) + "M" + SvgText.n(at) + " "
                                + SvgText.n(height - inset) + "V" + SvgText.n(height - 6));
            }
        }
        int rows = Math.max(2, 2 * (int) Math.round(height / 400));
        for (int i = 0; i < rows; i++) {
            double y = inset + (i + 0.5) * (height - 2 * inset) / rows;
            zone(out, letter(i), 15, y, width - 15, y);
            if (i > 0) {
                double at = inset + i * (height - 2 * inset) / rows;
                out.path(
                        "thin",
                        "M6 " + SvgText.n(at) + "H" + SvgText.n(inset) + "M" + SvgText.n(width - inset) + " "
                                + SvgText.n(at) + "H" + SvgText.n(width - 6));
            }
        }
    }

    private static void zone(SvgText out, String mark, double x1, double y1, double x2, double y2) {
        out.text("zone", x1, y1 + 4.5, mark);
        out.text("zone", x2, y2 + 4.5, mark);
    }

    /** A, B ... without I and O, as on drawings; after Z, AA. */
    private static String letter(int index) {
        String letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        String last = String.valueOf(letters.charAt(index % letters.length()));
        return index < letters.length() ? last : letters.charAt(index / letters.length() - 1) + last;
    }
}
