package gudgeon.app.cli;

import gudgeon.app.desk.Say;
import gudgeon.core.book.Keeping;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A bag: what is in it, where it lies, how many were counted. */
@Command(
        name = "bag",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A bag: what is in it, where it lies, how many were counted.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon bag 7 --to \"left drawer\""})
final class BagCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "BAG", description = "What is written on it.")
    private String bag = "";

    @Option(names = "--contents", paramLabel = "TEXT", defaultValue = "", description = "What is in it.")
    private String contents = "";

    @Option(names = "--to", paramLabel = "PLACE", defaultValue = "", description = "Where it lies.")
    private String to = "";

    @Option(
            names = "--count",
            paramLabel = "N",
            defaultValue = "-1",
            description = "Fasteners counted. Default: as the file says.")
    private int count = -1;

    @Option(names = "--opened", paramLabel = "WHY", defaultValue = "", description = "Somebody was at it.")
    private String opened = "";

    BagCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (bag.isBlank()) {
            throw options.wrong("a bag has something written on it");
        }
        return new JobRun(screen, options).say(Say.that(body()));
    }

    private Keeping body() {
        if (count >= 0) {
            return new Keeping.Counted(bag, Math.min(count, 9_999));
        }
        if (!opened.isEmpty()) {
            return new Keeping.BagOpened(bag, opened);
        }
        return contents.isEmpty() && !to.isEmpty()
                ? new Keeping.BagMoved(bag, to)
                : new Keeping.BagMade(bag, contents, to);
    }
}
