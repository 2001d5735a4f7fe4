package gudgeon.app.cli;

import gudgeon.app.desk.CountFound;
import gudgeon.core.book.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How a joint was found: count, sizes, bag, what differs from the file. */
@Command(
        name = "found",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "How a joint was found: count, sizes, bag, what differs from the file.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon found stand-bolts --count 3 --piece \"1,M8x1.25,45,front left\" --bag 4"})
final class FoundCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "JOINT", description = "Joint: its id, or its name in quotes.")
    private String joint = "";

    @Option(
            names = "--count",
            paramLabel = "N",
            defaultValue = "-1",
            description = "Fasteners counted. Default: as the file says.")
    private int count = -1;

    @Option(
            names = "--piece",
            paramLabel = "N,THREAD,LENGTH,WHERE",
            description = "Some that are alike: how many, thread, length in mm, where; again for more.")
    private List<String> pieces = new ArrayList<>();

    @Option(names = "--bag", paramLabel = "BAG", defaultValue = "", description = "Bag they went into.")
    private String bag = "";

    @Option(names = "--differs", paramLabel = "TEXT", defaultValue = "", description = "How it differs from the file.")
    private String differs = "";

    @Option(names = "--instead", description = "The last count was wrong and no longer counts.")
    private boolean instead = false;

    FoundCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<Strip.Piece> found = pieces.stream().map(this::piece).toList();
        return new JobRun(screen, options)
                .say(new CountFound(
                        joint, count < 0 ? OptionalInt.empty() : OptionalInt.of(count), found, bag, differs, instead));
    }

    private Strip.Piece piece(String text) {
        String[] words = (text + ",,,").split(",", -1);
        try {
            double length = words[2].isBlank()
                    ? 0
                    : Double.parseDouble(words[2].replace("mm", "").strip());
            return new Strip.Piece(Integer.parseInt(words[0].strip()), words[1].strip(), length, words[3].strip());
        } catch (IllegalArgumentException e) {
            throw options.wrong("--piece '" + text + "' cannot be read. Maybe --piece \"1,M8x1.25,45,front left\"?");
        }
    }
}
