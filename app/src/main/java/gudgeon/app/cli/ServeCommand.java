package gudgeon.app.cli;

import gudgeon.app.store.StoreFile;
import gudgeon.app.web.WebServer;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The pages for the bench. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        header = "Serves the pages for the bench to a browser on this machine.",
        description = "Prints the address and serves until it is told to stop (Ctrl-C).",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "2:Wrong usage", "4:The program or the machine failed"},
        footer = {"", "Example: gudgeon serve --port 8000"})
final class ServeCommand implements Callable<Integer> {
    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "" + WebServer.PORT,
            description = "Port to listen on; 0 for any that is free. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--store",
            paramLabel = "FILE",
            defaultValue = "",
            description = "File of the books of your jobs, made when it is not there. Default: books.sqlite in your data folder.")
    private String store = "";

    ServeCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() throws InterruptedException {
        Serving.fault(port).ifPresent(fault -> {
            throw new ParameterException(spec.commandLine(), fault);
        });
        return Serving.untilStopped(screen, port, file(), "");
    }

    private Path file() {
        try {
            return StoreFile.of(store, System.getenv());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--store: " + e.getMessage(), e);
        }
    }
}
