package gudgeon.bench.engines;

import gudgeon.bench.Cpu;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One target planned and timed.
 *
 * @param status planned, or the kinds of why not
 * @param operations how many joints and ready operations are in the plan
 * @param openingProven whether the set is proven to be the cheapest, or that there is none
 * @param orderProven whether the order is proven to be the best, or that there is none
 * @param gap what the order may cost more than the best, as a share of it; 0 when proven
 * @param first processor milliseconds of the first run
 * @param milliseconds processor milliseconds, median of the later runs; of the first when it was the only one
 * @param megabytes memory asked for in one run, all together
 */
public record StripTiming(
        String engine,
        String target,
        String status,
        int operations,
        boolean openingProven,
        boolean orderProven,
        double gap,
        double first,
        double milliseconds,
        double megabytes) {
    /** Plans a target once, then as often as said, but not when the first time took longer than a limit. */
    public static StripTiming of(
            Engine engine, String name, StripRequest.Target target, long states, int repeats, double limit) {
        StripRequest request = new StripRequest(
                target,
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(engine.workplace().waysOfLifting(), 0, states));
        long bytes = Cpu.threadBytes();
        double begun = Cpu.threadSeconds();
        StripAnswer answer = StripPlanner.plan(engine, request);
        double first = 1000 * (Cpu.threadSeconds() - begun);
        double megabytes = (Cpu.threadBytes() - bytes) / 1e6;
        int times = first > limit ? 0 : repeats;
        double[] later = new double[times];
        for (int i = 0; i < times; i++) {
            double from = Cpu.threadSeconds();
            StripPlanner.plan(engine, request);
            later[i] = 1000 * (Cpu.threadSeconds() - from);
        }
        Arrays.sort(later);
        double median = times == 0 ? first : later[times / 2];
        return switch (answer) {
            case StripPlan plan ->
                new StripTiming(
                        engine.identity().id(),
                        name,
                        "planned",
                        plan.opening().chosen().size(),
                        plan.opening().proven(),
                        plan.order().proven(),
                        gap(plan.order()),
                        first,
                        median,
                        megabytes);
            case Blocked blocked -> {
                boolean decided = blocked.reasons().stream()
                        .noneMatch(reason -> reason.kind() == Blocked.Kind.UNDECIDED);
                String kinds = blocked.reasons().stream()
                        .map(reason -> reason.kind().name().toLowerCase(java.util.Locale.ROOT))
                        .distinct()
                        .collect(Collectors.joining(", "));
                yield new StripTiming(
                        engine.identity().id(), name, kinds, 0, decided, decided, 0, first, median, megabytes);
            }
        };
    }

    private static double gap(StripPlan.Order order) {
        return order.proven() || order.lowerBoundSeconds() <= 0
                ? 0
                : (double) (order.changeoverSeconds() - order.lowerBoundSeconds()) / order.lowerBoundSeconds();
    }
}
