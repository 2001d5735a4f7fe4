package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ScreenshotAnimations;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * What holds for every page: WCAG 2.2 AA as far as axe can tell in every look, keys alone, no sideways scrolling, light enough for
 * a poor network. Looked at are the pages used most, and with -Dgudgeon.walk=all every page there is.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesIT {
    private Bench bench;
    private List<Walk.Stop> stops = List.of();
    private Looked looked;

    @BeforeAll
    void start() {
        bench = Bench.start();
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            boolean all = System.getProperty("gudgeon.walk", "").equals("all");
            stops = all ? Walk.all(bench, window.newPage()) : Walk.some(bench, window.newPage());
        }
        looked = Looked.at(bench, stops);
        System.err.println("looked at " + stops.size() + " pages in " + Bench.LOOKS.size() + " looks: heaviest "
                + looked.heaviest() + " bytes, " + looked.tabs() + " actions reached by Tab");
    }

    @AfterAll
    void stop() {
        if (bench != null) {
            bench.close();
        }
    }

    @Test
    void noPageHasAFaultThatAxeFindsInAnyLook() {
        assertThat(looked.faults(Looked.Rule.AXE)).isEmpty();
    }

    /** So that silence means something. */
    @Test
    void theFaultsOfABadPageAreFound() {
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            page.setContent("<html><body><img src='x.png'><p style='color:#aaa;background:#fff'>pale</p><input>"
                    + "<a href='#' tabindex='-1'>not reached</a><button style='outline:none'>unseen</button>"
                    + "<p style='width:900px'>wide</p></body></html>");
            Looked bad = Looked.at(page);
            assertThat(bad.faults(Looked.Rule.AXE))
                    .extracting(fault -> fault.split(": ", -1)[1])
                    .contains("image-alt", "color-contrast", "label", "html-has-lang");
            assertThat(bad.faults(Looked.Rule.KEYS))
                    .satisfiesExactlyInAnyOrder(
                            fault -> assertThat(fault).contains("unseen <button"),
                            fault -> assertThat(fault).contains("not reached: <a"));
            assertThat(bad.faults(Looked.Rule.TOUCH)).hasSize(2);
            assertThat(bad.faults(Looked.Rule.WIDTH)).hasSize(3);
            assertThat(bad.faults(Looked.Rule.LARGE_TEXT)).hasSize(1);
        }
    }

    @Test
    void nothingScrollsSidewaysOnAPhoneNorOnALaptopAtTwiceTheSize() {
        assertThat(looked.faults(Looked.Rule.WIDTH)).isEmpty();
    }

    /** 200 % text: the root size doubled, as browsers do for text zoom. */
    @Test
    void textAtTwiceItsSizeStaysInsideThePage() {
        assertThat(looked.faults(Looked.Rule.LARGE_TEXT)).isEmpty();
    }

    @Test
    void everyPageIsLight() {
        assertThat(looked.heaviest()).isPositive();
        assertThat(looked.faults(Looked.Rule.WEIGHT)).isEmpty();
    }

    @Test
    void everythingToTouchIsLargeEnough() {
        assertThat(looked.faults(Looked.Rule.TOUCH)).isEmpty();
    }

    @Test
    void tabReachesEveryActionAndTheFocusIsSeen() {
        assertThat(looked.tabs()).isGreaterThan(stops.size());
        assertThat(looked.faults(Looked.Rule.KEYS)).isEmpty();
    }

    @Test
    void theChosenLookStaysOnThisDevice() {
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            for (String look : Bench.LOOKS) {
                bench.choose(page, look);
                bench.open(page, "/");
                assertThat(page.locator("html").getAttribute("data-look")).isEqualTo(look);
            }
        }
    }

    /** Pictures for a person to look at, when -Dgudgeon.shots=FOLDER asks for them. */
    @Test
    void picturesToLookAt() {
        String folder = System.getProperty("gudgeon.shots", "");
        Assumptions.assumeFalse(folder.isBlank(), "no folder was named for pictures");
        for (int width : new int[] {Bench.PHONE, Bench.LAPTOP}) {
            try (BrowserContext window = bench.window(width, true)) {
                Page page = window.newPage();
                for (Walk.Stop stop : stops) {
                    bench.open(page, stop.path());
                    for (String look : Bench.LOOKS) {
                        page.evaluate("look => { document.documentElement.dataset.look = look; }", look);
                        page.screenshot(new Page.ScreenshotOptions()
                                .setPath(Path.of(folder, stop.name() + "-" + width + "-" + look + ".png"))
                                .setAnimations(ScreenshotAnimations.DISABLED)
                                .setFullPage(!stop.name().equals("strip-large")));
                    }
                }
            }
        }
    }
}
