package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Spend;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import java.util.List;

/**
 * The order list for a spreadsheet: comma-separated, one header line, lines end with CR LF. Source: [RFC4180]. A field that
 * a spreadsheet would take for a formula gets an apostrophe in front.
 */
public final class OrderCsv {
    private OrderCsv() {}

    /** The whole file. */
    public static String of(Engine engine, OrderList list) {
        return of(engine, list, List.of());
    }

    /** The whole file. @param spoilt fasteners that trouble has spoilt, listed last */
    public static String of(Engine engine, OrderList list, List<Spend> spoilt) {
        OrderWords words = new OrderWords(engine);
        StringBuilder out = new StringBuilder();
        row(out, List.of("section", "amount", "unit", "what", "price each", "price known", "for"));
        for (OrderList.Section section : list.sections()) {
            for (OrderLine line : section.lines()) {
                String each = line.price().each().isPresent()
                        ? Figures.money(line.price().each().getAsDouble())
                        : "";
                row(
                        out,
                        List.of(
                                OrderWords.heading(section.kind()),
                                number(line.amount()),
                                unit(line.amount()),
                                line.spec(),
                                each,
                                line.price().known() > 0
                                        ? Figures.money(line.price().known())
                                        : "",
                                String.join("; ", words.uses(line))));
            }
        }
        for (Spend spend : spoilt) {
            row(out, List.of("Because of trouble", String.valueOf(spend.count()), "piece", spend.spec(), "", "", ""));
        }
        return out.toString();
    }

    private static String number(Amount amount) {
        return switch (amount) {
            case Amount.Pieces pieces -> String.valueOf(pieces.count());
            case Amount.Litres litres -> Figures.plain(litres.buy_l());
            case Amount.AsNeeded _ -> "";
        };
    }

    private static String unit(Amount amount) {
        return switch (amount) {
            case Amount.Pieces _ -> "piece";
            case Amount.Litres _ -> "l";
            case Amount.AsNeeded _ -> "as needed";
        };
    }

    static void row(StringBuilder out, List<String> fields) {
        out.append(String.join(",", fields.stream().map(OrderCsv::field).toList()))
                .append("\r\n");
    }

    /** A field, quoted when it must be. */
    static String field(String text) {
        String safe = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        if (safe.contains(",") || safe.contains("\"") || safe.contains("\n") || safe.contains("\r")) {
            return "\"" + safe.replace("\"", "\"\"") + "\"";
        }
        return safe;
    }
}
