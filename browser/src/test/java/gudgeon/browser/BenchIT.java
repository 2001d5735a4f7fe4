package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The bench as a person with gloves meets it: sizes by the design of the screens, holding, two taps, keys alone, no scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchIT {
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

    @Test
    void everyTextAtTheBenchHas24PixelsAndTheOneNumber56() {
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            String job = Walk.open(bench, page, "Sizes", "Wren 160", "piston");
            boolean seen = false;
            for (int i = 0; i < 12; i++) {
                bench.open(page, job + "/bench");
                assertThat((List<?>) page.evaluate("""
                        () => [...document.querySelectorAll('main *, header *')]
                          .filter(e => e.getClientRects().length && [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()) && !e.closest('svg'))
                          .filter(e => parseFloat(getComputedStyle(e).fontSize) < 24)
                          .map(e => e.outerHTML.slice(0, 120))""")).as("step %d", i + 1).isEmpty();
                if (page.locator(".number").count() > 0) {
                    seen = true;
                    assertThat(size(page.locator(".number").first())).isGreaterThanOrEqualTo(56);
                }
                cautionsBeforeTheAction(page);
                Walk.stepByTwoTaps(bench, page, job);
            }
            assertThat(seen).as("some step had a bag").isTrue();
        }
    }

    /** Whatever threatens begins above the fold of 640, and stands before the action; titles alone end above it too. */
    private static void cautionsBeforeTheAction(Page page) {
        for (Locator one : page.locator(".written, .before").all()) {
            assertThat(one.boundingBox().y + one.boundingBox().height)
                    .as("before the action")
                    .isLessThan(page.locator("h1").boundingBox().y);
        }
        if (page.locator(".written").count() > 0) {
            assertThat(page.locator(".written").first().boundingBox().y).isLessThan(320);
        } else if (page.locator(".before").count() > 0) {
            assertThat(page.locator(".before > summary").boundingBox().y
                            + page.locator(".before > summary").boundingBox().height)
                    .as("the caution ends above the fold of 640")
                    .isLessThan(640);
        }
    }

    /** How the button works is told where it is met first, and not again. */
    @Test
    void howTheButtonWorksIsToldOnce() {
        for (boolean scripts : new boolean[] {true, false}) {
            try (BrowserContext window = bench.window(Bench.PHONE, scripts)) {
                Page page = window.newPage();
                String job = Walk.open(bench, page, "Told once", "Wren 160", "piston");
                bench.open(page, job + "/bench");
                assertThat(page.locator(".howto").innerText())
                        .contains("short tap")
                        .satisfies(text -> assertThat(text.contains("Hold it")).isEqualTo(scripts));
                Walk.stepByTwoTaps(bench, page, job);
                assertThat(page.locator(".howto").count()).isZero();
            }
        }
    }

    private static double size(Locator text) {
        return ((Number) text.evaluate("e => parseFloat(getComputedStyle(e).fontSize)")).doubleValue();
    }

    @Test
    void heldForSixTenthsOfASecondIsDoneAShortTapAsksOnceMore() {
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            String job = Walk.open(bench, page, "Held", "Wren 160", "piston");
            bench.open(page, job + "/bench");
            String first = page.locator("h1").innerText();
            page.locator(".hold").hover();
            page.mouse().down();
            page.waitForTimeout(200);
            page.mouse().up();
            page.waitForURL("**/bench/sure**");
            assertThat(page.locator("h1").innerText()).isEqualTo(first);
            bench.open(page, job + "/bench");
            assertThat(page.locator("h1").innerText()).as("nothing was written").isEqualTo(first);
            page.locator(".hold").hover();
            page.mouse().down();
            page.waitForURL("**/bench?said=*");
            page.mouse().up();
            assertThat(page.locator("h1").innerText()).isNotEqualTo(first);
            assertThat(page.locator(".said").innerText()).startsWith("Saved");
        }
    }

    @Test
    void oneWhoComesBackLateDoesNotDoTheNextStepUnseen() {
        try (BrowserContext window = bench.window(Bench.PHONE, false)) {
            Page page = window.newPage();
            String job = Walk.open(bench, page, "Twice", "Wren 160", "piston");
            bench.open(page, job + "/bench");
            page.locator(".hold").click();
            page.locator("form.sure button").click();
            String second = page.locator("h1").innerText();
            page.goBack();
            assertThat(page.locator("h1").innerText()).as("one who comes back late is not asked about the step after")
                    .isEqualTo(second);
            assertThat(page.locator(".mark").innerText()).startsWith("2 of");
            assertThat(page.locator("form.sure").count()).isZero();
        }
    }

    /** The browser sends the very same form again, as it does when a page is loaded again after a bad connection. */
    @Test
    void aFormSentTwiceIsWrittenOnce() {
        try (BrowserContext window = bench.window(Bench.PHONE, false)) {
            Page page = window.newPage();
            String job = Walk.open(bench, page, "Twice", "Wren 160", "piston");
            bench.open(page, job + "/bench");
            page.locator(".hold").click();
            FormData form = FormData.create();
            page.locator("form.sure input").all().forEach(field ->
                    form.set(field.getAttribute("name"), field.inputValue()));
            for (int i = 0; i < 3; i++) {
                APIResponse answer = page.request().post(
                        bench.address(job + "/bench/done"), RequestOptions.create().setForm(form));
                assertThat(answer.status()).isEqualTo(200);
                assertThat(answer.text()).contains("2 of ");
            }
        }
    }

    @Test
    void readingAndRecordingGoWithoutScripts() {
        try (BrowserContext window = bench.window(Bench.PHONE, false)) {
            Page page = window.newPage();
            String job = Walk.open(bench, page, "No scripts", "Wren 160", "piston");
            assertThat(page.locator("h1").innerText()).isEqualTo("No scripts");
            for (int i = 0; i < 4; i++) {
                Walk.stepByTwoTaps(bench, page, job);
            }
            bench.open(page, job);
            assertThat(page.locator("main").innerText()).contains("Steps done");
            assertThat(page.locator(".sums div:nth-child(3) dd").innerText()).isEqualTo("4");
        }
    }

    @Test
    void aWrongCountIsKeptAndTheFormKeepsWhatWasTyped() {
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            String job = Walk.open(bench, page, "Counted", "Wren 160", "piston");
            for (int i = 0; i < 12; i++) {
                bench.open(page, job + "/bench");
                if (page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Wrong count")).count() > 0) {
                    break;
                }
                Walk.stepByTwoTaps(bench, page, job);
            }
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Wrong count")).click();
            page.getByLabel("Counted").fill("x3");
            page.locator("form.sure button").click();
            assertThat(page.locator(".fault").innerText()).contains("whole number");
            assertThat(page.getByLabel("Counted").inputValue()).isEqualTo("x3");
            page.getByLabel("Counted").fill("3");
            page.locator("form.sure button").click();
            assertThat(page.locator(".said").innerText()).startsWith("Saved");
        }
    }

    @Test
    void aJobIsBegunAndAStepDoneWithKeysAlone() {
        try (BrowserContext window = bench.window(Bench.LAPTOP, true)) {
            Page page = window.newPage();
            bench.open(page, "/");
            tabTo(page, "New job");
            page.keyboard().press("Enter");
            page.waitForURL("**/new-job");
            tabTo(page, "What do you call it?");
            page.keyboard().type("Keys");
            page.keyboard().press("Tab");
            page.keyboard().press("Space");
            page.keyboard().press("ArrowDown");
            page.keyboard().press("ArrowUp");
            for (int i = 0; i < 20 && !focused(page).contains("Wren"); i++) {
                page.keyboard().press("ArrowDown");
            }
            tabTo(page, "What must come off?");
            page.keyboard().type("piston");
            tabTo(page, "Begin");
            page.keyboard().press("Enter");
            page.waitForURL("**/jobs/**");
            bench.open(page, page.url().replaceFirst("^http://[^/]+", ""));
            tabTo(page, "To the bench");
            page.keyboard().press("Enter");
            page.waitForURL("**/bench");
            bench.open(page, page.url().replaceFirst("^http://[^/]+", ""));
            tabTo(page, "next");
            page.keyboard().press("Enter");
            page.waitForURL("**/sure**");
            tabTo(page, "Yes");
            page.keyboard().press("Enter");
            page.waitForURL("**/bench?said=*");
        }
    }

    /** What the thing with the focus is called. */
    private static String focused(Page page) {
        return (String) page.evaluate(
                "(() => { const e = document.activeElement; return (e.labels && e.labels[0] ? e.labels[0].textContent : e.textContent) || ''; })()");
    }

    /** Presses Tab until what has the focus is called so. */
    private static void tabTo(Page page, String name) {
        for (int i = 0; i < 60; i++) {
            page.keyboard().press("Tab");
            String focus = focused(page);
            if (focus.contains(name)) {
                String outline = (String) page.evaluate("getComputedStyle(document.activeElement).outlineStyle");
                assertThat(outline).as("the focus is seen on " + name).isNotEqualTo("none");
                return;
            }
        }
        throw new AssertionError("not reached with Tab: " + name);
    }
}
