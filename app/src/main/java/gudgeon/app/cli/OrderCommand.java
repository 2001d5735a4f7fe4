package gudgeon.app.cli;

import gudgeon.app.desk.OrderQuestion;
import gudgeon.app.desk.PaperQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.document.OrderCsv;
import gudgeon.app.format.OrderJson;
import gudgeon.core.ordering.OrderList;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What must be bought. */
@Command(
        name = "order",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Lists what must be bought for that strip and the way back, merged by specification.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:The file has faults, or a name means nothing in it",
            "2:Wrong usage",
            "3:There is no plan of the strip; the answer says why",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon order dunlin-22d --reach head --with helper --csv list.csv"})
final class OrderCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private TargetOptions options = new TargetOptions();

    @Option(names = "--csv", paramLabel = "FILE", defaultValue = "", description = "Write it as CSV; - for the screen.")
    private String csv = "";

    @Option(names = "--pdf", paramLabel = "FILE", defaultValue = "", description = "Write the order list as PDF, to print.")
    private String pdf = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    OrderCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        check();
        return new StripRun(screen, options, json).then(this::order);
    }

    /** Refuses two answers on one screen. */
    private void check() {
        if (json && csv.equals("-")) {
            throw options.wrong("--json and --csv - cannot both be on the screen. Maybe --csv FILE?");
        }
    }

    private int order(Reply.Planned planned) {
        OrderList list = new OrderQuestion(planned).ask();
        if (json) {
            screen.out().print(OrderJson.write(planned.engine(), planned.request(), list));
        } else if (!csv.equals("-")) {
            new OrderText(screen).summary(planned.engine(), list);
        }
        if (!csv.isEmpty()) {
            new Papers(screen).writeText(csv, () -> OrderCsv.of(planned.engine(), list));
        }
        if (!pdf.isEmpty()) {
            new Papers(screen).write(pdf, () -> new PaperQuestion(Papers.issue()).orderSheet(planned, list));
        }
        return Exit.DONE;
    }
}
