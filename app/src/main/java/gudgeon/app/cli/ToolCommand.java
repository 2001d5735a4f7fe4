package gudgeon.app.cli;

import gudgeon.app.desk.Say;
import gudgeon.core.book.Keeping;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says whether a tool is there: your own, borrowed, or missing. */
@Command(
        name = "tool",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Says whether a tool is there: your own, borrowed, or missing.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon tool \"torque wrench\" --borrowed-from Ann"})
final class ToolCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "TOOL", description = "What steps call it.")
    private String tool = "";

    @Option(names = "--owned", description = "It is yours.")
    private boolean owned;

    @Option(names = "--borrowed-from", paramLabel = "NAME", defaultValue = "", description = "Somebody lends it.")
    private String from = "";

    @Option(names = "--missing", description = "It is not there.")
    private boolean missing;

    ToolCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        int said = (owned ? 1 : 0) + (missing ? 1 : 0) + (from.isBlank() ? 0 : 1);
        if (tool.isBlank() || said != 1) {
            throw options.wrong("a tool is one of: --owned, --borrowed-from NAME, --missing");
        }
        Keeping.Whose whose =
                owned ? Keeping.Whose.OWNED : missing ? Keeping.Whose.MISSING : Keeping.Whose.BORROWED;
        return new JobRun(screen, options).say(Say.that(new Keeping.ToolMarked(tool.strip(), whose, from.strip())));
    }
}
