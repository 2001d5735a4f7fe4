package gudgeon.app.cli;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.TroubleMet;
import gudgeon.app.desk.Workshop;
import gudgeon.app.document.RescueWords;
import gudgeon.core.book.Fault;
import gudgeon.core.book.RescueLadder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Fasteners resist, are damaged or missing; tells what to try, gentlest first. */
@Command(
        name = "trouble",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Fasteners resist, are damaged or missing; tells what to try, gentlest first.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon trouble exhaust-nuts seized --fastener 2"})
final class TroubleCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "JOINT", description = "Joint: its id, or its name in quotes.")
    private String joint = "";

    @Parameters(index = "1", paramLabel = "KIND", description = "One of ${COMPLETION-CANDIDATES}.")
    private Fault.Kind kind = Fault.Kind.SEIZED;

    @Option(
            names = "--fastener",
            paramLabel = "N",
            split = ",",
            description = "Which: its number in the joint; again for more.")
    private List<String> fasteners = new ArrayList<>();

    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "A word on it.")
    private String note = "";

    TroubleCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).onJob((workshop, job) -> {
            JobRun run = new JobRun(screen, options);
            Workshop.Noted noted =
                    workshop.note(job, new TroubleMet(joint, kind, fasteners, note), run.who(), Optional.empty());
            int exit = run.told(noted);
            if (noted instanceof Workshop.Noted.Done done
                    && done.entries().getFirst().body() instanceof Fault.Trouble trouble
                    && !options.json()) {
                ladder(done.job(), trouble);
            }
            return exit;
        });
    }

    private void ladder(Job job, Fault.Trouble trouble) {
        Layout layout = new Layout(screen);
        layout.heading("What to try, gentlest first (common practice, times typical)");
        for (RescueLadder.Rung rung : TroubleMet.ladder(job, trouble.joint(), trouble.kind())) {
            new CautionLines(screen).print(4, rung.cautions());
            layout.hanging("    " + rung.id() + ": ", 6, RescueWords.rung(rung.id()) + ", " + rung.minutes() + " min");
        }
    }
}
