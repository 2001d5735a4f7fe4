package gudgeon.app.document;

import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Check;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What a step of the way back says: the instruction, what to have in hand, how to tighten, what it waits for or lacks. */
public final class BuildWords {
    private final Engine engine;
    private final Names names;

    public BuildWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /** The instruction, one line without a full stop. */
    public String instruction(BuildPlan.Operation operation) {
        String ref = operation.subject().ref();
        return switch (operation.kind()) {
            case SEAL -> "Put " + compound(operation) + " on, " + names.between(engine.joint(ref));
            case PLACE -> place(operation);
            case SNUG -> snug(engine.joint(ref));
            case TIGHTEN -> "Make tight, by feel: " + joint(ref);
            case STAGE, ANGLE -> stage(operation, engine.joint(ref));
            case RESTORE -> restore(operation);
            case FILL -> fill(names.any(ref), operation);
            case BLEED -> "Bleed: " + names.any(ref);
            case CHECK -> Names.capital(check(ref).map(Check::name).orElse(ref));
            case WAIT -> "Wait " + Figures.time(operation.clock().seconds());
        };
    }

    /** The cautions of the step that are about putting together. */
    public static List<String> cautions(BuildPlan.Operation operation) {
        return Cautions.catalogue().puttingTogether(operation.kind(), operation.needs().cautions());
    }

    /** "60 N·m" or "90°" for a stage; empty for other steps. */
    public String number(BuildPlan.Operation operation) {
        BuildPlan.Tightening tightening = operation.tightening();
        if (tightening == null) {
            return "";
        }
        if (tightening.torque() != null) {
            return tightening.torque().typed();
        }
        return tightening.angle() == null
                ? ""
                : Figures.plain(tightening.angle().degrees()) + "°";
    }

    /** How the thread must be; empty when the step turns none or the file does not say. */
    public String thread(BuildPlan.Operation operation) {
        BuildPlan.Tightening tightening = operation.tightening();
        if (tightening == null || tightening.threadState().isEmpty() || tightening.stage() == 0) {
            return "";
        }
        return switch (tightening.threadState()) {
            case "dry" -> "threads clean and dry";
            case "oiled" -> "threads and undersides of the heads oiled";
            case "locked" -> "threads with locking compound";
            case "sealed" -> "threads with sealant";
            default -> "threads " + tightening.threadState();
        };
    }

    /** What to have in hand: "4 × nut M8x1.25 (new)", "engine oil, at most 0.6 l". */
    public List<String> inputs(BuildPlan.Operation operation) {
        return operation.needs().inputs().stream().map(this::input).toList();
    }

    /** What all steps together need in hand: pieces of one sort added up, in the order of first need. */
    public List<String> allInputs(BuildPlan plan) {
        Map<String, BuildPlan.Input> all = new LinkedHashMap<>();
        for (BuildPlan.Operation operation : plan.operations()) {
            for (BuildPlan.Input input : operation.needs().inputs()) {
                all.merge(
                        input.kind() + input.spec() + input.volume(),
                        input,
                        (a, b) ->
                                new BuildPlan.Input(a.kind(), a.joint(), a.spec(), a.count() + b.count(), a.volume()));
            }
        }
        return all.values().stream().map(this::input).toList();
    }

    private String input(BuildPlan.Input input) {
        return switch (input.kind()) {
            case PIECE -> (input.count() > 1 ? input.count() + " × " : "") + input.spec() + ", new";
            case SEALANT -> input.spec();
            case FLUID ->
                input.spec()
                        + (input.volume() == null
                                ? ""
                                : ", at most " + Figures.volume(input.volume().litres()));
        };
    }

    /** What to mind: marks that were kept, the text of the file. */
    public List<String> notes(BuildPlan.Operation operation) {
        List<String> notes = new ArrayList<>();
        if (operation.handling() != null && operation.handling().marks().size() <= 6) {
            Map<List<String>, List<String>> parts = new LinkedHashMap<>();
            for (BuildPlan.Mark mark : operation.handling().marks()) {
                parts.computeIfAbsent(mark.keep(), keep -> new ArrayList<>()).add(names.part(mark.part()));
            }
            boolean itself = operation.subject().parts().size() == 1;
            parts.forEach((keep, of) -> notes.add("Same " + Figures.list(keep) + " as before"
                    + (itself ? "" : ": " + Figures.list(Names.gathered(of)))));
        }
        if (ordered(operation)) {
            Joint joint = engine.joint(operation.subject().ref());
            if (!PatternPicture.places(joint)) {
                notes.add(Names.capital(StepWords.positions(joint.makeup().pattern())));
            }
        }
        if (!operation.needs().text().isBlank() && operation.kind() != BuildPlan.Kind.RESTORE) {
            notes.add(operation.needs().text());
        }
        return notes;
    }

    /** Times to later steps: "then within 10 min: ...", "nothing for 1 h before: ...". */
    public List<String> lags(BuildPlan.Operation operation, BuildPlan plan) {
        List<String> lines = new ArrayList<>();
        for (BuildPlan.Lag lag : operation.order().lags()) {
            String to = step(lag.to(), plan);
            if (lag.maxSeconds().isPresent()) {
                lines.add("Within " + Figures.time(lag.maxSeconds().getAsLong()) + ": " + to);
            }
            if (lag.minSeconds() > 0) {
                lines.add("Not before " + Figures.time(lag.minSeconds()) + " have passed: " + to);
            }
        }
        return lines;
    }

    /** "step 12, tighten the head studs" for the id of a step; the id when the plan has no such step. */
    public String step(String id, BuildPlan plan) {
        return plan.operations().stream()
                .filter(operation -> operation.id().equals(id))
                .map(operation -> "step " + operation.number() + ", " + Names.inSentence(instruction(operation)))
                .findFirst()
                .orElse(id);
    }

    /** Why a step is blocked, one sentence for each lack. */
    public List<String> lacks(BuildPlan.Operation operation) {
        return operation.holdUp().blockedBy().stream().map(this::lack).toList();
    }

    private String lack(BuildPlan.Lack lack) {
        String about = Figures.list(lack.about().stream().map(names::any).toList(), 4);
        return switch (lack.kind()) {
            case TOO_HEAVY -> "Too heavy for the ways of lifting there are: " + about + ways(lack);
            case THREAD_STATE ->
                "The file does not say whether the threads are dry, oiled, locked or sealed"
                        + (about.isEmpty() ? "" : ": " + about) + ". Confirm from your manual";
            case NOT_IN_HAND -> "Not in hand: " + about;
            case LIMIT_NOT_CONFIRMED -> "A limit is only typical, confirm it from your manual: " + about;
            case NO_ROOM -> "No room to tighten it, these did not come off: " + about;
            case ORDER -> "Two rules of order contradict each other: " + about;
            case OPEN_TIME -> "The sealant would be past its open time: " + about;
            case LOOSE -> "It would be loose and nothing holds it: " + about;
            case LICENSED -> "Only licensed practice may do it: " + about;
        };
    }

    private static String ways(BuildPlan.Lack lack) {
        return lack.unblockedBy().isEmpty() ? "" : ". It goes with: " + Figures.list(lack.unblockedBy());
    }

    private String compound(BuildPlan.Operation operation) {
        List<String> specs = operation.needs().inputs().stream()
                .filter(input -> input.kind() == BuildPlan.InputKind.SEALANT)
                .map(BuildPlan.Input::spec)
                .toList();
        return specs.isEmpty() ? "sealant" : Figures.list(specs);
    }

    private String place(BuildPlan.Operation operation) {
        StepWords strip = new StepWords(engine);
        BuildPlan.Handling handling = operation.handling();
        String mass =
                handling == null ? "" : ", " + Figures.mass(handling.massKilograms()) + StepWords.way(handling.way());
        return "Put in place: " + strip.pieces(operation.subject().parts()) + mass;
    }

    private String snug(Joint joint) {
        if (joint.makeup().fasteners().isEmpty()) {
            return without(joint);
        }
        if (joint.kind() == JointKind.HOSE_CLIP) {
            return "Push " + names.the(joint.between().getFirst()) + " onto " + names.theOthers(joint) + " and fit the "
                    + StepWords.counted(joint);
        }
        boolean threaded = joint.makeup().fasteners().stream()
                .anyMatch(fastener -> fastener.kind().threaded());
        return (threaded ? "Run in and snug the " : "Fit the ") + StepWords.counted(joint) + ", "
                + names.between(joint);
    }

    private String without(Joint joint) {
        String to = names.between(joint);
        String first = names.the(joint.between().getFirst());
        String others = names.theOthers(joint);
        return switch (joint.kind()) {
            case BOLTED, UNION_NUT, BANJO -> "Join and snug, " + to;
            case HOSE_CLIP -> "Push " + first + " onto " + others + " and fit the clip";
            case PRESS_FIT -> "Press " + first + " and " + others + " together";
            case SNAP -> "Clip " + first + " to " + others;
            case SEALANT -> "Bring together on the fresh sealant, " + to;
            case PLUG -> "Plug " + first + " into " + others + " until it clicks";
            case CLAMP -> "Fit the clamp, " + to;
            case SLIDE -> "Fit " + first + " to " + others + ", fully home";
            case BELT -> "Put " + first + " on " + others;
        };
    }

    private String stage(BuildPlan.Operation operation, Joint joint) {
        BuildPlan.Tightening tightening = Objects.requireNonNull(operation.tightening(), "a stage turns fasteners");
        int stages = joint.makeup().stages().size();
        String which = stages > 1 ? "Stage " + tightening.stage() + " of " + stages + ": " : "Tighten: ";
        String each = tightening.fasteners().size() > 1 ? ", each once, paint marks first" : ", once, paint mark first";
        String once = operation.kind() == BuildPlan.Kind.ANGLE ? each : "";
        String what = joint.makeup().fasteners().isEmpty() ? joint.name() : "the " + StepWords.counted(joint);
        String how = operation.kind() == BuildPlan.Kind.ANGLE
                ? "turn " + what + " " + number(operation) + " further"
                : what + " at " + number(operation);
        String order = ordered(operation) && PatternPicture.places(joint) ? ", in the order drawn" : "";
        return which + how + once + ", " + names.between(joint) + order;
    }

    /** Whether the step turns several fasteners of which the file says the order. */
    public boolean ordered(BuildPlan.Operation operation) {
        BuildPlan.Tightening tightening = operation.tightening();
        return tightening != null
                && tightening.stage() > 0
                && tightening.fasteners().size() > 1
                && !engine.joint(operation.subject().ref()).makeup().pattern().isEmpty();
    }

    private String restore(BuildPlan.Operation operation) {
        String text = operation.needs().text();
        return text.isBlank() ? "Take back: " + names.any(operation.subject().ref()) : Names.capital(text);
    }

    private String fill(String circuit, BuildPlan.Operation operation) {
        List<String> fluids = inputs(operation);
        String with = Figures.list(fluids);
        return with.startsWith(circuit)
                ? "Fill: " + with
                : "Fill: " + circuit + (fluids.isEmpty() ? "" : ", with " + with);
    }

    private String joint(String id) {
        return engine.findJoint(id).map(names::between).orElse(id);
    }

    private Optional<Check> check(String id) {
        return engine.rules().checks().stream()
                .filter(check -> check.id().equals(id))
                .findFirst();
    }
}
