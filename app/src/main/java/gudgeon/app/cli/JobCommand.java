package gudgeon.app.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Jobs, and what is asked about one. */
@Command(
        name = "job",
        mixinStandardHelpOptions = true,
        header = "Begins a job, and answers what is asked about it.",
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "3:There is no plan, or the ledgers do not balance; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon job new wren-160 --reach piston --name \"Mower in the barn\""})
final class JobCommand implements Callable<Integer> {
    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    JobCommand(Screen screen) {
        this.screen = screen;
    }

    /** The command with everything below it. */
    static CommandLine line(Screen screen) {
        CommandLine job = new CommandLine(new JobCommand(screen));
        job.addSubcommand(new JobNewCommand(screen));
        for (JobQuestion question : JobQuestion.values()) {
            CommandLine below = new CommandLine(new JobQuestionCommand(screen, question));
            below.getCommandSpec().name(question.word()).usageMessage().header(question.header());
            below.getCommandSpec().usageMessage().footer("", "Example: gudgeon job " + question.word() + " --job barn");
            job.addSubcommand(question.word(), below);
        }
        return job;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(screen.out());
        return Exit.DONE;
    }
}
