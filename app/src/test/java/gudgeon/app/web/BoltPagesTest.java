package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bolts and fits as pages: what is typed into a form comes back with its answer. Values: common practice. */
class BoltPagesTest {
    private static String in(String field, String value) {
        return field + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8) + "&";
    }

    @Test
    void sumsWithoutAJob(@TempDir Path folder) throws Exception {
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            assertThat(visitor.get("/sums").text())
                    .contains("Mixed tin", "Shims", "Head gasket", "Wrench and crow-foot");
            assertThat(visitor.get("/sums/nothing").status()).isEqualTo(404);
            Visitor.Page wrench = visitor.get("/sums/wrench?" + in("torque", "60 N·m") + in("adaptor", "50 mm, 400 mm")
                    + in("wrenches", "small: 5-25 N·m\nmiddle: 20-100 N·m"));
            assertThat(wrench.text()).contains("53.3 N·m", "middle", "cannot be set so high");
            Visitor.Page shims = visitor.get("/sums/shims?" + in("wanted", "0.15 mm to 0.25 mm")
                    + in("valves", "inlet 1: 0.10 mm, 2.70 mm\ninlet 2: 0.30 mm, 2.60 mm"));
            assertThat(shims.text()).contains("2.600 mm from inlet 2", "all 2 within the limits");
            assertThat(shims.body()).contains("class=\"ladder\"", "0.100 → 0.200 mm");
            Visitor.Page tin = visitor.get("/sums/tin?" + in("bolts", "8 x M6x1 x 20 mm")
                    + in(
                            "holes",
                            "edge: 4 x M6x1, clamped 8 mm, aluminium 16 mm deep\nbelt: 4 x M6x1, clamped 8 mm, aluminium 12 mm through, moving 3 mm behind")
                    + in("left", "M6x1 x 20 mm") + in("seen", "edge: 2"));
            assertThat(tin.text()).contains("67 % likely", "only M6x1 x 20 (4)");
        }
    }

    @Test
    void whatCannotBeReadStaysInTheForm(@TempDir Path folder) throws Exception {
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            Visitor.Page page = visitor.get("/sums/preload?" + in("torque", "18 pounds") + in("thread", "M8")
                    + in("class", "8.8") + in("state", "oiled"));
            assertThat(page.status()).isEqualTo(422);
            assertThat(page.text()).contains("lbf·ft or lbf·in");
            assertThat(page.body()).contains("value=\"18 pounds\"").doesNotContain("<script>");
            assertThat(visitor.get("/sums/preload?" + in("torque", "<b>1</b>")).body())
                    .doesNotContain("<b>1</b>");
        }
    }
}
