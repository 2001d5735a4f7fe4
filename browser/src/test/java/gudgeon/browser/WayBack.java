package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import gudgeon.app.desk.ClosingUp;
import gudgeon.app.desk.Job;
import gudgeon.core.book.Build;
import gudgeon.core.book.Facts;
import java.util.List;
import java.util.Objects;

/**
 * The way back as a hand at a phone goes it, with a joint of torque and angle stages that is broken off in each. The rules of
 * interruption: common practice for bolts tightened by angle.
 */
final class WayBack {
    /** The joint with stages. */
    static final String STUDS = "head-studs";

    /** So many steps are tapped, one after the other; the later ones send the same form. */
    private static final int BY_HAND = 3;

    private final Bench bench;
    private final String job;
    private boolean remembered;

    WayBack(Bench bench, String job) {
        this.bench = bench;
        this.job = job;
    }

    /** Whether the photo from the strip was shown on the way. */
    boolean remembered() {
        return remembered;
    }

    /** The next steps of the way back, until a step is next or none is left. */
    void togetherUntil(Hand hand, String until) {
        hand.open(job + "/build/bench");
        for (int i = 0; i < 70 && hand.path().endsWith("/build/bench"); i++) {
            Page page = hand.page();
            if (page.getByText("The limit holds").count() > 0) {
                page.locator(".blocked input[name=where]").first().fill("manual, table 4");
                hand.button("The limit holds");
                continue;
            }
            if (hand.step().equals(until)) {
                return;
            }
            remembered |= page.locator(".was img[alt*='The nest']").count() > 0;
            if (page.locator("#litres").count() > 0) {
                page.locator("#litres").fill(hand.heading().contains("oil") ? "0.6" : "0.2");
            }
            if (page.locator("#note").count() > 0) {
                page.locator("#note").fill("looked at, good");
            }
            if (i < BY_HAND) {
                hand.done(i == 0);
            } else {
                hand.send("#done"); // the same form, without the page between
            }
        }
        assertThat(until).isEqualTo("nothing");
        assertThat(hand.text()).contains("Every step of the way back is done");
    }

    void brokenOffInATorqueStage(Hand hand) {
        assertThat(hand.text()).contains("Stage 2 of 3: 22 N·m, every nut, 1 to 4");
        hand.button("Only number 1 has it");
        hand.button("Only number 2 has it");
        assertThat(hand.text()).contains("Number 1 and 2 have it. Now number 3.");
        hand.link("Interrupted");
        hand.button("Write down that it was broken off");
        hand.open(job + "/tags");
        assertThat(hand.text()).containsIgnoringCase("half tightened");
        assertThat(stage(2).interrupted()).isTrue();
    }

    private Facts.Stage stage(int stage) {
        Facts.Tightened studs = Objects.requireNonNull(bench.book(job).facts().built().joints().get(STUDS));
        return Objects.requireNonNull(studs.stages().get(stage));
    }

    void stageStartsAgain(Hand hand) {
        hand.open(job).link("To the build bench");
        assertThat(hand.step()).isEqualTo(STUDS + "/2");
        assertThat(hand.text()).contains("The stage starts at number 1").contains("Back nothing off");
        for (int number = 1; number <= 3; number++) {
            hand.button("Only number " + number + " has it");
        }
        hand.done(true);
        assertThat(stage(2).interrupted()).isFalse();
    }

    void brokenOffInAnAngleStage(Hand hand) {
        assertThat(hand.step()).isEqualTo(STUDS + "/3");
        assertThat(hand.text())
                .contains("Stage 3 of 3: 90° further")
                .contains("Paint a mark")
                .doesNotContain("again");
        hand.button("Only number 1 has it");
        hand.link("Interrupted");
        hand.button("Write down that it was broken off");
        assertThat(hand.page().locator(".refused").innerText())
                .as("certain or not must be said")
                .isNotBlank();
        hand.page().getByLabel("2", new Page.GetByLabelOptions().setExact(true)).check();
        hand.page().getByLabel("Yes").check();
        hand.button("Write down that it was broken off");
        assertThat(stage(3).turned()).hasSize(2);
    }

    void noneIsTurnedTwice(Hand hand) {
        hand.open(job).link("To the build bench");
        assertThat(hand.step()).isEqualTo(STUDS + "/3");
        assertThat(hand.text())
                .contains("Turn only those without a mark: 3 and 4")
                .doesNotContain("again");
        hand.button("Only number 3 has it");
        hand.done(true);
        List<String> turned = FlowIT.bodies(bench.book(job), Build.AngleTurned.class).stream()
                .flatMap(angle -> angle.fasteners().stream())
                .toList();
        assertThat(turned).hasSize(4).doesNotHaveDuplicates();
    }

    void closed(Hand hand) {
        hand.link("Close up");
        ledger(hand, "Drained or filled, measured", "Drained", "0.55");
        assertThat(ClosingUp.of(bench.book(job)).missing()).isEmpty();
        assertThat(hand.text()).contains("Everything balances");
        assertThat(hand.page().locator("[role=region] tbody tr:not(.past)").count())
                .as("lines of fasteners that do not balance")
                .isZero();
        hand.type("A word for the book", "Tray empty").button("Close up: I sign for it");
        assertThat(hand.text()).contains("Closed up and signed for");
        Job book = bench.book(job);
        assertThat(ClosingUp.isClosed(book)).isTrue();
        assertThat(ClosingUp.of(book).fasteners())
                .allSatisfy(hole -> assertThat(hole.in())
                        .as(hole.joint())
                        .isEqualTo(hole.out())
                        .isEqualTo(hole.byFile()));
        assertThat(book.facts().stripped().away()).isEmpty();
        assertThat(book.state().history()).extracting(told -> told.entry().id()).doesNotHaveDuplicates();
        hand.open(job + "/tags");
        assertThat(hand.text()).contains("Nothing has to hang on the key now");
    }

    private static void ledger(Hand hand, String summary, String button, String litres) {
        hand.page().getByText(summary).tap();
        hand.page().locator("#circuit").selectOption("oil");
        hand.page().locator("#litres").fill(litres);
        hand.button(button);
    }
}
