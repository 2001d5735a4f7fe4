package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.SectionKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Words of an order list. */
public final class OrderWords {
    private final UseWords uses;

    public OrderWords(Engine engine) {
        this.uses = new UseWords(engine);
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

    /** What a line is for, in a few words each: "between the EGR cooler and the EGR valve". */
    public List<String> places(OrderLine line) {
        return gathered(line).values().stream().map(uses::phrase).toList();
    }

    /** The same with the steps of the strip: "for the head bolts (step 132)". */
    public List<String> uses(OrderLine line) {
        List<String> all = new ArrayList<>();
        for (List<OrderLine.Use> alike : gathered(line).values()) {
            List<String> steps = alike.stream()
                    .map(use -> String.valueOf(use.step()))
                    .distinct()
                    .toList();
            all.add(uses.phrase(alike) + " (" + (steps.size() == 1 ? "step " : "steps ") + Figures.list(steps) + ")");
        }
        return all;
    }

    private Map<String, List<OrderLine.Use>> gathered(OrderLine line) {
        Map<String, List<OrderLine.Use>> alike = new LinkedHashMap<>();
        for (OrderLine.Use use : line.uses()) {
            alike.computeIfAbsent(uses.alike(use.id()), key -> new ArrayList<>())
                    .add(use);
        }
        return alike;
    }
}
