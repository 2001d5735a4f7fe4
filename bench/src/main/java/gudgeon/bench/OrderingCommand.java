package gudgeon.bench;

import gudgeon.bench.ordering.BestKnown;
import gudgeon.bench.ordering.OrderingRun;
import gudgeon.bench.ordering.SopInstance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "ordering", description = "Solves every sequential ordering problem (*.sop) of a folder.")
final class OrderingCommand implements Callable<Integer> {
    private static final int WARMING = 5;

    @Parameters(description = "Folder with *.sop files and, if it has one, best-known.csv.")
    String folder = "";

    @Option(names = "--seconds", defaultValue = "10", description = "Processor seconds for each (default 10).")
    double seconds;

    @Option(names = "--only", defaultValue = "", description = "Only instances whose names begin so.")
    String only = "";

    @Option(names = "--warm", description = "Solve those with contexts five times more and report the last time.")
    boolean warm;

    @Mixin
    Main.Output output = new Main.Output();

    @Override
    public Integer call() throws IOException {
        Path at = Path.of(folder);
        if (!Files.isDirectory(at)) {
            System.err.println("bench: " + folder + " is no folder. Name one that holds *.sop files.");
            return 1;
        }
        Map<String, BestKnown.Entry> known = BestKnown.read(at);
        Table table = new Table();
        for (Path file : files(at)) {
            SopInstance instance = SopInstance.read(file);
            OrderingRun.Outcome outcome = OrderingRun.solve(instance, seconds);
            for (int again = 0; warm && again < WARMING && outcome.method().endsWith("contexts"); again++) {
                outcome = OrderingRun.solve(instance, seconds);
            }
            BestKnown.Entry best = known.getOrDefault(instance.name(), new BestKnown.Entry("", "", "?"));
            Map<String, Object> row = table.row();
            row.put("instance", outcome.instance());
            row.put("nodes", outcome.nodes());
            row.put("value", outcome.value());
            row.put("lower_bound", outcome.lowerBound());
            row.put("proved", outcome.proved());
            row.put("seconds", Math.round(1000 * outcome.seconds()) / 1000.0);
            row.put("best_known", best.value());
            row.put("best_known_proved", best.proved());
            row.put("method", outcome.method());
        }
        output.print(
                "ordering",
                "# Published and synthetic orders\n\n" + Table.circumstances() + "\n" + seconds
                        + " processor seconds each, seed 1" + (warm ? ", contexts warm" : "")
                        + ". Every value is that of the replay.\n",
                table);
        return 0;
    }

    private List<Path> files(Path at) throws IOException {
        try (Stream<Path> all = Files.list(at)) {
            return all.filter(file -> file.toString().endsWith(".sop"))
                    .filter(file -> String.valueOf(file.getFileName()).startsWith(only))
                    .sorted()
                    .toList();
        }
    }
}
