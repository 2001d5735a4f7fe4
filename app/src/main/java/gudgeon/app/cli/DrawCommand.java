package gudgeon.app.cli;

import gudgeon.app.desk.DrawQuestion;
import gudgeon.app.document.EngineDrawing;
import gudgeon.app.document.Theme;
import gudgeon.core.engine.Engine;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The engine as a drawing. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Draws the engine, with the plan on it when there is something to reach.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:The file has faults, or a name means nothing in it",
            "2:Wrong usage",
            "3:There is no plan of the strip; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon draw dunlin-22d --reach head --with helper -o head.svg"})
final class DrawCommand implements Callable<Integer> {
    private static final int NARROWEST = 320;

    /** Colours of a drawing. */
    enum Colours {
        paper,
        dark,
        sun,
        print
    }

    private final Screen screen;

    @Mixin
    private TargetOptions options = new TargetOptions();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            defaultValue = "-",
            description = "SVG file to write; - for the screen, which is the default.")
    private String output = "-";

    @Option(
            names = "--theme",
            paramLabel = "NAME",
            defaultValue = "paper",
            description = "Colours: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Colours theme = Colours.paper;

    @Option(names = "--all", description = "Draw every part by itself, not only those that the plan concerns.")
    private boolean all;

    @Option(
            names = "--width",
            paramLabel = "N",
            defaultValue = "1400",
            description = "Width to keep to: 1400 for a wide sheet, 360 for a phone. Default: ${DEFAULT-VALUE}.")
    private int width;

    DrawCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        DrawQuestion question = new DrawQuestion(drawn(), Papers.issue());
        if (!options.isEmpty()) {
            return new StripRun(screen, options, false).then(planned -> {
                new Papers(screen).writeText(output, () -> question.ask(planned));
                return Exit.DONE;
            });
        }
        Optional<Engine> engine = new Inputs(screen).engine(options.file());
        engine.ifPresent(whole -> new Papers(screen).writeText(output, () -> question.ask(whole)));
        return engine.isPresent() ? Exit.DONE : Exit.INPUT;
    }

    private EngineDrawing.Options drawn() {
        if (width < NARROWEST || width > 10 * EngineDrawing.Options.WIDE.width()) {
            throw options.wrong("--width is from " + NARROWEST + " to "
                    + 10 * EngineDrawing.Options.WIDE.width() + ", not " + width);
        }
        EngineDrawing.Options wide = EngineDrawing.Options.WIDE
                .with(Theme.valueOf(theme.name().toUpperCase(Locale.ROOT)))
                .withWidth(width);
        return all ? wide.withEverything() : wide;
    }
}
