package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.EveryPart;
import gudgeon.core.planning.OtherWays;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.planning.Trip;
import gudgeon.core.planning.WhileOpen;
import java.util.OptionalLong;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What pays while it is open, as JSON. Keys and their meaning: docs/json.md. */
public final class WhileOpenJson {
    private WhileOpenJson() {}

    /**
     * One JSON document; the same arguments give the same text.
     *
     * @param asked what was to be reached
     * @param open the engine as the plan leaves it
     */
    public static String write(
            Engine engine, StripRequest asked, StripRequest open, WhileOpen parts, OtherWays others) {
        ObjectNode root = JsonPieces.object();
        root.set("engine", JsonEcho.identity(engine));
        root.set("request", StripJson.request(engine, asked));
        root.set("open", StripJson.request(engine, open));
        ArrayNode lines = JsonPieces.array();
        for (WhileOpen.Line line : parts.lines()) {
            ObjectNode node = lines.addObject().put("part", line.part());
            node.set("now", reach(line.now()));
            node.set("later", reach(line.later()));
            put(node, "saves_at_least", line.savesAtLeast());
            node.put("nearly_free", line.nearlyFree());
        }
        root.set("parts", lines);
        root.set("alternatives", alternatives(others));
        root.set("no_way_round", JsonPieces.strings(others.noWayRound()));
        return JsonPieces.text(root);
    }

    private static ObjectNode reach(EveryPart.Reach reach) {
        ObjectNode node = JsonPieces.object();
        switch (reach) {
            case EveryPart.Reach.Off off -> node.put("status", "off");
            case EveryPart.Reach.By by -> trip(node.put("status", "planned"), by.trip());
            case EveryPart.Reach.Never never -> {
                ArrayNode reasons = JsonPieces.array();
                for (Blocked.Reason reason : never.reasons()) {
                    ObjectNode one = reasons.addObject().put("kind", JsonEcho.word(reason.kind()));
                    one.set("about", JsonPieces.strings(reason.about()));
                    one.set("unblocked_by", JsonPieces.strings(reason.unblockedBy()));
                }
                node.put("status", "blocked").set("blocked_by", reasons);
            }
        }
        return node;
    }

    private static void trip(ObjectNode node, Trip trip) {
        node.put("opening_seconds", trip.costSeconds());
        node.put("strip_at_least", trip.strip().atLeastSeconds());
        put(node, "strip_found", trip.strip().foundSeconds());
        node.put("build_at_least", trip.build().atLeastSeconds());
        put(node, "build_found", trip.build().foundSeconds());
        node.set("chosen", JsonPieces.strings(trip.operations()));
        node.set("destroyed", JsonPieces.spends(trip.destroyed()));
        if (trip.money().isPresent()) {
            node.put("money", trip.money().getAsDouble());
        } else {
            node.putNull("money");
        }
    }

    private static void put(ObjectNode node, String key, OptionalLong seconds) {
        if (seconds.isPresent()) {
            node.put(key, seconds.getAsLong());
        } else {
            node.putNull(key);
        }
    }

    private static ArrayNode alternatives(OtherWays others) {
        ArrayNode array = JsonPieces.array();
        for (OtherWays.Way way : others.ways()) {
            ObjectNode node = array.addObject().put("without", way.without());
            node.set("instead", JsonPieces.strings(way.instead()));
            node.set("by", JsonPieces.strings(way.by()));
            node.put("work_seconds", way.price().workSeconds());
            put(node, "total_seconds", way.price().totalSeconds());
            if (way.price().money().isPresent()) {
                node.put("money", way.price().money().getAsDouble());
            } else {
                node.putNull("money");
            }
        }
        return array;
    }
}
