package gudgeon.app.cli;

import gudgeon.app.document.Figures;
import gudgeon.app.document.OrderWords;
import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import java.util.Locale;

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
            layout.line("  " + Ink.STRONG.on(screen, OrderWords.heading(section.kind())));
            section.lines().forEach(line -> line(engine, line));
        }
        OrderList.Totals totals = list.totals();
        if (totals.lines() > 0) {
            String open = totals.unpricedLines() == 0
                    ? ""
                    : ", " + Figures.count(totals.unpricedLines(), "line") + " without a full price";
            layout.withFigure("  ", 2, "known prices together" + open, Figures.money(totals.knownPrice()), Ink.STRONG);
        }
        layout.blank();
    }

    private void line(Engine engine, OrderLine line) {
        String price = line.price().known() == 0 && line.price().unpriced() > 0
                ? "-"
                : Figures.money(line.price().known());
        String lead = String.format(Locale.ROOT, "  %10s  ", OrderWords.amount(line.amount()));
        layout.withFigure(lead, lead.length(), line.spec() + uses(engine, line), price);
    }

    private static String uses(Engine engine, OrderLine line) {
        return ", " + Figures.list(new OrderWords(engine).places(line), 2);
    }
}
