package gudgeon.app.cli;

import gudgeon.app.desk.Preparing;
import gudgeon.app.desk.Today;
import gudgeon.app.desk.TodayQuestion;
import gudgeon.app.format.PlainJson;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What to have ready before the next sessions. */
@Command(
        name = "prepare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "What to buy, borrow, hire and lay out before the next sessions.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job",
            "2:Wrong usage",
            "3:There is nothing to prepare",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon prepare --minutes 240"})
final class PrepareCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Option(
            names = "--minutes",
            paramLabel = "N",
            defaultValue = "180",
            description = "Work to look ahead, 5 to 1440. Default: 180.")
    private int minutes = 180;

    PrepareCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (minutes < TodayQuestion.SHORTEST || minutes > TodayQuestion.LONGEST) {
            throw options.wrong(
                    "--minutes is " + TodayQuestion.SHORTEST + " to " + TodayQuestion.LONGEST + ", not " + minutes);
        }
        return new JobRun(screen, options).onJob((workshop, job) -> {
            if (!(TodayQuestion.of(minutes).ask(job, workshop.now())
                    instanceof TodayQuestion.Reply.Planned(Today today))) {
                screen.err().println("gudgeon: nothing to prepare: " + JobText.stage(job.stage()));
                return Exit.BLOCKED;
            }
            List<Today.Work> works = today.works()
                    .subList(
                            0,
                            Math.min(
                                    today.works().size(),
                                    Math.max(1, today.plan().steps())));
            Preparing ready = Preparing.of(job, works);
            if (options.json()) {
                screen.out().print(PlainJson.text(ready));
            } else {
                new SessionText(screen, job).prepare(ready);
            }
            return Exit.DONE;
        });
    }
}
