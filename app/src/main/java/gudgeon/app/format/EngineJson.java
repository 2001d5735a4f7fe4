package gudgeon.app.format;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Contents;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Zone;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Length;
import gudgeon.core.quantity.Mass;
import gudgeon.core.quantity.Torque;
import gudgeon.core.quantity.Volume;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes an engine as the JSON document of {@code gudgeon engine FILE --json}: everything that a planner needs, with every
 * default and every derived operation made explicit. Seconds, kilograms, millimetres, litres, newton metres.
 */
public final class EngineJson {
    private EngineJson() {}

    /** The document as text. */
    public static String write(Engine engine) {
        return JsonPieces.text(document(engine));
    }

    static ObjectNode document(Engine engine) {
        ObjectNode document = JsonPieces.object();
        document.put("format", engine.identity().format());
        document.put("id", engine.identity().id());
        document.put("name", engine.identity().name());
        JsonPieces.putText(document, "sha256", engine.identity().sha256());
        ObjectNode facts = document.putObject("facts");
        engine.identity().facts().forEach(facts::put);
        document.put("cylinders", engine.identity().cylinders());
        document.set("geometry", ShapeJson.geometry(engine.identity().geometry()));
        document.put("base", engine.workplace().base());
        document.put("start_zone", engine.workplace().startZone());
        document.put("tool_change_seconds", engine.workplace().toolChangeSeconds());
        ArrayNode zones = document.putArray("zones");
        engine.workplace().zones().forEach(zone -> zones.add(zone(zone)));
        ArrayNode parts = document.putArray("parts");
        engine.parts().forEach(part -> parts.add(part(part)));
        ArrayNode joints = document.putArray("joints");
        engine.joints().forEach(joint -> joints.add(joint(joint)));
        ArrayNode circuits = document.putArray("circuits");
        engine.circuits().forEach(circuit -> circuits.add(circuit(circuit)));
        ArrayNode ready = document.putArray("ready");
        engine.ready().forEach(operation -> ready.add(ready(operation)));
        ArrayNode before = document.putArray("before");
        engine.rules().precedences().forEach(pair -> before.add(precedence(pair)));
        ArrayNode features = document.putArray("features");
        engine.features().forEach(feature -> features.add(feature(feature)));
        document.set("levels", ShapeJson.levels(engine.rules().levels()));
        ArrayNode ways = document.putArray("ways_of_lifting");
        engine.workplace().waysOfLifting().forEach(way -> ways.add(way(way)));
        return document;
    }

    private static ObjectNode zone(Zone zone) {
        ObjectNode object = JsonPieces.object();
        object.put("id", zone.id())
                .put("name", zone.name())
                .put("go", zone.goSeconds())
                .put("back", zone.backSeconds());
        object.set("cautions", JsonPieces.strings(zone.cautions()));
        return object;
    }

    private static ObjectNode part(Part part) {
        ObjectNode object = JsonPieces.object().put("id", part.id()).put("name", part.name());
        JsonPieces.putText(object, "group", part.group());
        putMeasure(object, "mass_kg", part.mass(), Mass::kilograms);
        object.put("assumed_mass_kg", part.massKilograms());
        object.set("lift", JsonPieces.condition(part.lift()));
        JsonPieces.putText(object, "rest", part.care().rest());
        object.set("keep", JsonPieces.strings(part.care().keep()));
        return object;
    }

    private static ObjectNode joint(Joint joint) {
        ObjectNode object = JsonPieces.object().put("id", joint.id()).put("name", joint.name());
        object.put("kind", joint.kind().word());
        object.set("between", JsonPieces.strings(joint.between()));
        object.put("flexible", joint.flexible());
        JsonPieces.putNumber(
                object,
                "holds_kg",
                joint.hang()
                        .map(hang -> OptionalDouble.of(hang.holdsKilograms()))
                        .orElse(OptionalDouble.empty()));
        JsonPieces.putText(
                object, "strap", joint.hang().flatMap(Joint.Hang::strap).orElse(""));
        freedom(object, joint.freedom());
        work(object, joint);
        makeup(object, joint.makeup());
        return object;
    }

    private static void freedom(ObjectNode object, Joint.Freedom freedom) {
        object.put("rests", freedom.rests());
        object.set("access", JsonPieces.condition(freedom.access()));
        object.set("access_build", JsonPieces.condition(freedom.accessBuild()));
        object.set("needs", JsonPieces.strings(freedom.needs()));
        object.set("opens", JsonPieces.strings(freedom.opens()));
        object.set("drains", JsonPieces.strings(freedom.drains()));
        object.put("licensed", freedom.licensed());
        object.set("hold", hold(freedom.hold()));
        object.put("engine_state", state(freedom.engineState()));
    }

    /** What must be intact: a list of alternatives, each a list of joints; empty when nothing need be. */
    private static ArrayNode hold(Joint.Hold hold) {
        ArrayNode alternatives = JsonPieces.array();
        hold.alternatives().forEach(alternative -> alternatives.add(JsonPieces.strings(alternative)));
        return alternatives;
    }

    private static String state(Joint.EngineState state) {
        return switch (state) {
            case ANY -> "any";
            case COLD -> "cold";
            case WARM -> "warm";
        };
    }

    private static void work(ObjectNode object, Joint joint) {
        Joint.Work work = joint.work();
        object.put("zone", work.zone());
        object.set("tools", JsonPieces.strings(work.tools()));
        object.set("build_tools", JsonPieces.strings(work.buildTools()));
        object.put("undo_seconds", work.undo().expectedSeconds());
        object.set("undo_breakdown", breakdown(joint));
        object.put("build_seconds", work.buildSeconds());
        object.set("destroys", JsonPieces.spends(joint.makeup().spends()));
        JsonPieces.putNumber(
                object, "destroyed_value", JsonPieces.value(joint.makeup().spends()));
        if (work.cut().isPresent()) {
            ObjectNode cut =
                    object.putObject("cut").put("seconds", work.cut().get().seconds());
            cut.set("destroys", JsonPieces.spends(work.cut().get().destroys()));
            JsonPieces.putNumber(
                    cut, "destroyed_value", JsonPieces.value(work.cut().get().destroys()));
            cut.set("tools", JsonPieces.strings(work.cut().get().tools()));
        } else {
            object.putNull("cut");
        }
        ObjectNode seizure = object.putObject("seizure");
        JsonPieces.putNumber(seizure, "chance", work.undo().seizureChance());
        seizure.put("seconds", work.undo().seizureSeconds());
        JsonPieces.putText(seizure, "risk", work.undo().risk());
        object.set("cautions", JsonPieces.strings(work.cautions()));
        JsonPieces.putText(object, "note", work.note());
    }

    /** How the undo time comes about: default by kind, the factor on it, the expected loss by seizure. */
    private static ObjectNode breakdown(Joint joint) {
        ObjectNode breakdown = JsonPieces.object();
        Map<FastenerKind, Integer> counts = new EnumMap<>(FastenerKind.class);
        joint.makeup().fasteners().forEach(fastener -> counts.merge(fastener.kind(), 1, Integer::sum));
        ArrayNode fasteners = breakdown.putArray("fasteners");
        long usual = counts.isEmpty() ? joint.kind().seconds() : 0;
        for (Map.Entry<FastenerKind, Integer> entry : counts.entrySet()) {
            FastenerKind kind = entry.getKey();
            fasteners
                    .addObject()
                    .put("kind", kind.word())
                    .put("count", entry.getValue())
                    .put("seconds_each", kind.seconds());
            usual += (long) entry.getValue() * kind.seconds();
        }
        long actual = joint.work().undo().fastenerSeconds();
        breakdown.put("usual_seconds", usual);
        JsonPieces.putNumber(
                breakdown,
                "factor",
                usual == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.round(1000.0 * actual / usual) / 1000.0));
        breakdown.put("seconds", actual);
        breakdown.put("expected_seizure_seconds", joint.work().undo().expectedSeizureSeconds());
        return breakdown;
    }

    private static void makeup(ObjectNode object, Makeup makeup) {
        ArrayNode fasteners = object.putArray("fasteners");
        for (Fastener fastener : makeup.fasteners()) {
            fasteners.add(JsonPieces.fastener(fastener));
        }
        ArrayNode stages = object.putArray("tighten");
        for (Makeup.Stage stage : makeup.stages()) {
            ObjectNode written = stages.addObject();
            putMeasure(written, "torque_Nm", stage.torque(), Torque::newtonMetres);
            putMeasure(written, "angle_deg", stage.angle(), Angle::degrees);
            JsonPieces.putText(written, "thread_state", stage.threadState());
            written.set("after", JsonPieces.strings(stage.after()));
        }
        object.set("pattern", JsonPieces.numbers(makeup.pattern()));
        ObjectNode loosen =
                object.putObject("loosen").put("passes", makeup.loosen().passes());
        loosen.set("order", JsonPieces.numbers(makeup.loosen().order()));
    }

    private static ObjectNode circuit(Circuit circuit) {
        ObjectNode object = JsonPieces.object().put("id", circuit.id()).put("name", circuit.name());
        object.put("kind", circuit.kind().word());
        JsonPieces.putText(object, "fluid", circuit.fluid());
        putMeasure(object, "capacity_l", circuit.capacity(), Volume::litres);
        object.set("make_safe", JsonPieces.strings(circuit.makeSafe()));
        object.set("drains", JsonPieces.strings(circuit.drains()));
        object.set("hazards", JsonPieces.strings(circuit.hazards()));
        circuit.contents().ifPresent(contents -> contents(object, contents));
        return object;
    }

    private static void contents(ObjectNode object, Contents contents) {
        ArrayNode curve = object.putArray("contents");
        contents.curve().forEach(point -> curve.addObject()
                .put("height_mm", point.height_mm())
                .put("litres", point.litres()));
        ArrayNode opens = object.putArray("opens_at");
        contents.openedAt().forEach((joint, height) -> opens.addObject()
                .put("joint", joint)
                .put("height_mm", height));
    }

    private static ObjectNode ready(Ready ready) {
        ObjectNode object = JsonPieces.object().put("id", ready.id()).put("name", ready.name());
        object.put("kind", ready.kind().word()).put("seconds", ready.seconds()).put("zone", ready.zone());
        object.set("tools", JsonPieces.strings(ready.tools()));
        object.set("access", JsonPieces.condition(ready.access()));
        object.set("needs", JsonPieces.strings(ready.needs()));
        JsonPieces.putText(object, "joint", ready.joint().orElse(""));
        JsonPieces.putNumber(object, "height", ready.effect().height_mm());
        object.set("carries", JsonPieces.strings(ready.effect().carries()));
        object.set("hold", hold(ready.effect().hold()));
        object.put("engine_state", state(ready.effect().engineState()));
        object.set("destroys", JsonPieces.spends(ready.effect().spends()));
        JsonPieces.putNumber(
                object, "destroyed_value", JsonPieces.value(ready.effect().spends()));
        JsonPieces.putText(object, "restore", ready.effect().restore());
        object.set("cautions", JsonPieces.strings(ready.effect().cautions()));
        return object;
    }

    private static ObjectNode precedence(Precedence pair) {
        return JsonPieces.object()
                .put("first", pair.first())
                .put("then", pair.then())
                .put("why", pair.why());
    }

    private static ObjectNode feature(Feature feature) {
        ObjectNode object = JsonPieces.object().put("id", feature.id()).put("name", feature.name());
        object.put("kind", feature.kind());
        object.set("parts", JsonPieces.strings(feature.parts()));
        object.set("access", JsonPieces.condition(feature.access()));
        putMeasure(object, "nominal", feature.nominal(), Length::millimetres);
        ObjectNode take = object.putObject("take");
        for (Map.Entry<String, List<String>> entry : feature.take().entrySet()) {
            take.set(entry.getKey(), JsonPieces.strings(entry.getValue()));
        }
        ArrayNode limits = object.putArray("limits");
        for (Feature.Limit limit : feature.limits()) {
            ObjectNode written = limits.addObject().put("name", limit.name());
            putMeasure(written, "min", limit.min(), Length::millimetres);
            putMeasure(written, "max", limit.max(), Length::millimetres);
            written.put("basis", limit.basis()).put("typical", limit.typical());
        }
        return object;
    }

    private static ObjectNode way(LiftingWay way) {
        ObjectNode object = JsonPieces.object().put("name", way.name());
        JsonPieces.putNumber(object, "limit_kg", way.limitKilograms());
        object.put("seconds", way.seconds());
        JsonPieces.putText(object, "posture", way.posture());
        return object;
    }

    static <Q> void putMeasure(ObjectNode object, String key, Optional<Q> quantity, ToDoubleFunction<Q> value) {
        JsonPieces.putNumber(
                object,
                key,
                quantity.map(present -> OptionalDouble.of(value.applyAsDouble(present)))
                        .orElse(OptionalDouble.empty()));
    }
}
