package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.fitting.Assignment;
import gudgeon.core.fitting.BottleneckAssignment;
import gudgeon.core.fitting.Partition;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Assignments and the sharing out of numbers. */
final class MatchingFunctions {
    private MatchingFunctions() {}

    static void into(Map<String, Computation> all) {
        all.put("assignment_optimum", one(MatchingFunctions::optimum));
        all.put(
                "bottleneck_assignment_optimum",
                one(args -> BottleneckAssignment.best(costs(args))
                        .orElseThrow(MatchingFunctions::none)
                        .largest()));
        all.put("differencing_set_sums", args -> differenced(args).sums().stream()
                .mapToDouble(Double::doubleValue)
                .toArray());
        all.put("differencing_spread", one(args -> differenced(args).spread()));
        all.put(
                "partition_optimal_spread",
                one(args -> Partition.best(args.numbers("numbers"), args.whole("sets")).spread()));
    }

    private static Partition differenced(Args args) {
        return Partition.differenced(args.numbers("numbers"), args.whole("sets"));
    }

    private static double optimum(Args args) {
        double[][] costs = costs(args);
        return switch (args.text("sense")) {
            case "min" -> Assignment.cheapest(costs).orElseThrow(MatchingFunctions::none).total();
            case "max" -> Assignment.dearest(costs).orElseThrow(MatchingFunctions::none).total();
            default -> throw new IllegalArgumentException("sense \"" + args.text("sense") + "\" is neither min nor max");
        };
    }

    private static IllegalArgumentException none() {
        return new IllegalArgumentException("there is no assignment");
    }

    private static double[][] costs(Args args) {
        if (args.has("costs")) {
            return args.lists("costs");
        }
        if (args.has("cost_file")) {
            return read(args.file("cost_file"));
        }
        throw new IllegalArgumentException(
                args.findText("instance").map(name -> "the instance " + name + " is not stored").orElse("no costs are given"));
    }

    /** The size, then all entries row by row; lines that begin with # are remarks. */
    private static double[][] read(Path file) {
        List<String> words;
        try {
            words = Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(line -> !line.startsWith("#"))
                    .flatMap(line -> Arrays.stream(line.split("\\s+", -1)))
                    .filter(word -> !word.isEmpty())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        int size = Integer.parseInt(words.getFirst());
        if (words.size() != size * size + 1) {
            throw new IllegalArgumentException(file + " does not hold " + size + " times " + size + " costs");
        }
        double[][] costs = new double[size][size];
        for (int entry = 0; entry < size * size; entry++) {
            costs[entry / size][entry % size] = Double.parseDouble(words.get(entry + 1));
        }
        return costs;
    }
}
