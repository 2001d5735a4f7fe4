package gudgeon.app.cli;

import gudgeon.app.desk.OpenJob;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.format.ShippedEngines;
import gudgeon.core.book.Setup;
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

/** A job begins. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Begins a job on a shipped engine, on one like it, on your own file, or on nearly nothing.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:The file has faults, or a name means nothing in it; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {
            "",
            "Examples: gudgeon job new dunlin-22d --reach head --with helper --name \"Pickup\"",
            "          gudgeon job new wren-160 --as \"Old mower\" --reach piston"
        })
final class JobNewCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(
            paramLabel = "ENGINE",
            arity = "0..1",
            defaultValue = "",
            description =
                    "A shipped engine, or an engine file. Without it: nearly nothing, to be filled while stripping.")
    private String engine = "";

    @Option(
            names = "--as",
            paramLabel = "NAME",
            defaultValue = "",
            description = "Your engine is like the shipped one, and called this; correct the file while stripping.")
    private String as = "";

    @Option(names = "--name", paramLabel = "NAME", defaultValue = "", description = "What you call the job.")
    private String name = "";

    @Option(names = "--reach", split = ",", paramLabel = "PART", description = "Part to have off; again for more.")
    private List<String> reach = new ArrayList<>();

    @Option(names = "--aside", split = ",", paramLabel = "PART", description = "Part to have out of the way.")
    private List<String> aside = new ArrayList<>();

    @Option(names = "--open", split = ",", paramLabel = "JOINT", description = "Joint to have undone.")
    private List<String> open = new ArrayList<>();

    @Option(names = "--measure", split = ",", paramLabel = "FEATURE", description = "Feature to be able to measure.")
    private List<String> measure = new ArrayList<>();

    @Option(names = "--with", split = ",", paramLabel = "WAY", description = "Way of lifting beside your own arms.")
    private List<String> with = new ArrayList<>();

    @Option(names = "--worth", paramLabel = "N", defaultValue = "0", description = "What an hour of yours is worth.")
    private double worth;

    JobNewCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (!(worth >= 0 && worth <= 10_000)) {
            throw options.wrong("--worth is from 0 to 10000, not " + worth);
        }
        String called = !name.isEmpty() ? name : !as.isEmpty() ? as : engine.isEmpty() ? "My engine" : engine;
        OpenJob opening = new OpenJob(
                called,
                start(),
                new StripQuestion.Goal(reach, aside, open, measure),
                new Setup.Settings(with, worth, "metric", ""));
        JobRun run = new JobRun(screen, options);
        return run.inWorkshop(workshop -> switch (opening.open(workshop, run.who(), Optional.empty())) {
            case OpenJob.Reply.Refused refused -> {
                refused.problems().forEach(problem -> screen.err().println("gudgeon: " + FieldText.of(problem)));
                yield Exit.INPUT;
            }
            case OpenJob.Reply.Opened opened -> {
                JobAnswers answers = new JobAnswers(screen, opened.job(), options.json());
                if (!options.json()) {
                    screen.out().println("Job " + opened.job().id());
                }
                yield answers.show();
            }
        });
    }

    private OpenJob.Start start() {
        if (engine.isEmpty()) {
            return new OpenJob.Start.Empty(as.isEmpty() ? name : as);
        }
        if (!as.isEmpty()) {
            return new OpenJob.Start.Like(engine, as);
        }
        if (ShippedEngines.find(engine).isPresent()) {
            return new OpenJob.Start.Shipped(engine);
        }
        try {
            return new OpenJob.Start.Own(Path.of(engine));
        } catch (InvalidPathException e) {
            throw options.wrong("no file can be called '" + engine + "'");
        }
    }
}
