package gudgeon.app.format;

import gudgeon.core.engine.Geometry;
import gudgeon.core.engine.Level;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Length;
import java.util.List;
import java.util.OptionalInt;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes the shape of an engine and how far it can be opened. Millimetres, degrees of the crank. */
final class ShapeJson {
    private ShapeJson() {}

    static ObjectNode geometry(Geometry geometry) {
        ObjectNode object = JsonPieces.object();
        EngineJson.putMeasure(object, "bore_mm", geometry.bore(), Length::millimetres);
        EngineJson.putMeasure(object, "stroke_mm", geometry.stroke(), Length::millimetres);
        EngineJson.putMeasure(object, "rod_mm", geometry.rod(), Length::millimetres);
        JsonPieces.putNumber(object, "compression_ratio", geometry.compressionRatio());
        Geometry.ValveTiming valves = geometry.valves();
        EngineJson.putMeasure(object, "intake_opens_deg", valves.intakeOpens(), Angle::degrees);
        EngineJson.putMeasure(object, "intake_closes_deg", valves.intakeCloses(), Angle::degrees);
        EngineJson.putMeasure(object, "exhaust_opens_deg", valves.exhaustOpens(), Angle::degrees);
        EngineJson.putMeasure(object, "exhaust_closes_deg", valves.exhaustCloses(), Angle::degrees);
        ObjectNode teeth = object.putObject("teeth");
        putCount(teeth, "crank", geometry.teeth().crank());
        putCount(teeth, "cam", geometry.teeth().cam());
        putCount(teeth, "belt", geometry.teeth().belt());
        JsonPieces.putText(object, "basis", geometry.basis());
        object.put("typical", geometry.typical());
        return object;
    }

    static ArrayNode levels(List<Level> levels) {
        ArrayNode array = JsonPieces.array();
        for (Level level : levels) {
            array.addObject().put("depth", level.depth().word()).set("parts", JsonPieces.strings(level.parts()));
        }
        return array;
    }

    private static void putCount(ObjectNode object, String key, OptionalInt count) {
        if (count.isPresent()) {
            object.put(key, count.getAsInt());
        } else {
            object.putNull(key);
        }
    }
}
