package gudgeon.bench;

import gudgeon.bench.engines.EngineLike;
import gudgeon.bench.ordering.SharedContexts;
import gudgeon.bench.ordering.SopInstance;
import gudgeon.bench.peers.Choco;
import gudgeon.bench.peers.CpSat;
import gudgeon.bench.peers.Peer;
import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.SequencingAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "peers", description = "The order of drawn engines and of problems, beside two general solvers.")
final class PeersCommand implements Callable<Integer> {
    private static final long STATES = 20_000;
    /** The clock of a process ticks in hundredths. */
    private static final double FINEST = 0.01;

    @Option(names = "--sizes", split = ",", defaultValue = "100,200,300", description = "Joints of drawn engines.")
    List<Integer> sizes = List.of();

    @Option(names = "--seeds", defaultValue = "3", description = "Engines of each size, seeds 1 and on (default 3).")
    int seeds;

    @Option(names = "--seconds", defaultValue = "20", description = "Seconds for each general solver (default 20).")
    double seconds;

    @Option(names = "--target", defaultValue = "sides", description = "deep, sides or bare (default sides).")
    String target = "";

    @Option(names = "--problem", description = "A sequential ordering problem with shared contexts; may be repeated.")
    List<Path> problems = new ArrayList<>();

    @Mixin
    Main.Output output = new Main.Output();

    private final Table table = new Table();
    private final List<Peer> peers = List.of(new CpSat(), new Choco());
    private final List<Double> ratios = new ArrayList<>();
    private int unproved;

    @Override
    public Integer call() throws IOException {
        for (int i = 0; i < 10; i++) {
            Sequencer.best(numbers(60, 99).problem(), STATES);
        }
        peers.forEach(peer -> peer.solve(numbers(30, 99), 5));
        for (int size : sizes) {
            for (int seed = 1; seed <= seeds; seed++) {
                compare(size + " joints, seed " + seed, numbers(size, seed));
            }
        }
        for (Path file : problems) {
            SopInstance instance = SopInstance.read(file);
            compare(
                    instance.name(),
                    SharedContexts.find(instance)
                            .orElseThrow(() -> new IllegalArgumentException(file + " has no shared contexts"))
                            .numbers());
        }
        output.print(
                "peers",
                "# Beside general solvers\n\n" + Table.circumstances()
                        + "\nQuestion 2 alone: the same operations, ways, contexts and costs for everybody, " + seconds
                        + " s for each peer. Processor seconds of the whole program, all threads. The models are described"
                        + " in bench/README.md.\n\n" + spread(),
                table);
        return 0;
    }

    private Sequencer.Numbers numbers(int size, long seed) {
        EngineLike.Drawn drawn = EngineLike.draw(size, seed);
        List<String> parts = drawn.target(target);
        StripRequest request = new StripRequest(
                StripRequest.Target.off(parts.toArray(String[]::new)),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(drawn.engine().workplace().waysOfLifting(), 0, STATES));
        return switch (StripPlanner.plan(drawn.engine(), request)) {
            case StripPlan plan -> Sequencer.numbers(drawn.engine(), request, plan.opening().chosen());
            case gudgeon.core.planning.Blocked blocked ->
                throw new IllegalStateException(size + " joints, seed " + seed + ": " + blocked);
        };
    }

    private void compare(String name, Sequencer.Numbers numbers) {
        double begun = Cpu.seconds();
        SequencingAnswer ours = Sequencer.best(numbers.problem(), STATES);
        double own = Math.max(FINEST, Cpu.seconds() - begun);
        System.err.printf("bench: %s, %d operations: %.3f s%n", name, numbers.modes().size(), own);
        row(name, numbers, "Gudgeon", ours.cost(), ours.lowerBound(), ours.proven(), own);
        double fastest = Double.MAX_VALUE;
        boolean proved = false;
        for (Peer peer : peers) {
            double from = Cpu.seconds();
            Peer.Result result = solve(peer, numbers);
            double used = Cpu.seconds() - from;
            if (result.proved() && ours.proven() && result.value() != ours.cost()) {
                throw new IllegalStateException(name + ": " + peer.name() + " proves " + result.value() + ", we "
                        + ours.cost());
            }
            System.err.printf("bench: %s: %.3f s, %s%n", peer.name(), used, result);
            row(name, numbers, peer.name(), result.value(), result.lowerBound(), result.proved(), used);
            if (result.proved() == proved ? used < fastest : result.proved()) {
                fastest = used;
                proved = result.proved();
            }
        }
        if (ours.proven()) {
            ratios.add(fastest / own);
            unproved += proved ? 0 : 1;
        }
    }

    private Peer.Result solve(Peer peer, Sequencer.Numbers numbers) {
        try {
            return peer.solve(numbers, seconds);
        } catch (UnsatisfiedLinkError | RuntimeException e) {
            System.err.println("bench: " + peer.name() + " cannot run here: " + e.getMessage());
            return Peer.Result.NOTHING;
        }
    }

    private void row(
            String name,
            Sequencer.Numbers numbers,
            String solver,
            long value,
            long bound,
            boolean proved,
            double used) {
        Map<String, Object> row = table.row();
        row.put("problem", name);
        row.put("operations", numbers.modes().size());
        row.put("contexts", numbers.leave().length);
        row.put("solver", solver);
        row.put("value", value);
        row.put("lower_bound", bound);
        row.put("proved", proved);
        row.put("seconds", Math.round(1000 * used) / 1000.0);
    }

    private String spread() {
        if (ratios.isEmpty()) {
            return "Nothing was proved here, so there is no ratio.\n";
        }
        List<Double> sorted = ratios.stream().sorted().toList();
        return String.format(
                Locale.ROOT,
                "The better peer's seconds over ours, for the %d problems that we proved: least %.1f, median %.1f, most %.1f."
                        + " In %d of them no peer proved anything within its time, so that the ratio is a lower bound.%n",
                sorted.size(),
                sorted.getFirst(),
                sorted.get(sorted.size() / 2),
                sorted.getLast(),
                unproved);
    }
}
