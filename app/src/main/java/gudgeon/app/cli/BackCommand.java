package gudgeon.app.cli;

import gudgeon.app.desk.ComingBack;
import gudgeon.app.format.PlainJson;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Coming back after a pause. */
@Command(
        name = "back",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Coming back after a pause: how it was left, what is due, what to look at again, what to begin with.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:There is no such job", "2:Wrong usage", "4:The program or the machine failed"},
        footer = {"", "Example: gudgeon back --job barn"})
final class BackCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    BackCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).onJob((workshop, job) -> {
            ComingBack back = ComingBack.to(job, workshop.now());
            if (options.json()) {
                screen.out().print(PlainJson.text(SessionJson.back(job, back, workshop.now())));
            } else {
                new SessionText(screen, job).back(back);
            }
            return Exit.DONE;
        });
    }
}
