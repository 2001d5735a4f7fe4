package gudgeon.app.web.measuring;

import gudgeon.app.desk.FeaturePlaces;
import gudgeon.app.desk.Gauges;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.MeasuredFeature;
import gudgeon.app.document.Figures;
import gudgeon.app.document.MeasureFigures;
import gudgeon.app.document.MeasureRemarks;
import gudgeon.app.document.MeasureWords;
import gudgeon.app.document.Names;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The sheet of a feature. */
public final class FeatureView {
    private final Job job;
    private final MeasuredFeature measured;
    private final FeaturePlaces places;
    private final Gauges gauges;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;
    private final Names names;
    private final MeasureFigures figures;
    private final MeasureWords words;

    FeatureView(Job job, MeasuredFeature measured, Gauges gauges, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.measured = measured;
        this.places = new FeaturePlaces(measured.feature());
        this.gauges = gauges;
        this.form = form;
        this.entries = entries;
        this.said = said;
        this.names = new Names(job.engine());
        this.figures = new MeasureFigures(job.facts().setting().means().units().equals("inch"));
        this.words = new MeasureWords(figures);
    }

    /**
     * A value.
     *
     * @param sentences verdict and what would settle it
     * @param scale beside its limits; empty without a verdict
     * @param budget what makes up its uncertainty, largest first
     */
    public record Value(
            String trait,
            String value,
            String from,
            String style,
            List<String> sentences,
            Optional<ScaleView> scale,
            List<Line> budget) {}

    /** A line of a budget. */
    public record Line(String what, String component) {}

    /** Values of one thing: a bore, a ring, a place. */
    public record Group(String of, List<Value> values) {}

    /** A table of a bore or journal: depths down, directions across. */
    public record Table(String name, List<String> directions, List<Row> rows) {}

    /** A depth. */
    public record Row(String depth, List<Cell> cells) {}

    /**
     * A place of the map.
     *
     * @param size empty where nothing was read
     * @param more what it is more than the smallest
     */
    public record Cell(String size, String more) {}

    /** What was read at a place. */
    public record Shown(String place, String values) {}

    /** One word or two for a list. */
    static String state(MeasuredFeature one) {
        String word = switch (one.standing()) {
            case BEYOND -> "beyond";
            case TOO_CLOSE -> "too close to call";
            case WITHIN -> "within";
            case READ -> "read";
            case NOTHING_READ -> one.access().reachable() ? "to read" : "out of reach yet";
        };
        return one.provisional() ? word + ", provisional" : word;
    }

    static String style(MeasuredFeature one) {
        return switch (one.standing()) {
            case BEYOND -> "beyond";
            case TOO_CLOSE -> "close";
            case WITHIN -> one.provisional() ? "provisional" : "within";
            case READ, NOTHING_READ -> "open";
        };
    }

    public SaidView said() {
        return said;
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entries.get();
    }

    public String id() {
        return measured.feature().id();
    }

    public String title() {
        return measured.feature().name();
    }

    public String path() {
        return MeasuringPaths.list(job);
    }

    public String bookPath() {
        return JobPaths.job(job) + "/book";
    }

    public String state() {
        return Names.capital(state(measured));
    }

    public String style() {
        return style(measured);
    }

    /** What is measured, and against what. */
    public String lead() {
        String parts = Figures.list(
                measured.feature().parts().stream().map(names::part).toList(), 3);
        String limits = Figures.list(measured.feature().limits().stream()
                .map(limit -> limit.name()
                        + limit.min().map(min -> " from " + min.typed()).orElse("")
                        + limit.max().map(max -> " up to " + max.typed()).orElse(""))
                .toList());
        return Names.capital(parts) + (limits.isEmpty() ? "" : ". Limits: " + limits) + ".";
    }

    public boolean reachable() {
        return measured.access().reachable();
    }

    /** Parts to clean first, by id. */
    public List<String> uncleaned() {
        return measured.access().uncleaned();
    }

    public String part(String id) {
        return names.part(id);
    }

    public boolean readDirty() {
        return measured.access().readDirty();
    }

    public boolean provisional() {
        return measured.provisional();
    }

    /** Whether some limit is typical and nobody confirmed it. */
    public boolean unconfirmed() {
        return measured.feature().limits().stream().anyMatch(limit -> limit.typical())
                && !job.facts().setting().confirmed().contains(id());
    }

    public String which() {
        return places.which().orElse("");
    }

    /** Places to choose from: those left first. */
    public List<String> places() {
        List<String> all = new ArrayList<>(measured.left());
        places.all().stream().filter(place -> !all.contains(place)).forEach(all::add);
        return all;
    }

    public String chosenPlace() {
        String typed = form.typed("place");
        return typed.isEmpty() ? places().getFirst() : typed;
    }

    public boolean isLeft(String place) {
        return measured.left().contains(place);
    }

    public int left() {
        return measured.left().size();
    }

    public boolean isFlatness() {
        return places.trait() == Derived.Trait.FLATNESS;
    }

    public List<String> instruments() {
        return gauges.names();
    }

    /** The instrument of the last reading here, else the usual one. */
    public String instrument() {
        String typed = form.typed("instrument");
        if (!typed.isEmpty()) {
            return typed;
        }
        return measured.read().values().stream()
                .reduce((first, second) -> second)
                .map(worth -> worth.reading().instrument().id())
                .orElseGet(() -> places.usual().word());
    }

    /** The temperature of the last reading in the book; empty when nobody said one. */
    public String warmth() {
        String typed = form.typed("part");
        if (!typed.isEmpty()) {
            return typed;
        }
        return job.facts().gauged().readings().reversed().stream()
                .filter(reading -> !reading.said().warmth_C().isEmpty())
                .findFirst()
                .map(reading -> Figures.plain(reading.said().warmth_C().getFirst()))
                .orElse("");
    }

    public List<Group> groups() {
        Map<String, List<Value>> groups = new LinkedHashMap<>();
        measured.sheet()
                .ifPresent(sheet -> sheet.judged()
                        .forEach(judged -> groups.computeIfAbsent(judged.of(), of -> new ArrayList<>())
                                .add(value(judged))));
        List<Group> list = new ArrayList<>();
        groups.forEach((of, values) -> list.add(new Group(of, values)));
        return list;
    }

    private Value value(Judged judged) {
        Derived derived = judged.derived();
        List<String> sentences = new ArrayList<>();
        judged.verdict().ifPresent(verdict -> {
            sentences.add(words.verdict(derived.trait(), verdict));
            sentences.addAll(words.settling(verdict));
        });
        List<Line> budget = derived.estimate().budget().largestFirst().stream()
                .filter(line -> line.component() > 0)
                .map(line -> new Line(
                        MeasureWords.source(line.source()), figures.component(derived.trait(), line.component())))
                .toList();
        String from = derived.from().size() > 4
                ? ""
                : Figures.list(derived.from().stream()
                        .map(place -> place(derived.trait(), place))
                        .toList());
        return new Value(
                Names.capital(MeasureWords.trait(derived.trait())),
                figures.value(derived.trait(), derived.estimate()),
                from.equals(judged.of()) ? "" : from,
                judged.verdict()
                        .map(verdict -> switch (verdict.outcome()) {
                            case WITHIN -> verdict.provisional() ? "provisional" : "within";
                            case BEYOND -> "beyond";
                            case TOO_CLOSE -> "close";
                        })
                        .orElse("open"),
                sentences,
                judged.verdict().map(verdict -> ScaleView.of(derived.trait(), verdict, figures)),
                budget);
    }

    /** A place in words; a point of a face by its coordinates. */
    private String place(Derived.Trait trait, String place) {
        boolean point = trait == Derived.Trait.FLATNESS || trait == Derived.Trait.SKIM;
        if (!point || measured.face().isEmpty()) {
            return place;
        }
        return List.copyOf(measured.read().keySet()).get(Integer.parseInt(place) - 1);
    }

    public List<String> remarks() {
        MeasureRemarks remarks = new MeasureRemarks(figures);
        return measured.sheet().stream()
                .flatMap(sheet -> sheet.remarks().stream())
                .flatMap(remark -> remarks.words(remark).stream())
                .distinct()
                .toList();
    }

    public Optional<FaceMapView> map() {
        return measured.face().map(FaceMapView::of);
    }

    /** The maps of bores and journals that were read at several depths or directions. */
    public List<Table> tables() {
        if (!places.isBore() && !places.isShaft()) {
            return List.of();
        }
        Map<String, Map<String, Map<String, Reading.Worth>>> rounds = new LinkedHashMap<>();
        measured.read().forEach((place, worth) -> {
            List<String> at = places.words(place);
            String direction = at.size() > 1 ? at.getLast() : "";
            rounds.computeIfAbsent(places.round(place), key -> new LinkedHashMap<>())
                    .computeIfAbsent(at.getFirst(), key -> new LinkedHashMap<>())
                    .put(direction, worth);
        });
        List<Table> tables = new ArrayList<>();
        rounds.forEach((name, depths) -> tables.add(table(name, depths)));
        return tables;
    }

    private Table table(String name, Map<String, Map<String, Reading.Worth>> depths) {
        List<String> directions = depths.values().stream()
                .flatMap(row -> row.keySet().stream())
                .distinct()
                .toList();
        double least = depths.values().stream()
                .flatMap(row -> row.values().stream())
                .mapToDouble(worth -> worth.estimate().value())
                .min()
                .orElse(0);
        List<Row> rows = new ArrayList<>();
        depths.forEach((depth, row) -> rows.add(new Row(
                depth,
                directions.stream()
                        .map(direction -> Optional.ofNullable(row.get(direction))
                                .map(worth -> new Cell(
                                        figures.length(worth.estimate().value()),
                                        "+" + Math.round(1000 * (worth.estimate().value() - least)) + " µm"))
                                .orElse(new Cell("", "")))
                        .toList())));
        return new Table(name, directions, rows);
    }

    /** What was read, place by place, as shown. */
    public List<Shown> shown() {
        List<Shown> shown = new ArrayList<>();
        measured.read()
                .forEach((place, worth) -> shown.add(new Shown(
                        place,
                        String.join(
                                        ", ",
                                        worth.reading().shown_mm().stream()
                                                .map(figures::length)
                                                .toList()) + ", "
                                + worth.reading().instrument().id())));
        return shown;
    }
}
