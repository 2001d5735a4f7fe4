package gudgeon.app.format;

import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An order list as comma-separated values with a header, lines ended by CR LF, UTF-8. A cell that a spreadsheet would take
 * for a formula gets a leading apostrophe. Source: [RFC4180].
 */
public final class OrderCsv {
    private static final String END = "\r\n";

    private OrderCsv() {}

    /** The whole text, header first. */
    public static String write(OrderList list) {
        StringBuilder text = new StringBuilder("section,amount,unit,specification,price each,price known,used for");
        text.append(END);
        for (OrderList.Section section : list.sections()) {
            for (OrderLine line : section.lines()) {
                text.append(line(JsonEcho.word(section.kind()), line)).append(END);
            }
        }
        return text.toString();
    }

    private static String line(String section, OrderLine line) {
        boolean priced = line.price().known() > 0;
        List<String> cells = List.of(
                section,
                amount(line.amount()),
                unit(line.amount()),
                line.spec(),
                line.price().each().isPresent() ? money(line.price().each().getAsDouble()) : "",
                priced ? money(line.price().known()) : "",
                line.uses().stream().map(OrderLine.Use::id).distinct().collect(Collectors.joining(" ")));
        return cells.stream().map(OrderCsv::cell).collect(Collectors.joining(","));
    }

    private static String amount(Amount amount) {
        return switch (amount) {
            case Amount.Pieces(int count) -> String.valueOf(count);
            case Amount.Litres litres -> BigDecimal.valueOf(litres.buy_l()).stripTrailingZeros().toPlainString();
            case Amount.AsNeeded asNeeded -> "";
        };
    }

    private static String unit(Amount amount) {
        return switch (amount) {
            case Amount.Pieces pieces -> "pcs";
            case Amount.Litres litres -> litres.complete() ? "l" : "l or more";
            case Amount.AsNeeded asNeeded -> "as needed";
        };
    }

    private static String money(double amount) {
        return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@\t".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return safe.matches("(?s).*[\",\r\n].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
