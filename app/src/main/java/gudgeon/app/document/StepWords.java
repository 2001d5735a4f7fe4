package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What a step of the strip says: the instruction, where, with what, what it destroys, what to mind. */
public final class StepWords {
    private static final double LIFT_RATHER_THAN_TAKE_KG = 3.0;

    /** A lift of more parts than this takes them off as one assembly; their own notes belong to taking it apart. */
    private static final int MOST_NOTED = 6;

    private final Engine engine;
    private final Names names;

    public StepWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /** The instruction, one line without a full stop: "Undo the 4 bolts, thermostat housing to cylinder head". */
    public String instruction(StripPlan.Operation operation) {
        return switch (operation.kind()) {
            case UNDO -> undo(engine.joint(operation.id()));
            case CUT -> "It will not come, cut it: " + undone(engine.joint(operation.id()));
            case LIFT -> lift(operation);
            case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL ->
                names.ready(engine.ready(operation.id()));
        };
    }

    /** The zone's name. */
    public String where(StripPlan.Operation operation) {
        return names.zone(operation.place().zone());
    }

    /** "socket 13 mm, pliers"; "by hand" when no tool is named; empty for a lift. */
    public String tools(StripPlan.Operation operation) {
        if (operation.kind() == StripPlan.Kind.LIFT) {
            return "";
        }
        List<String> tools = operation.place().tools();
        return tools.isEmpty() ? "by hand" : String.join(", ", tools);
    }

    /** Number of fasteners that the step undoes; 0 for steps without. */
    public int fastenerCount(StripPlan.Operation operation) {
        return switch (operation.kind()) {
            case UNDO, CUT -> engine.joint(operation.id()).makeup().fasteners().size();
            case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL, LIFT -> 0;
        };
    }

    /** "renew: 2 copper washers, 1 gasket"; empty when nothing is destroyed. */
    public String renew(StripPlan.Operation operation) {
        return operation.destroys().isEmpty() ? "" : "renew: " + String.join("; ", spends(operation.destroys()));
    }

    /** "2 × copper washer 14 x 20" for each. */
    public static List<String> spends(List<Spend> spends) {
        return spends.stream()
                .map(spend -> spend.count() == 1 ? spend.spec() : spend.count() + " × " + spend.spec())
                .toList();
    }

    /** What lies in the bag: "4 × bolt M8x1.25 x 30 mm, hexagon 13 mm"; one entry for each different fastener. */
    public List<String> fasteners(StripPlan.Operation operation) {
        return switch (operation.kind()) {
            case UNDO, CUT -> fasteners(engine.joint(operation.id()));
            case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL, LIFT -> List.of();
        };
    }

    /** What a joint is held by: "4 × bolt M8x1.25 x 30 mm, hexagon 13 mm"; one entry for each different fastener. */
    public static List<String> fasteners(Joint joint) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Fastener fastener : joint.makeup().fasteners()) {
            List<String> words = new ArrayList<>();
            words.add(fastener.kind().word());
            if (!fastener.thread().isBlank()) {
                words.add(fastener.thread());
            }
            fastener.length().ifPresent(length -> words.add("x " + length.typed()));
            String text = String.join(" ", words) + (fastener.drive().isBlank() ? "" : ", " + fastener.drive());
            counts.merge(text, 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .map(entry -> entry.getValue() + " × " + entry.getKey())
                .toList();
    }

    /** What to mind beside the cautions: notes of the file, order of loosening, photo, what to keep. */
    public List<String> notes(StripPlan.Operation operation) {
        return notes(operation, false);
    }

    /** The same where a drawing beside it shows the order of loosening. */
    public List<String> notesBesideDrawing(StripPlan.Operation operation) {
        return notes(operation, true);
    }

    private List<String> notes(StripPlan.Operation operation, boolean drawn) {
        List<String> notes = new ArrayList<>();
        operation.after().losses().forEach(loss -> notes.add(FluidWords.runsOut(engine, loss)));
        switch (operation.kind()) {
            case UNDO, CUT -> jointNotes(engine.joint(operation.id()), notes, drawn);
            case LIFT -> {
                if (operation.pieces().size() <= MOST_NOTED) {
                    operation.pieces().forEach(id -> partNotes(engine.part(id), notes));
                }
            }
            case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL -> {
                Ready ready = engine.ready(operation.id());
                if (operation.kind() == StripPlan.Kind.DRAIN) {
                    ready.joint().flatMap(engine::findJoint).map(StepWords::backAtOnce).ifPresent(notes::add);
                }
                engineState(ready.effect().engineState(), notes);
                add(ready.effect().note(), notes);
            }
        }
        return notes;
    }

    /** Where the plug of a drain goes: back into its hole, so that it needs no bag (decision 0026). */
    private static String backAtOnce(Joint joint) {
        if (joint.makeup().fasteners().isEmpty()) {
            return "When it has run out, shut it at once";
        }
        String renew = joint.makeup().spends().isEmpty()
                ? ""
                : ", with new " + Figures.list(joint.makeup().spends().stream()
                        .map(Spend::spec)
                        .distinct()
                        .toList());
        return "When it has run out, the " + counted(joint) + " goes back at once" + renew + ": no bag";
    }

    private void jointNotes(Joint joint, List<String> notes, boolean drawn) {
        engineState(joint.freedom().engineState(), notes);
        if (joint.work().photo()) {
            notes.add("Photo first");
        }
        if (joint.makeup().fasteners().stream()
                .anyMatch(fastener -> fastener.thread().contains("LH"))) {
            notes.add("Left-hand thread: undo it clockwise");
        }
        if (joint.makeup().loosen().passes() > 1
                || !joint.makeup().loosen().order().isEmpty()) {
            notes.add(loosen(joint.makeup().loosen(), drawn));
        }
        if (!joint.work().undo().risk().isBlank()) {
            notes.add("Risk: " + joint.work().undo().risk());
        }
        add(joint.work().note(), notes);
    }

    private static String loosen(Makeup.Loosen loosen, boolean drawn) {
        String passes = loosen.passes() > 1 ? "Loosen in " + loosen.passes() + " passes" : "Loosen";
        if (loosen.order().isEmpty()) {
            return passes;
        }
        return drawn ? passes + ", first 1, then 2 and so on as drawn" : passes + ", " + positions(loosen.order());
    }

    /** An order of 1-based positions, when nothing beside it shows where they are. */
    static String positions(List<Integer> order) {
        return "one by one in this order, counted as the engine file counts them: "
                + String.join(", then ", order.stream().map(String::valueOf).toList());
    }

    private static void engineState(Joint.EngineState state, List<String> notes) {
        switch (state) {
            case COLD -> notes.add("Only with the engine cold");
            case WARM -> notes.add("With the engine warm");
            case ANY -> {}
        }
    }

    private static void partNotes(Part part, List<String> notes) {
        if (part.care().photo()) {
            notes.add("Photo first");
        }
        if (!part.care().keep().isEmpty()) {
            notes.add("Keep the " + Figures.list(part.care().keep()) + " of "
                    + Names.withArticle(Names.inSentence(part.name())));
        }
        if (!part.care().rest().isBlank()) {
            notes.add("Lay " + Names.withArticle(Names.inSentence(part.name())) + " down "
                    + part.care().rest().replace('-', ' '));
        }
        add(part.care().note(), notes);
    }

    private static void add(String note, List<String> notes) {
        if (!note.isBlank()) {
            notes.add(note);
        }
    }

    private String undo(Joint joint) {
        if (joint.makeup().fasteners().isEmpty()) {
            return withoutFasteners(joint);
        }
        FastenerKind kind = joint.makeup().fasteners().getFirst().kind();
        String what = verb(kind) + " the " + counted(joint);
        if (joint.kind() == JointKind.HOSE_CLIP) {
            return what + " and pull " + names.the(joint.between().getFirst()) + " off " + names.theOthers(joint);
        }
        return what + ", " + names.between(joint);
    }

    private String undone(Joint joint) {
        String fasteners = joint.makeup().fasteners().isEmpty() ? joint.name() : counted(joint);
        return fasteners + ", " + names.between(joint);
    }

    static String counted(Joint joint) {
        Map<FastenerKind, Integer> counts = new LinkedHashMap<>();
        joint.makeup().fasteners().forEach(fastener -> counts.merge(fastener.kind(), 1, Integer::sum));
        if (counts.size() == 1 && joint.makeup().fasteners().size() == 1) {
            return word(joint.makeup().fasteners().getFirst().kind());
        }
        return Figures.list(counts.entrySet().stream()
                .map(entry -> Figures.count(entry.getValue(), word(entry.getKey())))
                .toList());
    }

    /** What of a fastener is turned: the nut of a stud and nut. */
    public static String word(FastenerKind kind) {
        return kind == FastenerKind.STUD_AND_NUT ? "nut" : kind.word();
    }

    private static String verb(FastenerKind kind) {
        return switch (kind) {
            case BOLT, SCREW, STUD_AND_NUT, NUT, BANJO_BOLT, UNION_NUT -> "Undo";
            case PLUG, SENSOR, GLOW_PLUG, SPARK_PLUG -> "Unscrew";
            case WORM_CLIP -> "Slacken";
            case SPRING_CLIP, CLIP -> "Release";
            case CIRCLIP, COLLETS, PIN -> "Take out";
            case CABLE_TIE -> "Cut";
        };
    }

    private String withoutFasteners(Joint joint) {
        String to = names.between(joint);
        String first = names.the(joint.between().getFirst());
        String from = first + " from " + names.theOthers(joint);
        return switch (joint.kind()) {
            case BOLTED -> "Undo: " + to;
            case HOSE_CLIP -> "Slacken the clip and pull " + from;
            case UNION_NUT -> "Undo the union nut, " + to;
            case BANJO -> "Undo the banjo bolt, " + to;
            case PRESS_FIT -> "Press " + from;
            case SNAP -> "Unclip " + from;
            case SEALANT -> "Break the bead of sealant, free " + from;
            case PLUG -> "Unplug " + from;
            case CLAMP -> "Release the clamp, " + to;
            case SLIDE -> "Pull " + from;
            case BELT -> "Take " + first + " off " + names.theOthers(joint);
        };
    }

    private String lift(StripPlan.Operation operation) {
        StripPlan.Lift lift = Objects.requireNonNull(operation.lift(), "a lift says how");
        String things = pieces(operation.pieces());
        String mass = Figures.mass(lift.massKilograms()) + (assumed(operation.pieces()) ? " assumed" : "");
        String tail = ", " + mass + way(lift.way());
        if (lift.aside()) {
            List<String> hangers = hangers(operation.pieces(), lift.hangsOn());
            String hangs = hangers.isEmpty()
                    ? ""
                    : ", hanging on "
                            + Figures.list(
                                    Names.gathered(hangers).stream()
                                            .map(Names::withArticle)
                                            .toList(),
                                    2) + strap(lift);
            return "Set aside: " + things + hangs + tail;
        }
        return (lift.massKilograms() < LIFT_RATHER_THAN_TAKE_KG ? "Take off: " : "Lift off: ") + things + tail;
    }

    /** The heaviest part first, the rest with it. */
    String pieces(List<String> ids) {
        List<Part> parts = ids.stream().map(engine::part).toList();
        Part main = parts.stream()
                .max((a, b) -> Double.compare(a.massKilograms(), b.massKilograms()))
                .orElseThrow();
        List<String> rest = parts.stream()
                .filter(part -> part != main)
                .map(part -> Names.inSentence(part.name()))
                .toList();
        String with = main.name().contains(" with ") ? ", together with " : " with ";
        return Names.inSentence(main.name()) + (rest.isEmpty() ? "" : with + Figures.list(Names.gathered(rest), 4));
    }

    private boolean assumed(List<String> ids) {
        return ids.stream().anyMatch(id -> engine.part(id).mass().isEmpty());
    }

    /** The parts that the lifted ones still hang on. */
    private List<String> hangers(List<String> pieces, List<String> joints) {
        return joints.stream()
                .map(engine::joint)
                .flatMap(joint -> joint.between().stream())
                .filter(part -> !pieces.contains(part))
                .distinct()
                .map(names::part)
                .toList();
    }

    private String strap(StripPlan.Lift lift) {
        boolean strapped = lift.hangsOn().stream()
                .map(engine::joint)
                .flatMap(joint -> joint.hang().stream())
                .anyMatch(hang -> hang.strap().isPresent() && hang.holdsKilograms() < lift.massKilograms());
        return strapped ? ", on the strap" : "";
    }

    static String way(String way) {
        return switch (way) {
            case "", "alone" -> "";
            case "helper" -> ", with a helper";
            default -> ", with the " + way;
        };
    }
}
