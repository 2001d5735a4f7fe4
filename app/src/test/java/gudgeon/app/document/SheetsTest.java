package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlanner;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripPlan;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class SheetsTest {
    private static final Issue ISSUE = new Issue("", "3 November 2026");
    private static final Cautions CAUTIONS = Cautions.catalogue();

    private static final Shipped WREN = Shipped.plan("wren-160", "barrel");

    @Test
    void stripCardHasEveryStepInOrder() throws IOException {
        String text = text(strip());

        StepWords words = new StepWords(WREN.engine());
        int at = 0;
        for (StripPlan.Operation operation : WREN.plan().operations()) {
            int found = text.indexOf(squeezed(words.instruction(operation)), at);
            assertThat(found)
                    .as("step " + operation.number() + " after the one before")
                    .isGreaterThanOrEqualTo(at);
            at = found + 1;
        }
        assertThat(text).doesNotContain("#").doesNotContain("\uFFFD");
    }

    @Test
    void everyCautionStandsBeforeTheActionOfItsStep() throws IOException {
        String text = text(strip());
        StepWords words = new StepWords(WREN.engine());
        int stepBefore = 0;
        int checked = 0;
        Map<String, Integer> fullAt = new HashMap<>();
        for (StripPlan.Operation operation : WREN.plan().operations()) {
            int action = text.indexOf(squeezed(words.instruction(operation)), stepBefore);
            String between = text.substring(stepBefore, action);
            for (Caution caution : CAUTIONS.ranked(operation.cautions())) {
                assertThat(between.split(java.util.regex.Pattern.quote(squeezed(caution.title())), -1))
                        .as("step " + operation.number() + " names it once: " + caution.id())
                        .hasSize(2);
                boolean full = between.contains(squeezed(caution.text()));
                if (caution.level() == Caution.Level.DANGER && !full) {
                    assertThat(fullAt)
                            .as("step " + operation.number() + " is near the text of " + caution.id())
                            .hasEntrySatisfying(caution.id(), step -> assertThat(operation.number() - step)
                                    .isBetween(1, ToldCautions.REMEMBERED_DANGER_STEPS));
                }
                if (full) {
                    fullAt.put(caution.id(), operation.number());
                }
                checked++;
            }
            stepBefore = action;
        }
        assertThat(checked).isGreaterThan(5);
    }

    @Test
    void dangerIsAWordAndNotOnlyAColour() throws IOException {
        long dangers = WREN.plan().operations().stream()
                .flatMap(operation -> CAUTIONS.ranked(operation.cautions()).stream())
                .filter(caution -> caution.level() == Caution.Level.DANGER)
                .count();
        assertThat(dangers).isPositive();
        assertThat(text(strip())).contains("Danger.");
    }

    @Test
    void everyPageHasItsTitleBlock() throws IOException {
        try (PDDocument document = Loader.loadPDF(strip())) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isBetween(2, 6);
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = squeezed(stripper.getText(document));
                assertThat(text).contains(page + " of " + pages, "Strip card", "3 November 2026");
                assertThat(text).contains(WREN.engine().identity().sha256().substring(0, 8));
            }
        }
    }

    @Test
    void theSameArgumentsGiveTheSameBytes() {
        assertThat(strip()).isEqualTo(strip());
    }

    @Test
    void orderSheetNamesEveryLineWithItsCount() throws IOException {
        OrderList list = OrderList.of(WREN.engine(), WREN.plan());
        String text = text(OrderSheet.pdf(WREN.engine(), list, TargetWords.of(WREN.engine(), WREN.target()), ISSUE));

        assertThat(list.lines()).isNotEmpty();
        for (OrderLine line : list.lines()) {
            assertThat(text).contains(squeezed(OrderWords.amount(line.amount()) + " " + Names.capital(line.spec())));
        }
        assertThat(text).contains(Figures.money(list.totals().knownPrice())).doesNotContain("#");
    }

    @Test
    void buildSheetHasEveryStepAndEveryTorqueLarge() throws IOException {
        BuildPlan build = BuildPlanner.plan(
                WREN.engine(),
                WREN.plan(),
                BuildRequest.after(WREN.plan(), WREN.engine().workplace().waysOfLifting()));
        String text = text(BuildSheet.pdf(WREN.engine(), WREN.plan(), build, "Strip: barrel off", CAUTIONS, ISSUE));

        BuildWords words = new BuildWords(WREN.engine());
        int at = 0;
        int stages = 0;
        for (BuildPlan.Operation operation : build.operations()) {
            int found = text.indexOf(squeezed(words.instruction(operation)), at);
            assertThat(found).as("step " + operation.number()).isGreaterThanOrEqualTo(at);
            at = found + 1;
            if (!words.number(operation).isEmpty()) {
                assertThat(text.indexOf(words.number(operation), at)).isPositive();
                stages++;
            }
        }
        assertThat(stages).isGreaterThan(3);
        assertThat(text).doesNotContain("#");
    }

    @Test
    void blockedBuildStepsSayWhy() throws IOException {
        BuildRequest request = BuildRequest.after(
                        WREN.plan(), WREN.engine().workplace().waysOfLifting())
                .withMissing(java.util.List.of("head gasket"));
        BuildPlan build = BuildPlanner.plan(WREN.engine(), WREN.plan(), request);
        assertThat(build.blocked()).isNotEmpty();

        String text = text(BuildSheet.pdf(WREN.engine(), WREN.plan(), build, "Strip: barrel off", CAUTIONS, ISSUE));

        assertThat(text).contains("Blocked. Not in hand: head gasket").contains("Settle before you start");
    }

    private static byte[] strip() {
        return StripCard.pdf(WREN.engine(), WREN.plan(), WREN.target(), CAUTIONS, ISSUE);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return squeezed(new PDFTextStripper().getText(document));
        }
    }

    /** One space between words, however the lines fell. */
    private static String squeezed(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
