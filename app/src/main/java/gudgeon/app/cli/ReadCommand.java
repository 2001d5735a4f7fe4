package gudgeon.app.cli;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Gauges;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.MeasuredFeature;
import gudgeon.app.desk.ReadingsIn;
import gudgeon.app.desk.TakeReading;
import gudgeon.app.desk.Workshop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A place of a feature was read. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A place of a feature was read: writes it down and tells what it comes to.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {
            "",
            "Example: gudgeon read cylinder-bore-1 86.012mm --place \"10 mm, thrust\" --with \"bore gauge\" --at 18°C"
        })
final class ReadCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "FEATURE",
            description = "What was read, as gudgeon job measure calls it.")
    private String feature = "";

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "READING",
            description = "What the instrument showed, with its unit; repeats after it.")
    private List<String> shown = new ArrayList<>();

    @Option(
            names = "--place",
            paramLabel = "PLACE",
            defaultValue = "",
            description = "Where: which one, depth, direction, parted by commas.")
    private String place = "";

    @Option(
            names = "--with",
            paramLabel = "INSTRUMENT",
            defaultValue = "",
            description = "One of your own, or a common kind.")
    private String instrument = "";

    @Option(names = "--at", paramLabel = "TEMPERATURE", defaultValue = "", description = "How warm the part was.")
    private String at = "";

    @Option(
            names = "--standard-at",
            paramLabel = "TEMPERATURE",
            defaultValue = "",
            description = "How warm the setting standard was.")
    private String standardAt = "";

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            defaultValue = "",
            description =
                    "Take in a table instead: feature, place, reading mm, instrument, part °C; all lines or none.")
    private String csv = "";

    ReadCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (csv.isEmpty() == feature.isEmpty() || (csv.isEmpty() && shown.isEmpty())) {
            throw options.wrong("say FEATURE and what was read, or --csv FILE");
        }
        return new JobRun(screen, options).onJob(this::read);
    }

    private int read(Workshop workshop, Job job) {
        Gauges gauges = Gauges.of(workshop, job);
        Deed deed = csv.isEmpty()
                ? new TakeReading(feature, place, shown, instrument, at, standardAt, gauges, false)
                : new ReadingsIn(csv, text(), gauges);
        JobRun run = new JobRun(screen, options);
        int exit = run.told(workshop.note(job, deed, run.who(), Optional.empty()));
        if (exit == Exit.DONE && csv.isEmpty() && !options.json()) {
            workshop.findJob(job.id())
                    .ifPresent(now -> now.engine().features().stream()
                            .filter(one -> now.facts()
                                    .gauged()
                                    .readings()
                                    .getLast()
                                    .said()
                                    .feature()
                                    .equals(one.id()))
                            .findFirst()
                            .ifPresent(one ->
                                    new JobMeasureText(screen, now).sheet(MeasuredFeature.of(now, gauges, one))));
        }
        return exit;
    }

    private String text() {
        try {
            return Files.readString(Path.of(csv));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + csv, e);
        }
    }
}
