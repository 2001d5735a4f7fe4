package gudgeon.app.cli;

import gudgeon.app.desk.JointRefuses;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A joint will not come, or comes after all; the plan changes. */
@Command(
        name = "wont",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A joint will not come, or comes after all; the plan changes.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon wont exhaust-nuts"})
final class WontCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(index = "0", paramLabel = "JOINT", description = "Joint: its id, or its name in quotes.")
    private String joint = "";

    @Option(names = "--comes", description = "It comes after all.")
    private boolean comes = false;

    WontCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new JobRun(screen, options).say(new JointRefuses(joint, comes));
    }
}
