package gudgeon.app.cli;

import gudgeon.app.desk.PaperQuestion;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.WhileOpenQuestion;
import gudgeon.app.format.StripJson;
import gudgeon.app.format.WhileOpenJson;
import gudgeon.core.planning.OtherWays;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What must be undone, and in what order. */
@Command(
        name = "strip",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Plans what must be undone to reach something, and in what order, with proof.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:There is a plan",
            "1:The file has faults, or a name means nothing in it",
            "2:Wrong usage",
            "3:There is no plan; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {
            "",
            "Examples: gudgeon strip dunlin-22d --reach head --with helper",
            "          gudgeon strip wren-160 --reach piston --why",
            "          gudgeon strip wren-160 --reach head --while-open"
        })
final class StripCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private TargetOptions options = new TargetOptions();

    @Option(names = "--why", description = "Say with every step why it is in the plan.")
    private boolean why;

    @Option(
            names = "--while-open",
            description =
                    "Say instead what each other part costs more while that is open, what coming back for it would"
                            + " cost, and what the plan would cost another way.")
    private boolean whileOpen;

    @Option(
            names = "--pdf",
            paramLabel = "FILE",
            defaultValue = "",
            description = "Write the strip card as PDF, to print.")
    private String pdf = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    StripCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new StripRun(screen, options, json).then(planned -> {
            if (whileOpen) {
                whileOpen(planned);
            } else if (json) {
                screen.out().print(StripJson.write(planned.engine(), planned.request(), planned.plan()));
            } else {
                new StripText(screen, why).print(planned);
            }
            if (!pdf.isEmpty()) {
                new Papers(screen).write(pdf, () -> new PaperQuestion(Papers.issue()).stripCard(planned));
            }
            return Exit.DONE;
        });
    }

    private void whileOpen(StripQuestion.Reply.Planned planned) {
        WhileOpenQuestion question = WhileOpenQuestion.of(planned);
        WhileOpenQuestion.Reply reply = Waiting.on(screen, "planning every part", question::ask);
        OtherWays others = Waiting.on(screen, "planning other ways", question::otherWays);
        if (json) {
            screen.out()
                    .print(WhileOpenJson.write(
                            planned.engine(), planned.request(), reply.request(), reply.parts(), others));
        } else {
            new WhileOpenText(screen).print(planned, reply.parts(), others);
        }
    }
}
