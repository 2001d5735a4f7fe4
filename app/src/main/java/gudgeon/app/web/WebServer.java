package gudgeon.app.web;

import gudgeon.app.desk.EngineShelf;
import gudgeon.app.desk.Workshop;
import gudgeon.app.store.IdTaken;
import gudgeon.app.store.StoreFailed;
import gudgeon.app.web.bags.BagPages;
import gudgeon.app.web.bench.BenchPages;
import gudgeon.app.web.bolts.BoltPages;
import gudgeon.app.web.build.BuildPages;
import gudgeon.app.web.closing.ClosingPages;
import gudgeon.app.web.correction.CorrectionPages;
import gudgeon.app.web.engines.EnginePages;
import gudgeon.app.web.found.FoundPages;
import gudgeon.app.web.geometry.GeometryPages;
import gudgeon.app.web.history.HistoryPages;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPages;
import gudgeon.app.web.jobs.JobStripPages;
import gudgeon.app.web.jobs.NotePages;
import gudgeon.app.web.measuring.MeasuringPages;
import gudgeon.app.web.order.OrderPages;
import gudgeon.app.web.page.Assets;
import gudgeon.app.web.page.ErrorPage;
import gudgeon.app.web.page.Gate;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.photos.PhotoPages;
import gudgeon.app.web.strip.StripPages;
import gudgeon.app.web.sums.SumPages;
import gudgeon.app.web.tags.TagPages;
import gudgeon.app.web.today.TodayPages;
import gudgeon.app.web.toolbox.ToolboxPages;
import gudgeon.app.web.trouble.TroublePages;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** The pages, served to this machine alone. */
public final class WebServer implements AutoCloseable {
    /** Where it listens when nothing else is asked for. */
    public static final int PORT = 8462;

    private static final String SAFE =
            "What was saved before is safe. This was not saved: see whether the disk is full, then send it again.";
    private static final Refusal TAKEN = new Refusal(
            409,
            "This form was sent before, as something else. Nothing was changed.",
            "Load the page again, and send it again.");
    private static final int PICTURE_MB = 13;
    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin server;
    private final List<AutoCloseable> rooms;

    private WebServer(Javalin server, List<AutoCloseable> rooms) {
        this.server = server;
        this.rooms = rooms;
    }

    /**
     * Starts to serve.
     *
     * @param port 1 to 65535, or 0 for any that is free
     * @param store file of the books, made when it is not there
     * @throws UncheckedIOException when the port is taken or the store cannot be opened
     */
    public static WebServer start(int port, Path store) {
        Workshop workshop = Workshop.open(store);
        JobDesk desk = new JobDesk(workshop);
        EngineShelf shelf = new EngineShelf();
        Assets assets = Assets.load();
        Pages pages = new Pages(assets);
        EnginePages engines = new EnginePages(shelf, pages);
        JobStripPages jobStrip = new JobStripPages(desk, pages);
        BuildPages way = new BuildPages(desk, pages);
        StripPages strip = new StripPages(shelf, pages);
        TodayPages today = new TodayPages(desk, pages);
        Javalin server = Javalin.create(config -> {
            configure(config);
            config.routes.before(request -> Gate.pass(request, PhotoPages.mostBytes(request.path())));
            config.routes.get("/s/{hash}/{name}", assets::serve);
            new JobPages(desk, shelf, pages).route(config.routes);
            jobStrip.route(config.routes);
            new NotePages(desk, pages).route(config.routes);
            new BenchPages(desk, pages).route(config.routes);
            rooms(config, desk, pages);
            way.route(config.routes);
            today.route(config.routes);
            LookPages.route(config.routes);
            new GeometryPages(pages).route(config.routes);
            engines.route(config.routes);
            strip.route(config.routes);
            errors(config, new ErrorPage(pages));
        });
        WebServer running = new WebServer(server, List.of(engines, strip, jobStrip, way, today, desk, workshop));
        try {
            server.start(LOOPBACK, port);
        } catch (JavalinBindException e) {
            running.close();
            throw new UncheckedIOException(
                    "cannot listen on port " + port, new IOException("something else is there already", e));
        }
        return running;
    }

    /** The pages of a job beside its strip. */
    private static void rooms(JavalinConfig config, JobDesk desk, Pages pages) {
        new FoundPages(desk, pages).route(config.routes);
        new TroublePages(desk, pages).route(config.routes);
        new BagPages(desk, pages).route(config.routes);
        new OrderPages(desk, pages).route(config.routes);
        new ClosingPages(desk, pages).route(config.routes);
        new HistoryPages(desk, pages).route(config.routes);
        new ToolboxPages(desk, pages).route(config.routes);
        new MeasuringPages(desk, pages).route(config.routes);
        new TagPages(desk, pages).route(config.routes);
        new CorrectionPages(desk, pages).route(config.routes);
        new PhotoPages(desk, pages).route(config.routes);
        new BoltPages(desk, pages).route(config.routes);
        new SumPages(pages).route(config.routes);
    }

    private static void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.compressionStrategy = CompressionStrategy.GZIP;
        config.http.prefer405over404 = true;
        config.jetty.multipartConfig.maxInMemoryFileSize(
                PICTURE_MB, SizeUnit.MB); // nothing of a photo lies on the disk
        config.router.ignoreTrailingSlashes = true;
    }

    private static void errors(JavalinConfig config, ErrorPage page) {
        config.routes.exception(Refusal.class, (refusal, request) -> page.refuse(request, refusal));
        config.routes.exception(HttpResponseException.class, (e, request) -> page.refuse(request, refusal(e)));
        config.routes.exception(IdTaken.class, (e, request) -> page.refuse(request, TAKEN));
        config.routes.exception(
                StoreFailed.class,
                (e, request) -> page.refuse(request, new Refusal(500, String.valueOf(e.getMessage()), SAFE)));
        config.routes.exception(Exception.class, (e, request) -> page.failed(request, e));
    }

    private static Refusal refusal(HttpResponseException e) {
        return switch (e.getStatus()) {
            case 404 ->
                Refusal.missing("There is no page here.", "Start from the first page; the menu leads everywhere.");
            case 405 -> new Refusal(405, "This page cannot be asked that way.", "Follow a link or send a form.");
            case 413 -> new Refusal(413, "That is more than a form may hold.", "Shorten the text, or split it.");
            default -> new Refusal(Math.max(400, e.getStatus()), "The request was not understood.", "");
        };
    }

    /** "http://127.0.0.1:8462/". */
    public String address() {
        return "http://" + LOOPBACK + ":" + server.port() + "/";
    }

    /** The port that it listens on. */
    public int port() {
        return server.port();
    }

    /** Finishes what is being answered, then stops. */
    @Override
    public void close() {
        server.stop();
        for (AutoCloseable room : rooms) {
            try {
                room.close();
            } catch (Exception e) {
                throw new IllegalStateException("a room of the server did not close", e);
            }
        }
    }
}
