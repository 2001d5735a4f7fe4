package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import gudgeon.app.desk.Job;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Fault;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Word;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A whole job at a phone, on the real server: begun, stripped with all that goes wrong, ordered, built with a joint of torque
 * and angle stages that is interrupted in each, closed. With scripts, and without. What is told is looked for in the book as well
 * as on the pages. The rules of interruption: common practice for bolts tightened by angle.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FlowIT {
    private static final String TANK = "tank-bolts";
    private static final String STUDS = WayBack.STUDS;
    private static final String SEIZED = "exhaust-bracket-bolt";

    private Bench bench;

    @BeforeAll
    void start() {
        bench = Bench.start();
    }

    @AfterAll
    void stop() {
        if (bench != null) {
            bench.close();
        }
    }

    @ParameterizedTest(name = "scripts: {0}")
    @ValueSource(booleans = {true, false})
    void aWholeJobFromTheFirstBoltToTheEmptyTray(boolean scripts) {
        String job;
        try (BrowserContext phone = bench.phone(scripts)) {
            Hand hand = new Hand(bench, phone.newPage(), scripts);
            job = begun(hand);
            putRight(hand, job);
            firstSteps(hand, job);
        }
        WayBack back = new WayBack(bench, job);
        bench.restart(); // the evening after: another browser, the server was off in between
        try (BrowserContext phone = bench.phone(scripts)) {
            Hand hand = new Hand(bench, phone.newPage(), scripts);
            restOfTheStrip(hand, job);
            places(hand, job);
            ordered(hand, job);
            back.togetherUntil(hand, STUDS + "/2");
            back.brokenOffInATorqueStage(hand);
        }
        bench.restart();
        try (BrowserContext phone = bench.phone(scripts)) {
            Hand hand = new Hand(bench, phone.newPage(), scripts);
            back.stageStartsAgain(hand);
            back.brokenOffInAnAngleStage(hand);
        }
        bench.restart();
        try (BrowserContext phone = bench.phone(scripts)) {
            Hand hand = new Hand(bench, phone.newPage(), scripts);
            back.noneIsTurnedTwice(hand);
            back.togetherUntil(hand, "nothing");
            assertThat(back.remembered())
                    .as("the photo is shown again on the way back")
                    .isTrue();
            back.closed(hand);
            printed(hand, job);
        }
    }

    private static String begun(Hand hand) {
        hand.open("/").link("New job");
        hand.type("What do you call it?", "Mower in the barn");
        hand.page().getByLabel("Wren 160").check();
        hand.type("What must come off?", "cylinder head");
        hand.page().getByText("Yours has another name").tap();
        hand.type("Your engine's name", "Barn mower");
        hand.button("Begin");
        assertThat(hand.heading()).isEqualTo("Mower in the barn");
        assertThat(hand.text()).contains("Barn mower").contains("ylinder head");
        return hand.path();
    }

    /** The manual of this engine wants an angle on the head, and two screws hold the cowl that the file does not know. */
    private void putRight(Hand hand, String job) {
        hand.door(job, "Engine");
        hand.page().locator("#joint").selectOption(STUDS);
        hand.button("This one");
        hand.type("How is it tightened?", "10 N·m, 22 N·m, 90°");
        hand.button("Put it right");
        assertThat(hand.page().locator(".fault").innerText()).contains("30 N·m, 90°, oiled");
        hand.type("How is it tightened?", "10 N·m, 22 N·m, 90°, oiled");
        hand.button("Only check");
        assertThat(hand.text()).contains("The check finds nothing wrong");
        assertThat(bench.book(job).engine().joint(STUDS).makeup().stages()).hasSize(2);
        hand.button("Put it right");
        assertThat(hand.said()).startsWith("Put right");
        hand.link("Add a joint");
        hand.type("What is it called?", "Cowl side screws");
        hand.type("What does it hold together?", "cooling cowl, crankcase");
        hand.type("With what?", "2 x M6x16");
        hand.type("How is it tightened?", "8 N·m, dry");
        hand.button("Add it");
        assertThat(hand.said()).contains("Added: Cowl side screws");
        Job book = bench.book(job);
        assertThat(book.engine().joint("cowl-side-screws").makeup().fasteners()).hasSize(2);
        assertThat(book.engine().joint(STUDS).makeup().stages()).hasSize(3);
    }

    /** Ten steps, the fourth of them held by a finger; a count that was wrong, and was put right. */
    private void firstSteps(Hand hand, String job) {
        hand.open(job).link("To the bench");
        for (int i = 0; i < 10; i++) {
            if (hand.step().equals(TANK)) {
                miscounted(hand, job);
            } else {
                step(hand, i < 4);
            }
        }
        Job book = bench.book(job);
        assertThat(book.fasteners(TANK)).isEqualTo(3);
        assertThat(book.state().history())
                .filteredOn(told -> !told.counts())
                .as("the wrong count stays in the book, struck through")
                .hasSize(1);
        hand.open(job + "/book");
        assertThat(hand.page().locator(".entries del").innerText()).contains("2");
        hand.open(job);
        assertThat(hand.page().locator(".sums div:nth-child(3) dd").innerText()).isEqualTo("10");
    }

    private static void step(Hand hand, boolean held) {
        if (hand.page().getByLabel("Where does it lie?").count() > 0) {
            hand.type("Where does it lie?", "Shelf 2");
        }
        hand.done(held);
        assertThat(hand.said()).startsWith("Saved");
    }

    private void miscounted(Hand hand, String job) {
        hand.link("Wrong count");
        hand.type("Counted", "2").button("It's off, with this count");
        assertThat(bench.book(job).fasteners(TANK)).isEqualTo(2);
        hand.open(job + "/closing");
        assertThat(hand.text()).contains("Fewer came out than the file has");
        hand.button(hand.page().locator(".missing a", new Page.LocatorOptions().setHasText("2, the file has 3")));
        hand.page().locator("#count").fill("3");
        hand.page().getByLabel("The last count was wrong").check();
        hand.button("Write it down");
        hand.link("To the bench");
    }

    private void restOfTheStrip(Hand hand, String job) {
        hand.open(job).link("To the bench");
        boolean noted = false;
        for (int i = 0; i < 40 && hand.path().endsWith("/bench"); i++) {
            if (hand.step().equals(SEIZED)) {
                seized(hand, job);
            }
            if (!noted) {
                hand.link("Note");
                hand.type("What did you see?", "Wasps had been in the cowl").button("Into the book");
                photographed(hand, job);
                noted = true;
                step(hand, false);
            } else {
                hand.send("#done"); // as the first ten, without the page between
                assertThat(hand.said()).startsWith("Saved");
            }
        }
        assertThat(hand.text()).contains("reached");
        Job book = bench.book(job);
        assertThat(book.findNext()).isEmpty();
        assertThat(book.facts().stripped().open()).contains(STUDS, TANK, "cowl-side-screws");
        assertThat(bodies(book, Word.Note.class))
                .extracting(Word.Note::text)
                .containsExactly("Wasps had been in the cowl");
    }

    /** A photo from the phone: it is in the book, and can be looked at. */
    private void photographed(Hand hand, String job) {
        hand.link("Photo");
        hand.button("Into the book");
        assertThat(hand.page().locator(".fault").innerText()).contains("Take a photo");
        hand.page().locator("#photo").setInputFiles(new FilePayload("IMG_1.jpg", "image/jpeg", picture()));
        hand.page().locator("#caption").fill("The nest, before it went");
        hand.button("Into the book");
        assertThat(hand.said()).contains("photo is in the book");
        Word.Photo photo = bodies(bench.book(job), Word.Photo.class).getFirst();
        assertThat(photo.caption()).isEqualTo("The nest, before it went");
        APIResponse kept = hand.page().request().get(bench.address(job + "/photos/" + photo.sha256()));
        assertThat(kept.headers().get("content-type")).startsWith("image/");
        String bench = hand.path();
        hand.open(job + "/book");
        assertThat(hand.page().locator(".entries img").getAttribute("alt")).contains("The nest, before it went");
        hand.open(bench);
    }

    private static byte[] picture() {
        BufferedImage image = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 640; x++) {
            for (int y = 0; y < 480; y++) {
                image.setRGB(x, y, (x ^ y) * 0x010203);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpg", out);
        } catch (IOException e) {
            throw new UncheckedIOException("no picture for the test", e);
        }
        return out.toByteArray();
    }

    /** Up the ladder from the gentlest, and at its end the drill. */
    private void seized(Hand hand, String job) {
        hand.link("Trouble");
        hand.page().getByLabel("Seized").check();
        hand.button("What can I try?");
        for (int i = 0; i < 3; i++) {
            Locator rung = hand.page().locator(".rung").first();
            rung.getByLabel("Minutes it took").fill("10");
            hand.button(rung.getByText("Did not help"));
        }
        Locator last = hand.page().locator(".rung.last").last();
        last.getByText("I tried this").tap();
        last.getByLabel("Minutes it took").fill("70");
        hand.button(last.getByText("Out, and destroyed"));
        assertThat(hand.text()).contains("Drilled out").contains("To buy, because of trouble");
        Facts.TroubleSoFar trouble =
                bench.book(job).facts().findings().troubles().getFirst();
        assertThat(trouble.tried()).hasSize(4);
        assertThat(trouble.outcome()).isEqualTo(Fault.Outcome.DRILLED);
        hand.link("Back to the bench");
    }

    private void places(Hand hand, String job) {
        hand.door(job, "Bags and places");
        List<Locator> unmarked =
                hand.page().locator(".keep input[type=checkbox]").all();
        assertThat(unmarked).as("push rods keep their places").isNotEmpty();
        unmarked.forEach(Locator::check);
        hand.type("How are they marked?", "tied to a card").button("The ticked ones are marked");
        assertThat(hand.page().locator(".keep")).matches(keep -> keep.count() == 0, "nothing is left to mark");
        hand.button(hand.page().locator(".baglist a").first());
        hand.type("It lies elsewhere now", "Tin on the window sill").button("Moved");
        assertThat(hand.text()).contains("Tin on the window sill");
        assertThat(bench.book(job).facts().kept().bags().values())
                .extracting(Facts.Bag::place)
                .contains("Tin on the window sill");
    }

    /** What is ordered and has not come holds the build up; what came does not. */
    private void ordered(Hand hand, String job) {
        hand.door(job, "Order");
        assertThat(hand.text()).contains("head gasket").contains("M8x1.25 x 16 mm");
        Locator gasket = hand.page().locator(".buylist > li", new Page.LocatorOptions().setHasText("head gasket"));
        gasket.locator("summary").tap();
        hand.button(gasket.getByText("Ordered", new Locator.GetByTextOptions().setExact(true))
                .last());
        hand.open(job + "/build");
        assertThat(hand.page().locator(".lack").allInnerTexts()).anyMatch(text -> text.contains("head gasket"));
        hand.open(job + "/order");
        gasket.locator("summary").tap();
        gasket.getByLabel("laid beside the old one").check();
        hand.button(gasket.getByText("It came", new Locator.GetByTextOptions().setExact(true)));
        hand.open(job + "/build");
        assertThat(hand.page().locator(".lack").allInnerTexts()).noneMatch(text -> text.contains("head gasket"));
        assertThat(bench.book(job).facts().kept().received()).containsEntry("head gasket", 1);
    }

    private static void printed(Hand hand, String job) {
        Hand.Printed labels = hand.open(job + "/labels").print();
        assertThat(labels.text()).contains("Mower in the barn").doesNotContain("Print this page");
        Hand.Printed book = hand.open(job + "/book").print();
        assertThat(book.text())
                .contains("Wasps had been in the cowl")
                .contains("Tray empty")
                .doesNotContain("take back");
        Hand.Printed strip = hand.open("/engines/wren-160/strip?reach=head").print();
        assertThat(strip.text()).contains("Close the fuel tap", "DANGER", "Lay out", "hose clip pliers");
        assertThat(List.of(labels.sheets(), book.sheets(), strip.sheets())).allMatch(sheets -> sheets <= 8);
    }

    static <T> List<T> bodies(Job job, Class<T> kind) {
        return job.state().history().stream()
                .filter(JobState.Told::counts)
                .map(JobState.Told::entry)
                .map(Entry::body)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
