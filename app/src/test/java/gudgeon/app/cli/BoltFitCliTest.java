package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Bolts and fits on the command line: numbers with units in, answer and reasons out. Values: common practice, and the standards named. */
class BoltFitCliTest {
    private static JsonNode json(String... words) {
        String[] all = java.util.Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        Typed typed = Typed.run(all);
        assertThat(typed.err()).isEmpty();
        assertThat(typed.exit()).isZero();
        return new JsonMapper().readTree(typed.out());
    }

    /** Story: 60 wanted, a 50 mm crow-foot in line on a 400 mm wrench is set at 53.3, on the 20 to 100 N·m wrench. */
    @Test
    void throughACrowFoot() {
        JsonNode answer = json(
                "bolt",
                "wrench",
                "60 N·m",
                "--have",
                "small: 5-25 N·m",
                "--have",
                "middle: 20-100 N·m",
                "--have",
                "large: 40-200 N·m",
                "--adaptor",
                "50 mm, 400 mm");
        assertThat(answer.get("setting_Nm").asDouble()).isCloseTo(53.333, within(0.001));
        assertThat(answer.get("setting").asString()).isEqualTo("53.3 N·m");
        assertThat(answer.get("take").asString()).isEqualTo("middle");
        Typed ten = Typed.run("bolt", "wrench", "10 N·m", "--have", "large: 40-200 N·m");
        assertThat(ten.out()).contains("40 to 200 N·m: cannot be set so low").contains("hire or borrow");
    }

    @Test
    void shownInTheUnitTyped() {
        assertThat(json("bolt", "wrench", "44.25 lbf·ft", "--adaptor", "2 in, 16 in")
                        .get("setting")
                        .asString())
                .isEqualTo("39.3 lbf·ft");
    }

    @Test
    void withoutTheStateOfTheThreadThereIsNoAnswer() {
        Typed typed = Typed.run("bolt", "preload", "24 N·m", "M8x1.25", "--class", "8.8");
        assertThat(typed.exit()).isEqualTo(Exit.INPUT);
        assertThat(typed.err()).contains("dry, oiled");
        assertThat(typed.out()).isEmpty();
    }

    /** VDI 2230: M8 8.8 at friction 0.12 and 90 % of yield 18.6 kN and 24.6 N·m; from memory. */
    @Test
    void torqueAndBackAgain() {
        JsonNode torque =
                json("bolt", "torque", "M8", "--class", "8.8", "--thread", "0.12", "--head", "11.63 mm, 9 mm");
        JsonNode point = torque.get("points").get(1);
        assertThat(point.get("preload_N").asDouble()).isCloseTo(18_600, within(100.0));
        assertThat(point.get("torque_Nm").asDouble()).isCloseTo(24.6, within(0.3));
        JsonNode band = json(
                "bolt",
                "preload",
                String.format(
                        java.util.Locale.ROOT,
                        "%.9f N·m",
                        point.get("torque_Nm").asDouble()),
                "M8",
                "--class",
                "8.8",
                "--thread",
                "0.12",
                "--head",
                "11.63 mm, 9 mm");
        assertThat(band.get("likely").get("preload_N").asDouble())
                .isCloseTo(point.get("preload_N").asDouble(), within(1e-3));
        assertThat(band.get("likely").get("share_of_yield").asDouble()).isCloseTo(0.9, within(1e-7));
    }

    /** The phone rings at bolt 7 of 10 in a torque stage: all ten again; in an angle stage never one twice; uncertain: all spent. */
    @Test
    void afterAnInterruption() {
        String order = "1,2,3,4,5,6,7,8,9,10";
        String seven = "1,2,3,4,5,6,7";
        assertThat(json("bolt", "restart", "torque", "--order", order, "--marked", seven)
                        .get("turn"))
                .hasSize(10);
        JsonNode angle = json("bolt", "restart", "angle", "--order", order, "--marked", seven);
        assertThat(angle.get("turn")).extracting(JsonNode::asString).containsExactly("8", "9", "10");
        assertThat(angle.get("leave")).hasSize(7);
        JsonNode uncertain = json("bolt", "restart", "angle", "--order", order, "--marked", seven, "--uncertain");
        assertThat(uncertain.get("spent")).hasSize(10);
        assertThat(uncertain.get("turn")).isEmpty();
    }

    @Test
    void aMixedTin() {
        List<String> words = List.of(
                "bolt",
                "tin",
                "--bolt",
                "8 x M6x1 x 20 mm",
                "--bolt",
                "6 x M6x1x30",
                "--bolt",
                "5 x M8x35",
                "--bolt",
                "4 x M8x1.25 x 50 mm",
                "--hole",
                "edge: 4 x M6x1, clamped 8 mm, aluminium 16 mm deep",
                "--hole",
                "belt: 4 x M6, clamped 8 mm, aluminium 12 mm through, moving 3 mm behind",
                "--hole",
                "idler: 6 x M6x1, clamped 14 mm, aluminium 22 mm deep, opens to oil",
                "--hole",
                "pump: 5 x M8, clamped 16 mm, cast iron 22 mm deep",
                "--hole",
                "mounting: 4 x M8x1.25, clamped 30 mm, aluminium 24 mm deep",
                "--left",
                "M6x1 x 20",
                "--seen",
                "edge: 2",
                "--cost",
                "belt: 45 min");
        JsonNode answer = json(words.toArray(String[]::new));
        assertThat(answer.get("ways").asString()).isEqualTo("1");
        assertThat(answer.get("pairs").get(1).get(1).get("hindrances").get(0).asString())
                .isEqualTo("reaches moving part");
        assertThat(answer.get("leftover").get("likeliest").get(0).get("hole").asInt())
                .isEqualTo(1);
        assertThat(answer.get("leftover").get("likeliest").get(0).get("chance").asDouble())
                .isCloseTo(2 / 3.0, within(1e-12));
        assertThat(answer.get("leftover").get("to_look").get(0).asInt()).isZero();
        assertThat(Typed.run(words.toArray(String[]::new)).out())
                .contains("bottoms by")
                .contains("only M6x1 x 20 (4)");
    }

    @Test
    void fitsOnTheCommandLine() {
        JsonNode shims = json(
                "fit",
                "shims",
                "--wanted",
                "0.15 mm to 0.25 mm",
                "--valve",
                "inlet 1: 0.10 mm, 2.70 mm",
                "--valve",
                "inlet 2: 0.30 mm, 2.60 mm");
        assertThat(shims.get("plans").get(0).get("placed").get(0).get("from").asString())
                .isEqualTo("valve");
        JsonNode pistons = json(
                "fit",
                "pistons",
                "--bore",
                "86.010 mm, 86.020 mm",
                "--piston",
                "85.970 mm, 85.960 mm",
                "--wanted",
                "0.04 mm to 0.06 mm");
        assertThat(pistons.get("best").get("piece_of"))
                .extracting(JsonNode::asInt)
                .containsExactly(1, 0);
        JsonNode weights = json("fit", "weights", "--kind", "pistons: 400 g, 404 g", "--kind", "rods: 602 g, 600 g");
        assertThat(weights.get("best").get("spread_g").asDouble()).isCloseTo(2, within(1e-9));
        JsonNode gasket = json(
                "fit", "gasket", "--piston", "0.58 mm, 0.60 mm", "--grade", "2 notches: 0.55 mm to 0.65 mm, 1.50 mm");
        assertThat(gasket.get("grade").asString()).isEqualTo("2 notches");
        JsonNode shells = json(
                "fit",
                "shells",
                "--bearing",
                "main 1: 59.000 mm, 54.980 mm",
                "--grade",
                "red: 1.990 mm, 4",
                "--wanted",
                "0.03 mm to 0.05 mm");
        assertThat(shells.get("plan").get("placed").get(0).get("clearance_mm").asDouble())
                .isCloseTo(0.04, within(1e-9));
        JsonNode rings = json(
                "fit",
                "rings",
                "--bore",
                "86.01 mm",
                "--gap",
                "0.25 mm",
                "--gauge",
                "86.00 mm",
                "--wanted",
                "0.30 mm to 0.50 mm");
        assertThat(rings.get("best").get("file_mm").asDouble()).isCloseTo(0.05 - 0.01 * Math.PI, within(1e-9));
        JsonNode endFloat = json(
                "fit",
                "float",
                "0.35 mm",
                "--with",
                "2.30 mm",
                "--size",
                "2.40 mm, 2.50 mm",
                "--wanted",
                "0.10 mm to 0.20 mm");
        assertThat(endFloat.get("choices").get(0).get("pieces_mm").get(0).asDouble())
                .isEqualTo(2.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bolt thread M8x9 | M8x1.25",
                "bolt thread M8 --class 8,8 | 4.6, 4.8",
                "bolt thread M8 --tolerance 6H | 6g",
                "bolt torque M8 --class 8.8 --thread wet | dry, oiled",
                "bolt preload 24 M8 --class 8.8 --thread dry | has no unit",
                "bolt preload 24_lb M8 --class 8.8 --thread dry | lbf·ft, lbf·in",
                "bolt preload 3_mil M8 --class 8.8 --thread dry | thou",
                "bolt angle M8 90 --length 40_mm | has no unit",
                "bolt wrench 60_N·m --have old:200-40_N·m | swap",
                "bolt wrench 60_N·m --adaptor 50_mm | length of the wrench",
                "bolt pattern 4 --at 1,2 | how many bolts",
                "bolt restart stage --order 1,2 | torque or angle",
                "bolt restart angle --order 1,2 --marked 3 | no fastener 3",
                "bolt tin --bolt M6 --hole a:4_x_M6 | cannot be read",
                "bolt tin --bolt 4_x_M6x20 --hole a:4_x_M6,deep | clamped 8 mm",
                "fit shims --valve a:0.1_mm,2.6_mm | has no range",
                "fit weights --kind pistons:400_g,401_g --kind rods:600_g | equally many",
                "fit shells --bearing m:54.98_mm,59_mm --grade red:2_mm --wanted 0.03_mm_to_0.05_mm | swapped",
                "fit float 0.35_mm --size 2.4_mm --most 9 --wanted 0.1_mm_to_0.2_mm | one to four",
            })
    void oneClearMessage(String line, String said) {
        String[] words = java.util.Arrays.stream(line.strip().split(" ", -1))
                .map(word -> word.replace('_', ' '))
                .toArray(String[]::new);
        Typed typed = Typed.run(words);
        assertThat(typed.exit()).as(typed.err()).isEqualTo(Exit.INPUT);
        assertThat(typed.err().strip().lines()).hasSize(1);
        assertThat(typed.err()).startsWith("gudgeon: ").contains(said);
        assertThat(typed.out()).isEmpty();
    }

    @Test
    void everyExampleOfTheHelpRuns() {
        for (String family : new String[] {"bolt", "fit"}) {
            picocli.CommandLine line = java.util.Objects.requireNonNull(Main.commandLine(new Screen(
                            new java.io.PrintWriter(java.io.Writer.nullWriter()),
                            new java.io.PrintWriter(java.io.Writer.nullWriter()),
                            96,
                            false,
                            false))
                    .getSubcommands()
                    .get(family));
            assertThat(line.getSubcommands()).hasSizeGreaterThan(6);
            line.getSubcommands().forEach((name, command) -> {
                String example = command.getCommandSpec().usageMessage().footer()[1];
                assertThat(example).as(name).startsWith("Example: gudgeon " + family + " " + name);
                String[] words = java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)")
                        .matcher(example.substring("Example: gudgeon ".length()))
                        .results()
                        .map(found -> found.group(1) != null ? found.group(1) : found.group(2))
                        .toArray(String[]::new);
                Typed typed = Typed.run(words);
                assertThat(typed.exit()).as(example + typed.err()).isZero();
                assertThat(typed.out()).isNotBlank();
            });
        }
    }
}
