package gudgeon.app.cli;

import gudgeon.app.desk.CrankingQuestion;
import gudgeon.app.desk.RatioQuestion;
import gudgeon.app.desk.TeethQuestion;
import gudgeon.app.desk.TouchQuestion;
import gudgeon.app.format.LiftCurve;
import gudgeon.app.format.PlainJson;
import gudgeon.core.geometry.CombustionSpace;
import gudgeon.core.geometry.Cylinder;
import gudgeon.core.geometry.PistonToValve;
import gudgeon.core.geometry.SliderCrank;
import gudgeon.core.geometry.ToothTiming;
import gudgeon.core.geometry.ValveTiming;
import java.nio.file.Path;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Shape and timing of an engine, from numbers alone. */
@Command(
        name = "geometry",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Compression ratio, cranking pressure, valve timing, teeth of a timing drive: numbers in, answer out.",
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "2:Wrong usage, or numbers that make no engine", "4:The program or the machine failed"},
        footer = {"", "Example: gudgeon geometry teeth --crank 22 --cam 44 --belt 137"})
final class GeometryCommand implements Runnable {
    private final Screen screen;
    private final GeometryText text;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    GeometryCommand(Screen screen) {
        this.screen = screen;
        this.text = new GeometryText(screen);
    }

    @Override
    public void run() {
        spec.commandLine().usage(screen.out());
    }

    /** What stands above the piston, as options. */
    static final class Stack {
        @Option(names = "--bore", required = true, paramLabel = "LENGTH", description = "Diameter of the bore.")
        String bore = "";

        @Option(names = "--stroke", required = true, paramLabel = "LENGTH", description = "Stroke.")
        String stroke = "";

        @Option(names = "--chamber", required = true, paramLabel = "VOLUME", description = "Chamber, by burette.")
        String chamber = "";

        @Option(names = "--gasket", required = true, paramLabel = "LENGTH", description = "Gasket, compressed.")
        String gasket = "";

        @Option(names = "--gasket-hole", paramLabel = "LENGTH", description = "Its hole. Default: the bore.")
        String hole = "";

        @Option(
                names = "--deck",
                paramLabel = "LENGTH",
                defaultValue = "0 mm",
                description = "Piston below the block's face at top dead centre; negative when proud. Default: 0.")
        String deck = "";

        @Option(
                names = "--dish",
                paramLabel = "VOLUME",
                defaultValue = "0 ml",
                description = "Dish and pockets of the piston; negative for a dome. Default: 0.")
        String dish = "";
    }

    /** What each was measured to, as options. */
    static final class Doubtful {
        @Option(
                names = "--doubt-volumes",
                paramLabel = "VOLUME",
                defaultValue = "0.3 ml",
                description = "Standard uncertainty of each volume. Default: 0.3 ml (typical for a burette).")
        String volumes = "";

        @Option(
                names = "--doubt-lengths",
                paramLabel = "LENGTH",
                defaultValue = "0.02 mm",
                description = "Standard uncertainty of each length. Default: 0.02 mm (typical).")
        String lengths = "";
    }

    /** A change that is thought of, as options. */
    static final class Thought {
        @Option(names = "--skim-head", paramLabel = "LENGTH", defaultValue = "0 mm", description = "Off the head.")
        String head = "";

        @Option(
                names = "--mouth",
                paramLabel = "LENGTH",
                defaultValue = "",
                description = "Diameter of the chamber's mouth in the head's face. Default: the bore.")
        String mouth = "";

        @Option(names = "--skim-block", paramLabel = "LENGTH", defaultValue = "0 mm", description = "Off the block.")
        String block = "";

        @Option(names = "--new-gasket", paramLabel = "LENGTH", defaultValue = "", description = "Its thickness.")
        String gasket = "";

        @Option(names = "--rebore", paramLabel = "LENGTH", defaultValue = "", description = "The new bore.")
        String bore = "";
    }

    @Command(
            name = "ratio",
            mixinStandardHelpOptions = true,
            header = "Compression ratio with its doubt, squish, and what a skim, another gasket or a rebore does.")
    int ratio(
            @Mixin Stack stack,
            @Mixin Doubtful doubtful,
            @Mixin Thought thought,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        TypedAmounts read = read("ratio");
        double bore = read.mm("--bore", stack.bore);
        double gasket = read.mm("--gasket", stack.gasket);
        double lengths = read.mm("--doubt-lengths", doubtful.lengths);
        double volumes = read.cm3("--doubt-volumes", doubtful.volumes);
        double mouth = thought.mouth.isEmpty() ? bore : read.mm("--mouth", thought.mouth);
        return answer(
                "ratio",
                json,
                () -> new RatioQuestion(
                                new CombustionSpace(
                                        new Cylinder(bore, read.mm("--stroke", stack.stroke)),
                                        read.cm3("--chamber", stack.chamber),
                                        gasket,
                                        stack.hole.isEmpty() ? bore : read.mm("--gasket-hole", stack.hole),
                                        read.mm("--deck", stack.deck),
                                        read.cm3("--dish", stack.dish)),
                                new CombustionSpace.Uncertainties(
                                        lengths, lengths, volumes, lengths, lengths, lengths, volumes),
                                new RatioQuestion.Change(
                                        read.mm("--skim-head", thought.head),
                                        new Cylinder(mouth, 1).area_mm2(),
                                        read.mm("--skim-block", thought.block),
                                        thought.gasket.isEmpty() ? gasket : read.mm("--new-gasket", thought.gasket),
                                        thought.bore.isEmpty() ? bore : read.mm("--rebore", thought.bore)))
                        .ask(),
                text::ratio);
    }

    @Command(
            name = "cranking",
            mixinStandardHelpOptions = true,
            header = "Gauge pressure that a sound cylinder may show when it is cranked, at a height above the sea.")
    int cranking(
            @Option(names = "--ratio", required = true, paramLabel = "N", description = "Compression ratio.")
                    double ratio,
            @Option(names = "--stroke", required = true, paramLabel = "LENGTH", description = "Stroke.") String stroke,
            @Option(names = "--rod", required = true, paramLabel = "LENGTH", description = "Rod, centre to centre.")
                    String rod,
            @Option(
                            names = "--inlet-closes",
                            required = true,
                            paramLabel = "ANGLE",
                            description = "Degrees after bottom dead centre.")
                    String closes,
            @Option(names = "--height", paramLabel = "LENGTH", defaultValue = "0 m", description = "Above the sea.")
                    String height,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        TypedAmounts read = read("cranking");
        return answer(
                "cranking",
                json,
                () -> new CrankingQuestion(
                                new SliderCrank(read.mm("--stroke", stroke) / 2, read.mm("--rod", rod)),
                                ratio,
                                read.degrees("--inlet-closes", closes),
                                read.metres("--height", height))
                        .ask(),
                text::cranking);
    }

    @Command(
            name = "teeth",
            mixinStandardHelpOptions = true,
            header = "What one tooth of a timing drive is worth, and after how many turns which marks meet again.")
    int teeth(
            @Option(names = "--crank", required = true, paramLabel = "N", description = "Teeth of the crank's wheel.")
                    int crank,
            @Option(names = "--cam", required = true, paramLabel = "N", description = "Teeth of the camshaft's wheel.")
                    int cam,
            @Option(names = "--belt", paramLabel = "N", defaultValue = "0", description = "Teeth of the belt.") int belt,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        return answer(
                "teeth",
                json,
                () -> new TeethQuestion(
                                new ToothTiming(crank, cam, belt == 0 ? OptionalLong.empty() : OptionalLong.of(belt)))
                        .ask(),
                text::teeth);
    }

    @Command(
            name = "timing",
            mixinStandardHelpOptions = true,
            header = "Durations, overlap and lobe centres from when the valves open and close.")
    int timing(
            @Option(
                            names = "--inlet-opens",
                            required = true,
                            paramLabel = "ANGLE",
                            description = "Before top dead centre; negative is after.")
                    String inletOpens,
            @Option(
                            names = "--inlet-closes",
                            required = true,
                            paramLabel = "ANGLE",
                            description = "After bottom dead centre.")
                    String inletCloses,
            @Option(
                            names = "--exhaust-opens",
                            required = true,
                            paramLabel = "ANGLE",
                            description = "Before bottom dead centre.")
                    String exhaustOpens,
            @Option(
                            names = "--exhaust-closes",
                            required = true,
                            paramLabel = "ANGLE",
                            description = "After top dead centre; negative is before.")
                    String exhaustCloses,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        TypedAmounts read = read("timing");
        return answer(
                "timing",
                json,
                () -> new ValveTiming(
                        read.degrees("--inlet-opens", inletOpens),
                        read.degrees("--inlet-closes", inletCloses),
                        read.degrees("--exhaust-opens", exhaustOpens),
                        read.degrees("--exhaust-closes", exhaustCloses)),
                text::timing,
                GeometryText::timingAnswer);
    }

    @Command(
            name = "touch",
            mixinStandardHelpOptions = true,
            header = "Whether a valve can touch the piston, as it stands and some teeth out.",
            description = "FILE has a line for each reading: crank degrees from the top dead centre of the overlap,"
                    + " a comma, the lift in mm.")
    int touch(
            @Option(names = "--lift", required = true, paramLabel = "FILE", description = "The lift curve, as CSV.")
                    Path lift,
            @Option(
                            names = "--depth",
                            required = true,
                            paramLabel = "LENGTH",
                            description = "Closed valve to piston at top dead centre, along the valve.")
                    String depth,
            @Option(names = "--tilt", paramLabel = "ANGLE", defaultValue = "0", description = "Stem to bore.")
                    String tilt,
            @Option(names = "--stroke", required = true, paramLabel = "LENGTH", description = "Stroke.") String stroke,
            @Option(names = "--rod", required = true, paramLabel = "LENGTH", description = "Rod, centre to centre.")
                    String rod,
            @Option(names = "--crank-teeth", required = true, paramLabel = "N", description = "Of the crank's wheel.")
                    int teeth,
            @Option(names = "--out", paramLabel = "N", defaultValue = "1", description = "Teeth out to look at.")
                    int out,
            @Option(
                            names = "--leave",
                            paramLabel = "LENGTH",
                            defaultValue = "1 mm",
                            description = "What must be left. Default: 1 mm (typical; the manual comes first).")
                    String leave,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        TypedAmounts read = read("touch");
        return answer(
                "touch",
                json,
                () -> new TouchQuestion(
                                new PistonToValve(
                                        new SliderCrank(read.mm("--stroke", stroke) / 2, read.mm("--rod", rod)),
                                        LiftCurve.of(lift),
                                        read.mm("--depth", depth),
                                        read.degrees("--tilt", tilt)),
                                new ToothTiming(teeth, 2 * teeth, OptionalLong.empty()).oneTooth_crankDeg(),
                                out,
                                read.mm("--leave", leave))
                        .ask(),
                text::touch);
    }

    private TypedAmounts read(String below) {
        return new TypedAmounts(line(below));
    }

    private CommandLine line(String below) {
        return Objects.requireNonNull(spec.subcommands().get(below));
    }

    private <A> int answer(String below, boolean json, Supplier<A> question, Consumer<A> words) {
        return answer(below, json, question, words, answer -> answer);
    }

    private <A> int answer(
            String below,
            boolean json,
            Supplier<A> question,
            Consumer<A> words,
            Function<A, Object> forJson) {
        A answer;
        try {
            answer = question.get();
        } catch (IllegalArgumentException e) {
            throw new ParameterException(line(below), String.valueOf(e.getMessage()));
        }
        if (json) {
            screen.out().print(PlainJson.text(forJson.apply(answer)));
        } else {
            words.accept(answer);
        }
        return Exit.DONE;
    }
}
