package gudgeon.app.cli;

import gudgeon.app.desk.DemoQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.core.engine.Engine;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What the program does, on a shipped engine. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        header = "Plans the way to a diesel's cylinder head, and writes its papers into a folder.",
        description = "The plan that 'gudgeon strip dunlin-22d --reach head --with helper' prints, with strip card, build sheet,"
                + " order list and drawing.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "2:Wrong usage", "4:The program or the machine failed"},
        footer = {"", "Example: gudgeon demo --to papers"})
final class DemoCommand implements Callable<Integer> {
    private final Screen screen;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "gudgeon-demo",
            description = "Folder for the papers. Default: ${DEFAULT-VALUE}.")
    private String folder = "";

    DemoCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Optional<Engine> engine = new Inputs(screen).engine(DemoQuestion.ENGINE);
        if (engine.isEmpty()) {
            return Exit.INPUT;
        }
        return switch (Waiting.on(screen, "planning", DemoQuestion.strip(engine.get())::ask)) {
            case Reply.Planned planned -> shown(planned);
            case Reply.Stuck stuck -> {
                new BlockedText(screen).print(stuck);
                yield Exit.BLOCKED;
            }
            case Reply.Unknown unknown -> {
                new Inputs(screen).unknown(unknown.names());
                yield Exit.INPUT;
            }
        };
    }

    private int shown(Reply.Planned planned) {
        new StripText(screen, false).print(planned);
        screen.flush();
        Path to = Papers.path(folder);
        List<Path> written = Waiting.on(
                screen, "writing the papers", () -> DemoQuestion.papers(planned, to, Papers.issue()));
        Layout layout = new Layout(screen);
        layout.blank();
        layout.heading("Papers, in " + to.toAbsolutePath().normalize());
        written.forEach(file -> layout.line("  " + file.getFileName()));
        return Exit.DONE;
    }
}
