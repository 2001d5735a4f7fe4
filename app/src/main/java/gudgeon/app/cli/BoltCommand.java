package gudgeon.app.cli;

import gudgeon.app.desk.BoltAngle;
import gudgeon.app.desk.BoltThread;
import gudgeon.app.desk.BoltTorque;
import gudgeon.app.desk.PatternQuestion;
import gudgeon.app.desk.RestartQuestion;
import gudgeon.app.desk.ReuseQuestion;
import gudgeon.app.desk.TinQuestion;
import gudgeon.app.desk.WrenchQuestion;
import gudgeon.app.document.AnswerRow;
import gudgeon.app.document.BoltWords;
import gudgeon.app.document.TinWords;
import gudgeon.core.bolting.PatternCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Threads, torque, preload, angle, wrenches, patterns, the mixed tin: without a job, numbers in and an answer out. */
@Command(
        name = "bolt",
        mixinStandardHelpOptions = true,
        header = "Works out threads, torque and preload, wrenches, patterns, and which bolt belongs where.",
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:Something cannot be read or cannot be so", "2:Wrong usage"},
        footer = {"", "Example: gudgeon bolt preload \"24 N·m\" M8x1.25 --class 8.8 --thread oiled"})
final class BoltCommand implements Callable<Integer> {
    private static final String JSON = "Answer as JSON (docs/json.md), and print nothing else.";
    private static final String THREAD =
            "State of the thread: dry, oiled, paste, locked; or its friction, like 0.10-0.14.";
    private static final String GRADE = "Property class on the head: 8.8, 10.9 ...";

    private final Screen screen;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    BoltCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(screen.out());
        return Exit.DONE;
    }

    private static List<String> all(@Nullable List<String> given) {
        return given == null ? List.of() : given;
    }

    private static List<String> parts(String given) {
        return given.isBlank() ? List.of() : SumAnswer.written().values(given);
    }

    @Command(
            name = "thread",
            mixinStandardHelpOptions = true,
            header = "What a thread is: sizes, stress area, strength of a class, limits of size.",
            footer = {"", "Example: gudgeon bolt thread M8 --class 8.8 --tolerance 6g"})
    int thread(
            @Parameters(paramLabel = "THREAD", description = "M8x1.25, M8 (coarse), 1/2-13.") String thread,
            @Option(names = "--class", defaultValue = "", paramLabel = "CLASS", description = GRADE) String grade,
            @Option(
                            names = "--tolerance",
                            defaultValue = "",
                            paramLabel = "CLASS",
                            description = "Of a bolt: 6g, 4h, 5g6g ...")
                    String tolerance,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new BoltThread(thread, grade, tolerance).ask(written),
                        answer -> BoltWords.thread(answer.thread(), answer.grade(), answer.limits()),
                        BoltJson::thread);
    }

    @Command(
            name = "torque",
            mixinStandardHelpOptions = true,
            header = "The torque that brings a bolt to a share of its yield stress.",
            footer = {"", "Example: gudgeon bolt torque M8 --class 8.8 --thread oiled --head \"11.6 mm, 9 mm\""})
    int torque(
            @Parameters(paramLabel = "THREAD", description = "M8x1.25, M8 (coarse), 1/2-13.") String thread,
            @Option(names = "--class", required = true, paramLabel = "CLASS", description = GRADE) String grade,
            @Option(names = "--thread", defaultValue = "", paramLabel = "STATE", description = THREAD) String state,
            @Option(
                            names = "--share",
                            defaultValue = "90 %",
                            paramLabel = "PERCENT",
                            description = "Of the lowest yield stress. Default: 90 %%.")
                    String share,
            @Option(
                            names = "--head",
                            defaultValue = "",
                            paramLabel = "FACE,HOLE",
                            description = "Diameters of the bearing face and of the hole.")
                    String head,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new BoltTorque(thread, grade, state, parts(head)).forShare(share, written),
                        BoltCommand::torqueRows,
                        BoltJson::forShare);
    }

    private static List<AnswerRow> torqueRows(BoltTorque.ForShare answer) {
        List<AnswerRow> rows = new ArrayList<>();
        answer.points()
                .forEach(point -> rows.add(BoltWords.torque(point.friction(), point.preload_N(), point.torques())));
        rows.addAll(BoltWords.taken(answer.bolt().typicalHead()));
        return rows;
    }

    @Command(
            name = "preload",
            mixinStandardHelpOptions = true,
            header = "The preload that a torque gives, as a band, and how much of the yield stress it uses.",
            footer = {"", "Example: gudgeon bolt preload \"24 N·m\" M8x1.25 --class 8.8 --thread oiled"})
    int preload(
            @Parameters(index = "0", paramLabel = "TORQUE", description = "With its unit: 24 N·m, 17.7 lbf·ft.")
                    String torque,
            @Parameters(index = "1", paramLabel = "THREAD", description = "M8x1.25, M8 (coarse), 1/2-13.")
                    String thread,
            @Option(names = "--class", required = true, paramLabel = "CLASS", description = GRADE) String grade,
            @Option(names = "--thread", defaultValue = "", paramLabel = "STATE", description = THREAD) String state,
            @Option(
                            names = "--head",
                            defaultValue = "",
                            paramLabel = "FACE,HOLE",
                            description = "Diameters of the bearing face and of the hole.")
                    String head,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new BoltTorque(thread, grade, state, parts(head)).ofTorque(torque, written),
                        answer -> {
                            List<AnswerRow> rows = new ArrayList<>(BoltWords.band(answer.band()));
                            rows.addAll(BoltWords.taken(answer.bolt().typicalHead()));
                            return rows;
                        },
                        BoltJson::ofTorque);
    }

    @Command(
            name = "angle",
            mixinStandardHelpOptions = true,
            header = "What turning a bolt by an angle does to it, below yield.",
            footer = {"", "Example: gudgeon bolt angle M10x1.25 30° --length \"80 mm\" --class 10.9"})
    int angle(
            @Parameters(index = "0", paramLabel = "THREAD", description = "M10x1.25, M10 (coarse), 1/2-13.")
                    String thread,
            @Parameters(index = "1", paramLabel = "ANGLE", description = "With its unit: 90°, 90 deg.") String angle,
            @Option(
                            names = "--length",
                            required = true,
                            paramLabel = "LENGTH",
                            description = "Stretched length of the bolt.")
                    String length,
            @Option(names = "--class", defaultValue = "", paramLabel = "CLASS", description = GRADE) String grade,
            @Option(
                            names = "--joint",
                            defaultValue = "",
                            paramLabel = "PERCENT",
                            description = "How springy what is clamped is, as a share of the bolt. Default: 0 %%.")
                    String joint,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new BoltAngle(thread, angle, length, grade, joint).ask(written),
                        answer -> BoltWords.angle(
                                answer.angle_deg(),
                                answer.spring(),
                                answer.gained_N(),
                                answer.stretch_mm(),
                                answer.proof_N(),
                                answer.toProof_deg()),
                        BoltJson::angle);
    }

    @Command(
            name = "wrench",
            mixinStandardHelpOptions = true,
            header = "Which torque wrench to take and what to set on it, through an adaptor if there is one.",
            footer = {
                "",
                "Example: gudgeon bolt wrench \"60 N·m\" --have \"middle: 20-100 N·m\" --adaptor \"50 mm, 400 mm\""
            })
    int wrench(
            @Parameters(paramLabel = "TORQUE", description = "Wanted at the bolt, with its unit.") String torque,
            @Option(names = "--have", paramLabel = "NAME: RANGE", description = "A wrench; again for more.") @Nullable
                    List<String> have,
            @Option(
                            names = "--adaptor",
                            defaultValue = "",
                            paramLabel = "OFFSET,WRENCH[,ANGLE]",
                            description =
                                    "Middle of the drive to the bolt, middle of the drive to the middle of the grip, and the"
                                            + " angle when it is not in line.")
                    String adaptor,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new WrenchQuestion(torque, all(have), parts(adaptor)).ask(written),
                        answer -> BoltWords.wrench(
                                answer.adaptor(),
                                answer.torque().like(answer.torque().value(), 4),
                                answer.torque().like(answer.setting_Nm(), 3),
                                answer.choice()),
                        BoltJson::wrench);
    }

    @Command(
            name = "pattern",
            mixinStandardHelpOptions = true,
            header = "In which order to tighten, and what is wrong with an order.",
            footer = {"", "Example: gudgeon bolt pattern 8 --check 1,2,3,4,5,6,7,8"})
    int pattern(
            @Parameters(
                            arity = "0..1",
                            defaultValue = "0",
                            paramLabel = "BOLTS",
                            description = "How many, evenly round a circle.")
                    int count,
            @Option(
                            names = "--at",
                            paramLabel = "X,Y",
                            description = "The place of a bolt in millimetres; again for each.")
                    @Nullable
                    List<String> at,
            @Option(names = "--inside-out", description = "It is a head: from the middle outward, round in one sense.")
                    boolean insideOut,
            @Option(names = "--check", split = ",", paramLabel = "ORDER", description = "An order to look at: 1,3,2,4.")
                    @Nullable
                    List<Integer> check,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new PatternQuestion(count, all(at), insideOut, check == null ? List.of() : check)
                                .ask(written),
                        answer -> {
                            List<AnswerRow> rows = new ArrayList<>();
                            rows.add(new AnswerRow(
                                    "tighten in this order",
                                    String.join(
                                            " ",
                                            answer.order().stream()
                                                    .map(String::valueOf)
                                                    .toList())));
                            answer.check()
                                    .map((PatternCheck known) -> BoltWords.pattern(known))
                                    .ifPresent(rows::addAll);
                            return rows;
                        },
                        BoltJson::pattern);
    }

    @Command(
            name = "reuse",
            mixinStandardHelpOptions = true,
            header = "Whether a bolt that was tightened into yield may be used once more.",
            footer = {"", "Example: gudgeon bolt reuse --length \"112.1 mm, 112.5 mm\" --neck \"8.4 mm, 8.2 mm\""})
    int reuse(
            @Option(
                            names = "--length",
                            defaultValue = "",
                            paramLabel = "MEASURED,LONGEST",
                            description = "Under the head.")
                    String length,
            @Option(
                            names = "--neck",
                            defaultValue = "",
                            paramLabel = "MEASURED,SMALLEST",
                            description = "Diameter at the thinnest place.")
                    String neck,
            @Option(names = "--uncertainty", defaultValue = "", paramLabel = "LENGTH", description = "Of the readings.")
                    String uncertainty,
            @Option(names = "--single-use", description = "The manual says never again.") boolean singleUse,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new ReuseQuestion(parts(length), parts(neck), uncertainty, singleUse).ask(written),
                        BoltWords::reuse,
                        BoltJson::reuse);
    }

    @Command(
            name = "restart",
            mixinStandardHelpOptions = true,
            header = "Where to start again after an interruption.",
            footer = {"", "Example: gudgeon bolt restart angle --order 1,3,2,4 --marked 1,3"})
    int restart(
            @Parameters(paramLabel = "STAGE", description = "torque or angle.") String stage,
            @Option(
                            names = "--order",
                            required = true,
                            split = ",",
                            paramLabel = "BOLTS",
                            description = "As they are turned.")
                    List<String> order,
            @Option(
                            names = "--marked",
                            split = ",",
                            paramLabel = "BOLTS",
                            description = "Those with a mark that has moved, or an entry.")
                    @Nullable
                    List<String> marked,
            @Option(names = "--uncertain", description = "It is not certain that all that were turned are marked.")
                    boolean uncertain,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> {
                            if (!stage.equals("torque") && !stage.equals("angle")) {
                                throw new IllegalArgumentException("stage: torque or angle, not '" + stage + "'");
                            }
                            return new RestartQuestion(stage.equals("angle"), order, all(marked), !uncertain).ask();
                        },
                        resume -> BoltWords.resume(resume, stage.equals("angle")),
                        BoltJson::resume);
    }

    @Command(
            name = "tin",
            mixinStandardHelpOptions = true,
            header = "Which bolt of a mixed tin belongs in which hole, and where one left over may be missing.",
            footer = {
                "",
                "Example: gudgeon bolt tin --bolt \"4 x M6x1 x 20 mm\" --hole \"cover: 4 x M6x1, clamped 8 mm, aluminium 16 mm deep\""
            })
    int tin(
            @Option(
                            names = "--bolt",
                            required = true,
                            paramLabel = "N x THREAD x LENGTH",
                            description = "Bolts of a kind; again for more.")
                    List<String> bolts,
            @Option(
                            names = "--hole",
                            required = true,
                            paramLabel = "NAME: ...",
                            description =
                                    "Holes of a kind: how many of which thread, clamped thickness, material and depth (or through, and"
                                            + " what moves or lies how far behind), opens to what; again for more.")
                    List<String> holes,
            @Option(
                            names = "--left",
                            defaultValue = "",
                            paramLabel = "BOLT",
                            description = "One that is left over; it is counted among the bolts, too.")
                    String left,
            @Option(
                            names = "--seen",
                            paramLabel = "NAME: N",
                            description = "So many of these holes are filled, you looked.")
                    @Nullable
                    List<String> seen,
            @Option(names = "--cost", paramLabel = "NAME: TIME", description = "To open these again. Default: 10 min.")
                    @Nullable
                    List<String> cost,
            @Option(names = "--json", description = JSON) boolean json) {
        return new SumAnswer(screen, json)
                .print(
                        written -> new TinQuestion(bolts, holes, left, all(seen), all(cost)).ask(written),
                        answer -> {
                            List<AnswerRow> rows = new ArrayList<>(TinWords.ways(answer.tin()));
                            rows.addAll(TinWords.pairs(answer.tin()));
                            answer.leftover().ifPresent(each -> rows.addAll(TinWords.leftover(answer.tin(), each)));
                            return rows;
                        },
                        FitJson::tin);
    }
}
