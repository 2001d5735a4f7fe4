package gudgeon.browser;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The rules of axe, run in the page itself: loaded once for each page, then as often as wanted. */
final class Axe {
    /** WCAG 2.2 to level AA, and what is good practice beside it. */
    static final List<String> ALL = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

    /** What of it can differ between looks. */
    private static final List<String> COLOURS = List.of("color-contrast", "link-in-text-block");

    private static final String SCRIPT = script();

    private Axe() {}

    /** Every fault of the page, one line each. */
    static List<String> all(Page page) {
        return run(page, "tag", ALL);
    }

    /** Faults of colour alone. */
    static List<String> colours(Page page) {
        return run(page, "rule", COLOURS);
    }

    private static List<String> run(Page page, String type, List<String> values) {
        if (!(boolean) page.evaluate("typeof window.axe === 'object'")) {
            page.evaluate(SCRIPT);
        }
        Object found = page.evaluate("""
                async only => (await axe.run(document, {runOnly: only, resultTypes: ['violations']})).violations
                  .map(fault => fault.id + ': ' + fault.help + ' ' + fault.nodes[0].html.slice(0, 160))""", Map.of("type", type, "values", values));
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }

    private static String script() {
        try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
            if (in == null) {
                throw new IllegalStateException("axe is not among the test libraries");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("axe cannot be read", e);
        }
    }
}
