package gudgeon.app.cli;

import gudgeon.app.web.WebServer;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;

/** Serves the pages until the program is told to stop. */
final class Serving {
    private Serving() {}

    /**
     * Prints the address and waits for the end.
     *
     * @param page where to look first, from the root
     */
    static int untilStopped(Screen screen, int port, Path books, String page) throws InterruptedException {
        WebServer server = WebServer.start(port, books);
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(Thread.ofPlatform().unstarted(() -> {
            server.close();
            stopped.countDown();
        }));
        screen.out().println("Gudgeon is at " + address(server, page) + "  (Ctrl-C ends it; books: " + books + ")");
        screen.flush();
        stopped.await();
        return Exit.DONE;
    }

    /**
     * Where a page is.
     *
     * @param page from the root, with or without a slash before it
     */
    static String address(WebServer server, String page) {
        return server.address() + page.replaceFirst("^/", ""); // the address ends with a slash; two lead nowhere
    }

    /** What is wrong with a port; empty when nothing is. */
    static java.util.Optional<String> fault(int port) {
        return port < 0 || port > 65_535
                ? java.util.Optional.of("--port is 0 to 65535, not " + port)
                : java.util.Optional.empty();
    }
}
