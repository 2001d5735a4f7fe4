package gudgeon.app.document;

import gudgeon.core.book.Body;
import gudgeon.core.book.Build;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Fault;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.Gauging;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What an entry of a book says, in one line without a full stop. */
public final class EntryWords {
    private final Engine engine;
    private final Names names;

    public EntryWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /** The line of an entry. */
    public String of(Entry entry) {
        String about = entry.about().isEmpty()
                ? ""
                : " ("
                        + Figures.list(entry.about().stream()
                                .map(ref -> names.any(ref.id()))
                                .toList()) + ")";
        return of(entry.body()) + about;
    }

    /** The line of a body. */
    public String of(Body body) {
        return switch (body) {
            case Setup setup -> setup(setup);
            case Strip strip -> strip(strip);
            case Fault fault -> fault(fault);
            case Keeping keeping -> keeping(keeping);
            case Fluid fluid -> fluid(fluid);
            case Gauging gauging -> gauging(gauging);
            case Build build -> build(build);
            case Word word -> word(word);
        };
    }

    private String gauging(Gauging gauging) {
        return switch (gauging) {
            case Gauging.ReadingTaken reading ->
                "Read: " + names.any(reading.feature()) + ", " + reading.place() + ": " + reading.typed() + ", "
                        + reading.instrument()
                        + (reading.warmth_C().isEmpty()
                                ? ""
                                : ", at " + Figures.plain(reading.warmth_C().getFirst()) + " °C");
            case Gauging.InstrumentDescribed instrument ->
                "Instrument: " + instrument.instrument() + ", shows " + Figures.plain(instrument.resolution_mm())
                        + " mm, errs by at most " + Figures.plain(instrument.maximumError_mm()) + " mm";
            case Gauging.Cleaned cleaned ->
                "Cleaned: " + names.any(cleaned.part()) + after(", ", cleaned.how())
                        + (cleaned.passagesClear() ? "" : ", passages not proven clear")
                        + (cleaned.clothWhite() ? ", white cloth stays white" : ", cloth not yet white");
            case Gauging.EditionKept kept -> "Readings are judged by the edition of " + kept.year();
        };
    }

    private String setup(Setup setup) {
        return switch (setup) {
            case Setup.JobOpened job ->
                "Job begun: " + job.name() + (job.like().isEmpty() ? "" : ", like " + job.like());
            case Setup.Settings settings ->
                "Means: " + (settings.with().isEmpty() ? "alone" : "alone, " + Figures.list(settings.with()))
                        + (settings.worthPerHour() > 0
                                ? ", an hour worth " + Figures.plain(settings.worthPerHour())
                                : "");
            case Setup.EngineAdopted adopted -> "Engine file taken on";
            case Setup.EngineCorrected corrected ->
                "Engine file put right: "
                        + Figures.list(corrected.patches().stream()
                                .map(Setup.Patch::path)
                                .toList());
            case Setup.TargetSet target -> "To reach: " + Figures.list(target(target));
            case Setup.WillNotCome wont -> "Will not come: " + names.any(wont.joint());
            case Setup.ComesAfterAll comes -> "Comes after all: " + names.any(comes.joint());
            case Setup.SessionStarted started -> "Work begun";
            case Setup.SessionEnded ended ->
                "Work ended, " + (ended.safe() ? "safe" : "not safe") + after(": ", ended.left());
            case Setup.LimitConfirmed limit ->
                "Limit confirmed: " + names.any(limit.feature()) + after(", ", limit.where());
            case Setup.PlaceSet place ->
                "Place: " + Math.abs(place.latitude()) + "° " + (place.latitude() < 0 ? "south" : "north") + ", "
                        + Math.abs(place.longitude()) + "° " + (place.longitude() < 0 ? "west" : "east")
                        + (place.outdoors() ? ", outdoors" : ", under a roof with light");
        };
    }

    private List<String> target(Setup.TargetSet target) {
        List<String> words = new ArrayList<>();
        target.off().forEach(part -> words.add(names.any(part) + " off"));
        target.aside().forEach(part -> words.add(names.any(part) + " aside"));
        target.open().forEach(joint -> words.add(names.any(joint) + " undone"));
        target.measure().forEach(feature -> words.add(names.any(feature) + " measured"));
        return words.isEmpty() ? List.of("nothing") : words;
    }

    private String strip(Strip strip) {
        return switch (strip) {
            case Strip.OperationStarted started -> "Begun: " + operation(started.operation());
            case Strip.OperationDone done ->
                (done.cut() ? "Cut: " : engine.findJoint(done.operation()).isPresent() ? "Off: " : "Done: ")
                        + operation(done.operation())
                        + minutes(done.minutes());
            case Strip.PutBack back -> "Put back by hand: " + operation(back.operation());
            case Strip.Removed removed ->
                (removed.aside() ? "Set aside: " : "Away: ")
                        + Figures.list(names.parts(removed.parts()))
                        + after(", ", removed.place());
            case Strip.AsFound found ->
                "Found at " + names.any(found.joint()) + ": " + Figures.count(found.count(), "fastener")
                        + pieces(found.pieces()) + (found.bag().isEmpty() ? "" : ", bag " + found.bag())
                        + after("; ", found.differs());
            case Strip.Routing routing -> "How " + names.any(routing.part()) + " runs: " + routing.text();
        };
    }

    /** What was written down about a joint or parts, one line each: fasteners as found first, then the words as they are. */
    public static List<String> remembered(List<Strip.Piece> pieces, List<String> words) {
        List<String> lines = new ArrayList<>();
        if (!pieces.isEmpty()) {
            lines.add("Found: " + pieces(pieces).substring(", ".length()));
        }
        lines.addAll(words);
        return lines;
    }

    private static String pieces(List<Strip.Piece> pieces) {
        StringBuilder words = new StringBuilder();
        for (Strip.Piece piece : pieces) {
            words.append(", ").append(piece.count()).append(" ×").append(after(" ", piece.thread()));
            if (piece.length_mm() > 0) {
                words.append(' ').append(Figures.plain(piece.length_mm())).append(" mm");
            }
            words.append(after(" ", piece.position()));
        }
        return words.toString();
    }

    private String fault(Fault fault) {
        return switch (fault) {
            case Fault.Trouble trouble ->
                capital(trouble.kind().name()) + " at " + names.any(trouble.joint()) + which(trouble.fasteners())
                        + after(": ", trouble.note());
            case Fault.Rescue rescue when isSoak(rescue) ->
                "Soaked with penetrating oil: " + names.any(rescue.joint()) + minutes(rescue.minutes());
            case Fault.Rescue rescue ->
                "Tried at " + names.any(rescue.joint()) + which(rescue.fasteners()) + ": "
                        + RescueWords.rung(rescue.rung()) + "; " + RescueWords.outcome(rescue.outcome())
                        + minutes(rescue.minutes());
            case Fault.Condition condition -> "Looks: " + names.any(condition.part()) + ": " + condition.text();
        };
    }

    /** A whole joint soaked, as it is before anything resists. */
    private static boolean isSoak(Fault.Rescue rescue) {
        return rescue.rung().equals("soak")
                && rescue.fasteners().isEmpty()
                && rescue.outcome() == Fault.Outcome.NO;
    }

    private static String which(List<String> fasteners) {
        return fasteners.isEmpty()
                ? ""
                : ", number "
                        + Figures.list(fasteners.stream()
                                .map(id -> id.substring(id.lastIndexOf('/') + 1))
                                .toList());
    }

    private String keeping(Keeping keeping) {
        return switch (keeping) {
            case Keeping.BagMade bag -> "Bag " + bag.bag() + after(": ", bag.contents()) + after(", ", bag.place());
            case Keeping.BagOpened bag -> "Bag " + bag.bag() + " opened" + after(": ", bag.why());
            case Keeping.BagMoved bag -> "Bag " + bag.bag() + " to " + bag.place();
            case Keeping.PartMoved part -> capital(names.any(part.part())) + " to " + part.place();
            case Keeping.Marked marked ->
                "Marked: " + Figures.list(names.parts(marked.parts())) + after(", ", marked.how());
            case Keeping.Renewed part -> "Renewed: " + names.any(part.part()) + after(", ", part.spec());
            case Keeping.Covered opening -> "Covered: " + opening.opening() + after(", with ", opening.with());
            case Keeping.Uncovered opening -> "Uncovered: " + opening.opening();
            case Keeping.RagIn rag -> Figures.count(rag.count(), "rag") + " in: " + rag.where();
            case Keeping.RagOut rag -> Figures.count(rag.count(), "rag") + " out: " + rag.where();
            case Keeping.AidFitted aid -> "Fitted: " + aid.aid() + after(", ", aid.about());
            case Keeping.AidRemoved aid -> "Taken off: " + aid.aid();
            case Keeping.Counted counted -> "Bag " + counted.bag() + " counted: " + counted.count();
            case Keeping.Ordered order ->
                "Ordered: " + order.count() + " × " + order.spec()
                        + (order.price() >= 0 ? ", " + Figures.money(order.price()) : "");
            case Keeping.ToolMarked tool ->
                capital(tool.tool()) + ": " + tool.whose().name().toLowerCase(Locale.ROOT)
                        + after(tool.whose() == Keeping.Whose.BORROWED ? " from " : ", ", tool.from());
            case Keeping.Compared fact ->
                "Compared: " + fact.spec() + ", " + fact.fact() + ": old " + fact.was() + ", new " + fact.now();
            case Keeping.Received arrival ->
                "Arrived: " + arrival.count() + " × " + arrival.spec()
                        + (arrival.compared() ? ", same as the old one" : "") + after(": ", arrival.note());
        };
    }

    private String fluid(Fluid fluid) {
        return switch (fluid) {
            case Fluid.Drained drained ->
                "Drained: " + names.any(drained.circuit()) + litres(drained.litres()) + after(", to ", drained.to());
            case Fluid.Filled filled -> "Filled: " + names.any(filled.circuit()) + litres(filled.litres());
            case Fluid.Oiled oiled -> "Oiled: " + oiled.surface() + after(", with ", oiled.with());
        };
    }

    private String build(Build build) {
        return switch (build) {
            case Build.StepBuilt step ->
                "Built: "
                        + (step.parts().isEmpty()
                                ? step(step.step())
                                : Figures.list(names.parts(step.parts())) + " in place")
                        + minutes(step.minutes());
            case Build.StageReached stage ->
                names.any(stage.joint()) + ": stage " + stage.stage() + " reached" + which(stage.fasteners());
            case Build.AngleTurned angle ->
                names.any(angle.joint()) + ": angle of stage " + angle.stage() + " turned and marked"
                        + which(angle.fasteners());
            case Build.Interrupted broken ->
                names.any(broken.joint()) + ": stage " + broken.stage() + " broken off"
                        + (broken.certain() ? "" : ", not certain which were turned");
            case Build.StartedAgain again ->
                names.any(again.joint()) + ": all fasteners out and renewed" + after("; ", again.why());
            case Build.TurningForce force ->
                "Turns with " + Figures.plain(force.newtonMetres()) + " N·m after " + force.after()
                        + after("; ", force.note());
            case Build.CheckSigned check -> "Signed: " + check(check.check()) + after("; ", check.note());
            case Build.LicensedDone licensed ->
                "Licensed work done at " + names.any(licensed.joint()) + after(", by ", licensed.by());
        };
    }

    private String step(String id) {
        int slash = id.indexOf('/');
        if (slash < 0) {
            return id;
        }
        String first = id.substring(0, slash);
        String second = id.substring(slash + 1);
        return switch (first) {
            case "fill", "bleed" -> first + " " + names.any(second);
            case "check" -> check(second);
            default ->
                switch (second) {
                    case "snug" -> names.any(first) + " put together";
                    case "back" -> names.any(first) + " taken back";
                    case "tight" -> names.any(first) + " tight";
                    case "seal" -> names.any(first) + " sealed";
                    default -> names.any(first) + ", stage " + second;
                };
        };
    }

    private String check(String id) {
        return engine.rules().checks().stream()
                .filter(check -> check.id().equals(id))
                .map(check -> check.name())
                .findFirst()
                .orElse(id.replace('-', ' '));
    }

    private static String word(Word word) {
        return switch (word) {
            case Word.Note note -> "Note: " + note.text();
            case Word.Photo photo -> "Photo" + after(": ", photo.caption());
            case Word.Withdrawn withdrawn -> "Withdrawn" + after(": ", withdrawn.why());
            case Word.Newer newer -> "From a newer version: " + newer.type();
        };
    }

    private String operation(String id) {
        return names.any(id);
    }

    private static String minutes(double minutes) {
        return minutes > 0 ? ", " + Figures.plain(minutes) + " min" : "";
    }

    private static String litres(double litres) {
        return litres > 0 ? ", " + Figures.volume(litres) : "";
    }

    private static String after(String lead, String text) {
        return text.isBlank() ? "" : lead + text;
    }

    private static String capital(String text) {
        return Names.capital(text.toLowerCase(Locale.ROOT).equals(text) ? text : text.toLowerCase(Locale.ROOT));
    }
}
