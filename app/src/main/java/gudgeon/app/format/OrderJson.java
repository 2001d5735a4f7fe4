package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import gudgeon.core.planning.StripRequest;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** An order list as JSON. Keys and their meaning: docs/json.md. */
public final class OrderJson {
    private OrderJson() {}

    /** One JSON document; the same arguments give the same text. */
    public static String write(Engine engine, StripRequest request, OrderList list) {
        ObjectNode root = JsonPieces.object();
        root.set("engine", JsonEcho.identity(engine));
        root.set("request", StripJson.request(engine, request));
        ArrayNode lines = JsonPieces.array();
        for (OrderList.Section section : list.sections()) {
            for (OrderLine line : section.lines()) {
                lines.add(line(section, line));
            }
        }
        root.set("lines", lines);
        root.set("totals", JsonPieces.object()
                .put("lines", list.totals().lines())
                .put("pieces", list.totals().pieces())
                .put("known_price", list.totals().knownPrice())
                .put("unpriced_lines", list.totals().unpricedLines()));
        return JsonPieces.text(root);
    }

    private static ObjectNode line(OrderList.Section section, OrderLine line) {
        ObjectNode node = JsonPieces.object();
        node.put("section", JsonEcho.word(section.kind()));
        node.put("spec", line.spec());
        node.putNull("count").putNull("litres_needed").putNull("litres_to_buy").putNull("places");
        switch (line.amount()) {
            case Amount.Pieces(int count) -> node.put("count", count);
            case Amount.Litres litres -> {
                node.put("litres_needed", litres.needed_l());
                node.put("litres_to_buy", litres.buy_l());
                node.put("litres_complete", litres.complete());
            }
            case Amount.AsNeeded(int places) -> node.put("places", places);
        }
        if (line.price().each().isPresent()) {
            node.put("price_each", line.price().each().getAsDouble());
        } else {
            node.putNull("price_each");
        }
        node.put("known_price", line.price().known());
        node.put("unpriced", line.price().unpriced());
        ArrayNode uses = JsonPieces.array();
        line.uses().forEach(use -> uses.addObject()
                .put("step", use.step())
                .put("id", use.id())
                .put("count", use.count()));
        node.set("uses", uses);
        return node;
    }
}
