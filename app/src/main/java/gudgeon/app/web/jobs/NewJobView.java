package gudgeon.app.web.jobs;

import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Engine;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
                    Stream.of(cylinders(engine.identity().cylinders()), engine.identity().facts().getOrDefault("cycle", ""))
                            .filter(text -> !text.isEmpty())
                            .collect(Collectors.joining(", ")));
        }

        /** By how many one knows an engine like one's own. */
        private static String cylinders(int count) {
            return count == 0 ? "" : count == 1 ? "one cylinder" : count + " cylinders";
        }
    }

    public boolean chosen(String id) {
        return form.typed("engine").equals(id);
    }
}
