package gudgeon.bench;

import gudgeon.bench.engines.EngineLike;
import gudgeon.bench.engines.StripTiming;
import gudgeon.core.planning.StripRequest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "generated", description = "Plans drawn engines of growing size.")
final class GeneratedCommand implements Callable<Integer> {
    @Option(names = "--sizes", split = ",", defaultValue = "100,200,300,600,1000,2000,3000", description = "Joints.")
    List<Integer> sizes = List.of();

    @Option(names = "--seeds", defaultValue = "3", description = "Engines of each size, seeds 1 and on (default 3).")
    int seeds;

    @Option(names = "--states", defaultValue = "20000", description = "States of the order search (default 20000).")
    long states;

    @Option(names = "--targets", split = ",", defaultValue = "deep,sides", description = "deep, sides, bare.")
    List<String> targets = List.of();

    @Option(names = "--careless", description = "Engines that do not say which hose comes first.")
    boolean careless;

    @Mixin
    Main.Output output = new Main.Output();

    @Override
    public Integer call() {
        Table table = new Table();
        Map<String, List<double[]>> times = new LinkedHashMap<>();
        Map<String, List<double[]>> memory = new LinkedHashMap<>();
        EngineLike.Drawn warming = EngineLike.draw(60, 99);
        for (int i = 0; i < 10; i++) {
            time(warming, "deep", 0);
        }
        for (int size : sizes) {
            for (int seed = 1; seed <= seeds; seed++) {
                EngineLike.Drawn drawn = EngineLike.draw(size, seed, careless);
                for (String target : targets) {
                    StripTiming timing = time(drawn, target, 1);
                    row(table, size, seed, timing);
                    times.computeIfAbsent(target, key -> new ArrayList<>())
                            .add(new double[] {size, Math.max(0.1, timing.milliseconds())});
                    memory.computeIfAbsent(target, key -> new ArrayList<>())
                            .add(new double[] {size, Math.max(0.1, timing.megabytes())});
                    System.err.printf("bench: %d joints, seed %d, %s: %.0f ms%n", size, seed, target, timing.milliseconds());
                }
            }
        }
        output.print(
                "generated",
                "# Drawn engines\n\n" + Table.circumstances() + "\nTargets as in bench/README.md. " + states
                        + " states of the order search at most; processor milliseconds of the planning thread; memory is"
                        + " what one run asked for altogether, not what it held at once.\n",
                table);
        if (!output.out.isEmpty()) {
            Path folder = Path.of(output.out);
            Plot time = new Plot("Time to the plan", "joints", "processor milliseconds");
            Plot asked = new Plot("Memory asked for", "joints", "megabytes");
            Table.write(folder, "generated-time.svg", time.svg(series(times)));
            Table.write(folder, "generated-memory.svg", asked.svg(series(memory)));
        }
        return 0;
    }

    private static List<Plot.Series> series(Map<String, List<double[]>> points) {
        List<String> colours = List.of("#1f6f8b", "#b5532a", "#5b7f2b");
        List<Plot.Series> series = new ArrayList<>();
        points.forEach((target, list) -> series.add(new Plot.Series(target, colours.get(series.size() % 3), list)));
        return series;
    }

    private StripTiming time(EngineLike.Drawn drawn, String what, int repeats) {
        StripRequest.Target target = StripRequest.Target.off(drawn.target(what).toArray(String[]::new));
        return StripTiming.of(drawn.engine(), what, target, states, repeats, 2000);
    }

    private static void row(Table table, int size, int seed, StripTiming timing) {
        Map<String, Object> row = table.row();
        row.put("joints", size);
        row.put("seed", seed);
        row.put("target", timing.target());
        row.put("status", timing.status());
        row.put("operations", timing.operations());
        row.put("opening_proved", timing.openingProven());
        row.put("order_proved", timing.orderProven());
        row.put("order_gap_percent", Math.round(10000 * timing.gap()) / 100.0);
        row.put("milliseconds", Math.round(10 * timing.milliseconds()) / 10.0);
        row.put("megabytes", Math.round(10 * timing.megabytes()) / 10.0);
    }
}
