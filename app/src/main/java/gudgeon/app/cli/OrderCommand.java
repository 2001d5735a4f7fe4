package gudgeon.app.cli;

import gudgeon.app.desk.OrderQuestion;
import gudgeon.app.desk.Saving;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.format.OrderCsv;
import gudgeon.app.format.OrderJson;
import gudgeon.core.ordering.OrderList;
import java.nio.file.Path;
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

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    OrderCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return new StripRun(screen, options, json).then(this::order);
    }

    private int order(Reply.Planned planned) {
        OrderList list = new OrderQuestion(planned).ask();
        if (json) {
            screen.out().print(OrderJson.write(planned.engine(), planned.request(), list));
        } else if (csv.equals("-")) {
            screen.out().print(OrderCsv.write(list));
        } else if (csv.isEmpty()) {
            new OrderText(screen).summary(planned.engine(), list);
        }
        if (!csv.isEmpty() && !csv.equals("-")) {
            Saving.text(Path.of(csv), OrderCsv.write(list));
            screen.err().println("written: " + csv);
        }
        return Exit.DONE;
    }
}
