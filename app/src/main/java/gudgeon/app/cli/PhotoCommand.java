package gudgeon.app.cli;

import gudgeon.app.desk.PhotoTaken;
import gudgeon.app.desk.Things;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps a photo in the book. */
@Command(
        name = "photo",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Keeps a photo in the book.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon photo head.jpg --about head --caption \"how the pipe runs\""})
final class PhotoCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "FILE", description = "JPEG, PNG or WebP, up to 12 MB.")
    private String file = "";

    @Option(
            names = "--about",
            paramLabel = "THING",
            split = ",",
            description = "Part or joint it is about; again for more.")
    private List<String> about = new ArrayList<>();

    @Option(names = "--caption", paramLabel = "TEXT", defaultValue = "", description = "What it shows.")
    private String caption = "";

    PhotoCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        byte[] bytes = bytes();
        return new JobRun(screen, options).onJob((workshop, job) -> {
            JobRun run = new JobRun(screen, options);
            return run.told(
                    PhotoTaken.whole(bytes, caption, Things.refs(job, about)).note(workshop, job, run.who(), Optional.empty()));
        });
    }

    private byte[] bytes() {
        try (InputStream in = Files.newInputStream(Path.of(file))) {
            return in.readNBytes(PhotoTaken.MOST_BYTES + 1);
        } catch (IOException | InvalidPathException e) {
            throw options.wrong("the photo " + file + " cannot be read");
        }
    }
}
