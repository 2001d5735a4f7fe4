package gudgeon.app.cli;

import gudgeon.app.desk.RescueTried;
import gudgeon.core.book.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Something was tried on fasteners that give trouble. */
@Command(
        name = "rescue",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Something was tried on fasteners that give trouble.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon rescue exhaust-nuts drill --fastener 2 --outcome drilled --minutes 70"})
final class RescueCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "JOINT", description = "Joint: its id, or its name in quotes.")
    private String joint = "";

    @Parameters(
            index = "1",
            paramLabel = "RUNG",
            description = "What was tried: an id of the ladder, or your own words.")
    private String rung = "";

    @Option(
            names = "--fastener",
            paramLabel = "N",
            split = ",",
            description = "Which: its number in the joint; again for more.")
    private List<String> fasteners = new ArrayList<>();

    @Option(names = "--minutes", paramLabel = "N", defaultValue = "0", description = "How long it took.")
    private double minutes = 0;

    @Option(
            names = "--outcome",
            paramLabel = "OUTCOME",
            defaultValue = "NO",
            description = "One of ${COMPLETION-CANDIDATES}.")
    private Fault.Outcome outcome = Fault.Outcome.NO;

    RescueCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).say(new RescueTried(joint, fasteners, rung, minutes, outcome));
    }
}
