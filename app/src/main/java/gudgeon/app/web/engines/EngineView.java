package gudgeon.app.web.engines;

import gudgeon.app.desk.NameQuestion;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the page of an engine shows. */
public final class EngineView {
    private final Engine engine;
    private final Names names;
    private final String words;
    private final NameQuestion.Hits hits;

    EngineView(Engine engine, String words) {
        this.engine = engine;
        this.names = new Names(engine);
        this.words = words;
        this.hits = new NameQuestion(engine, words).ask();
    }

    /** A label and its text. */
    public record Row(String label, String text) {}

    /** A name that leads somewhere, and a figure beside it. */
    public record Item(String name, String href, String figure) {}

    /** Parts of one assembly. */
    public record Group(String name, List<Item> parts) {}

    public String name() {
        return engine.identity().name();
    }

    public String path() {
        return EnginePaths.engine(engine);
    }

    /** What was searched for. */
    public String words() {
        return words;
    }

    public boolean searched() {
        return !words.isBlank();
    }

    public List<String> near() {
        return hits.near();
    }

    /** What the search found. */
    public List<Item> found() {
        List<Item> items = new ArrayList<>();
        hits.parts().forEach(part -> items.add(item(part)));
        hits.joints()
                .forEach(joint -> items.add(new Item(
                        joint.name(),
                        EnginePaths.joint(engine, joint.id()),
                        Figures.time(joint.work().undo().expectedSeconds()))));
        return items;
    }

    public List<Row> facts() {
        List<Row> rows = new ArrayList<>();
        engine.identity().facts().forEach((label, text) -> rows.add(new Row(label.replaceFirst("^views\\.", "").replace('-', ' '), text)));
        rows.add(new Row("stays put", names.part(engine.workplace().base())));
        rows.add(new Row("parts and joints", engine.parts().size() + " and " + engine.joints().size()));
        return rows;
    }

    public List<Group> groups() {
        Map<String, List<Item>> byGroup = new LinkedHashMap<>();
        for (Part part : engine.parts()) {
            byGroup.computeIfAbsent(heading(part.group()), key -> new ArrayList<>()).add(item(part));
        }
        List<Group> groups = new ArrayList<>();
        byGroup.forEach((name, parts) -> groups.add(new Group(name, parts)));
        return groups;
    }

    public List<Row> circuits() {
        return engine.circuits().stream().map(EngineView::row).toList();
    }

    public List<Row> features() {
        return engine.features().stream().map(this::row).toList();
    }

    private String heading(String group) {
        return Names.heading(
                group, engine.parts().stream().map(Part::name).toList());
    }

    private Item item(Part part) {
        return new Item(
                part.name(),
                EnginePaths.part(engine, part.id()),
                part.mass().map(mass -> Figures.mass(mass.kilograms())).orElse("mass?"));
    }

    private static Row row(Circuit circuit) {
        String volume = circuit.capacity().map(v -> ", " + v.typed()).orElse("");
        String licensed = circuit.kind().licensed() ? ", for licensed practice only" : "";
        return new Row(circuit.name(), circuit.kind().word() + volume + licensed);
    }

    private Row row(Feature feature) {
        String limits = feature.limits().isEmpty()
                ? "no limit given"
                : Figures.count(feature.limits().size(), "limit")
                        + (feature.limits().stream().allMatch(Feature.Limit::typical) ? ", typical" : "");
        return new Row(feature.name(), limits);
    }
}
