package gudgeon.app.cli;

import gudgeon.app.desk.StripQuestion;
import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The engine, the target and the means: the same for every command that plans a strip. */
final class TargetOptions {
    private static final double DEAREST_HOUR = 10_000;
    private static final int LONGEST_SEARCH_S = 3_600;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "An engine file, or the name of a shipped engine.")
    private String file = "";

    @Option(
            names = "--reach",
            split = ",",
            paramLabel = "PART",
            description = "Part to have off. Its id, or its name in quotes; again for more.")
    private List<String> reach = new ArrayList<>();

    @Option(
            names = "--aside",
            split = ",",
            paramLabel = "PART",
            description = "Part to have out of the way, hanging by its hoses if they allow it.")
    private List<String> aside = new ArrayList<>();

    @Option(names = "--open", split = ",", paramLabel = "JOINT", description = "Joint to have undone.")
    private List<String> open = new ArrayList<>();

    @Option(names = "--measure", split = ",", paramLabel = "FEATURE", description = "Feature to be able to measure.")
    private List<String> measure = new ArrayList<>();

    @Option(
            names = "--undone",
            split = ",",
            paramLabel = "JOINT",
            description = "Joint, or preparation, that is already done.")
    private List<String> undone = new ArrayList<>();

    @Option(
            names = "--will-not-come",
            split = ",",
            paramLabel = "JOINT",
            description = "Joint that will not come: cut it where the file has a way, or go round it.")
    private List<String> willNotCome = new ArrayList<>();

    @Option(
            names = "--with",
            split = ",",
            paramLabel = "WAY",
            description = "Way of lifting there is beside your own arms: helper, hoist. Default: alone.")
    private List<String> with = new ArrayList<>();

    @Option(
            names = "--worth",
            paramLabel = "N",
            defaultValue = "0",
            description = "What an hour of yours is worth, in the money of the file: weighs destroyed pieces against"
                    + " time. Default: ${DEFAULT-VALUE}, only time counts.")
    private double worth;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "60",
            description = "About how long to search for the best order; what is left unproven is said. Default:"
                    + " ${DEFAULT-VALUE}.")
    private int seconds;

    String file() {
        return file;
    }

    /**
     * The question these options ask.
     *
     * @throws ParameterException when nothing is to be reached, or a number makes no sense
     */
    StripQuestion question(Engine engine) {
        return new StripQuestion(
                engine,
                goal(),
                new StripQuestion.Found(undone, willNotCome),
                new StripQuestion.Means(with, worth, seconds));
    }

    /** Whether nothing is to be reached. */
    boolean isEmpty() {
        return goal().isEmpty();
    }

    /** Refuses what makes no sense whatever the engine is. */
    void check() {
        if (goal().isEmpty()) {
            throw wrong("nothing to reach. Maybe --reach PART, --aside PART, --open JOINT or --measure FEATURE?");
        }
        if (!(worth >= 0 && worth <= DEAREST_HOUR)) {
            throw wrong("--worth is from 0 to " + Math.round(DEAREST_HOUR) + ", not " + worth);
        }
        if (seconds < 1 || seconds > LONGEST_SEARCH_S) {
            throw wrong("--seconds is from 1 to " + LONGEST_SEARCH_S + ", not " + seconds);
        }
    }

    private StripQuestion.Goal goal() {
        return new StripQuestion.Goal(reach, aside, open, measure);
    }

    /** Wrong usage, with what would be right. */
    ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
