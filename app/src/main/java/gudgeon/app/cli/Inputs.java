package gudgeon.app.cli;

import gudgeon.app.desk.EngineQuestion;
import gudgeon.app.desk.UnknownName;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import gudgeon.app.format.Severity;
import gudgeon.core.engine.Engine;
import java.util.List;
import java.util.Optional;

/** Loads what a command works on, and says what is wrong with it. */
final class Inputs {
    private final Screen screen;

    Inputs(Screen screen) {
        this.screen = screen;
    }

    /** The engine of a file or of a shipped id; empty, with the faults told, when it cannot be used. */
    Optional<Engine> engine(String file) {
        return switch (new EngineQuestion(file).ask()) {
            case Reading.Sound sound -> Optional.of(sound.engine());
            case Reading.Faulty faulty -> {
                faulty.problems().forEach(problem -> screen.err().println(problem.text()));
                screen.err().println(file + " cannot be used: " + counts(faulty.problems()));
                yield Optional.empty();
            }
        };
    }

    /** Tells which names mean nothing. */
    void unknown(List<UnknownName> names) {
        for (UnknownName name : names) {
            String near = name.near().isEmpty() ? "" : " Maybe " + String.join(", or ", name.told()) + "?";
            screen.err().println("gudgeon: no " + word(name.sort()) + " is called '" + name.word() + "'." + near);
        }
    }

    static String counts(List<Problem> problems) {
        return counted(problems, Severity.FAULT, "fault") + counted(problems, Severity.WARNING, ", warning")
                + counted(problems, Severity.REMARK, ", remark");
    }

    private static String counted(List<Problem> problems, Severity severity, String word) {
        long count = problems.stream().filter(problem -> problem.severity() == severity).count();
        if (count == 0 && severity != Severity.FAULT) {
            return "";
        }
        String before = word.startsWith(", ") ? ", " : "";
        return before + count + " " + word.substring(before.length()) + (count == 1 ? "" : "s");
    }

    private static String word(UnknownName.Sort sort) {
        return switch (sort) {
            case PART -> "part";
            case JOINT -> "joint";
            case JOINT_OR_READY -> "joint or preparation";
            case FEATURE -> "feature";
            case CIRCUIT -> "circuit";
            case WAY_OF_LIFTING -> "way of lifting";
            case SPECIFICATION -> "piece, compound or fluid of this build";
        };
    }
}
