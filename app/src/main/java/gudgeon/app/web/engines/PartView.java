package gudgeon.app.web.engines;

import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import java.util.ArrayList;
import java.util.List;

/** What the page of one part shows. */
public final class PartView {
    private final Engine engine;
    private final Part part;
    private final Names names;

    PartView(Engine engine, Part part) {
        this.engine = engine;
        this.part = part;
        this.names = new Names(engine);
    }

    public String name() {
        return part.name();
    }

    /** Whether it stays put, so that it cannot be reached. */
    public boolean base() {
        return part.id().equals(engine.workplace().base());
    }

    public String reach() {
        return EnginePaths.reach(engine, part.id());
    }

    public String aside() {
        return EnginePaths.engine(engine) + "/strip?aside=" + EnginePaths.encoded(part.id());
    }

    public List<EngineView.Row> rows() {
        List<EngineView.Row> rows = new ArrayList<>();
        add(rows, "Mass", part.mass()
                .map(mass -> mass.typed())
                .orElse("not given, " + Figures.mass(Part.UNKNOWN_MASS_KG) + " assumed"));
        add(rows, "Material", part.care().material());
        add(rows, "Assembly", part.group().replace('-', ' '));
        add(rows, "Lies", part.care().rest().replace('-', ' '));
        add(rows, "Keep", Figures.list(part.care().keep()));
        add(rows, "Supplied as", part.care().suppliedAs());
        add(rows, "Also called", Figures.list(part.care().otherNames()));
        add(rows, "Note", part.care().note());
        return rows;
    }

    /** The joints that hold it. */
    public List<EngineView.Item> joints() {
        return engine.joints().stream()
                .filter(joint -> joint.between().contains(part.id()))
                .map(joint -> new EngineView.Item(
                        joint.name(),
                        EnginePaths.joint(engine, joint.id()),
                        Figures.time(joint.work().undo().expectedSeconds())))
                .toList();
    }

    /** What of it is measured. */
    public List<String> features() {
        return engine.features().stream()
                .filter(feature -> feature.parts().contains(part.id()))
                .map(feature -> names.any(feature.id()))
                .toList();
    }

    private static void add(List<EngineView.Row> rows, String label, String text) {
        if (!text.isBlank()) {
            rows.add(new EngineView.Row(label, text));
        }
    }
}
