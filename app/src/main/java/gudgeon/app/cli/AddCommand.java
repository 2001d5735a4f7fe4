package gudgeon.app.cli;

import gudgeon.app.desk.JointAdded;
import gudgeon.app.desk.JointCorrected;
import gudgeon.app.desk.PartAdded;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Adds a joint or a part that the file lacks, or puts a joint right. */
@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Adds a joint or a part that the file lacks, or puts a joint right.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {
            "",
            "Example: gudgeon add --joint \"Bracket bolts\" --between \"bracket, block\" --fasteners \"2 x M8x25\""
        })
final class AddCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Option(names = "--joint", paramLabel = "NAME", defaultValue = "", description = "Name of the new joint.")
    private String joint = "";

    @Option(
            names = "--part",
            paramLabel = "NAME",
            defaultValue = "",
            description = "Name of a new part; it comes with what holds it.")
    private String part = "";

    @Option(
            names = "--correct",
            paramLabel = "JOINT",
            defaultValue = "",
            description = "Joint to put right; what is not given stays.")
    private String correct = "";

    @Option(
            names = "--name",
            paramLabel = "NAME",
            defaultValue = "",
            description = "Its name from now on, with --correct.")
    private String name = "";

    @Option(
            names = "--between",
            paramLabel = "PARTS",
            defaultValue = "",
            description = "Parts it joins, parted by commas; for a new part, what it sits on.")
    private String between = "";

    @Option(
            names = "--fasteners",
            paramLabel = "TEXT",
            defaultValue = "",
            description = "As one says it: 4 x M8x25; or a kind without: slide.")
    private String fasteners = "";

    @Option(
            names = "--tighten",
            paramLabel = "TEXT",
            defaultValue = "",
            description = "As a manual says it: 30 N·m, 90°, oiled. With --joint or --correct.")
    private String tighten = "";

    @Option(names = "--mass", paramLabel = "MASS", defaultValue = "", description = "Mass of a new part: 0.4 kg.")
    private String mass = "";

    AddCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        long given =
                Stream.of(joint, part, correct).filter(text -> !text.isEmpty()).count();
        if (given != 1) {
            throw options.wrong("one of --joint, --part and --correct says what is added or put right");
        }
        if (!part.isEmpty()) {
            return new JobRun(screen, options).say(new PartAdded(part, mass, between, fasteners));
        }
        return new JobRun(screen, options)
                .say(
                        joint.isEmpty()
                                ? new JointCorrected(correct, name, between, fasteners, tighten)
                                : new JointAdded(joint, between, fasteners, tighten));
    }
}
