package gudgeon.bench;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.Reading;
import gudgeon.app.format.ShippedEngines;
import gudgeon.bench.engines.StripTiming;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "engines", description = "Plans every part of every shipped engine as a target, warm.")
final class EnginesCommand implements Callable<Integer> {
    @Option(names = "--repeat", defaultValue = "5", description = "Runs of each target after the first (default 5).")
    int repeat;

    @Option(names = "--states", defaultValue = "50000", description = "States of the order search (default 50000).")
    long states;

    @Option(names = "--only", defaultValue = "", description = "Only the engine with this id.")
    String only = "";

    @Mixin
    Main.Output output = new Main.Output();

    @Override
    public Integer call() {
        List<StripTiming> all = new ArrayList<>();
        StringBuilder summary = new StringBuilder();
        for (String id : ShippedEngines.ids()) {
            if (only.isEmpty() || only.equals(id)) {
                List<StripTiming> timings = time(read(id));
                all.addAll(timings);
                summary.append(summary(id, timings));
            }
        }
        Table table = new Table();
        for (StripTiming timing : all) {
            Map<String, Object> row = table.row();
            row.put("engine", timing.engine());
            row.put("target", timing.target());
            row.put("status", timing.status());
            row.put("operations", timing.operations());
            row.put("opening_proved", timing.openingProven());
            row.put("order_proved", timing.orderProven());
            row.put("milliseconds", Math.round(100 * timing.milliseconds()) / 100.0);
            row.put("first_milliseconds", Math.round(100 * timing.first()) / 100.0);
            row.put("megabytes", Math.round(10 * timing.megabytes()) / 10.0);
        }
        output.print(
                "engines",
                "# Shipped engines, every single-part target\n\n" + Table.circumstances()
                        + "\nAll of the engine's ways of lifting, " + states + " states at most; processor milliseconds of"
                        + " the planning thread, median of " + repeat + " runs after one that is not counted.\n\n" + summary,
                table);
        return 0;
    }

    private static Engine read(String id) {
        return switch (EngineFile.read(ShippedEngines.resolve(id))) {
            case Reading.Sound sound -> sound.engine();
            case Reading.Faulty faulty -> throw new IllegalStateException(id + " is faulty: " + faulty.problems());
        };
    }

    private List<StripTiming> time(Engine engine) {
        List<StripTiming> timings = new ArrayList<>();
        for (int round = 0; round < 2; round++) {
            timings.clear();
            for (Part part : engine.parts()) {
                if (!part.id().equals(engine.workplace().base())) {
                    StripRequest.Target target = StripRequest.Target.off(part.id());
                    timings.add(StripTiming.of(engine, part.id(), target, states, round == 0 ? 0 : repeat, 2000));
                }
            }
        }
        return timings;
    }

    private static String summary(String id, List<StripTiming> timings) {
        List<StripTiming> sorted = timings.stream()
                .sorted(Comparator.comparingDouble(StripTiming::milliseconds))
                .toList();
        StripTiming slowest = sorted.getLast();
        return String.format(
                Locale.ROOT,
                "- %s: %d targets, %d planned; opening decided for %d, order for %d. Milliseconds: median %.1f, 90 %% below"
                        + " %.1f, slowest %.1f (%s, %d operations).%n",
                id,
                sorted.size(),
                sorted.stream().filter(t -> t.status().equals("planned")).count(),
                sorted.stream().filter(StripTiming::openingProven).count(),
                sorted.stream().filter(StripTiming::orderProven).count(),
                sorted.get(sorted.size() / 2).milliseconds(),
                sorted.get(sorted.size() * 9 / 10).milliseconds(),
                slowest.milliseconds(),
                slowest.target(),
                slowest.operations());
    }
}
