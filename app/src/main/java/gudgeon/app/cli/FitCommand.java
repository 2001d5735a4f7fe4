package gudgeon.app.cli;

import gudgeon.app.desk.FloatQuestion;
import gudgeon.app.desk.GasketQuestion;
import gudgeon.app.desk.PairQuestion;
import gudgeon.app.desk.RingQuestion;
import gudgeon.app.desk.ShellQuestion;
import gudgeon.app.desk.ShimQuestion;
import gudgeon.app.desk.WeightQuestion;
import gudgeon.app.document.FitWords;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Who goes where: without a job, numbers in and an answer out. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        header = "Works out who goes where: shims, shells, pistons, rings, weights, head gasket, end float.",
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:Something cannot be read or cannot be so", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon fit shims --wanted \"0.15 mm to 0.25 mm\" --valve \"inlet 1: 0.10 mm, 2.70 mm\" --valve \"inlet 2: 0.30 mm, 2.60 mm\""
        })
final class FitCommand implements Callable<Integer> {
    private static final String JSON = "Answer as JSON (docs/json.md), and print nothing else.";
    private static final String WANTED = "What is allowed, like 0.15 mm to 0.25 mm.";
    private static final String BEST = "The best value, when it is not the middle.";

    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    FitCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(screen.out());
        return Exit.DONE;
    }

    private static List<String> all(@Nullable List<String> given) {
        return given == null
                ? List.of()
                : given.stream()
                        .flatMap(each -> SumAnswer.written().values(each).stream())
                        .toList();
    }

    @Command(
            name = "shims",
            mixinStandardHelpOptions = true,
            header = "Shims or followers: those that are there change places, the fewest are bought.",
            footer = {
                "",
                "Example: gudgeon fit shims --wanted \"0.15 mm to 0.25 mm\" --valve \"inlet 1: 0.10 mm, 2.70 mm\" --shop \"2.65 mm, 2.70 mm\""
            })
    int shims(
            @Option(
                            names = "--valve",
                            required = true,
                            paramLabel = "NAME: CLEARANCE,SHIM[,RANGE]",
                            description = "A valve as measured; again for each.")
                    List<String> valves,
            @Option(names = "--wanted", defaultValue = "", paramLabel = "RANGE", description = WANTED) String wanted,
            @Option(names = "--best", defaultValue = "", paramLabel = "LENGTH", description = BEST) String best,
            @Option(names = "--box", paramLabel = "SIZES", description = "Spare shims.") @Nullable List<String> box,
            @Option(names = "--shop", paramLabel = "SIZES", description = "Sizes that can be bought.") @Nullable
                    List<String> shop,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new ShimQuestion(valves, wanted, best, all(box), all(shop)).ask(written),
                        answer -> FitWords.shims(answer.valves(), answer.fit()),
                        FitJson::shims);
    }

    @Command(
            name = "pistons",
            mixinStandardHelpOptions = true,
            header = "Pistons to bores, so that every clearance is as near to the best as can be.",
            footer = {
                "",
                "Example: gudgeon fit pistons --bore \"86.010 mm, 86.014 mm\" --piston \"85.962 mm, 85.955 mm\" --wanted \"0.04 mm to 0.06 mm\""
            })
    int pistons(
            @Option(names = "--bore", required = true, paramLabel = "SIZES", description = "Bores as measured.")
                    List<String> bores,
            @Option(
                            names = "--piston",
                            required = true,
                            paramLabel = "SIZES",
                            description = "Pistons as measured; there may be more.")
                    List<String> pistons,
            @Option(names = "--wanted", required = true, paramLabel = "RANGE", description = WANTED) String wanted,
            @Option(names = "--best", defaultValue = "", paramLabel = "LENGTH", description = BEST) String best,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new PairQuestion(all(bores), all(pistons), wanted, best).ask(written),
                        answer -> FitWords.pairs("bore", "piston", answer.aim(), answer.fit()),
                        FitJson::pairs);
    }

    @Command(
            name = "rings",
            mixinStandardHelpOptions = true,
            header = "Piston rings to bores, and how much each end gap is filed.",
            footer = {
                "",
                "Example: gudgeon fit rings --bore \"86.01 mm, 86.03 mm\" --gap \"0.25 mm, 0.35 mm\" --gauge \"86.00 mm\" --wanted \"0.30 mm to 0.50 mm\""
            })
    int rings(
            @Option(names = "--bore", required = true, paramLabel = "SIZES", description = "Bores as measured.")
                    List<String> bores,
            @Option(
                            names = "--gap",
                            required = true,
                            paramLabel = "SIZES",
                            description = "End gaps of the rings, squared in the gauge bore.")
                    List<String> gaps,
            @Option(
                            names = "--gauge",
                            required = true,
                            paramLabel = "SIZE",
                            description = "Diameter of the bore in which they were measured.")
                    String gauge,
            @Option(names = "--wanted", required = true, paramLabel = "RANGE", description = WANTED) String wanted,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new RingQuestion(all(bores), all(gaps), gauge, wanted).ask(written),
                        answer -> FitWords.rings(answer.fit()),
                        FitJson::rings);
    }

    @Command(
            name = "shells",
            mixinStandardHelpOptions = true,
            header = "Bearing shells by grade, for the oil clearance wanted.",
            footer = {
                "",
                "Example: gudgeon fit shells --bearing \"main 1: 59.000 mm, 54.980 mm\" --grade \"red: 1.990 mm, 4\" --wanted \"0.03 mm to 0.05 mm\""
            })
    int shells(
            @Option(
                            names = "--bearing",
                            required = true,
                            paramLabel = "NAME: HOUSING,JOURNAL",
                            description = "A bearing as measured; again for each.")
                    List<String> bearings,
            @Option(
                            names = "--grade",
                            required = true,
                            paramLabel = "NAME: THICKNESS[,HALVES][,no more]",
                            description = "A grade of shell, halves on hand; again for each.")
                    List<String> grades,
            @Option(names = "--wanted", required = true, paramLabel = "RANGE", description = WANTED) String wanted,
            @Option(names = "--best", defaultValue = "", paramLabel = "LENGTH", description = BEST) String best,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new ShellQuestion(bearings, grades, wanted, best).ask(written),
                        answer -> FitWords.shells(answer.bearings(), answer.grades(), answer.aim(), answer.fit()),
                        FitJson::shells);
    }

    @Command(
            name = "weights",
            mixinStandardHelpOptions = true,
            header = "Pistons, pins and rods to sets of nearly the same weight, and what comes off.",
            footer = {
                "",
                "Example: gudgeon fit weights --kind \"pistons: 412.3 g, 411.0 g\" --kind \"rods: 620.1 g, 622.4 g\""
            })
    int weights(
            @Option(
                            names = "--kind",
                            required = true,
                            paramLabel = "NAME: WEIGHTS",
                            description = "Pieces of a kind; again for each kind.")
                    List<String> kinds,
            @Option(
                            names = "--allowed",
                            defaultValue = "",
                            paramLabel = "WEIGHT",
                            description = "How much sets may differ in the end. Default: 0 g.")
                    String allowed,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new WeightQuestion(kinds, allowed).ask(written),
                        answer -> FitWords.weights(answer.names(), answer.allowed_g(), answer.fit()),
                        FitJson::weights);
    }

    @Command(
            name = "gasket",
            mixinStandardHelpOptions = true,
            header = "The head gasket of a diesel by how far its pistons stand out.",
            footer = {
                "",
                "Example: gudgeon fit gasket --piston \"0.58 mm, 0.60 mm\" --grade \"2 notches: 0.55 mm to 0.65 mm, 1.50 mm\""
            })
    int gasket(
            @Option(
                            names = "--piston",
                            required = true,
                            paramLabel = "POINT,POINT",
                            description = "Standing out at two points; again for each piston.")
                    List<String> pistons,
            @Option(
                            names = "--grade",
                            required = true,
                            paramLabel = "NAME: RANGE,THICKNESS",
                            description = "A grade of gasket; again for each.")
                    List<String> grades,
            @Option(
                            names = "--uncertainty",
                            defaultValue = "",
                            paramLabel = "LENGTH",
                            description = "Of a reading. Default: 0.01 mm.")
                    String uncertainty,
            @Option(
                            names = "--spread",
                            defaultValue = "",
                            paramLabel = "LENGTH",
                            description = "How far pistons may differ. Default: 0.10 mm, typical.")
                    String spread,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new GasketQuestion(pistons, grades, uncertainty, spread).ask(written),
                        answer -> FitWords.gasket(answer.allowed_mm(), answer.fit()),
                        FitJson::gasket);
    }

    @Command(
            name = "float",
            mixinStandardHelpOptions = true,
            header = "Shims or thrust washers for an end float.",
            footer = {
                "",
                "Example: gudgeon fit float \"0.35 mm\" --with \"2.30 mm\" --size \"2.30 mm, 2.40 mm, 2.50 mm\" --wanted \"0.10 mm to 0.20 mm\""
            })
    int endFloat(
            @Parameters(paramLabel = "FLOAT", description = "As measured.") String measured,
            @Option(
                            names = "--with",
                            defaultValue = "",
                            paramLabel = "THICKNESS",
                            description = "Of all that lay there then. Default: nothing.")
                    String present,
            @Option(
                            names = "--size",
                            required = true,
                            paramLabel = "SIZES",
                            description = "Thicknesses to choose from.")
                    List<String> sizes,
            @Option(
                            names = "--most",
                            defaultValue = "1",
                            paramLabel = "N",
                            description = "How many may lie on each other. Default: 1.")
                    int most,
            @Option(names = "--wanted", required = true, paramLabel = "RANGE", description = WANTED) String wanted,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new FloatQuestion(measured, present, all(sizes), most, wanted).ask(written),
                        answer -> FitWords.endFloat(answer.measured_mm(), answer.aim(), answer.fit()),
                        FitJson::endFloat);
    }
}
