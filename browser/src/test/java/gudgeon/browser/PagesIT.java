package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ScreenshotAnimations;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * What holds for every page: WCAG 2.2 AA as far as axe can tell, no sideways scrolling, light enough for a poor network. Looked
 * at are the pages used most, and with -Dgudgeon.walk=all every page there is, which takes some ten minutes.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesIT {
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
    private static final int MOST_BYTES = 100_000;

    private Bench bench;
    private List<Walk.Stop> stops = List.of();

    @BeforeAll
    void start() {
        bench = Bench.start();
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            boolean all = System.getProperty("gudgeon.walk", "").equals("all");
            stops = all ? Walk.all(bench, window.newPage()) : Walk.some(bench, window.newPage());
        }
    }

    @AfterAll
    void stop() {
        if (bench != null) {
            bench.close();
        }
    }

    @Test
    void noPageHasAFaultThatAxeFindsInAnyLook() {
        List<String> faults = new ArrayList<>();
        for (String look : Bench.LOOKS) {
            try (BrowserContext window = bench.window(Bench.PHONE, true)) {
                Page page = window.newPage();
                bench.choose(page, look);
                for (Walk.Stop stop : stops) {
                    bench.open(page, stop.path());
                    assertThat(page.locator("html").getAttribute("data-look")).isEqualTo(look);
                    AxeResults results = look.equals("paper") ? check(page) : colours(page);
                    results.getViolations().forEach(fault -> faults.add(look + " " + stop.name() + ": " + fault.getId()
                            + " " + fault.getHelp() + " " + fault.getNodes().getFirst().getHtml()));
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    /** So that silence means something. */
    @Test
    void axeFindsTheFaultsOfABadPage() {
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            page.setContent("<html><body><img src='x.png'><p style='color:#aaa;background:#fff'>pale</p><input></body></html>");
            assertThat(check(page).getViolations())
                    .extracting(fault -> fault.getId())
                    .contains("image-alt", "color-contrast", "label", "html-has-lang");
        }
    }

    @Test
    void nothingScrollsSidewaysOnAPhoneNorAtTwiceTheSize() {
        List<String> wide = new ArrayList<>();
        for (int width : new int[] {Bench.PHONE, Bench.LAPTOP / 2}) {
            try (BrowserContext window = bench.window(width, true)) {
                Page page = window.newPage();
                for (Walk.Stop stop : stops) {
                    bench.open(page, stop.path());
                    int more = ((Number) page.evaluate(
                                    "document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                            .intValue();
                    if (more > 0) {
                        wide.add(stop.name() + " at " + width + ": " + more + " px too wide");
                    }
                }
            }
        }
        assertThat(wide).isEmpty();
    }

    /** 200 % text: the root size doubled, as browsers do for text zoom. */
    @Test
    void textAtTwiceItsSizeStaysInsideThePage() {
        List<String> wide = new ArrayList<>();
        try (BrowserContext window = bench.window(Bench.LAPTOP / 2, true)) {
            Page page = window.newPage();
            for (Walk.Stop stop : stops) {
                bench.open(page, stop.path());
                page.evaluate("document.documentElement.style.setProperty('font-size', '200%')");
                int more = ((Number) page.evaluate(
                                "document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                        .intValue();
                if (more > 0) {
                    wide.add(stop.name() + ": " + more + " px too wide");
                }
            }
        }
        assertThat(wide).isEmpty();
    }

    @Test
    void everyPageIsLight() {
        List<String> heavy = new ArrayList<>();
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            for (Walk.Stop stop : stops) {
                bench.open(page, stop.path());
                long bytes = weight(stop);
                if (bytes > MOST_BYTES || bytes == 0) {
                    heavy.add(stop.name() + ": " + bytes + " bytes");
                }
            }
        }
        assertThat(heavy).isEmpty();
    }

    /** What a browser with an empty cache fetches beside the faces, as it comes over the wire. */
    private long weight(Walk.Stop stop) {
        try (BrowserContext fresh = bench.window(Bench.PHONE, true)) {
            Page page = fresh.newPage();
            List<Response> answers = new CopyOnWriteArrayList<>();
            page.onResponse(answers::add);
            page.navigate(bench.address(stop.path()));
            return answers.stream()
                    .filter(answer -> !answer.url().endsWith(".woff2"))
                    .mapToLong(answer -> (long) answer.request().sizes().responseBodySize)
                    .sum();
        }
    }

    @Test
    void everythingToTouchIsLargeEnough() {
        List<String> small = new ArrayList<>();
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            for (Walk.Stop stop : stops) {
                bench.open(page, stop.path());
                Object found = page.evaluate("""
                        () => [...document.querySelectorAll('button, .button, summary, select, input:not([type=hidden]):not([type=checkbox]):not([type=radio]), .items a, .menu a, .ticks label')]
                          .filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 44)
                          .map(e => e.tagName + ' ' + e.textContent.trim().slice(0, 30) + ' ' + e.getBoundingClientRect().height)""");
                ((List<?>) found).forEach(one -> small.add(stop.name() + ": " + one));
            }
        }
        assertThat(small).isEmpty();
    }

    /** Pictures for a person to look at, when -Dgudgeon.shots=FOLDER asks for them. */
    @Test
    void picturesToLookAt() {
        String folder = System.getProperty("gudgeon.shots", "");
        org.junit.jupiter.api.Assumptions.assumeFalse(folder.isBlank(), "no folder was named for pictures");
        for (int width : new int[] {Bench.PHONE, Bench.LAPTOP}) {
            for (String look : Bench.LOOKS) {
                try (BrowserContext window = bench.window(width, true)) {
                    Page page = window.newPage();
                    bench.choose(page, look);
                    for (Walk.Stop stop : stops) {
                        bench.open(page, stop.path());
                        page.screenshot(new Page.ScreenshotOptions()
                                .setPath(Path.of(folder, stop.name() + "-" + width + "-" + look + ".png"))
                                .setAnimations(ScreenshotAnimations.DISABLED)
                                .setFullPage(!stop.name().equals("strip-large")));
                    }
                }
            }
        }
    }

    /** What of it can differ between looks. */
    private static AxeResults colours(Page page) {
        return new AxeBuilder(page).withRules(List.of("color-contrast", "link-in-text-block")).analyze();
    }

    private static AxeResults check(Page page) {
        return new AxeBuilder(page).withTags(RULES).analyze();
    }
}
