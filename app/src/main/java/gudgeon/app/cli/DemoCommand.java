package gudgeon.app.cli;

import gudgeon.app.desk.DemoJob;
import gudgeon.app.desk.DemoQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.web.WebServer;
import gudgeon.core.engine.Engine;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the program does, on a shipped engine. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        header = "Plans the way to a diesel's cylinder head, writes its papers into a folder, and serves the job half done.",
        description = "The plan that 'gudgeon strip dunlin-22d --reach head --with helper' prints, with strip card, build sheet,"
                + " order list and drawing. Then the same job three weekends in, with an invented book, as pages for a browser"
                + " on this machine, until it is told to stop (Ctrl-C).",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "2:Wrong usage", "4:The program or the machine failed"},
        footer = {"", "Example: gudgeon demo --to papers --no-serve"})
final class DemoCommand implements Callable<Integer> {
    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "gudgeon-demo",
            description = "Folder for the papers. Default: ${DEFAULT-VALUE}.")
    private String folder = "";

    @Option(names = "--no-serve", description = "Stop when the papers and the book of the job are written.")
    private boolean noServe;

    @Option(
            names = "--store",
            paramLabel = "FILE",
            defaultValue = "",
            description = "File for the book of the job. Default: books.sqlite in the folder of the papers.")
    private String store = "";

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "" + WebServer.PORT,
            description = "Port to serve on; 0 for any that is free. Default: ${DEFAULT-VALUE}.")
    private int port;

    DemoCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() throws InterruptedException {
        Serving.fault(port).ifPresent(fault -> {
            throw new ParameterException(spec.commandLine(), fault);
        });
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

    private int shown(Reply.Planned planned) throws InterruptedException {
        new StripText(screen, false).print(planned);
        screen.flush();
        Path to = Papers.path(folder);
        List<Path> written = Waiting.on(
                screen, "writing the papers", () -> DemoQuestion.papers(planned, to, Papers.issue()));
        Layout layout = new Layout(screen);
        layout.blank();
        layout.heading("Papers, in " + to.toAbsolutePath().normalize());
        written.forEach(file -> layout.line("  " + file.getFileName()));
        Path books = store.isBlank() ? to.resolve("books.sqlite") : Papers.path(store);
        String job = Waiting.on(
                screen,
                "writing the book of a job",
                () -> DemoJob.into(books, planned, Clock.systemDefaultZone()));
        layout.blank();
        layout.heading("The same job, three weekends in");
        layout.line("  " + DemoJob.NAME + ", in " + books.toAbsolutePath().normalize());
        screen.flush();
        return noServe ? Exit.DONE : Serving.untilStopped(screen, port, books, "/jobs/" + job);
    }
}
