package gudgeon.bench.checks;

import gudgeon.bench.checks.CheckRow.Outcome;
import gudgeon.bench.checks.CheckRow.Result;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.json.JsonMapper;

/** Recomputes every row of the tables in a folder and says how it went. */
@Command(
        name = "checks",
        description = "Recomputes every row of the check tables in a folder, by function and arguments, and compares.")
public final class ChecksCommand implements Callable<Integer> {
    @Parameters(description = "Folder with CSV tables that have the columns function, args, value, abs_tol or rel_tol.")
    Path folder = Path.of("");

    @Option(names = "--json", description = "Print one JSON object and nothing else.")
    boolean json;

    @Override
    public Integer call() {
        if (!Files.isDirectory(folder)) {
            throw new IllegalArgumentException(folder + " is no folder. Name the folder in which the tables lie.");
        }
        List<Result> results =
                CheckTable.inFolder(folder).stream().map(CheckRow::result).toList();
        if (json) {
            System.out.println(JsonMapper.builder()
                    .build()
                    .writerWithDefaultPrettyPrinter()
                    .writeValueAsString(answer(results)));
        } else {
            print(results);
        }
        return 0;
    }

    private static void print(List<Result> results) {
        System.out.println("| provenance | rows | understood | within | beyond | no computation |");
        System.out.println("|---|---|---|---|---|---|");
        counts(results).forEach((provenance, of) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d |%n",
                provenance, of.rows, of.within + of.beyond, of.within, of.beyond, of.none));
        worst(results).ifPresent(worst -> System.out.printf(
                Locale.ROOT,
                "%nThe worst of those within: %s, %.3f of its tolerance.%n",
                worst.row().id(), worst.deviation()));
        for (Result result : results) {
            switch (result.outcome()) {
                case BEYOND ->
                    System.out.printf(
                            Locale.ROOT,
                            "beyond: %s; computed %s, %.3f times the tolerance%n",
                            result.row(), Arrays.toString(result.computed()), result.deviation());
                case NOT_COMPUTED -> System.out.println("not computed: " + result.row() + ": " + result.reason());
                case WITHIN, NO_COMPUTATION -> {}
            }
        }
    }

    private static java.util.Optional<Result> worst(List<Result> results) {
        return results.stream()
                .filter(result -> result.outcome() == Outcome.WITHIN)
                .max(java.util.Comparator.comparingDouble(Result::deviation));
    }

    /** What became of the rows of one provenance. */
    private static final class Count {
        int rows;
        int within;
        int beyond;
        int none;
        int notComputed;

        void add(Result result) {
            rows++;
            switch (result.outcome()) {
                case WITHIN -> within++;
                case BEYOND -> beyond++;
                case NOT_COMPUTED -> notComputed++;
                case NO_COMPUTATION -> none++;
            }
        }

        Map<String, Object> asMap() {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("rows", rows);
            map.put("understood", within + beyond);
            map.put("within", within);
            map.put("failed", beyond);
            map.put("not_computed", notComputed);
            map.put("no_computation", none);
            return map;
        }
    }

    private static Map<String, Count> counts(List<Result> results) {
        Map<String, Count> counts = new LinkedHashMap<>();
        for (Result result : results) {
            counts.computeIfAbsent(result.row().provenance(), key -> new Count()).add(result);
        }
        Count all = new Count();
        results.forEach(all::add);
        counts.put("all", all);
        return counts;
    }

    private static Map<String, Object> answer(List<Result> results) {
        Map<String, Object> answer = new LinkedHashMap<>();
        Map<String, Object> byProvenance = new LinkedHashMap<>();
        counts(results).forEach((key, count) -> {
            if (key.equals("all")) {
                answer.putAll(count.asMap());
            } else {
                byProvenance.put(key, count.asMap());
            }
        });
        answer.put("by_provenance", byProvenance);
        answer.put("worst_deviation_within", worst(results).map(Result::deviation).orElse(0.0));
        answer.put("worst_id", worst(results).map(result -> result.row().id()).orElse(""));
        List<Map<String, Object>> rows = new ArrayList<>();
        results.forEach(result -> rows.add(asMap(result)));
        answer.put("results", rows);
        return answer;
    }

    private static Map<String, Object> asMap(Result result) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", result.row().id());
        map.put("function", result.row().function());
        map.put("provenance", result.row().provenance());
        map.put("outcome", result.outcome().name().toLowerCase(Locale.ROOT));
        if (result.computed().length > 0) {
            map.put("value", result.computed().length == 1 ? result.computed()[0] : result.computed());
            map.put("deviation_in_tolerances", result.deviation());
        }
        if (!result.reason().isEmpty()) {
            map.put("reason", result.reason());
        }
        return map;
    }
}
