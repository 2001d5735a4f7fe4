package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.SectionKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Words of an order list. */
public final class OrderWords {
    private final Names names;

    public OrderWords(Engine engine) {
        this.names = new Names(engine);
    }

    /** The heading of a section. */
    public static String heading(SectionKind kind) {
        return switch (kind) {
            case GASKETS -> "Gaskets and seals";
            case WASHERS -> "Washers";
            case FASTENERS -> "Bolts, nuts and screws";
            case CLIPS -> "Clips, rings and pins";
            case PIPES -> "Pipes and hoses";
            case OTHER -> "Other parts";
            case FLUIDS -> "Fluids";
            case SEALANTS -> "Sealants and thread-lock";
        };
    }

    /** "4", "5.5 l", "as needed". */
    public static String amount(Amount amount) {
        return switch (amount) {
            case Amount.Pieces pieces -> String.valueOf(pieces.count());
            case Amount.Litres litres -> Figures.volume(litres.buy_l());
            case Amount.AsNeeded _ -> "as needed";
        };
    }

    /** What stands beside the amount: the circuit volume, that one of them is not known, for how many joints. */
    public static String remark(Amount amount) {
        return switch (amount) {
            case Amount.Pieces _ -> "";
            case Amount.Litres litres ->
                "circuits hold " + Figures.volume(litres.needed_l())
                        + (litres.complete() ? "" : ", and one whose volume the file does not give");
            case Amount.AsNeeded asNeeded -> "for " + Figures.count(asNeeded.places(), "place");
        };
    }

    /** What a line is for: the joint or circuit with its step; uses of one name gathered. */
    public List<String> uses(OrderLine line) {
        Map<String, String> byName = new LinkedHashMap<>();
        for (OrderLine.Use use : line.uses()) {
            String count = use.count() > 1 ? ", " + use.count() : "";
            byName.merge(
                    names.any(use.id()) + count, "step " + use.step(), (a, b) -> a + ", " + b.replace("step ", ""));
        }
        return byName.entrySet().stream()
                .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
                .toList();
    }
}
