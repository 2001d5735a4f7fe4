package gudgeon.app.format;

import gudgeon.core.bolting.PlacePattern;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads the fasteners of a joint, every single one, with what they destroy and the tools they ask for. */
final class FastenerReader {
    private static final int MOST = 200;
    private static final Quantities.Range LENGTH = new Quantities.Range(1, 1000, "a fastener is 1 mm to 1000 mm long");
    private static final Quantities.Range DEPTH = new Quantities.Range(1, 1000, "a hole is 1 mm to 1000 mm deep");
    private static final Quantities.Range SPOT = new Quantities.Range(-3000, 3000, "within 3 m");

    private final Scope scope;
    private final Problems problems;

    FastenerReader(Scope scope) {
        this.scope = scope;
        this.problems = scope.problems();
    }

    /**
     * The fasteners of one joint.
     *
     * @param spots where they sit, one for each fastener; empty when one of them has no place
     */
    record Fastening(List<Fastener> fasteners, List<Spend> spends, List<String> tools, List<PlacePattern.Spot> spots) {}

    Fastening read(Fields joint, String jointId) {
        List<Fastener> fasteners = new ArrayList<>();
        List<Spend> spends = new ArrayList<>();
        Set<String> tools = new LinkedHashSet<>();
        List<PlacePattern.Spot> spots = new ArrayList<>();
        for (Node entry : joint.list("fasteners")) {
            line(scope.fields(entry, "a fastener of " + jointId), jointId, fasteners, spends, tools, spots);
        }
        boolean placed = spots.size() == fasteners.size();
        return new Fastening(fasteners, Spends.merged(spends), List.copyOf(tools), placed ? spots : List.of());
    }

    private void line(
            Fields line,
            String jointId,
            List<Fastener> all,
            List<Spend> spends,
            Set<String> tools,
            List<PlacePattern.Spot> spots) {
        int count = line.whole("count", 1, 1, MOST);
        FastenerKind kind = kind(line);
        String thread = thread(line, kind);
        Optional<Length> length = line.length("length", LENGTH);
        String drive = line.text("drive", "");
        Drives.tool(kind, drive).ifPresent(tools::add);
        List<String> washers = line.texts("washers");
        String once = line.word("once", "", List.of("all", "nut", "washers"));
        String locking = line.text("locking", "");
        String grade = grade(line);
        spends.addAll(spent(line, count, kind, thread, length, washers, once));
        List<PlacePattern.Spot> places = places(line, count, jointId);
        Fastener.Place hole = hole(line, jointId);
        line.close();
        for (int i = 0; i < count && all.size() < MOST; i++) {
            Fastener.Place place = i < places.size() ? at(places.get(i), hole) : hole;
            String id = jointId + "/" + (all.size() + 1);
            all.add(new Fastener(id, kind, thread, length, drive, place, washers, once, locking, grade));
        }
        spots.addAll(places);
    }

    private FastenerKind kind(Fields line) {
        List<String> words =
                Arrays.stream(FastenerKind.values()).map(FastenerKind::word).toList();
        if (!line.has("kind")) {
            problems.fault(line.node(), line.owner() + " has no 'kind'", "one of: " + String.join(", ", words));
            return FastenerKind.BOLT;
        }
        String word = line.word("kind", "bolt", words);
        return Arrays.stream(FastenerKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElse(FastenerKind.BOLT);
    }

    private String thread(Fields line, FastenerKind kind) {
        String thread = line.text("thread", "");
        boolean left = line.word("hand", "right", List.of("left", "right")).equals("left");
        if (!thread.isEmpty() && !kind.threaded()) {
            problems.fault(
                    line.at("thread"), "a " + kind.word() + " has no thread", "take thread out, or correct the kind");
        }
        if (ThreadSize.looksMetric(thread) && ThreadSize.find(thread).isEmpty()) {
            problems.fault(
                    line.at("thread"),
                    Wording.shown(thread) + " is not a metric thread",
                    "write M and the diameter x the pitch: M8x1.25");
        }
        if (left && thread.isEmpty()) {
            problems.fault(line.at("hand"), "a left hand without a thread", "add thread");
        }
        return left && !thread.endsWith(" LH") ? thread + " LH" : thread;
    }

    private String grade(Fields line) {
        String grade = line.text("class", "");
        if (!grade.isEmpty() && !ThreadSize.knownGrade(grade)) {
            problems.warning(
                    line.at("class"),
                    Wording.shown(grade) + " is not a property class of ISO 898-1",
                    "for instance 8.8, 10.9, 12.9");
        }
        return grade;
    }

    private List<Spend> spent(
            Fields line,
            int count,
            FastenerKind kind,
            String thread,
            Optional<Length> length,
            List<String> washers,
            String once) {
        String body = (once.equals("nut") ? "nut" : kind.word()) + (thread.isEmpty() ? "" : " " + thread);
        String size = once.equals("nut")
                ? ""
                : length.map(value -> " x " + value.typed()).orElse("");
        String spec = line.text("spec", body + size);
        OptionalDouble price = Spends.price(line);
        List<Spend> spends = new ArrayList<>();
        if (once.equals("all") || once.equals("nut")) {
            spends.add(new Spend(spec, count, price));
        }
        if (once.equals("all") || once.equals("washers")) {
            washers.forEach(washer -> spends.add(new Spend(
                    washer, count, once.equals("washers") && washers.size() == 1 ? price : OptionalDouble.empty())));
        }
        if (once.equals("washers") && washers.isEmpty()) {
            problems.fault(line.at("once"), "washers used once, but none are named", "add washers: [what to buy]");
        }
        return spends;
    }

    private List<PlacePattern.Spot> places(Fields line, int count, String jointId) {
        List<Node> nodes = line.list("at");
        List<PlacePattern.Spot> spots = new ArrayList<>();
        for (Node node : nodes) {
            spot(node).ifPresent(spots::add);
        }
        if (line.has("at") && nodes.size() != count) {
            problems.fault(
                    line.at("at"),
                    nodes.size() + " positions for " + count + " fasteners of " + jointId,
                    "one [x, y] for each fastener");
            return List.of();
        }
        return spots;
    }

    private Optional<PlacePattern.Spot> spot(Node node) {
        if (node instanceof SequenceNode pair && pair.getValue().size() == 2) {
            Optional<Double> x_mm = coordinate(pair.getValue().get(0));
            Optional<Double> y_mm = coordinate(pair.getValue().get(1));
            return x_mm.isPresent() && y_mm.isPresent()
                    ? Optional.of(new PlacePattern.Spot(x_mm.get(), y_mm.get()))
                    : Optional.empty();
        }
        problems.fault(node, "this is not a position", "write [x, y] in millimetres");
        return Optional.empty();
    }

    private Optional<Double> coordinate(Node node) {
        String text = Fields.textOf(node, problems).orElse("");
        if (text.matches("-?\\d{1,5}(\\.\\d{1,4})?") && Math.abs(Double.parseDouble(text)) <= SPOT.to()) {
            return Optional.of(Double.parseDouble(text));
        }
        problems.fault(
                node, Wording.shown(text) + " is not a coordinate", "a plain number of millimetres, " + SPOT.words());
        return Optional.empty();
    }

    private Fastener.Place hole(Fields line, String jointId) {
        Optional<Node> node = line.take("hole");
        if (node.isEmpty()) {
            return Fastener.Place.UNKNOWN;
        }
        Fields hole = scope.fields(node.get(), "a hole of " + jointId);
        Fastener.Place place = new Fastener.Place(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                hole.text("material", ""),
                hole.length("depth", DEPTH),
                hole.yes("through"),
                hole.text("opens_to", ""));
        hole.close();
        return place;
    }

    private static Fastener.Place at(PlacePattern.Spot spot, Fastener.Place hole) {
        return new Fastener.Place(
                OptionalDouble.of(spot.x_mm()),
                OptionalDouble.of(spot.y_mm()),
                hole.holeMaterial(),
                hole.holeDepth(),
                hole.through(),
                hole.opensTo());
    }
}
