package gudgeon.app.format;

import gudgeon.core.engine.Geometry;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the shape of the engine: rod, compression ratio, valve timing, teeth of the timing drive. */
final class GeometryReader {
    private static final Quantities.Range ROD = new Quantities.Range(15, 3000, "between 15 mm and 3 m");
    private static final Quantities.Range TIMING = new Quantities.Range(-60, 120, "between -60 ° and 120 °");
    private static final double LEAST_RATIO = 3;
    private static final double MOST_RATIO = 30;
    private static final int LEAST_TEETH = 8;
    private static final int MOST_TEETH = 400;

    private final Problems problems;

    GeometryReader(Problems problems) {
        this.problems = problems;
    }

    /** The key {@code geometry} of the head, with what stands beside it. */
    Geometry read(Fields head, Optional<Length> bore, Optional<Length> stroke) {
        Optional<Node> node = head.take("geometry");
        if (node.isEmpty()) {
            return new Geometry(
                    bore,
                    stroke,
                    Optional.empty(),
                    OptionalDouble.empty(),
                    Geometry.ValveTiming.UNKNOWN,
                    Geometry.Teeth.UNKNOWN,
                    "",
                    false);
        }
        Fields fields = Fields.of(node.get(), "geometry", problems);
        Optional<Length> rod = fields.length("rod", ROD);
        longerThanTheStroke(fields, rod, stroke);
        OptionalDouble ratio = fields.number("compression_ratio", LEAST_RATIO, MOST_RATIO);
        Geometry.ValveTiming valves = fields.take("valves").map(this::valves).orElse(Geometry.ValveTiming.UNKNOWN);
        Geometry.Teeth teeth = fields.take("teeth").map(this::teeth).orElse(Geometry.Teeth.UNKNOWN);
        Basis basis = Basis.read(fields, problems);
        fields.close();
        return new Geometry(bore, stroke, rod, ratio, valves, teeth, basis.source(), basis.typical());
    }

    private void longerThanTheStroke(Fields fields, Optional<Length> rod, Optional<Length> stroke) {
        if (rod.isPresent()
                && stroke.isPresent()
                && rod.get().millimetres() <= stroke.get().millimetres()) {
            problems.fault(
                    fields.at("rod"),
                    "a rod of " + rod.get().typed() + " for a stroke of "
                            + stroke.get().typed(),
                    "the rod is measured from centre to centre and is longer than the stroke");
        }
    }

    private Geometry.ValveTiming valves(Node node) {
        Fields fields = Fields.of(node, "valves", problems);
        Geometry.ValveTiming valves = new Geometry.ValveTiming(
                angle(fields, "intake_opens"),
                angle(fields, "intake_closes"),
                angle(fields, "exhaust_opens"),
                angle(fields, "exhaust_closes"));
        fields.close();
        return valves;
    }

    private static Optional<Angle> angle(Fields fields, String key) {
        return fields.measure(key, QuantityKind.ANGLE, TIMING)
                .map(measure -> new Angle(measure.value(), measure.typed()));
    }

    private Geometry.Teeth teeth(Node node) {
        Fields fields = Fields.of(node, "teeth", problems);
        Geometry.Teeth teeth = new Geometry.Teeth(count(fields, "crank"), count(fields, "cam"), count(fields, "belt"));
        fields.close();
        if (teeth.crank().isPresent()
                && teeth.cam().isPresent()
                && teeth.cam().getAsInt() != 2 * teeth.crank().getAsInt()) {
            problems.fault(
                    fields.at("cam"),
                    "a cam wheel of " + teeth.cam().getAsInt() + " teeth over a crank wheel of "
                            + teeth.crank().getAsInt(),
                    "the cams turn once in two turns of the crank, so the cam wheel has twice the teeth");
        }
        return teeth;
    }

    private static OptionalInt count(Fields fields, String key) {
        return fields.has(key)
                ? OptionalInt.of(fields.whole(key, LEAST_TEETH, LEAST_TEETH, MOST_TEETH))
                : OptionalInt.empty();
    }

    /** Adds what is known to the facts that people are shown. */
    static void tell(Geometry geometry, Map<String, String> facts) {
        String vouched = geometry.typical() ? ", typical" : "";
        geometry.rod().ifPresent(rod -> facts.put("rod", rod.typed() + " between centres" + vouched));
        geometry.compressionRatio()
                .ifPresent(ratio -> facts.put("compression-ratio", Fields.plain(ratio) + " to 1" + vouched));
        List<String> timing = new ArrayList<>();
        told(timing, "intake opens ", geometry.valves().intakeOpens(), " before top");
        told(timing, "closes ", geometry.valves().intakeCloses(), " after bottom");
        told(timing, "exhaust opens ", geometry.valves().exhaustOpens(), " before bottom");
        told(timing, "closes ", geometry.valves().exhaustCloses(), " after top");
        if (!timing.isEmpty()) {
            facts.put("valve-timing", String.join(", ", timing) + vouched);
        }
        List<String> teeth = new ArrayList<>();
        geometry.teeth().crank().ifPresent(count -> teeth.add("crank wheel " + count));
        geometry.teeth().cam().ifPresent(count -> teeth.add("cam wheel " + count));
        geometry.teeth().belt().ifPresent(count -> teeth.add("belt " + count));
        if (!teeth.isEmpty()) {
            facts.put("teeth", String.join(", ", teeth));
        }
    }

    private static void told(List<String> timing, String what, Optional<Angle> angle, String where) {
        angle.ifPresent(value -> timing.add(what + value.typed() + where));
    }
}
