package gudgeon.app.cli;

import gudgeon.app.desk.Tell;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes anything else into the book: rags, covers, litres, marks, orders, sessions ... */
@Command(
        name = "tell",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Writes anything else into the book: rags, covers, litres, marks, orders, sessions ...",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job, or something in it cannot be so; nothing was written",
            "2:Wrong usage",
            "4:The program or the machine failed"
        },
        footer = {"", "Example: gudgeon tell \"rag in\" where=bore count=2"})
final class TellCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private JobOptions options = new JobOptions();

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "KIND",
            defaultValue = "",
            description = "Kind of entry; without it, all kinds are listed.")
    private String kind = "";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "FIELD=VALUE", description = "Its fields.")
    private List<String> fields = new ArrayList<>();

    TellCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (kind.isEmpty()) {
            Tell.kinds()
                    .forEach(known ->
                            screen.out().println("  " + known + ": " + String.join(", ", Tell.fieldsOf(known))));
            return Exit.DONE;
        }
        Map<String, String> values = new LinkedHashMap<>();
        for (String field : fields) {
            int at = field.indexOf('=');
            if (at < 1) {
                throw options.wrong("'" + field + "' is no FIELD=VALUE. Maybe where=bore?");
            }
            values.put(field.substring(0, at), field.substring(at + 1));
        }
        return new JobRun(screen, options).say(new Tell(kind, values, List.of()));
    }
}
