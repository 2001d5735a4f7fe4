package gudgeon.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Numbers in, answer and reasons out: what readings are worth. No job is needed. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "WHAT",
        header = "Says what readings are worth: size at 20 °C, uncertainty, verdict and reasons. No job is needed.",
        footer = {"", "Example: gudgeon measure reading 86.076mm 86.078mm --with \"bore gauge\" --most 86.080mm"})
final class MeasureCommand implements Runnable {
    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    private MeasureCommand(Screen screen) {
        this.screen = screen;
    }

    static CommandLine line(Screen screen) {
        CommandLine line = new CommandLine(new MeasureCommand(screen));
        line.addSubcommand(new MeasureReadingCommand(screen));
        line.addSubcommand(MeasureDiametersCommand.line(screen, true));
        line.addSubcommand(MeasureDiametersCommand.line(screen, false));
        line.addSubcommand(new MeasureClearanceCommand(screen));
        line.addSubcommand(new MeasureFlatnessCommand(screen));
        line.addSubcommand(new MeasureRunOutCommand(screen));
        line.addSubcommand(new MeasureRoundCommand(screen));
        line.addSubcommand(new MeasureSpringCommand(screen));
        line.addSubcommand(new MeasureLobeCommand(screen));
        line.addSubcommand(new MeasureRodCommand(screen));
        line.addSubcommand(new MeasureSeatCommand(screen));
        line.addSubcommand(new MeasureGapCommand(screen));
        line.addSubcommand(new MeasureWearCommand(screen));
        return line;
    }

    @Override
    public void run() {
        spec.commandLine().usage(screen.out());
    }
}
