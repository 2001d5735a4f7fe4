package gudgeon.app.desk;

import gudgeon.app.document.EngineDrawing;
import gudgeon.app.document.Issue;
import gudgeon.app.document.OrderCsv;
import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.OrderList;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Everything there is about one strip: the head of the shipped turbo-diesel, off with a helper. */
public final class DemoQuestion {
    /** The shipped engine of the demo. */
    public static final String ENGINE = "dunlin-22d";

    /** The part to reach. */
    public static final String PART = "head";

    private static final int SECONDS = 60;

    private DemoQuestion() {}

    /** The strip of the demo. */
    public static StripQuestion strip(Engine engine) {
        return new StripQuestion(
                engine,
                StripQuestion.Goal.reach(PART),
                StripQuestion.Found.NOTHING,
                new StripQuestion.Means(List.of("helper"), 0, SECONDS));
    }

    /**
     * Writes card, sheet, list and drawing into a folder.
     *
     * @return what was written, in this order
     * @throws java.io.UncheckedIOException naming the file that cannot be written
     */
    public static List<Path> papers(StripQuestion.Reply.Planned strip, Path folder, Issue issue) {
        PaperQuestion paper = new PaperQuestion(issue);
        OrderList list = new OrderQuestion(strip).ask();
        Path card = folder.resolve("strip-card.pdf");
        Saving.bytes(card, paper.stripCard(strip));
        Path sheet = folder.resolve("build-sheet.pdf");
        switch (new BuildQuestion(strip, List.of(), List.of()).ask()) {
            case BuildQuestion.Reply.Planned build -> Saving.bytes(sheet, paper.buildSheet(build));
            case BuildQuestion.Reply.Unknown unknown ->
                throw new IllegalStateException("nothing was named, yet unknown: " + unknown.names());
        }
        Path order = folder.resolve("order-list.pdf");
        Saving.bytes(order, paper.orderSheet(strip, list));
        Path csv = folder.resolve("order-list.csv");
        Saving.text(csv, OrderCsv.of(strip.engine(), list));
        Path drawing = folder.resolve("engine.svg");
        DrawQuestion draw = new DrawQuestion(EngineDrawing.Options.WIDE, issue);
        Saving.text(drawing, draw.ask(strip));
        List<Path> written = new ArrayList<>(List.of(card, sheet, order, csv, drawing));
        List<String> sheets = draw.sheets(strip);
        for (int i = 0; i < sheets.size(); i++) {
            Path printed = folder.resolve("engine-a3-" + (i + 1) + "-of-" + sheets.size() + ".svg");
            Saving.text(printed, sheets.get(i));
            written.add(printed);
        }
        return List.copyOf(written);
    }
}
