package gudgeon.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Workshop;
import gudgeon.app.web.WebServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * A running server with a store of its own, and a browser in front of it. Without a browser on the machine the tests are
 * skipped and say so, unless {@value #NEEDED} is set: then its absence is a failure.
 */
final class Bench implements AutoCloseable {
    /** Environment variable: a missing browser is a failure. */
    static final String NEEDED = "GUDGEON_BROWSER_NEEDED";

    /** The looks that are tested; the device's own is one of them. */
    static final List<String> LOOKS = List.of("paper", "dark", "dim", "sun");

    static final int PHONE = 360;
    static final int LAPTOP = 1280;

    private WebServer server;
    private final Playwright playwright;
    private final Browser browser;
    private final Path folder;

    private Bench(WebServer server, Playwright playwright, Browser browser, Path folder) {
        this.server = server;
        this.playwright = playwright;
        this.browser = browser;
        this.folder = folder;
    }

    static Bench start() {
        Optional<Path> chromium = findChromium();
        if (chromium.isEmpty()) {
            String missing =
                    "No Chromium on this machine: the pages were not tested in a browser. Install chromium, or name one"
                            + " with -Dgudgeon.browser=PATH.";
            if (System.getenv(NEEDED) != null) {
                throw new AssertionError(missing);
            }
            System.err.println(missing);
            Assumptions.abort(missing);
        }
        try {
            Path folder = Files.createTempDirectory("gudgeon-browser");
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            Browser browser = playwright
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(chromium.get())
                            .setArgs(List.of(
                                    "--no-sandbox",
                                    "--disable-gpu",
                                    "--disable-background-networking",
                                    "--disable-component-update",
                                    "--no-first-run")));
            return new Bench(WebServer.start(0, folder.resolve("books.sqlite")), playwright, browser, folder);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException("no folder for a store", e);
        }
    }

    private static Optional<Path> findChromium() {
        String named = System.getProperty("gudgeon.browser", "");
        return Stream.of(
                        named,
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/usr/bin/google-chrome",
                        "/snap/bin/chromium",
                        "/Applications/Chromium.app/Contents/MacOS/Chromium",
                        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome")
                .filter(path -> !path.isBlank())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    String address(String path) {
        return server.address() + path.replaceFirst("^/", "");
    }

    /** A browser window of its own, with no cookies yet. */
    BrowserContext window(int width, boolean scripts) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, width < 600 ? 640 : 800)
                .setJavaScriptEnabled(scripts)
                .setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
        context.setDefaultTimeout(30_000);
        return context;
    }

    /** A phone of its own: narrow, touched, with no cookies yet. */
    BrowserContext phone(boolean scripts) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(PHONE, 640)
                .setHasTouch(true)
                .setIsMobile(true)
                .setJavaScriptEnabled(scripts)
                .setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
        context.setDefaultTimeout(30_000);
        return context;
    }

    /** The server is stopped and started again, at the same address, with the same store. */
    void restart() {
        int port = server.port();
        server.close();
        server = WebServer.start(port, store());
    }

    /** File of the books. */
    Path store() {
        return folder.resolve("books.sqlite");
    }

    /** What a job's book says, read beside the server. */
    Job book(String job) {
        try (Workshop beside = Workshop.open(store())) {
            return beside.findJob(job.replaceFirst(".*/", "")).orElseThrow();
        }
    }

    /** Opens a page and waits until nothing is being worked out any more. */
    void open(Page page, String path) {
        for (int i = 0; i < 40; i++) {
            if (arrives(page, path) && page.locator(".working").count() == 0) {
                return;
            }
            page.waitForTimeout(500);
        }
        throw new AssertionError("still being worked out after 40 tries: " + path);
    }

    /** A page that is being worked out loads itself again; that may cut off another load. */
    private boolean arrives(Page page, String path) {
        try {
            page.navigate(address(path));
            return true;
        } catch (PlaywrightException e) {
            if (String.valueOf(e.getMessage()).contains("ERR_ABORTED")) {
                return false;
            }
            throw e;
        }
    }

    /** Chooses colours, as a person does. */
    void choose(Page page, String look) {
        page.navigate(address("/engines"));
        page.locator(".looks button[value=" + look + "]").click();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        server.close();
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(java.util.Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException("cannot clean up " + folder, e);
        }
    }
}
