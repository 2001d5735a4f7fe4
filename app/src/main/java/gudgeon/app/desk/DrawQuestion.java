package gudgeon.app.desk;

import gudgeon.app.document.EngineDrawing;
import gudgeon.app.document.Issue;
import gudgeon.app.document.Theme;
import gudgeon.core.engine.Engine;
import java.util.List;

/**
 * What does it look like?
 *
 * @param options colours, how much is drawn one by one, how wide
 * @param issue what the title block says of the sheet's origin
 */
public record DrawQuestion(EngineDrawing.Options options, Issue issue) {
    /** The engine as it stands, as SVG. */
    public String ask(Engine engine) {
        return EngineDrawing.of(engine).svg(options, issue);
    }

    /** The engine with a plan on it, as SVG for printing: one text for each sheet of A3 across. */
    public List<String> sheets(StripQuestion.Reply.Planned strip) {
        return EngineDrawing.of(strip.engine(), strip.plan(), strip.request().target())
                .sheets(options.with(Theme.PRINT), issue);
    }

    /** The engine with a plan on it, as SVG. */
    public String ask(StripQuestion.Reply.Planned strip) {
        return EngineDrawing.of(strip.engine(), strip.plan(), strip.request().target())
                .svg(options, issue);
    }
}
