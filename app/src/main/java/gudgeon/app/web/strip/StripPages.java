package gudgeon.app.web.strip;

import gudgeon.app.desk.EngineShelf;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.desk.WhileOpenQuestion;
import gudgeon.app.document.EngineDrawing;
import gudgeon.app.web.engines.EnginePages;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import gudgeon.app.web.page.Workroom;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.OtherWays;
import gudgeon.core.planning.WhileOpen;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The strip of an engine on the shelf, as a what-if: changes nothing. */
public final class StripPages implements AutoCloseable {
    private static final int NARROW = 344;
    private static final int WIDE = 1160;

    private final EngineShelf shelf;
    private final Pages pages;
    private final Workroom<Asked, Reply> plans = new Workroom<>(2, Duration.ofSeconds(4));
    private final Workroom<Drawn, String> drawings = new Workroom<>(1, Duration.ofSeconds(4));

    private final Workroom<Asked, WhileOpen> open = new Workroom<>(1, Duration.ofSeconds(4));
    private final Workroom<Asked, OtherWays> otherWays = new Workroom<>(1, Duration.ofSeconds(4));

    private record Drawn(Asked asked, int width) {}

    public StripPages(EngineShelf shelf, Pages pages) {
        this.shelf = shelf;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/engines/{engine}/strip", this::strip);
        routes.get("/engines/{engine}/strip/drawing", this::drawing);
        routes.get("/engines/{engine}/strip/while-open", this::whileOpen);
    }

    private void strip(Context request) {
        Engine engine = EnginePages.engine(shelf, request);
        Asked asked = Asked.of(request, engine);
        Optional<Reply> reply = asked.goal().isEmpty() ? Optional.empty() : plan(engine, asked);
        Optional<Reply> without = asked.stuck().isEmpty() || reply.isEmpty()
                ? Optional.empty()
                : plan(engine, asked.withStuck(List.of()));
        StripView view = new StripView(engine, asked, reply, without);
        Sheet sheet = EnginePages.sheet(engine, "Strip", "Strip, what if")
                .marked(view.planned() ? view.time() : "")
                .at(Sheet.Stage.NONE);
        pages.show(request, "strip/strip.jte", sheet, view);
    }

    private Optional<Reply> plan(Engine engine, Asked asked) {
        return plans.ask(asked, () -> asked.question(engine).ask());
    }

    private void whileOpen(Context request) {
        Engine engine = EnginePages.engine(shelf, request);
        Asked asked = Asked.of(request, engine);
        Optional<Reply> reply = asked.goal().isEmpty() ? Optional.empty() : plan(engine, asked);
        Optional<WhileOpenQuestion> question = reply.flatMap(answer -> answer instanceof Reply.Planned planned
                ? Optional.of(WhileOpenQuestion.of(planned))
                : Optional.empty());
        Optional<WhileOpen> parts =
                question.flatMap(one -> open.ask(asked, () -> one.ask().parts()));
        Optional<OtherWays> ways = question.flatMap(one -> otherWays.ask(asked, one::otherWays));
        boolean waiting = !asked.goal().isEmpty()
                && (reply.isEmpty() || question.isPresent() && (parts.isEmpty() || ways.isEmpty()));
        WhileOpenView view = new WhileOpenView(
                engine, asked, waiting, waiting ? Optional.empty() : parts, waiting ? Optional.empty() : ways);
        pages.show(
                request,
                "strip/while-open.jte",
                EnginePages.sheet(engine, "While it is open", "Strip, what if").at(Sheet.Stage.NONE),
                view);
    }

    private void drawing(Context request) {
        Engine engine = EnginePages.engine(shelf, request);
        Asked asked = Asked.of(request, engine);
        int width = "narrow".equals(request.queryParam("width")) ? NARROW : WIDE;
        Optional<String> svg = asked.goal().isEmpty()
                ? Optional.of("")
                : plan(engine, asked)
                        .flatMap(reply -> reply instanceof Reply.Planned planned
                                ? drawings.ask(new Drawn(asked, width), () -> draw(planned, width))
                                : Optional.of(""));
        String path = asked.href().replaceFirst("/strip", "/strip/drawing");
        String narrow = path + (path.contains("?") ? "&" : "?") + "width=narrow";
        Sheet sheet = EnginePages.sheet(engine, "Drawing", "Strip, drawing");
        pages.show(request, "engines/drawing.jte", sheet, new EnginePages.Drawn(svg.orElse(""), narrow, path));
    }

    private static String draw(Reply.Planned planned, int width) {
        Engine engine = planned.engine();
        return EngineDrawing.of(engine, planned.plan(), planned.request().target())
                .figure(width, id -> engine.findPart(id).map(part -> EnginePaths.part(engine, id)));
    }

    @Override
    public void close() {
        plans.close();
        drawings.close();
        open.close();
        otherWays.close();
    }
}
