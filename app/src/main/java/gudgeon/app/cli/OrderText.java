package gudgeon.app.cli;

import gudgeon.app.document.Figures;
import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import gudgeon.core.ordering.SectionKind;
import java.util.List;

/** What must be bought, for a person. */
final class OrderText {
    private final Screen screen;
    private final Layout layout;

    OrderText(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    /** The list of a plan with a heading and its sum. */
    void summary(Engine engine, OrderList list) {
        layout.heading("To buy");
        if (list.sections().isEmpty()) {
            layout.line("  Nothing: this destroys nothing.");
        }
        for (OrderList.Section section : list.sections()) {
            layout.line("  " + Ink.STRONG.on(screen, heading(section.kind())));
            section.lines().forEach(line -> line(engine, line));
        }
        OrderList.Totals totals = list.totals();
        if (totals.lines() > 0) {
            String open = totals.unpricedLines() == 0
                    ? ""
                    : ", " + Figures.count(totals.unpricedLines(), "line") + " without a full price";
            layout.withFigure(
                    "  ", 2, "known prices together" + open, Figures.money(totals.knownPrice()), Ink.STRONG);
        }
        layout.blank();
    }

    private void line(Engine engine, OrderLine line) {
        String price = line.price().known() == 0 && line.price().unpriced() > 0
                ? "-"
                : Figures.money(line.price().known());
        String lead = String.format("  %8s  ", amount(line.amount()));
        layout.withFigure(lead, lead.length(), line.spec() + uses(engine, line.uses()), price);
    }

    private static String uses(Engine engine, List<OrderLine.Use> uses) {
        gudgeon.app.document.Names names = new gudgeon.app.document.Names(engine);
        List<String> words = uses.stream()
                .map(use -> names.any(use.id()))
                .distinct()
                .toList();
        return " (" + Figures.list(words, 2) + ")";
    }

    private static String amount(Amount amount) {
        return switch (amount) {
            case Amount.Pieces(int count) -> count + " ×";
            case Amount.Litres litres -> Figures.volume(litres.buy_l()) + (litres.complete() ? "" : "+");
            case Amount.AsNeeded asNeeded -> "some";
        };
    }

    static String heading(SectionKind kind) {
        return switch (kind) {
            case GASKETS -> "Gaskets and seals";
            case WASHERS -> "Washers";
            case FASTENERS -> "Bolts, nuts and screws";
            case CLIPS -> "Clips and pins";
            case PIPES -> "Pipes and hoses";
            case OTHER -> "Other pieces";
            case FLUIDS -> "Fluids";
            case SEALANTS -> "Sealants and locking compounds";
        };
    }
}
