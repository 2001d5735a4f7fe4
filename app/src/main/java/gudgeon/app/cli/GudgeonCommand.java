package gudgeon.app.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself: says what there is. */
@Command(
        name = "gudgeon",
        mixinStandardHelpOptions = true,
        version = "gudgeon 0.1.0",
        synopsisSubcommandLabel = "COMMAND",
        header = "Plans the strip of an engine with proof, and the way back.",
        description = "FILE is an engine file, or the name of a shipped engine such as wren-160.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:The input has faults, or a name means nothing in it",
            "2:Wrong usage",
            "3:There is no plan; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {"", "First: gudgeon demo"})
final class GudgeonCommand implements Runnable {
    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    GudgeonCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        spec.commandLine().usage(screen.out());
    }
}
