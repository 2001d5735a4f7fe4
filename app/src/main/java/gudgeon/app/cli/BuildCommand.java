package gudgeon.app.cli;

import gudgeon.app.desk.BuildQuestion;
import gudgeon.app.desk.PaperQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.format.BuildJson;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How it goes back together. */
@Command(
        name = "build",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Plans the way back after that strip: order, torques, patterns, checks, fills.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:There is a plan; steps that lack something say so",
            "1:The file has faults, or a name means nothing in it",
            "2:Wrong usage",
            "3:There is no plan of the strip; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon build wren-160 --reach head --missing \"head gasket\""})
final class BuildCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private TargetOptions options = new TargetOptions();

    @Option(
            names = "--missing",
            paramLabel = "SPEC",
            description = "New piece, compound or fluid that is not in hand, as the order list names it; again for more.")
    private List<String> missing = new ArrayList<>();

    @Option(
            names = "--confirmed",
            split = ",",
            paramLabel = "FEATURE",
            description = "Feature whose typical limits you have confirmed from your manual.")
    private List<String> confirmed = new ArrayList<>();

    @Option(names = "--pdf", paramLabel = "FILE", defaultValue = "", description = "Write the build sheet as PDF, to print.")
    private String pdf = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    BuildCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new StripRun(screen, options, json).then(this::build);
    }

    private int build(Reply.Planned strip) {
        BuildQuestion question = new BuildQuestion(strip, missing, confirmed);
        return switch (Waiting.on(screen, "planning the way back", question::ask)) {
            case BuildQuestion.Reply.Planned planned -> {
                if (json) {
                    screen.out().print(BuildJson.write(
                            strip.engine(), strip.request(), planned.request(), planned.plan()));
                } else {
                    new BuildText(screen).print(planned);
                }
                if (!pdf.isEmpty()) {
                    new Papers(screen).write(pdf, () -> new PaperQuestion(Papers.issue()).buildSheet(planned));
                }
                yield Exit.DONE;
            }
            case BuildQuestion.Reply.Unknown unknown -> {
                new Inputs(screen).unknown(unknown.names());
                yield Exit.INPUT;
            }
        };
    }
}
