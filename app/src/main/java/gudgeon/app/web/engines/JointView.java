package gudgeon.app.web.engines;

import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.UndoTime;
import java.util.ArrayList;
import java.util.List;

/** What the page of one joint shows. */
public final class JointView {
    private final Engine engine;
    private final Joint joint;
    private final Names names;

    JointView(Engine engine, Joint joint) {
        this.engine = engine;
        this.joint = joint;
        this.names = new Names(engine);
    }

    public String name() {
        return joint.name();
    }

    public String between() {
        return names.between(joint);
    }

    /** The parts that it joins. */
    public List<EngineView.Item> parts() {
        return joint.between().stream()
                .map(engine::part)
                .map(part -> new EngineView.Item(part.name(), EnginePaths.part(engine, part.id()), ""))
                .toList();
    }

    public List<Caution> cautions() {
        return Cautions.catalogue().ranked(joint.work().cautions());
    }

    public String open() {
        return EnginePaths.engine(engine) + "/strip?open=" + EnginePaths.encoded(joint.id());
    }

    public List<String> fasteners() {
        return StepWords.fasteners(joint);
    }

    public List<EngineView.Row> rows() {
        List<EngineView.Row> rows = new ArrayList<>();
        add(rows, "Kind", joint.kind().word() + (joint.flexible() ? ", flexible" : ""));
        add(rows, "Stand", names.zone(joint.work().zone()));
        add(
                rows,
                "Tools",
                joint.work().tools().isEmpty()
                        ? "by hand"
                        : String.join(", ", joint.work().tools()));
        add(rows, "Time", time(joint.work().undo()));
        add(rows, "Renew", String.join("; ", StepWords.spends(joint.makeup().spends())));
        add(rows, "Opens", circuits(joint.freedom().opens()));
        add(rows, "Drains", circuits(joint.freedom().drains()));
        if (joint.freedom().licensed()) {
            add(rows, "Licence", "only licensed practice may undo it");
        }
        add(
                rows,
                "If it will not come",
                joint.work()
                        .cut()
                        .map(cut -> "cut it, " + Figures.time(cut.seconds()))
                        .orElse("the file knows no way to cut it"));
        add(rows, "Note", joint.work().note());
        return rows;
    }

    /** How it is tightened, one entry for each stage. */
    public List<String> tighten() {
        return stages(joint);
    }

    /** How a joint is tightened, one entry for each stage; empty when the file does not say. */
    public static List<String> stages(Joint joint) {
        List<String> stages = new ArrayList<>();
        for (Makeup.Stage stage : joint.makeup().stages()) {
            String amount = stage.torque()
                    .map(torque -> torque.typed())
                    .or(() -> stage.angle().map(angle -> Figures.plain(angle.degrees()) + "° on"))
                    .orElse("");
            stages.add(amount + (stage.threadState().isBlank() ? "" : ", thread " + stage.threadState()));
        }
        return stages;
    }

    private static String time(UndoTime undo) {
        String time = Figures.time(undo.fastenerSeconds());
        return undo.seizureChance() > 0
                ? time + ", and " + Figures.time(undo.seizureSeconds()) + " more when seized, one in "
                        + Math.max(2, Math.round(1 / undo.seizureChance()))
                : time;
    }

    private String circuits(List<String> ids) {
        return Figures.list(ids.stream().map(names::any).toList());
    }

    private static void add(List<EngineView.Row> rows, String label, String text) {
        if (!text.isBlank()) {
            rows.add(new EngineView.Row(label, text));
        }
    }
}
