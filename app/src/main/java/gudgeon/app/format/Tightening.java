package gudgeon.app.format;

import gudgeon.core.bolting.PlacePattern;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Makeup;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Torque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads how a joint is tightened and loosened, and judges a torque against the thread that has to stand it. */
final class Tightening {
    private static final List<String> THREAD_STATES = List.of("dry", "oiled", "locked", "sealed");
    private static final Quantities.Range TORQUE = new Quantities.Range(0.1, 3000, "between 0.1 N·m and 3000 N·m");
    private static final Quantities.Range ANGLE = new Quantities.Range(1, 720, "between 1 ° and 720 °");

    /** An estimate with a typical nut factor is not blamed for less than this. */
    private static final double MARGIN = 1.25;

    private final Scope scope;
    private final Problems problems;

    Tightening(Scope scope) {
        this.scope = scope;
        this.problems = scope.problems();
    }

    List<Makeup.Stage> stages(Fields joint, List<Fastener> fasteners) {
        List<Makeup.Stage> stages = new ArrayList<>();
        for (Node entry : joint.list("tighten")) {
            stage(scope.fields(entry, "a stage of tightening"), fasteners).ifPresent(stages::add);
        }
        if (!stages.isEmpty() && fasteners.isEmpty()) {
            problems.fault(joint.at("tighten"), "a torque or angle, but no fasteners to turn", "add fasteners");
        }
        return stages;
    }

    private Optional<Makeup.Stage> stage(Fields stage, List<Fastener> fasteners) {
        Optional<Torque> torque = stage.measure("torque", QuantityKind.TORQUE, TORQUE)
                .map(measure -> new Torque(measure.value(), measure.typed()));
        Optional<Angle> angle = stage.measure("angle", QuantityKind.ANGLE, ANGLE)
                .map(measure -> new Angle(measure.value(), measure.typed()));
        String thread = stage.word("thread", "", THREAD_STATES);
        List<String> after = BuildMarks.read(stage, "after", scope);
        if (stage.has("torque") == stage.has("angle")) {
            problems.fault(
                    stage.node(),
                    stage.has("torque") ? "a stage with both a torque and an angle" : "a stage without torque or angle",
                    "write { torque: 24 N·m, thread: oiled } or { angle: 90 °, thread: oiled }");
        } else if (!stage.has("thread")) {
            problems.fault(
                    stage.node(),
                    "a torque or angle without the state of the thread",
                    "add thread: dry, oiled, locked or sealed; the same torque stretches an oiled bolt more than a dry one");
        }
        stage.close();
        torque.ifPresent(value -> plausible(value, stage, fasteners));
        return torque.isPresent() == angle.isPresent()
                ? Optional.empty()
                : Optional.of(new Makeup.Stage(torque, angle, thread, after));
    }

    private void plausible(Torque torque, Fields stage, List<Fastener> fasteners) {
        Set<String> told = new HashSet<>();
        for (Fastener fastener : fasteners) {
            if (fastener.kind() == FastenerKind.BANJO_BOLT || !told.add(fastener.thread() + " " + fastener.grade())) {
                continue;
            }
            ThreadSize.find(fastener.thread()).ifPresent(size -> judge(torque, stage, fastener, size));
        }
    }

    private void judge(Torque torque, Fields stage, Fastener fastener, ThreadSize size) {
        double strongest_Nm = size.proofTorque_Nm("12.9").orElseThrow();
        if (torque.newtonMetres() > strongest_Nm * MARGIN) {
            problems.fault(
                    stage.at("torque"),
                    torque.typed() + " is more than an " + fastener.thread() + " thread can stand",
                    "even class 12.9 reaches its proof load at about " + rounded(strongest_Nm)
                            + " N·m (typical estimate: ISO 898-1 stress area, nut factor 0.2). Correct the torque or the thread");
            return;
        }
        Optional<Double> own_Nm = size.proofTorque_Nm(fastener.grade());
        if (own_Nm.isPresent() && torque.newtonMetres() > own_Nm.get() * MARGIN) {
            problems.warning(
                    stage.at("torque"),
                    torque.typed() + " is much for an " + fastener.thread() + " of class " + fastener.grade(),
                    "its proof load is reached at about " + rounded(own_Nm.get())
                            + " N·m (typical estimate). Check torque and class");
        }
    }

    private static String rounded(double torque_Nm) {
        return String.format(Locale.ROOT, torque_Nm < 10 ? "%.1f" : "%.0f", torque_Nm);
    }

    List<Integer> pattern(Fields fields, String key, int count, List<PlacePattern.Spot> spots) {
        Optional<Node> node = fields.take(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (count == 0) {
            problems.fault(fields.at(key), "a pattern without fasteners", "add fasteners, or take the pattern out");
            return List.of();
        }
        return switch (node.get()) {
            case SequenceNode list -> written(list, count);
            case ScalarNode name -> named(name, fields, key, count, spots);
            default -> {
                problems.fault(node.get(), "this is not a pattern", "a name such as cross, or a list of positions");
                yield List.of();
            }
        };
    }

    private List<Integer> named(ScalarNode name, Fields fields, String key, int count, List<PlacePattern.Spot> spots) {
        String pattern = fields.word(key, "in-line", PlacePattern.NAMES);
        if (!PlacePattern.needsPlaces(pattern)) {
            return PlacePattern.order(pattern, count, spots);
        }
        if (spots.size() != count) {
            problems.fault(
                    name,
                    "the pattern " + pattern + " needs the positions of all " + count + " fasteners",
                    "add at: [[x, y], ...] with one position for each fastener");
            return List.of();
        }
        return PlacePattern.order(pattern, count, spots);
    }

    private List<Integer> written(SequenceNode list, int count) {
        List<Integer> order = new ArrayList<>();
        for (Node member : list.getValue()) {
            order.add(Fields.wholeOf(member, 0, 1, count, problems));
        }
        Set<Integer> once = new HashSet<>(order);
        if (order.size() != count || once.size() != order.size()) {
            problems.fault(
                    list,
                    "a pattern of " + order.size() + " positions for " + count + " fasteners",
                    "name every position from 1 to " + count + " once");
            return List.of();
        }
        return order;
    }

    Makeup.Loosen loosen(Fields joint, int count, List<PlacePattern.Spot> spots) {
        Optional<Node> node = joint.take("loosen");
        if (node.isEmpty()) {
            return new Makeup.Loosen(1, List.of());
        }
        Fields loosen = scope.fields(node.get(), "loosen");
        Makeup.Loosen result =
                new Makeup.Loosen(loosen.whole("passes", 1, 1, 10), pattern(loosen, "pattern", count, spots));
        loosen.close();
        return result;
    }
}
