package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Zone;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What every planned answer echoes, so that anybody can check it: the engine, the ways of lifting, the changeover rule. */
final class JsonEcho {
    private JsonEcho() {}

    static ObjectNode identity(Engine engine) {
        return JsonPieces.object()
                .put("id", engine.identity().id())
                .put("sha256", engine.identity().sha256());
    }

    static ArrayNode lists(List<List<String>> lists) {
        ArrayNode array = JsonPieces.array();
        lists.forEach(list -> array.add(JsonPieces.strings(list)));
        return array;
    }

    static ArrayNode ways(List<LiftingWay> ways) {
        ArrayNode array = JsonPieces.array();
        for (LiftingWay way : ways) {
            ObjectNode node = array.addObject().put("name", way.name());
            JsonPieces.putNumber(node, "limit_kg", way.limitKilograms());
            node.put("seconds", way.seconds());
        }
        return array;
    }

    /** How changeovers are counted. */
    static ObjectNode changeover(Engine engine) {
        return JsonPieces.object()
                .put("start_zone", engine.workplace().startZone())
                .put("bench_zone", Zone.BENCH)
                .put("tool_change_seconds", engine.workplace().toolChangeSeconds())
                .put(
                        "rule",
                        "back of the old zone plus go of the new one, closed under shortest paths, nothing within a zone;"
                                + " tool_change_seconds for every tool that the last operation did not use; starts in start_zone"
                                + " with empty hands and ends there; a joint all of whose parts are moved is at bench_zone; a lift"
                                + " changes neither zone nor tools");
    }

    /** The words of an enum constant: {@code MAKE_SAFE} is "make safe". */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
