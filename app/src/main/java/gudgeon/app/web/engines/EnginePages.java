package gudgeon.app.web.engines;

import gudgeon.app.desk.EngineShelf;
import gudgeon.app.document.EngineDrawing;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.app.web.page.Workroom;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The engines on the shelf as pages. */
public final class EnginePages implements AutoCloseable {
    private final EngineShelf shelf;
    private final Pages pages;
    private final Workroom<String, String> drawings = new Workroom<>(1, Duration.ofSeconds(3));

    public EnginePages(EngineShelf shelf, Pages pages) {
        this.shelf = shelf;
        this.pages = pages;
    }

    /** "diesel four-stroke, 1-3-4-2"; a single cylinder has no order. */
    private static String about(Engine engine) {
        return String.join(
                ", ",
                engine.identity().facts().values().stream()
                        .limit(2)
                        .filter(fact -> !fact.equals("1"))
                        .toList());
    }

    /** One engine of the list. */
    public record Listed(String name, String href, String about) {}

    /**
     * A drawing that may not be there yet.
     *
     * @param svg markup; empty while it is being drawn
     */
    public record Drawn(String svg, String narrow, String wide) {}

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/engines", this::list);
        routes.get("/engines/{engine}", this::engine);
        routes.get("/engines/{engine}/parts/{part}", this::part);
        routes.get("/engines/{engine}/joints/{joint}", this::joint);
        routes.get("/engines/{engine}/drawing", this::drawing);
    }

    /**
     * The engine that a path names.
     *
     * @throws Refusal when the shelf has none of this name
     */
    public static Engine engine(EngineShelf shelf, Context request) {
        String id = request.pathParam("engine");
        return shelf.find(id)
                .orElseThrow(() -> Refusal.missing(
                        "No engine is called " + id + ".", "There are: " + String.join(", ", shelf.ids()) + "."));
    }

    /** The frame of a page about an engine. */
    public static Sheet sheet(Engine engine, String title, String sheet) {
        String hash = engine.identity().sha256();
        return Sheet.of(Sheet.Section.ENGINES, title)
                .about(engine.identity().name(), EnginePaths.engine(engine))
                .with("Engine", engine.identity().name())
                .with("Sheet", sheet)
                .with("File", hash.substring(0, Math.min(8, hash.length())));
    }

    private void list(Context request) {
        List<Listed> engines = shelf.all().stream()
                .map(engine -> new Listed(
                        engine.identity().name(),
                        EnginePaths.engine(engine),
                        about(engine)))
                .toList();
        Sheet sheet = Sheet.of(Sheet.Section.ENGINES, "Engines").with("Sheet", "Engines");
        pages.show(request, "engines/engines.jte", sheet, engines);
    }

    private void engine(Context request) {
        Engine engine = engine(shelf, request);
        String words = Optional.ofNullable(request.queryParam("find")).orElse("");
        if (words.length() > 200) {
            throw Refusal.wrong("That is too long to search for.", "A word or two will do.");
        }
        pages.show(
                request,
                "engines/engine.jte",
                sheet(engine, engine.identity().name(), "Engine file"),
                new EngineView(engine, words));
    }

    private void part(Context request) {
        Engine engine = engine(shelf, request);
        String id = request.pathParam("part");
        Part part = engine.findPart(id)
                .orElseThrow(() -> Refusal.missing("No part is called " + id + ".", "Search for it on the engine's page."));
        pages.show(request, "engines/part.jte", sheet(engine, part.name(), "Part"), new PartView(engine, part));
    }

    private void joint(Context request) {
        Engine engine = engine(shelf, request);
        String id = request.pathParam("joint");
        Joint joint = engine.findJoint(id)
                .orElseThrow(() -> Refusal.missing("No joint is called " + id + ".", "Search for it on the engine's page."));
        pages.show(request, "engines/joint.jte", sheet(engine, joint.name(), "Joint"), new JointView(engine, joint));
    }

    private void drawing(Context request) {
        Engine engine = engine(shelf, request);
        boolean wide = !"narrow".equals(request.queryParam("width"));
        String key = engine.identity().sha256() + (wide ? "wide" : "narrow");
        Optional<String> svg = drawings.ask(key, () -> EngineDrawing.of(engine)
                .figure(wide ? 1160 : 344, id -> engine.findPart(id).map(part -> EnginePaths.part(engine, id))));
        String path = EnginePaths.drawing(engine);
        pages.show(
                request,
                "engines/drawing.jte",
                sheet(engine, "Drawing", "Parts and joints"),
                new Drawn(svg.orElse(""), path + "?width=narrow", path));
    }

    @Override
    public void close() {
        drawings.close();
    }
}
