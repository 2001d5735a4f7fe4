package gudgeon.app.cli;

import gudgeon.app.desk.UndoLast;
import gudgeon.app.desk.Withdraw;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The last thing said, or one entry, no longer counts; it stays in the book, struck through. */
@Command(
        name = "undo",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "The last thing said, or one entry, no longer counts; it stays in the book, struck through.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon undo --why \"wrong joint\""})
final class UndoCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Option(
            names = "--entry",
            paramLabel = "ID",
            defaultValue = "",
            description = "Id of the entry, from gudgeon job book. A withdrawal can be withdrawn.")
    private String entry = "";

    @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "A word on it.")
    private String why = "";

    UndoCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (entry.isEmpty()) {
            return new JobRun(screen, options).say(new UndoLast());
        }
        try {
            return new JobRun(screen, options).say(new Withdraw(UUID.fromString(entry), why));
        } catch (IllegalArgumentException e) {
            throw options.wrong("--entry is an id from gudgeon job book, not '" + entry + "'");
        }
    }
}
