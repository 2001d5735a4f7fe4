package gudgeon.app.desk;

import gudgeon.app.format.MeasuredTable;
import gudgeon.core.book.Body;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings from a table, as one stroke: all of them or none. Headings: feature, place, reading mm, and if known instrument, part
 * °C, standard °C.
 *
 * @param name of the file, for messages
 * @param text the table
 * @param gauges the instruments there are
 */
public record ReadingsIn(String name, String text, Gauges gauges) implements Deed {
    private static final int MOST = 2000;

    @Override
    public Telling tell(Job job) {
        MeasuredTable table;
        try {
            table = MeasuredTable.read(name, text);
        } catch (IllegalArgumentException e) {
            return wrong(String.valueOf(e.getMessage()));
        }
        if (table.size() > MOST) {
            return wrong(name + ": " + table.size() + " readings, more than the " + MOST + " of one stroke");
        }
        List<Body> bodies = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            TakeReading taken;
            try {
                taken = new TakeReading(
                        table.text(row, "feature"),
                        table.text(row, "place"),
                        List.of(table.typed(row, "reading")),
                        table.text(row, "instrument"),
                        table.typed(row, "part"),
                        table.typed(row, "standard"),
                        gauges,
                        false);
            } catch (IllegalArgumentException e) {
                return wrong(String.valueOf(e.getMessage()));
            }
            switch (taken.tell(job)) {
                case Telling.Facts facts -> bodies.addAll(facts.bodies());
                case Telling.Wrong wrong -> {
                    FieldProblem first = wrong.problems().getFirst();
                    String near = first.near().isEmpty() ? "" : ". Maybe " + String.join(", or ", first.near()) + "?";
                    return wrong(table.where(row)
                            + first.field()
                            + (first.given().isEmpty() ? " is missing" : " '" + first.given() + "'")
                            + (first.said().isEmpty() ? "" : ": " + first.said())
                            + near);
                }
            }
        }
        return new Telling.Facts(bodies, List.of());
    }

    private static Telling wrong(String what) {
        return Telling.wrong(new FieldProblem("table", FieldProblem.Kind.FILE, "", List.of(), what));
    }
}
