package gudgeon.app.cli;

import gudgeon.app.desk.JobList;
import gudgeon.app.format.PlainJson;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Tells the next step of a job, with its cautions first. */
@Command(
        name = "next",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Tells the next step of a job, with its cautions first.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:There is no such job", "2:Wrong usage", "4:The program or the machine failed"},
        footer = {"", "Example: gudgeon next --job barn"})
final class NextCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    NextCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).onJob((workshop, job) -> {
            if (options.json()) {
                screen.out().print(PlainJson.text(JobJson.line(JobList.line(job))));
            } else {
                new JobText(screen, job).next();
            }
            return Exit.DONE;
        });
    }
}
