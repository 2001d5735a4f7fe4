package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pays while it is open, as a page. Facts: the shipped Wren; its barrel sits under its head. */
class WhileOpenPageTest {
    private static final String PAGE = "/engines/wren-160/strip/while-open";

    @Test
    void aPartThatPaysIsAddedToThePlanWithOneTap(@TempDir Path folder) throws Exception {
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            assertThat(visitor.get("/engines/wren-160/strip?reach=head").body()).contains(PAGE + "?reach=head");
            Visitor.Page page = ready(visitor, PAGE + "?reach=head");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.text()).contains("Barrel", "saves at least", "Off anyway", "The plan another way");
            assertThat(page.body()).contains("/engines/wren-160/strip?reach=head&amp;reach=barrel");
            assertThat(visitor.get("/engines/wren-160/strip?reach=head&reach=barrel").text())
                    .contains("barrel off leave out");
        }
    }

    @Test
    void withoutAPlanNothingIsOpen(@TempDir Path folder) throws Exception {
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            assertThat(visitor.get(PAGE).text()).contains("nothing is open");
            assertThat(ready(visitor, PAGE + "?reach=no-such-part").text()).contains("nothing is open");
        }
    }

    /** The page once it has been worked out. */
    private static Visitor.Page ready(Visitor visitor, String path) throws Exception {
        Visitor.Page page = visitor.get(path);
        for (int tries = 0; tries < 40 && page.body().contains("data-again"); tries++) {
            Thread.sleep(500);
            page = visitor.get(path);
        }
        return page;
    }
}
