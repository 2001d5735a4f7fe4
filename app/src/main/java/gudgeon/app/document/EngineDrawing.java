package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The engine as a layered drawing in SVG: parts as boxes, joints as lines, the base at the foot. With a plan on it, what
 * comes off is hatched, the goal washed blue, what is set aside has a hook, joints undone are broken lines, and every step
 * has its number where it is done. The same arguments give the same text.
 */
public final class EngineDrawing {
    private final Engine engine;
    private final PlanMarks marks;
    private final String subject;

    private EngineDrawing(Engine engine, PlanMarks marks, String subject) {
        this.engine = engine;
        this.marks = marks;
        this.subject = subject;
    }

    /** The engine as it stands. */
    public static EngineDrawing of(Engine engine) {
        return new EngineDrawing(engine, PlanMarks.none(), "Parts and joints");
    }

    /** The engine with a plan on it. */
    public static EngineDrawing of(Engine engine, StripPlan plan, StripRequest.Target target) {
        return new EngineDrawing(engine, PlanMarks.of(plan, target), TargetWords.of(engine, target));
    }

    /**
     * The drawing.
     *
     * @param issue what the title block says beside the engine and the subject
     */
    public String svg(Options options, Issue issue) {
        DrawingScene.Scene scene = new DrawingScene(engine, marks, options.everything()).scene();
        LaidOut laidOut = SheetPlacing.place(scene, options.width() - DrawingSheet.margins(options.width()));
        return new DrawingSheet(engine, marks, laidOut, options, subject, issue).svg();
    }

    /**
     * The drawing for printing, on as many sheets of A3 across as it needs for its smallest text to be 9 points high. The width
     * of the options does not matter.
     */
    public List<String> sheets(Options options, Issue issue) {
        DrawingScene.Scene scene = new DrawingScene(engine, marks, options.everything()).scene();
        Options paper = options.withWidth((int) PaperSheet.width());
        double most = PaperSheet.width() - DrawingSheet.margins(paper.width());
        double high = DrawingSheet.roomOnPaper(
                engine, marks, SheetPlacing.place(scene, most).centred(most), paper, subject, issue);
        List<LaidOut> laidOut = SheetPlacing.place(scene, most, high);
        List<String> sheets = new ArrayList<>();
        for (LaidOut one : laidOut) {
            PaperSheet sheet = new PaperSheet(sheets.size() + 1, laidOut.size());
            sheets.add(new DrawingSheet(engine, marks, one.centred(most), paper, subject, issue).svg(sheet));
        }
        return sheets;
    }

    /**
     * The drawing for a page: without border and title block, without a style of its own (the page links {@link #pageStyle()}),
     * every part a link.
     *
     * @param width the width it should keep to, see {@link Options}
     * @param links where a part leads, by its id; empty for a part that leads nowhere
     */
    public String figure(int width, Function<String, Optional<String>> links) {
        LaidOut laidOut = SheetPlacing.place(new DrawingScene(engine, marks, false).scene(), width - 8);
        return new DrawingFigure(laidOut, Legend.of(laidOut, marks), links)
                .svg(engine.identity().name() + ": " + subject);
    }

    /** The rules that figures need, as a style sheet that takes its colours from the page. */
    public static String pageStyle() {
        return DrawingStyle.figureCss();
    }

    /**
     * How it is drawn.
     *
     * @param theme colours
     * @param everything all parts one by one; otherwise what a plan does not concern is drawn as groups
     * @param width the width that the sheet should keep to, in user units (text is at least 12 units high): 1400 for a wide
     *     sheet, 360 to 400 for a narrow screen; a drawing that cannot be arranged so narrow is wider
     * @param fontsInside whether the faces travel inside the file
     */
    public record Options(Theme theme, boolean everything, int width, boolean fontsInside) {
        /** A wide sheet that travels alone. */
        public static final Options WIDE = new Options(Theme.PAPER, false, 1400, true);

        public Options {
            if (width < 320) {
                throw new IllegalArgumentException("a drawing is at least 320 wide, not " + width);
            }
        }

        public Options with(Theme other) {
            return new Options(other, everything, width, fontsInside);
        }

        public Options withEverything() {
            return new Options(theme, true, width, fontsInside);
        }

        public Options withWidth(int other) {
            return new Options(theme, everything, other, fontsInside);
        }
    }
}
