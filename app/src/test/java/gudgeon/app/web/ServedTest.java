package gudgeon.app.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Tests of pages that share one server with an empty store, and a visitor who has no scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ServedTest {
    WebServer server;
    Visitor visitor;

    @BeforeAll
    final void start(@TempDir Path folder) {
        server = WebServer.start(0, folder.resolve("books.sqlite"));
        visitor = new Visitor(server.address());
    }

    @AfterAll
    final void stop() {
        server.close();
    }
}
