package gudgeon.bench;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.Reading;
import gudgeon.app.format.ShippedEngines;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlanner;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.EveryPart;
import gudgeon.core.planning.EveryPartPlanner;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.planning.Trip;
import gudgeon.core.planning.WhileOpen;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "while-open",
        description = "Every part of a shipped engine at once: while a target is open, and coming back later.")
final class WhileOpenCommand implements Callable<Integer> {
    /** Orders are looked for up to so many operations, as on the pages. */
    private static final int ORDERED = 12;

    @Option(names = "--engine", defaultValue = "dunlin-22d", description = "The engine (default dunlin-22d).")
    String id = "";

    @Option(names = "--reach", split = ",", defaultValue = "head", description = "What is open (default head).")
    List<String> reach = List.of();

    @Option(names = "--repeat", defaultValue = "7", description = "Runs after two that are not counted (default 7).")
    int repeat;

    @Option(names = "--check", description = "Also plan every part by itself and compare.")
    boolean check;

    @Mixin
    Main.Output output = new Main.Output();

    private final Table table = new Table();

    @Override
    public Integer call() {
        Engine engine = read(id);
        StripRequest request = new StripRequest(
                new StripRequest.Target(reach, List.of(), List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(engine.workplace().waysOfLifting(), 0, 5000));
        if (!(StripPlanner.plan(engine, request) instanceof StripPlan plan)) {
            throw new IllegalStateException("there is no plan to reach " + reach);
        }
        StripRequest open = few(WhileOpen.after(request, plan));
        StripRequest whole = few(WhileOpen.whole(open));
        EveryPart now = timed("while it is open", engine, () -> EveryPartPlanner.plan(engine, open, ORDERED));
        EveryPart later = timed("coming back later", engine, () -> EveryPartPlanner.plan(engine, whole, 0));
        if (check) {
            compare("while it is open", engine, open, now);
            compare("coming back later", engine, whole, later);
        }
        output.print(
                "while-open",
                "# Every part at once, " + id + ", " + String.join(" and ", reach) + " off\n\n" + Table.circumstances()
                        + "\nProcessor milliseconds of the planning thread, median of " + repeat
                        + " runs after two; orders are looked for up to " + ORDERED
                        + " operations while it is open, none for coming back later.\n",
                table);
        return 0;
    }

    /** States of an order search at the bench. */
    private static StripRequest few(StripRequest request) {
        return new StripRequest(
                request.target(),
                request.undone(),
                request.done(),
                request.willNotCome(),
                new StripRequest.Means(request.means().ways(), request.means().worthPerHour(), 200),
                request.underway());
    }

    private static Engine read(String id) {
        return switch (EngineFile.read(ShippedEngines.resolve(id))) {
            case Reading.Sound sound -> sound.engine();
            case Reading.Faulty faulty -> throw new IllegalStateException(id + " is faulty: " + faulty.problems());
        };
    }

    private EveryPart timed(String what, Engine engine, Supplier<EveryPart> work) {
        double from = Cpu.threadSeconds();
        EveryPart answer = work.get();
        double first = Cpu.threadSeconds() - from;
        var _ = work.get();
        double[] times = new double[Math.max(1, repeat)];
        for (int i = 0; i < times.length; i++) {
            double begun = Cpu.threadSeconds();
            var _ = work.get();
            times[i] = Cpu.threadSeconds() - begun;
        }
        Arrays.sort(times);
        Map<String, Object> row = table.row();
        row.put("question", what);
        row.put("parts", engine.parts().size() - 1);
        row.put("off_already", count(answer, EveryPart.Reach.Off.class));
        row.put("planned", count(answer, EveryPart.Reach.By.class));
        row.put(
                "with_an_order",
                answer.reaches().stream()
                        .filter(r -> r instanceof EveryPart.Reach.By by
                                && by.trip().strip().foundSeconds().isPresent())
                        .count());
        row.put("blocked", count(answer, EveryPart.Reach.Never.class));
        row.put("milliseconds", Math.round(10000 * times[times.length / 2]) / 10.0);
        row.put("first_milliseconds", Math.round(10000 * first) / 10.0);
        return answer;
    }

    private static long count(EveryPart answer, Class<?> sort) {
        return answer.reaches().stream().filter(sort::isInstance).count();
    }

    /** Plans every part by itself: the time that takes, how often the sets cost the same, how near the bounds come. */
    private void compare(String what, Engine engine, StripRequest from, EveryPart answer) {
        double begun = Cpu.threadSeconds();
        double buildTime = 0;
        int same = 0;
        int different = 0;
        double strip = 0;
        double build = 0;
        int ratios = 0;
        int over = 0;
        for (Part part : engine.parts()) {
            if (part.id().equals(engine.workplace().base())) {
                continue;
            }
            StripAnswer alone = StripPlanner.plan(
                    engine,
                    new StripRequest(
                            StripRequest.Target.off(part.id()),
                            from.undone(),
                            from.done(),
                            from.willNotCome(),
                            new StripRequest.Means(
                                    from.means().ways(), from.means().worthPerHour(), 5000),
                            from.underway()));
            EveryPart.Reach reach = answer.reach(part.id());
            if (alone instanceof StripPlan plan && reach instanceof EveryPart.Reach.By by) {
                Trip trip = by.trip();
                boolean equal = plan.opening().costSeconds() == trip.costSeconds();
                same += equal ? 1 : 0;
                different += equal ? 0 : 1;
                if (from.underway().isEmpty()) {
                    double building = Cpu.threadSeconds();
                    BuildPlan back = BuildPlanner.plan(
                            engine, plan, BuildRequest.after(plan, from.means().ways()));
                    buildTime += Cpu.threadSeconds() - building;
                    build += (double) trip.build().atLeastSeconds()
                            / (back.totals().workSeconds() + back.totals().changeoverSeconds());
                    over += trip.build().atLeastSeconds() > back.totals().totalSeconds() ? 1 : 0;
                }
                strip += (double) trip.strip().atLeastSeconds() / plan.totalSeconds();
                over += trip.strip().atLeastSeconds() > plan.totalSeconds() ? 1 : 0;
                ratios++;
            } else if (alone instanceof Blocked == reach instanceof EveryPart.Reach.Never) {
                same++;
            } else {
                different++;
            }
        }
        System.err.printf(
                "%s: alone %.1f s of processor time, %.1f s of it building; %d at the same cost, %d not; bounds on average"
                        + " %.1f %% of the strip, %.1f %% of the build; %d above what was planned%n",
                what,
                Cpu.threadSeconds() - begun,
                buildTime,
                same,
                different,
                100 * strip / Math.max(1, ratios),
                100 * build / Math.max(1, ratios),
                over);
    }
}
