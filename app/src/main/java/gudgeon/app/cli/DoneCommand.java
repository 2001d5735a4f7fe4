package gudgeon.app.cli;

import gudgeon.app.desk.StepDone;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A joint is undone, or a preparation done, by plan or out of turn. */
@Command(
        name = "done",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A joint is undone, or a preparation done, by plan or out of turn.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon done exhaust-nuts --count 2 --bag 7 --minutes 12"})
final class DoneCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "WHAT", description = "Joint or preparation: its id, or its name in quotes.")
    private String operation = "";

    @Option(
            names = "--count",
            paramLabel = "N",
            defaultValue = "-1",
            description = "Fasteners counted. Default: as the file says.")
    private int count = -1;

    @Option(names = "--bag", paramLabel = "BAG", defaultValue = "", description = "Bag the fasteners went into.")
    private String bag = "";

    @Option(names = "--minutes", paramLabel = "N", defaultValue = "0", description = "How long it took.")
    private double minutes = 0;

    @Option(names = "--cut", description = "It was destroyed in the way that the file gives.")
    private boolean cut = false;

    DoneCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options)
                .say(new StepDone(
                        operation, count < 0 ? OptionalInt.empty() : OptionalInt.of(count), bag, minutes, cut));
    }
}
