package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.Media;
import com.microsoft.playwright.options.RequestOptions;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** One hand at a phone: taps, holds, types, prints. With scripts and without. */
final class Hand {
    private static final int HELD_MS = 750;

    private final Bench bench;
    private final Page page;
    private final boolean scripts;

    Hand(Bench bench, Page page, boolean scripts) {
        this.bench = bench;
        this.page = page;
        this.scripts = scripts;
    }

    Page page() {
        return page;
    }

    Hand open(String path) {
        bench.open(page, path);
        return this;
    }

    /** Where the page is, without the server's address and what follows a question mark. */
    String path() {
        return page.url().replaceFirst("^http://[^/]+", "").replaceFirst("[?#].*", "");
    }

    String text() {
        return page.locator("main").innerText();
    }

    String heading() {
        return page.locator("h1").innerText();
    }

    String said() {
        return page.locator(".said").innerText();
    }

    void link(String name) {
        button(page.getByRole(
                        AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true))
                .first());
    }

    void button(String name) {
        button(page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .first());
    }

    /** Taps what leads to another page, and waits for it. */
    void button(Locator button) {
        page.evaluate("document.documentElement.dataset.left = 'yes'");
        button.tap();
        settled();
    }

    private void settled() {
        page.waitForSelector("html:not([data-left]) footer");
        page.waitForLoadState();
        for (int i = 0; i < 40 && page.locator(".working").count() > 0; i++) {
            page.waitForTimeout(300);
            if (!scripts) {
                page.reload();
            }
        }
    }

    Hand type(String label, String text) {
        page.getByLabel(label, new Page.GetByLabelOptions().setExact(true))
                .first()
                .fill(text);
        return this;
    }

    /** One of the other pages of a job, from the job's page. */
    void door(String job, String name) {
        open(job);
        button(page.locator(".doors a:has(b:text-is('" + name + "'))"));
    }

    /** Id of the step that the bench shows; of a lift the parts. */
    String step() {
        return page.locator("#done input[name=step], #done input[name=parts]")
                .first()
                .inputValue();
    }

    /** The step is done: held where there are scripts and it is asked for, else tapped twice. */
    void done(boolean held) {
        if (held && scripts) {
            page.evaluate("document.documentElement.dataset.left = 'yes'");
            hold(page.locator(".hold"));
            settled();
        } else {
            button(page.locator(".hold"));
            assertThat(page.url()).as("asks once more").contains("/sure");
            button(page.locator("form.sure button"));
        }
    }

    /** Sends a form of the page with what is in its fields and in fields of the same name beside it, and shows what comes of it. */
    void send(String form) {
        FormData data = FormData.create();
        for (Locator field : page.locator(form + " input").all()) {
            String name = field.getAttribute("name");
            Locator typed = page.locator("form.act [name='" + name + "']");
            data.set(name, typed.count() > 0 ? typed.inputValue() : field.inputValue());
        }
        String to = page.locator(form).getAttribute("action");
        APIResponse answer = page.request()
                .post(bench.address(to), RequestOptions.create().setForm(data).setMaxRedirects(0));
        assertThat(answer.status()).as(answer.statusText()).isEqualTo(303);
        open(answer.headers().getOrDefault("location", ""));
    }

    /** A finger that stays down. */
    private void hold(Locator what) {
        what.scrollIntoViewIfNeeded();
        BoundingBox box = what.boundingBox();
        CDPSession finger = page.context().newCDPSession(page);
        JsonObject point = new JsonObject();
        point.addProperty("x", box.x + box.width / 2);
        point.addProperty("y", box.y + box.height / 2);
        JsonArray points = new JsonArray();
        points.add(point);
        touch(finger, "touchStart", points);
        page.waitForTimeout(HELD_MS);
        touch(finger, "touchEnd", new JsonArray());
        finger.detach();
    }

    private static void touch(CDPSession finger, String type, JsonArray points) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        finger.send("Input.dispatchTouchEvent", event);
    }

    /** The page as it comes out of a printer: its text, and how many sheets. */
    Printed print() {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setPrintBackground(true));
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).as("what is only for the screen").doesNotContain("As the device");
            return new Printed(text, document.getNumberOfPages());
        } catch (IOException e) {
            throw new UncheckedIOException("the printed page cannot be read", e);
        }
    }

    /** A printed page. */
    record Printed(String text, int sheets) {}
}
