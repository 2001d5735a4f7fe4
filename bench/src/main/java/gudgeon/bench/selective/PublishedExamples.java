package gudgeon.bench.selective;

import gudgeon.core.planning.SequencingAnswer;
import gudgeon.core.planning.StripPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Every published example that a folder holds, computed; what is missing is said. */
public final class PublishedExamples {
    /** One computed value, as text. */
    public record Line(String example, String question, String value, String how) {}

    private PublishedExamples() {}

    /** All lines for a folder. */
    public static List<Line> all(Path folder) throws IOException {
        List<Line> lines = new ArrayList<>();
        tenParts(find(folder, "10part"), lines);
        graph(find(folder, "deMello.txt"), lines);
        pump(find(folder, "gearA.mat"), lines);
        return lines;
    }

    private static Optional<Path> find(Path folder, String part) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> String.valueOf(file.getFileName()).contains(part))
                    .sorted()
                    .findFirst();
        }
    }

    private static void missing(String example, List<Line> lines) {
        lines.add(new Line(example, "", "", "not in this folder: nothing was computed"));
    }

    private static void tenParts(Optional<Path> page, List<Line> lines) throws IOException {
        String name = "ten parts with alternatives";
        if (page.isEmpty()) {
            missing(name, lines);
            return;
        }
        TenParts product = TenParts.read(page.get());
        lines.add(line(name, "all parts", product.off(product.parts())));
        for (List<Integer> target : List.of(List.of(5), List.of(9), List.of(4), List.of(6), List.of(4, 9))) {
            lines.add(line(name, "parts " + target, product.off(target)));
        }
    }

    private static Line line(String name, String question, StripPlan plan) {
        List<Integer> parts = plan.opening().chosen().stream()
                .map(id -> Integer.valueOf(id.substring(1)))
                .toList();
        return new Line(
                name,
                question,
                plan.opening().costSeconds() + " s, parts " + parts,
                "strip planner, " + (plan.opening().proven() ? "proven" : "not proven"));
    }

    private static void graph(Optional<Path> file, List<Line> lines) throws IOException {
        String name = "four parts, AND/OR graph";
        if (file.isEmpty()) {
            missing(name, lines);
            return;
        }
        AndOrGraph graph = AndOrGraph.read(file.get());
        List<Long> trees = graph.complete();
        lines.add(new Line(
                name, "all apart", trees.getFirst() + " of " + trees, "all trees enumerated; not our planner's kind of model"));
        for (String part : graph.parts()) {
            lines.add(new Line(name, part + " alone", String.valueOf(graph.free(part)), "all trees enumerated"));
        }
    }

    private static void pump(Optional<Path> file, List<Line> lines) throws IOException {
        String name = "gear pump A";
        if (file.isEmpty()) {
            missing(name, lines);
            return;
        }
        GearPump pump = GearPump.read(file.get());
        lines.add(new Line(
                name,
                "removal, tools, directions",
                String.format(Locale.ROOT, "%.4f", pump.table(false)),
                "table over sets, our own; the publication's result could not be read"));
        SequencingAnswer answer = pump.searched();
        lines.add(new Line(
                name,
                "removal, tools, directions",
                String.format(Locale.ROOT, "%.4f", pump.basicTotal() + answer.cost()),
                "order search, " + (answer.proven() ? "proven" : "not proven")));
        lines.add(new Line(
                name,
                "and the ways between parts",
                String.format(Locale.ROOT, "%.4f", pump.table(true)),
                "table over sets, our own; the publication's result could not be read"));
    }
}
