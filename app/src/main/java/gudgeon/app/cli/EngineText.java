package gudgeon.app.cli;

import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Part;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What an engine is, for a person. */
final class EngineText {
    private final Screen screen;
    private final Layout layout;

    EngineText(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    void print(Engine engine) {
        layout.heading(engine.identity().name() + "  (" + engine.identity().id() + ")");
        engine.identity().facts().forEach((key, value) -> row(key, value));
        row("base", new Names(engine).part(engine.workplace().base()) + " stays put");
        layout.blank();
        row("parts", engine.parts().size() + weighed(engine));
        row("joints", engine.joints().size() + ", " + flexible(engine) + " of them flexible");
        row("fasteners", fasteners(engine));
        row("features", engine.features().size() + " to measure");
        row("preparations", engine.ready().size() + ", checks on the way back: " + engine.rules().checks().size());
        layout.blank();
        circuits(engine);
        zones(engine);
        groups(engine);
    }

    private void circuits(Engine engine) {
        layout.heading("Circuits");
        for (Circuit circuit : engine.circuits()) {
            String volume = circuit.capacity().map(v -> ", " + v.typed()).orElse("");
            String licensed = circuit.kind().licensed() ? ", for licensed practice only" : "";
            row(circuit.id(), circuit.name() + ": " + circuit.kind().word() + volume + licensed);
        }
        layout.blank();
    }

    private void zones(Engine engine) {
        layout.heading("Zones");
        Names names = new Names(engine);
        engine.workplace().zones().forEach(zone -> row(
                zone.id(),
                names.zone(zone.id()) + ", " + Figures.time(zone.goSeconds()) + " to go, " + Figures.time(zone.backSeconds())
                        + " back" + (zone.id().equals(engine.workplace().startZone()) ? " (start)" : "")));
        layout.blank();
    }

    private void groups(Engine engine) {
        layout.heading("Parts");
        Map<String, List<String>> byGroup = new LinkedHashMap<>();
        for (Part part : engine.parts()) {
            String group = part.group().isBlank() ? "others" : part.group();
            byGroup.computeIfAbsent(group, g -> new java.util.ArrayList<>()).add(part.id());
        }
        byGroup.forEach((group, ids) -> row(group, String.join(", ", ids)));
    }

    private static String weighed(Engine engine) {
        long without = engine.parts().stream().filter(part -> part.mass().isEmpty()).count();
        return without == 0 ? "" : ", " + without + " without a mass (counted as " + Figures.mass(Part.UNKNOWN_MASS_KG) + ")";
    }

    private static long flexible(Engine engine) {
        return engine.joints().stream().filter(joint -> joint.flexible()).count();
    }

    private static String fasteners(Engine engine) {
        List<Fastener> all = engine.joints().stream()
                .flatMap(joint -> joint.makeup().fasteners().stream())
                .toList();
        long threaded = all.stream().filter(fastener -> fastener.kind().threaded()).count();
        return all.size() + ", " + threaded + " of them threaded";
    }

    private void row(String label, String text) {
        int indent = 24;
        String lead = "  " + label + " ".repeat(Math.max(1, indent - 2 - label.length()));
        layout.hanging(Ink.SOFT.on(screen, lead), indent, text);
    }
}
