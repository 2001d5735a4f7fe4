package gudgeon.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Pages looked at, each loaded once for each width, and what was found amiss on them. */
final class Looked {
    /** What must hold. */
    enum Rule {
        /** WCAG 2.2 AA as far as axe can tell, in every look. */
        AXE,
        /** Nothing scrolls sideways: on a phone, at 320 px (WCAG 1.4.10), on a laptop at 200 %. */
        WIDTH,
        /** Text at twice its size stays inside the page. */
        LARGE_TEXT,
        /** HTML, styles and scripts stay under 100 kB, compressed. */
        WEIGHT,
        /** What is touched is large enough. */
        TOUCH,
        /** Tab reaches every action, and the focus is seen. */
        KEYS
    }

    private static final int MOST_BYTES = 100_000;
    private static final int REFLOW = 320;
    private static final int MOST_TABS = 900;
    private static final String SPARE = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

    private final Map<Rule, List<String>> faults = new EnumMap<>(Rule.class);
    private int heaviest;
    private int tabs;

    private Looked() {}

    /** Looks at all stops, one after the other. */
    static Looked at(Bench bench, List<Walk.Stop> stops) {
        Looked looked = new Looked();
        try (BrowserContext window = bench.window(Bench.PHONE, true)) {
            Page page = window.newPage();
            for (Walk.Stop stop : stops) {
                bench.open(page, stop.path());
                looked.look(page, stop.name());
            }
        }
        return looked;
    }

    /** Looks at the page that is open, whatever it is. */
    static Looked at(Page page) {
        Looked looked = new Looked();
        looked.look(page, "page");
        return looked;
    }

    private void look(Page page, String name) {
        colours(page, name);
        weight(page, name);
        touch(page, name);
        keys(page, name);
        widths(page, name);
    }

    List<String> faults(Rule rule) {
        return List.copyOf(faults.getOrDefault(rule, List.of()));
    }

    /** Bytes of the heaviest page. */
    int heaviest() {
        return heaviest;
    }

    /** How many actions were reached by Tab, on all pages together. */
    int tabs() {
        return tabs;
    }

    private void amiss(Rule rule, String what) {
        faults.computeIfAbsent(rule, key -> new ArrayList<>()).add(what);
    }

    private void colours(Page page, String name) {
        for (String look : Bench.LOOKS) {
            page.evaluate("look => { document.documentElement.dataset.look = look; }", look);
            List<String> found = look.equals(Bench.LOOKS.getFirst()) ? Axe.all(page) : Axe.colours(page);
            found.forEach(fault -> amiss(Rule.AXE, look + " " + name + ": " + fault));
        }
    }

    private void weight(Page page, String name) {
        int bytes = ((Number) page.evaluate("""
                () => [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')]
                  .filter(one => !one.name.endsWith('.woff2'))
                  .reduce((sum, one) => sum + one.encodedBodySize, 0)""")).intValue();
        heaviest = Math.max(heaviest, bytes);
        if (bytes > MOST_BYTES || bytes < 1000) {
            amiss(Rule.WEIGHT, name + ": " + bytes + " bytes");
        }
    }

    private void touch(Page page, String name) {
        Object found = page.evaluate("""
                () => [...document.querySelectorAll('button, .button, summary, select, input:not([type=hidden]):not([type=checkbox]):not([type=radio]), .items a, .menu a, .ticks label')]
                  .filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 44)
                  .map(e => e.tagName + ' ' + e.textContent.trim().slice(0, 30) + ' ' + e.getBoundingClientRect().height)""");
        ((List<?>) found).forEach(one -> amiss(Rule.TOUCH, name + ": " + one));
    }

    /** Tab after Tab from the top of the page, until it has gone round. */
    private void keys(Page page, String name) {
        page.evaluate("""
                () => {
                  const all = [...document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary')]
                    .filter(e => e.checkVisibility() && !e.disabled);
                  window.unreached = new Set(all.map(e => e.type === 'radio' ? 'radio ' + e.name : e));
                  window.reached = 0;
                  document.activeElement.blur();
                  window.scrollTo(0, 0);
                }""");
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            String seen = (String) page.evaluate("""
                    () => {
                      const e = document.activeElement;
                      const key = e.type === 'radio' ? 'radio ' + e.name : e;
                      if (!window.unreached.delete(key)) return e === document.body || window.unreached.size === 0 ? 'round' : '';
                      window.reached++;
                      const style = getComputedStyle(e);
                      const label = e.labels && e.labels[0] ? getComputedStyle(e.labels[0]) : style;
                      const drawn = [style, label].some(s => (s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) > 0) || s.boxShadow !== 'none');
                      return drawn ? '' : 'unseen ' + e.outerHTML.slice(0, 100);
                    }""");
            if (seen.equals("round")) {
                break;
            }
            if (!seen.isEmpty()) {
                amiss(Rule.KEYS, name + ": " + seen);
            }
        }
        tabs += ((Number) page.evaluate("window.reached")).intValue();
        Object missed =
                page.evaluate("[...window.unreached].map(e => typeof e === 'string' ? e : e.outerHTML.slice(0, 100))");
        ((List<?>) missed).forEach(one -> amiss(Rule.KEYS, name + " not reached: " + one));
    }

    private void widths(Page page, String name) {
        for (int width : new int[] {REFLOW, Bench.PHONE, Bench.LAPTOP / 2}) {
            page.setViewportSize(width, 640);
            int more = ((Number) page.evaluate(SPARE)).intValue();
            if (more > 0) {
                amiss(Rule.WIDTH, name + " at " + width + ": " + more + " px too wide");
            }
        }
        page.evaluate("document.documentElement.style.setProperty('font-size', '200%')");
        int more = ((Number) page.evaluate(SPARE)).intValue();
        if (more > 0) {
            amiss(Rule.LARGE_TEXT, name + ": " + more + " px too wide");
        }
        page.setViewportSize(Bench.PHONE, 640);
    }
}
