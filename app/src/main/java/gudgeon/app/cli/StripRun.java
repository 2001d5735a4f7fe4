package gudgeon.app.cli;

import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.format.StripJson;
import gudgeon.core.engine.Engine;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** From the options of a command to a planned strip: loads, plans, and tells what stands in the way. */
final class StripRun {
    private final Screen screen;
    private final TargetOptions options;
    private final boolean json;

    StripRun(Screen screen, TargetOptions options, boolean json) {
        this.screen = screen;
        this.options = options;
        this.json = json;
    }

    /** Runs {@code then} on the planned strip; without one, tells why and gives the exit code. */
    int then(ToIntFunction<Reply.Planned> then) {
        options.check();
        Inputs inputs = new Inputs(screen);
        Optional<Engine> engine = inputs.engine(options.file());
        if (engine.isEmpty()) {
            return Exit.INPUT;
        }
        StripQuestion question = options.question(engine.get());
        return switch (Waiting.on(screen, "planning", question::ask)) {
            case Reply.Planned planned -> then.applyAsInt(planned);
            case Reply.Stuck stuck -> {
                if (json) {
                    screen.out().print(StripJson.write(stuck.engine(), stuck.request(), stuck.blocked()));
                } else {
                    new BlockedText(screen).print(stuck);
                }
                yield Exit.BLOCKED;
            }
            case Reply.Unknown unknown -> {
                inputs.unknown(unknown.names());
                yield Exit.INPUT;
            }
        };
    }
}
