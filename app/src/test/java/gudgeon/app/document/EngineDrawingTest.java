package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class EngineDrawingTest {
    private static final EngineDrawing.Options BARE = new EngineDrawing.Options(Theme.INHERIT, false, 1400, false);
    private static final Shipped WREN = Shipped.plan("wren-160", "barrel");

    @Test
    void everySignIsDrawnAsApproved() throws IOException {
        Shipped robin = Shipped.fixture("robin-50.yaml", "head");
        String svg = EngineDrawing.of(robin.engine(), robin.plan(), robin.target())
                .svg(BARE, new Issue("", "3 November 2026"));
        Path received = Path.of("target", "received", "robin-50-head.svg");
        Files.createDirectories(Path.of("target", "received"));
        Files.writeString(received, svg);

        assertThat(svg).as("compare with " + received).isEqualTo(approved());
    }

    @Test
    void everyStateIsAShapeBesideItsColour() throws Exception {
        String svg = EngineDrawing.of(WREN.engine(), WREN.plan(), WREN.target()).svg(BARE, Issue.NONE);

        Document document = parsed(svg);
        assertThat(document.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(document.getElementsByTagName("desc").item(0).getTextContent())
                .contains("The goal: barrel.")
                .contains("cylinder head");
        assertThat(svg)
                .contains("class=\"goal\"", "class=\"hatched\"", "class=\"undone\"", "comes off", "joint undone");
    }

    @Test
    void everyStepThatUndoesAJointHasItsNumberOnTheDrawing() {
        DrawingScene.Scene scene =
                new DrawingScene(WREN.engine(), PlanMarks.of(WREN.plan(), WREN.target()), false).scene();
        List<Integer> drawn = scene.ties().stream()
                .flatMap(tie -> tie.undoneIn().stream())
                .sorted()
                .toList();
        List<Integer> planned = WREN.plan().operations().stream()
                .filter(operation -> operation.kind() == gudgeon.core.planning.StripPlan.Kind.UNDO)
                .map(operation -> operation.number())
                .toList();
        assertThat(planned).isNotEmpty();
        assertThat(drawn).isEqualTo(planned);
    }

    @Test
    void aLargeEngineFitsTheSheetAndNamesEveryPart() throws Exception {
        Engine dunlin = Shipped.engine("dunlin-22d");
        assertThat(dunlin.parts().size()).isGreaterThan(100);

        String svg = EngineDrawing.of(dunlin).svg(BARE, Issue.NONE);

        Document document = parsed(svg);
        String[] viewBox = document.getDocumentElement().getAttribute("viewBox").split(" ");
        assertThat(Double.parseDouble(viewBox[2])).isLessThanOrEqualTo(1400);
        String words = document.getDocumentElement().getTextContent();
        for (Part part : dunlin.parts()) {
            String stem = part.name().replaceAll("\\d.*", "").strip();
            assertThat(words).as(part.id()).contains(stem);
        }
    }

    /** 9 pt is the least that is read at arm's length on a bench: common practice. */
    @Test
    void printedOnA3NothingIsSmallerThan9PointsAndNoPartIsMissing() throws Exception {
        Engine dunlin = Shipped.engine("dunlin-22d");

        List<String> sheets = EngineDrawing.of(dunlin).sheets(BARE, Issue.NONE);

        assertThat(sheets).hasSizeBetween(2, 8);
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < sheets.size(); i++) {
            Document document = parsed(sheets.get(i));
            assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("420mm");
            assertThat(document.getDocumentElement().getAttribute("height")).isEqualTo("297mm");
            String[] box = document.getDocumentElement().getAttribute("viewBox").split(" ");
            double across = 420 / Double.parseDouble(box[2]);
            double down = 297 / Double.parseDouble(box[3]);
            assertThat(down).isCloseTo(across, org.assertj.core.data.Offset.offset(0.001));
            double smallest = Pattern.compile("([0-9.]+)px")
                    .matcher(sheets.get(i))
                    .results()
                    .mapToDouble(size -> Double.parseDouble(size.group(1)))
                    .min()
                    .orElseThrow();
            assertThat(smallest * Math.min(across, down) / 25.4 * 72).isGreaterThanOrEqualTo(9);
            String text = document.getDocumentElement().getTextContent();
            assertThat(text).contains((i + 1) + " of " + sheets.size());
            words.append(text);
        }
        for (Part part : dunlin.parts()) {
            assertThat(words)
                    .as(part.id())
                    .contains(part.name().replaceAll("\\d.*", "").strip());
        }
    }

    @Test
    void aSmallEngineIsOneSheetOfPaper() throws Exception {
        Shipped robin = Shipped.fixture("robin-50.yaml", "head");
        List<String> sheets =
                EngineDrawing.of(robin.engine(), robin.plan(), robin.target()).sheets(BARE, Issue.NONE);
        assertThat(sheets).hasSize(1);
        assertThat(parsed(sheets.getFirst()).getDocumentElement().getTextContent())
                .contains("1 of 1");
    }

    @Test
    void copiesNamedByTwoNumbersAreNamedOneByOne() {
        Shipped pair = Shipped.plan("dunlin-22d", "injector-1", "injector-4");
        DrawingScene.Scene scene =
                new DrawingScene(pair.engine(), PlanMarks.of(pair.plan(), pair.target()), false).scene();
        assertThat(scene.boxes().stream()
                        .map(box -> box.label().title())
                        .filter(title -> title.startsWith("Injector clamp")))
                .isNotEmpty()
                .allSatisfy(title -> assertThat(title).doesNotContain("1 and 3 and 2"));
    }

    @Test
    void aLargeEngineFitsANarrowScreen() throws Exception {
        Engine dunlin = Shipped.engine("dunlin-22d");

        Document document = parsed(EngineDrawing.of(dunlin).svg(BARE.withWidth(380), Issue.NONE));

        String[] viewBox = document.getDocumentElement().getAttribute("viewBox").split(" ");
        assertThat(Double.parseDouble(viewBox[2])).isLessThanOrEqualTo(420);
    }

    @Test
    void noBoxCoversAnotherAndNoNameLeavesItsBox() {
        DrawingScene.Scene scene = new DrawingScene(Shipped.engine("dunlin-22d"), PlanMarks.none(), true).scene();
        LaidOut laidOut = SheetPlacing.place(scene, 1320);

        List<LaidOut.Placed> boxes = laidOut.boxes();
        for (int i = 0; i < boxes.size(); i++) {
            LaidOut.Placed a = boxes.get(i);
            double text = RowBreaker.widest(a.box().label().rows(), Typeface.SHEET_500, RowBreaker.PART_SIZE);
            assertThat(text).as(a.box().id()).isLessThan(a.width());
            for (LaidOut.Placed b : boxes.subList(i + 1, boxes.size())) {
                boolean apart = a.x() + a.width() <= b.x()
                        || b.x() + b.width() <= a.x()
                        || a.y() + a.height() <= b.y()
                        || b.y() + b.height() <= a.y();
                assertThat(apart).as(a.box().id() + " and " + b.box().id()).isTrue();
            }
        }
    }

    @Test
    void escapesWhatANameMayContain() throws Exception {
        assertThat(SvgText.escaped("A < B & \"C\"\u0007")).isEqualTo("A &lt; B &amp; &quot;C&quot;");
        assertThat(parsed("<x>" + SvgText.escaped("\u0001<&>") + "</x>")
                        .getDocumentElement()
                        .getTextContent())
                .isEqualTo("<&>");
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static String approved() throws IOException {
        try (InputStream stream =
                EngineDrawingTest.class.getResourceAsStream("/gudgeon/document/robin-50-head.approved.svg")) {
            return stream == null ? "" : new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
