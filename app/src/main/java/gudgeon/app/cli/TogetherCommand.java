package gudgeon.app.cli;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.FastenersRenewed;
import gudgeon.app.desk.FastenersTurned;
import gudgeon.app.desk.StageBroken;
import gudgeon.app.desk.StepTogether;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A step of the way back is done, or some fasteners of a stage, or a stage was broken off. */
@Command(
        name = "together",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A step of the way back is done, or some fasteners of a stage, or a stage was broken off.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon together head-studs/2 --fastener 1,3"})
final class TogetherCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "STEP", description = "Id of the step, from gudgeon job build.")
    private String step = "";

    @Option(
            names = "--fastener",
            paramLabel = "N",
            split = ",",
            description = "Which: its number in the joint; again for more.")
    private List<String> fasteners = new ArrayList<>();

    @Option(names = "--broken-off", description = "The stage was broken off.")
    private boolean broken = false;

    @Option(names = "--uncertain", description = "With --broken-off: it is not certain which were turned.")
    private boolean uncertain = false;

    @Option(names = "--renewed", description = "STEP is a joint: all its fasteners came out and are renewed.")
    private boolean renewed = false;

    @Option(names = "--minutes", paramLabel = "N", defaultValue = "0", description = "How long it took.")
    private double minutes = 0;

    @Option(names = "--litres", paramLabel = "N", defaultValue = "0", description = "What was filled.")
    private double litres = 0;

    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What was seen, for a check.")
    private String note = "";

    TogetherCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).say(deed());
    }

    private Deed deed() {
        if (renewed) {
            return new FastenersRenewed(step, note);
        }
        if (broken) {
            return new StageBroken(step, !uncertain, fasteners);
        }
        return fasteners.isEmpty()
                ? new StepTogether(step, minutes, litres, note)
                : new FastenersTurned(step, fasteners);
    }
}
