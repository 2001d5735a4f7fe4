package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line as a person meets it: help, exit codes, suggestions, files. */
class CliTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "engine",
                "strip",
                "build",
                "order",
                "draw",
                "demo",
                "job",
                "geometry",
                "next",
                "done",
                "off",
                "found",
                "trouble",
                "rescue",
                "wont",
                "add",
                "together",
                "bag",
                "note",
                "photo",
                "tell",
                "undo"
            })
    void everyCommandHelpsWithAnExampleAndItsExitCodes(String command) {
        Typed typed = Typed.run(command, "--help");
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
        assertThat(typed.out()).contains("Usage: gudgeon " + command, "Exit codes:", "gudgeon " + command + " ");
        assertThat(typed.out()).containsPattern("Examples?: gudgeon");
        assertThat(typed.err()).isEmpty();
    }

    @Test
    void withoutACommandItSaysWhatThereIs() {
        Typed typed = Typed.run();
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
        assertThat(typed.out()).contains("strip", "build", "order", "gudgeon demo");
    }

    @ParameterizedTest
    @CsvSource({
        "strip, Missing required parameter",
        "strip wren-160, nothing to reach",
        "strip wren-160 --reach head --worth -1, --worth is from 0",
        "strip wren-160 --reach head --seconds 0, --seconds is from 1",
        "strip wren-160 --reach head --nonsense, --nonsense",
        "order wren-160 --reach head --json --csv -, cannot both",
        "draw wren-160 --width 10, --width is from",
        "stripp, stripp",
    })
    void wrongUsageIsTwoAndSaysWhatWouldBeRight(String line, String said) {
        Typed typed = Typed.line(line);
        assertThat(typed.exit()).isEqualTo(Exit.USAGE);
        assertThat(typed.err()).contains(said, "--help");
        assertThat(typed.out()).isEmpty();
    }

    @Test
    void anUnknownPartIsOneAndTheNearestIsSuggested() {
        Typed typed = Typed.line("strip wren-160 --reach pistn");
        assertThat(typed.exit()).isEqualTo(Exit.INPUT);
        assertThat(typed.err()).contains("no part is called 'pistn'", "Maybe piston");
        assertThat(typed.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "--open hed-studs, joint, head-studs",
        "--reach head --undone hed-studs, joint or preparation, head-studs",
        "--reach head --with hosit, way of lifting, hoist",
    })
    void everyKindOfNameIsSuggested(String options, String sort, String near) {
        Typed typed = Typed.line("strip wren-160 " + options);
        assertThat(typed.exit()).isEqualTo(Exit.INPUT);
        assertThat(typed.err()).contains("no " + sort + " is called", near);
    }

    @Test
    void aPartThatLeavesInsideAnotherIsToldWithTheJointsThatFreeIt() {
        assertThat(Typed.line("strip wren-160 --reach inlet-valve").out())
                .contains("comes off inside cylinder head", "on its own, add --open inlet-collets");
        assertThat(Typed.line("strip wren-160 --reach inlet-valve --open inlet-collets")
                        .out())
                .contains("inlet valve to")
                .doesNotContain("comes off inside");
        assertThat(Typed.line("strip wren-160 --reach head").out()).doesNotContain("comes off inside");
    }

    @Test
    void aPartMayBeNamedInAnyCase() {
        assertThat(Typed.run("strip", "wren-160", "--reach", "CYLINDER HEAD").out())
                .isEqualTo(Typed.line("strip wren-160 --reach head").out());
    }

    @Test
    void anUnknownFileIsOneAndTheShippedOnesAreNamed() {
        Typed typed = Typed.line("strip wren-16 --reach head");
        assertThat(typed.exit()).isEqualTo(Exit.INPUT);
        assertThat(typed.err()).contains("no such file", "wren-160");
    }

    @Test
    void faultsAreListedWithTheirPlace() throws IOException {
        Path file = folder.resolve("faulty.yaml");
        Files.writeString(file, """
                format: 1
                engine: { id: test, name: Test, base: block }
                parts:
                  block: {}
                  cover: { mass: 3 N·m }
                joints:
                  screws: { between: [cover, blok] }
                """);
        Typed typed = Typed.run("check", file.toString());
        assertThat(typed.exit()).isEqualTo(Exit.INPUT);
        assertThat(typed.out()).contains("faulty.yaml:5:", "faulty.yaml:7:", "blok", "not good");
        Typed strip = Typed.run("strip", file.toString(), "--reach", "cover");
        assertThat(strip.exit()).isEqualTo(Exit.INPUT);
        assertThat(strip.err()).contains("faulty.yaml:7:", "cannot be used");
    }

    @Test
    void whatIsNoTextIsAFaultAndNoStackTrace() throws IOException {
        Path file = folder.resolve("binary.yaml");
        Files.write(file, new byte[] {0, 1, 2, (byte) 0xff, (byte) 0xfe, 0});
        Typed typed = Typed.run("check", file.toString());
        assertThat(typed.exit()).isEqualTo(Exit.INPUT);
        assertThat(typed.out() + typed.err()).doesNotContain("\tat ", "Exception");
    }

    @Test
    void shippedEnginesAreGood() {
        Typed typed = Typed.line("check wren-160 dunlin-22d");
        assertThat(typed.exit()).as(typed.out()).isEqualTo(Exit.DONE);
        assertThat(typed.out()).contains("wren-160: good", "dunlin-22d: good");
    }

    @Test
    void anEngineIsSummed() {
        assertThat(Typed.line("engine wren-160").out()).contains("Wren 160", "parts", "joints", "Circuits", "Zones");
    }

    @Test
    void aPlanSaysTheAnswerFirstThenStepsThenWhatToBuyThenProofs() {
        Typed typed = Typed.line("strip wren-160 --reach piston");
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
        assertThat(typed.out())
                .containsSubsequence(
                        "piston off", "steps; proved", "undoing", "   1  ", "To buy", "head gasket", "Proved");
        assertThat(typed.err()).isEmpty();
        assertThat(typed.out().lines().allMatch(line -> line.length() <= 96)).isTrue();
    }

    @Test
    void whySaysAReasonForEveryUndoing() {
        Typed typed = Typed.line("strip wren-160 --reach head --why");
        assertThat(typed.out()).contains("because ", "there is no way round it");
    }

    @Test
    void aDangerIsToldBeforeEachOfItsStepsAndInFullAtTheFirst() {
        String out = Typed.line("strip wren-160 --reach piston").out();
        assertThat(out).containsSubsequence("Petrol vapour creeps", "Open fuel only in moving outdoor air", "fuel tap");
        assertThat(out)
                .containsSubsequence(
                        "fuel tap", "DANGER", "Petrol vapour creeps and lights far away, as at step", "Drain: petrol");
    }

    @Test
    void whatToLayOutAndWhatIsDestroyedStandBeforeTheFirstStep() {
        String out = Typed.line("strip wren-160 --reach piston").out();
        assertThat(out).containsSubsequence("lay out ", "socket or spanner", "destroys ", "head gasket", "   1  ");
    }

    @Test
    void anOrderOfTighteningIsDrawnAndNeverListed() {
        String out = Typed.line("build wren-160 --reach barrel").out();
        assertThat(out)
                .contains("in hand ", "in the order drawn")
                .doesNotContain("positions from first", "in the order 1");
    }

    @Test
    void noColourWithoutATerminalAndColourOnOne() {
        assertThat(Typed.run(80, false, "strip", "wren-160", "--reach", "head").out())
                .doesNotContain("\u001b");
        assertThat(Typed.run(80, true, "strip", "wren-160", "--reach", "head").out())
                .contains("\u001b[1m");
    }

    @Test
    void theScreenObeysNoColorAndTheWidth() {
        Screen plain = Screen.of("out,72,err", java.util.Map.of("NO_COLOR", "1"), System.out, System.err);
        assertThat(plain.colour()).isFalse();
        assertThat(plain.width()).isEqualTo(72);
        assertThat(plain.live()).isTrue();
        Screen wide = Screen.of("out,300", java.util.Map.of("TERM", "xterm"), System.out, System.err);
        assertThat(wide.colour()).isTrue();
        assertThat(wide.width()).isEqualTo(100);
        assertThat(Screen.of("", java.util.Map.of(), System.out, System.err).colour())
                .isFalse();
    }

    @Test
    void whatWillNotComeIsBlockedWithThreeAndNamed() {
        Typed typed = Typed.line("strip wren-160 --reach head --will-not-come head-studs");
        assertThat(typed.exit()).isEqualTo(Exit.BLOCKED);
        assertThat(typed.out()).contains("No plan", "head studs");
    }

    @Test
    void theWayBackSaysWhatItWaitsFor() {
        Typed whole = Typed.line("build wren-160 --reach head");
        assertThat(whole.exit()).isEqualTo(Exit.DONE);
        assertThat(whole.out())
                .contains("the way back", "N·m", "nothing left over")
                .doesNotContain("BLOCKED");
        Typed lacking = Typed.run("build", "wren-160", "--reach", "head", "--missing", "head gasket");
        assertThat(lacking.exit()).isEqualTo(Exit.DONE);
        assertThat(lacking.out()).contains("BLOCKED", "Not in hand: head gasket");
        Typed unknown = Typed.run("build", "wren-160", "--reach", "head", "--missing", "head gaskt");
        assertThat(unknown.exit()).isEqualTo(Exit.INPUT);
        assertThat(unknown.err()).contains("Maybe head gasket");
    }

    @Test
    void papersAreWrittenWhereAsked() throws IOException {
        Path pdf = folder.resolve("new folder/card.pdf");
        Typed strip = Typed.run("strip", "wren-160", "--reach", "head", "--pdf", pdf.toString());
        assertThat(strip.exit()).isEqualTo(Exit.DONE);
        assertThat(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        Path svg = folder.resolve("wren.svg");
        assertThat(Typed.run("draw", "wren-160", "-o", svg.toString(), "--theme", "sun", "--all")
                        .exit())
                .isEqualTo(Exit.DONE);
        assertThat(Files.readString(svg)).startsWith("<svg").endsWith("</svg>\n");
        Path csv = folder.resolve("list.csv");
        assertThat(Typed.run("order", "wren-160", "--reach", "head", "--csv", csv.toString())
                        .exit())
                .isEqualTo(Exit.DONE);
        assertThat(Files.readString(csv)).contains("head gasket");
        try (var left = Files.list(folder)) {
            assertThat(left.map(path -> String.valueOf(path.getFileName())))
                    .containsExactlyInAnyOrder("new folder", "wren.svg", "list.csv");
        }
    }

    @Test
    void aFileThatCannotBeWrittenIsFourAndNamed() {
        Typed typed = Typed.run("draw", "wren-160", "-o", folder.toString());
        assertThat(typed.exit()).isEqualTo(Exit.FAILED);
        assertThat(typed.err()).contains("cannot write", folder.toString()).doesNotContain("\tat ");
    }

    /** The barrel sits under the head: with the head off it costs its own work only; from a whole engine the head again. */
    @Test
    void whileTheHeadIsOffTheBarrelIsCheap() {
        Typed typed = Typed.line("strip wren-160 --reach head --while-open");
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
        assertThat(typed.out()).containsPattern("Barrel\\R +now \\d+ min; later at least 2 h");
        assertThat(typed.out()).contains("Off anyway", "The plan another way", "Instead of ");
        Typed json = Typed.line("strip wren-160 --reach head --while-open --json");
        assertThat(json.out()).contains("\"saves_at_least\"", "\"alternatives\"", "\"no_way_round\"");
    }
}
