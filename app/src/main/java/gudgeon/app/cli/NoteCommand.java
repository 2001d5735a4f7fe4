package gudgeon.app.cli;

import gudgeon.app.desk.Say;
import gudgeon.app.desk.Things;
import gudgeon.core.book.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a note into the book. */
@Command(
        name = "note",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Writes a note into the book.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon note \"left stud worn\" --about head"})
final class NoteCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "TEXT", description = "The note.")
    private String text = "";

    @Option(
            names = "--about",
            paramLabel = "THING",
            split = ",",
            description = "Part or joint it is about; again for more.")
    private List<String> about = new ArrayList<>();

    NoteCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (text.isBlank()) {
            throw options.wrong("a note is not empty");
        }
        return new JobRun(screen, options).onJob((workshop, job) -> {
            JobRun run = new JobRun(screen, options);
            return run.told(workshop.note(job, new Say(new Word.Note(text), Things.refs(job, about)), run.who(), Optional.empty()));
        });
    }
}
