package gudgeon.bench;

import gudgeon.bench.checks.ChecksCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Measurements of Gudgeon. */
@Command(
        name = "bench/run",
        description = "Measures Gudgeon: shipped and generated engines, published problems, other solvers.",
        subcommands = {
            OrderingCommand.class,
            EnginesCommand.class,
            GeneratedCommand.class,
            PeersCommand.class,
            SelectiveCommand.class,
            FindingCommand.class,
            WhileOpenCommand.class,
            ChecksCommand.class
        },
        mixinStandardHelpOptions = true)
public final class Main {
    /** Options of every measurement. */
    public static final class Output {
        @Option(names = "--json", description = "Print one JSON list and nothing else.")
        boolean json;

        @Option(names = "--out", description = "Also write tables and plots into this folder.", defaultValue = "")
        String out = "";

        void print(String name, String head, Table table) {
            if (json) {
                System.out.println(table.json());
            } else {
                System.out.println(head + "\n" + table.markdown());
            }
            if (!out.isEmpty()) {
                Table.write(java.nio.file.Path.of(out), name + ".md", head + "\n" + table.markdown());
            }
        }
    }

    /** Runs a measurement. */
    public static void main(String[] arguments) {
        CommandLine line = new CommandLine(new Main());
        line.setExecutionExceptionHandler((error, command, parsed) -> {
            System.err.println("bench: " + error.getMessage());
            return 1;
        });
        System.exit(line.execute(arguments));
    }
}
