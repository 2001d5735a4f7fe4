package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Spend;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.ordering.OrderList;
import java.util.List;

/** The order list on paper: what to buy, how much, what for, what it costs, with boxes to tick when it is there. */
public final class OrderSheet {
    private static final int MOST_USES = 6;

    private OrderSheet() {}

    /**
     * The sheet as PDF.
     *
     * @param subject what the list is for, such as the words of a target
     */
    public static byte[] pdf(Engine engine, OrderList list, String subject, Issue issue) {
        return pdf(engine, list, List.of(), subject, issue);
    }

    /** The list as PDF. @param spoilt fasteners that trouble has spoilt, listed last */
    public static byte[] pdf(Engine engine, OrderList list, List<Spend> spoilt, String subject, Issue issue) {
        return Paper.pdf(
                "Order sheet: " + engine.identity().name(),
                Paper.cells(engine, issue, "Order sheet"),
                body(engine, list, spoilt, subject));
    }

    private static Xhtml body(Engine engine, OrderList list, List<Spend> spoilt, String subject) {
        OrderWords words = new OrderWords(engine);
        Xhtml out = new Xhtml();
        out.text("h1", "", engine.identity().name());
        out.text("div", "lead", "To buy. " + subject);
        sums(out, list.totals());
        out.text(
                "p",
                "",
                "Hold old beside new before the old one is thrown away: size, thickness, holes. "
                        + "Prices are those of the engine file; what has none is left open.");
        boolean heads = true;
        for (OrderList.Section section : list.sections()) {
            section(out, words, section, heads);
            heads = false;
        }
        spoilt(out, spoilt);
        return out;
    }

    private static void spoilt(Xhtml out, List<Spend> spoilt) {
        if (spoilt.isEmpty()) {
            return;
        }
        out.open("div", "together").text("h2", "", "Because of trouble").open("table", "list");
        for (Spend spend : spoilt) {
            out.open("tr", "");
            out.openStyled("td", "", "width:11mm").text("div", "tick", "").close();
            out.openStyled("td", "amount", "width:22mm")
                    .text(String.valueOf(spend.count()))
                    .close();
            out.open("td", "").text("div", "do", Names.capital(spend.spec())).close();
            out.close();
        }
        out.close().close();
    }

    /** A section; its heading stays on the page of its first line. */
    private static void section(Xhtml out, OrderWords words, OrderList.Section section, boolean heads) {
        out.open("div", "together").text("h2", "", OrderWords.heading(section.kind()));
        out.open("table", "list");
        if (heads) {
            out.open("thead", "").open("tr", "");
            head(out, "", "width:11mm", "There");
            head(out, "", "width:22mm", "How many");
            out.text("th", "", "What");
            head(out, "r", "width:20mm", "Each");
            head(out, "r", "width:22mm", "Sum");
            out.close().close();
        }
        line(out, words, section.lines().getFirst());
        out.close().close();
        if (section.lines().size() > 1) {
            out.open("table", "list");
            section.lines().stream().skip(1).forEach(line -> line(out, words, line));
            out.close();
        }
    }

    private static void head(Xhtml out, String styleClass, String style, String text) {
        out.openStyled("th", styleClass, style).text(text).close();
    }

    private static void sums(Xhtml out, OrderList.Totals totals) {
        out.open("table", "sums").open("tr", "");
        sum(out, "Lines", String.valueOf(totals.lines()));
        sum(out, "Pieces", String.valueOf(totals.pieces()));
        sum(out, "Known prices together", Figures.money(totals.knownPrice()));
        sum(out, "Lines without a price", String.valueOf(totals.unpricedLines()));
        out.close().close();
    }

    private static void sum(Xhtml out, String label, String value) {
        out.open("td", "").text("div", "label", label).text("div", "sum", value).close();
    }

    private static void line(Xhtml out, OrderWords words, OrderLine line) {
        out.open("tr", "");
        out.openStyled("td", "", "width:11mm").text("div", "tick", "").close();
        out.openStyled("td", "amount", "width:22mm")
                .text(OrderWords.amount(line.amount()))
                .close();
        out.open("td", "").text("div", "do", Names.capital(line.spec()));
        String remark = OrderWords.remark(line.amount());
        if (!remark.isEmpty()) {
            out.text("div", "with", Names.capital(remark));
        }
        out.text("div", "for", Names.capital(Figures.list(words.uses(line), MOST_USES)))
                .close();
        boolean pieces = line.amount() instanceof Amount.Pieces;
        String each = line.price().each().isPresent()
                ? Figures.money(line.price().each().getAsDouble())
                : "";
        String sum =
                pieces && line.price().known() > 0 ? Figures.money(line.price().known()) : "";
        out.openStyled("td", "r", "width:20mm").text(each).close();
        out.openStyled("td", "r", "width:22mm")
                .text(sum.isEmpty() ? "........" : sum)
                .close();
        out.close();
    }
}
