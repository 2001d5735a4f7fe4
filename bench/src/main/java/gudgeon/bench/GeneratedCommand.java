package gudgeon.bench;

import gudgeon.bench.engines.EngineLike;
import gudgeon.bench.engines.StripTiming;
import gudgeon.core.planning.StripRequest;
import java.nio.file.Path;
import java.util.ArrayList;
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

    @Option(names = "--bare", description = "Also the target that every innermost part is off.")
    boolean bare;

    @Option(names = "--careless", description = "Engines that do not say which hose comes first.")
    boolean careless;

    @Mixin
    Main.Output output = new Main.Output();

    @Override
    public Integer call() {
        Table table = new Table();
        List<double[]> deepTimes = new ArrayList<>();
        List<double[]> bareTimes = new ArrayList<>();
        List<double[]> memory = new ArrayList<>();
        EngineLike.Drawn warming = EngineLike.draw(100, 99);
        for (int i = 0; i < 10; i++) {
            time(warming, "deepest", 0);
        }
        for (int size : sizes) {
            for (int seed = 1; seed <= seeds; seed++) {
                EngineLike.Drawn drawn = EngineLike.draw(size, seed, careless);
                StripTiming deep = time(drawn, "deepest", 1);
                row(table, size, seed, deep);
                System.err.printf("bench: %d joints, seed %d: %.0f ms%n", size, seed, deep.milliseconds());
                deepTimes.add(new double[] {size, Math.max(0.1, deep.milliseconds())});
                memory.add(new double[] {size, Math.max(0.1, deep.megabytes())});
                if (bare) {
                    StripTiming all = time(drawn, "bare", 0);
                    row(table, size, seed, all);
                    bareTimes.add(new double[] {size, Math.max(0.1, all.milliseconds())});
                }
            }
        }
        output.print(
                "generated",
                "# Drawn engines\n\n" + Table.circumstances() + "\nTarget: the deepest part of each side off"
                        + (bare ? "; bare: every part that stands on the block off" : "") + ". " + states
                        + " states of the order search at most; processor milliseconds of the planning thread; memory is"
                        + " what one run asked for altogether, not what it held at once.\n",
                table);
        if (!output.out.isEmpty()) {
            List<Plot.Series> times = new ArrayList<>();
            times.add(new Plot.Series("deepest parts", "#1f6f8b", deepTimes));
            times.add(new Plot.Series("bare block", "#b5532a", bareTimes));
            Path folder = Path.of(output.out);
            Table.write(
                    folder,
                    "generated-time.svg",
                    new Plot("Time to the plan", "joints", "processor milliseconds").svg(times));
            Table.write(
                    folder,
                    "generated-memory.svg",
                    new Plot("Memory asked for", "joints", "megabytes")
                            .svg(List.of(new Plot.Series("deepest parts", "#1f6f8b", memory))));
        }
        return 0;
    }

    private StripTiming time(EngineLike.Drawn drawn, String what, int repeats) {
        List<String> target = what.equals("bare") ? drawn.innermost() : drawn.deepest();
        return StripTiming.of(
                drawn.engine(), what, StripRequest.Target.off(target.toArray(String[]::new)), states, repeats, 2000);
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
