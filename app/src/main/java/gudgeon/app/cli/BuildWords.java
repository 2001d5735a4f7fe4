package gudgeon.app.cli;

import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.engine.Check;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildPlan.Tightening;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a step of the way back says. */
final class BuildWords {
    private final Engine engine;
    private final Names names;

    BuildWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /** One line without a full stop. */
    String instruction(Operation operation) {
        String ref = operation.subject().ref();
        return switch (operation.kind()) {
            case SEAL -> "Put sealant on: " + joint(ref);
            case PLACE -> "Put in place: " + Figures.list(names.parts(operation.subject().parts()), 4);
            case SNUG -> "Put together, hand tight: " + joint(ref);
            case TIGHTEN -> "Tighten: " + joint(ref);
            case STAGE, ANGLE -> "Stage " + stage(operation.tightening()) + ": " + joint(ref);
            case RESTORE -> "Take back: " + names.any(ref);
            case FILL -> "Fill: " + names.any(ref);
            case BLEED -> "Bleed: " + names.any(ref);
            case CHECK -> checkName(ref);
            case WAIT -> "Wait for: " + ref;
        };
    }

    private String joint(String id) {
        return names.any(id) + " (" + names.between(engine.joint(id)) + ")";
    }

    private static String stage(@Nullable Tightening tightening) {
        if (tightening == null) {
            return "";
        }
        String what = tightening.torque() != null ? tightening.torque().typed() : "";
        return tightening.stage() + ", " + (tightening.angle() != null ? tightening.angle().typed() + " further" : what);
    }

    private String checkName(String id) {
        return engine.rules().checks().stream()
                .filter(check -> check.id().equals(id))
                .map(Check::name)
                .findFirst()
                .orElse(id);
    }

    /** Tools, order of fasteners, thread, new pieces, times to keep. */
    List<String> details(Operation operation) {
        List<String> details = new ArrayList<>();
        if (!operation.place().tools().isEmpty()) {
            details.add(String.join(", ", operation.place().tools()));
        }
        Tightening tightening = operation.tightening();
        if (tightening != null && tightening.stage() > 0) {
            details.add("thread " + tightening.threadState());
            if (tightening.fasteners().size() > 1) {
                details.add("in the order " + order(tightening.fasteners()));
            }
        }
        operation.needs().inputs().forEach(input -> details.add("new: " + input(input)));
        if (!operation.needs().text().isBlank()) {
            details.add(operation.needs().text());
        }
        for (BuildPlan.Lag lag : operation.order().lags()) {
            details.add(lag(lag));
        }
        if (operation.order().gate()) {
            details.add("Point of no return: nothing goes on before this is signed");
        }
        return details;
    }

    private static String order(List<String> fasteners) {
        return String.join(
                " ",
                fasteners.stream().map(id -> id.substring(id.lastIndexOf('/') + 1)).toList());
    }

    private static String input(BuildPlan.Input input) {
        String volume = input.volume() == null ? "" : ", up to " + Figures.volume(input.volume().litres());
        return (input.count() > 1 ? input.count() + " × " : "") + input.spec() + volume;
    }

    private static String lag(BuildPlan.Lag lag) {
        String least = lag.minSeconds() > 0 ? "at least " + Figures.time(lag.minSeconds()) : "";
        String most = lag.maxSeconds().isPresent() ? "at most " + Figures.time(lag.maxSeconds().getAsLong()) : "";
        return String.join(" and ", List.of(least, most).stream().filter(text -> !text.isEmpty()).toList())
                + " until " + lag.to();
    }

    /** Why a step cannot be done yet. */
    List<String> lacks(Operation operation) {
        List<String> lacks = new ArrayList<>();
        for (BuildPlan.Lack lack : operation.holdUp().blockedBy()) {
            String about = Figures.list(lack.about().stream().map(names::any).toList(), 4);
            String help = lack.unblockedBy().isEmpty() ? "" : "; what helps: " + Figures.list(lack.unblockedBy());
            lacks.add(lack(lack.kind()) + (about.isEmpty() ? "" : ": " + about) + help);
        }
        if (!operation.holdUp().waitsFor().isEmpty()) {
            lacks.add("waits for " + Figures.list(operation.holdUp().waitsFor(), 4));
        }
        return lacks;
    }

    private static String lack(BuildPlan.LackKind kind) {
        return switch (kind) {
            case TOO_HEAVY -> "too heavy for the ways of lifting there are";
            case THREAD_STATE -> "the file does not say whether the thread is dry, oiled, locked or sealed";
            case NOT_IN_HAND -> "not in hand";
            case LIMIT_NOT_CONFIRMED -> "a typical limit that nobody has confirmed";
            case NO_ROOM -> "no room to tighten it, these did not come off";
            case ORDER -> "two rules of order contradict each other";
            case OPEN_TIME -> "the sealant would be past its open time";
            case LOOSE -> "it would lie loose, nothing holds it at once";
            case LICENSED -> "for licensed practice only";
        };
    }
}
