package gudgeon.app.cli;

import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.logging.LogManager;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Starts the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        LogManager.getLogManager().reset(); // libraries do not speak on the person's screen
        System.exit(run(Screen.ofProcess(), args));
    }

    /** Runs one command and gives its exit code; never throws for what a command meets. */
    static int run(Screen screen, String... args) {
        try {
            return commandLine(screen).execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            screen.err().println("gudgeon: this is too big or too deep for the memory of this machine");
            return Exit.FAILED;
        } finally {
            screen.flush();
        }
    }

    static CommandLine commandLine(Screen screen) {
        CommandLine root = new CommandLine(new GudgeonCommand(screen));
        root.addSubcommand(new CheckCommand(screen));
        root.addSubcommand(new EngineCommand(screen));
        root.addSubcommand(new FindCommand(screen));
        root.addSubcommand(new StripCommand(screen));
        root.addSubcommand(new BuildCommand(screen));
        root.addSubcommand(new OrderCommand(screen));
        root.addSubcommand(new DrawCommand(screen));
        root.addSubcommand(MeasureCommand.line(screen));
        root.addSubcommand(new BoltCommand(screen));
        root.addSubcommand(new FitCommand(screen));
        root.addSubcommand(JobCommand.line(screen));
        root.addSubcommand(new GeometryCommand(screen));
        benchCommands(root, screen);
        root.addSubcommand(new DemoCommand(screen));
        root.addSubcommand(new ServeCommand(screen));
        root.addSubcommand(new CommandLine.HelpCommand());
        root.setOut(screen.out());
        root.setErr(screen.err());
        root.setColorScheme(CommandLine.Help.defaultColorScheme(
                screen.colour() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
        root.setCaseInsensitiveEnumValuesAllowed(true);
        root.setUsageHelpWidth(screen.width());
        root.setParameterExceptionHandler((wrong, words) -> misused(wrong, screen));
        root.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure, screen));
        return root;
    }

    private static void benchCommands(CommandLine root, Screen screen) {
        root.addSubcommand(new TodayCommand(screen));
        root.addSubcommand(new BackCommand(screen));
        root.addSubcommand(new PrepareCommand(screen));
        root.addSubcommand(new NextCommand(screen));
        root.addSubcommand(new DoneCommand(screen));
        root.addSubcommand(new OffCommand(screen));
        root.addSubcommand(new FoundCommand(screen));
        root.addSubcommand(new TroubleCommand(screen));
        root.addSubcommand(new RescueCommand(screen));
        root.addSubcommand(new WontCommand(screen));
        root.addSubcommand(new AddCommand(screen));
        root.addSubcommand(new TogetherCommand(screen));
        root.addSubcommand(new BagCommand(screen));
        root.addSubcommand(new ToolCommand(screen));
        root.addSubcommand(new CameCommand(screen));
        root.addSubcommand(new ReadCommand(screen));
        root.addSubcommand(new NoteCommand(screen));
        root.addSubcommand(new PhotoCommand(screen));
        root.addSubcommand(new TellCommand(screen));
        root.addSubcommand(new UndoCommand(screen));
    }

    private static int misused(CommandLine.ParameterException wrong, Screen screen) {
        CommandLine command = wrong.getCommandLine();
        screen.err().println("gudgeon: " + wrong.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, screen.err());
        screen.err().println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
        return Exit.USAGE;
    }

    private static int failed(Exception failure, Screen screen) {
        if (failure instanceof UncheckedIOException world) {
            screen.err().println("gudgeon: " + reason(world));
        } else {
            screen.err()
                    .println("gudgeon: an error of the program, not yours: "
                            + failure.getClass().getSimpleName() + said(failure.getMessage()));
        }
        return Exit.FAILED;
    }

    private static String reason(UncheckedIOException world) {
        String what = String.valueOf(world.getMessage());
        return world.getCause() instanceof FileSystemException file && file.getReason() != null
                ? what + ": " + file.getReason()
                : what;
    }

    private static String said(@Nullable String message) {
        return message == null ? "" : ": " + message;
    }
}
