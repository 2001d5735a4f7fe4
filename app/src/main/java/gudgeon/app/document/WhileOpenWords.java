package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.EveryPart;
import gudgeon.core.planning.OtherWays;
import gudgeon.core.planning.Trip;
import gudgeon.core.planning.WhileOpen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** What pays while it is open, as rows for a table, and the alternatives of a plan as sentences. */
public final class WhileOpenWords {
    private final Engine engine;
    private final Names names;

    public WhileOpenWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /**
     * Parts that the same work reaches.
     *
     * @param ids the parts
     * @param parts their names
     * @param now "12 min", "at least 40 min", or "off already"
     * @param later "at least 5 h 10 min", or why not
     * @param saves "at least 4 h 58 min"; empty when nothing is proven
     * @param nearlyFree whether it costs a tenth or less of coming back
     * @param blocked why it cannot be reached now; empty when it can
     */
    public record Row(
            List<String> ids,
            String parts,
            String now,
            String later,
            String saves,
            boolean nearlyFree,
            List<String> blocked) {
        public Row {
            ids = List.copyOf(ids);
            blocked = List.copyOf(blocked);
        }
    }

    /** Parts that cost something now and can be reached, greatest saving first. */
    public List<Row> worthwhile(WhileOpen open) {
        return rows(open.bySaving());
    }

    /** Parts that are off already, dearest to come back for first. */
    public List<Row> off(WhileOpen open) {
        return rows(open.lines().stream()
                .filter(line -> line.now() instanceof EveryPart.Reach.Off)
                .sorted((a, b) -> Long.compare(later(b), later(a)))
                .toList());
    }

    /** Parts that cannot be reached now, with the reason. */
    public List<Row> blocked(WhileOpen open) {
        return rows(open.lines().stream()
                .filter(line -> line.now() instanceof EveryPart.Reach.Never)
                .toList());
    }

    private static long later(WhileOpen.Line line) {
        return line.savesAtLeast().orElse(0);
    }

    private List<Row> rows(List<WhileOpen.Line> lines) {
        Map<List<Object>, List<WhileOpen.Line>> alike = new LinkedHashMap<>();
        lines.forEach(line -> alike.computeIfAbsent(
                        List.of(times(line.now()), times(line.later()), what(line.now())), key -> new ArrayList<>())
                .add(line));
        return alike.values().stream().map(this::row).toList();
    }

    private static Object what(EveryPart.Reach reach) {
        return switch (reach) {
            case EveryPart.Reach.Off off -> "";
            case EveryPart.Reach.By by -> by.trip().operations();
            case EveryPart.Reach.Never never -> never.reasons();
        };
    }

    private static Object times(EveryPart.Reach reach) {
        return reach instanceof EveryPart.Reach.By by ? by.trip().both() : "";
    }

    private Row row(List<WhileOpen.Line> alike) {
        WhileOpen.Line first = alike.getFirst();
        OptionalLong saves = first.savesAtLeast();
        List<String> parts = alike.stream().map(line -> names.part(line.part())).toList();
        return new Row(
                alike.stream().map(WhileOpen.Line::part).toList(),
                Names.capital(Figures.list(parts, 5)),
                time(first.now(), "off already"),
                time(first.later(), "–"),
                saves.isPresent() && saves.getAsLong() > 0 ? "at least " + Figures.time(saves.getAsLong()) : "",
                first.nearlyFree(),
                first.now() instanceof EveryPart.Reach.Never never
                        ? never.reasons().stream()
                                .map(new BlockedWords(engine)::reason)
                                .toList()
                        : List.of());
    }

    private static String time(EveryPart.Reach reach, String off) {
        return switch (reach) {
            case EveryPart.Reach.Off nothing -> off;
            case EveryPart.Reach.Never never -> "cannot be reached";
            case EveryPart.Reach.By by -> time(by.trip().both());
        };
    }

    private static String time(Trip.Span span) {
        return span.foundSeconds().isPresent()
                ? Figures.time(span.foundSeconds().getAsLong())
                : "at least " + Figures.time(span.atLeastSeconds());
    }

    /** One sentence for each alternative, cheapest first. */
    public List<String> otherWays(OtherWays others) {
        return others.ways().stream().map(this::otherWay).toList();
    }

    private String otherWay(OtherWays.Way way) {
        String by = way.by().isEmpty() ? "nothing else" : Figures.list(named(way.by()), 6);
        OtherWays.Price price = way.price();
        String time = price.totalSeconds().isPresent()
                ? more(price.totalSeconds().getAsLong()) + " in all"
                : more(price.workSeconds()) + " of work, changeover not counted";
        String money = price.money().isPresent() && Math.abs(price.money().getAsDouble()) >= 0.005
                ? ", " + (price.money().getAsDouble() > 0 ? "+" : "−")
                        + Figures.money(Math.abs(price.money().getAsDouble())) + " destroyed"
                : "";
        return "Instead of " + Figures.list(named(way.instead()), 6) + ": " + by + ". " + time + money;
    }

    private List<String> named(List<String> ids) {
        return ids.stream().map(names::any).toList();
    }

    private static String more(long seconds) {
        return (seconds < 0 ? "−" : "+") + Figures.time(Math.abs(seconds));
    }
}
