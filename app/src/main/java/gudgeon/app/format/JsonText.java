package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.Zone;
import java.util.List;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Pieces that every machine-readable answer shares. Keys and their meaning: docs/json.md. */
final class JsonText {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private JsonText() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    static String write(ObjectNode node) {
        return MAPPER.writeValueAsString(node);
    }

    static ArrayNode strings(List<String> words) {
        ArrayNode array = array();
        words.forEach(array::add);
        return array;
    }

    static ArrayNode lists(List<List<String>> lists) {
        ArrayNode array = array();
        lists.forEach(list -> array.add(strings(list)));
        return array;
    }

    static ObjectNode identity(Engine engine) {
        return object()
                .put("id", engine.identity().id())
                .put("sha256", engine.identity().sha256());
    }

    static ArrayNode ways(List<LiftingWay> ways) {
        ArrayNode array = array();
        ways.forEach(way -> array.addObject()
                .put("name", way.name())
                .put("limit_kg", way.limitKilograms())
                .put("seconds", way.seconds()));
        return array;
    }

    static ArrayNode spends(List<Spend> spends) {
        ArrayNode array = array();
        for (Spend spend : spends) {
            ObjectNode node = array.addObject().put("spec", spend.spec()).put("count", spend.count());
            if (spend.priceEach().isPresent()) {
                node.put("price", spend.priceEach().getAsDouble());
            } else {
                node.putNull("price");
            }
        }
        return array;
    }

    /** How changeovers are counted, so that anybody can count them again. */
    static ObjectNode changeover(Engine engine) {
        return object()
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
}
