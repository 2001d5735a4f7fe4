package gudgeon.app.cli;

import gudgeon.app.format.EngineJson;
import gudgeon.core.engine.Engine;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What an engine is. */
@Command(
        name = "engine",
        mixinStandardHelpOptions = true,
        header = "Says what an engine is: its parts, joints, fasteners, circuits and zones.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:The file has faults", "2:Wrong usage"},
        footer = {"", "Example: gudgeon engine dunlin-22d"})
final class EngineCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(paramLabel = "FILE", description = "An engine file, or the name of a shipped engine.")
    private String file = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    EngineCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Optional<Engine> engine = new Inputs(screen).engine(file);
        if (engine.isEmpty()) {
            return Exit.INPUT;
        }
        if (json) {
            screen.out().print(EngineJson.write(engine.get()));
        } else {
            new EngineText(screen).print(engine.get());
        }
        return Exit.DONE;
    }
}
