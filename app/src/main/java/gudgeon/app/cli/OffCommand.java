package gudgeon.app.cli;

import gudgeon.app.desk.PartsOff;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Parts come away as one piece, and go somewhere. */
@Command(
        name = "off",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Parts come away as one piece, and go somewhere.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon off head --to shelf --marked \"arrow to the front\""})
final class OffCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(
            index = "0",
            paramLabel = "PART",
            arity = "1..*",
            split = ",",
            description = "Parts, ids or names, parted by commas.")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--to", paramLabel = "PLACE", defaultValue = "", description = "Where they lie.")
    private String to = "";

    @Option(names = "--aside", description = "They still hang on the engine.")
    private boolean aside = false;

    @Option(names = "--marked", paramLabel = "HOW", defaultValue = "", description = "How they were marked.")
    private String marked = "";

    OffCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).say(new PartsOff(parts, to, aside, marked));
    }
}
