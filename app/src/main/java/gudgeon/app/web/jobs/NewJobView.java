package gudgeon.app.web.jobs;

import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Engine;
import java.util.List;

/**
 * The form for a new job.
 *
 * @param form what was typed
 * @param entry names the entry that it makes
 * @param starts engines to start from
 */
public record NewJobView(Form form, String entry, List<Start> starts) {
    /** The choice "none of these". */
    public static final String EMPTY = "nearly-empty";

    public NewJobView {
        starts = List.copyOf(starts);
    }

    /** An engine to start from. */
    public record Start(String id, String name, String about) {
        static Start of(Engine engine) {
            return new Start(
                    engine.identity().id(),
                    engine.identity().name(),
                    engine.identity().facts().getOrDefault("cycle", ""));
        }
    }

    public boolean chosen(String id) {
        return form.typed("engine").equals(id);
    }
}
