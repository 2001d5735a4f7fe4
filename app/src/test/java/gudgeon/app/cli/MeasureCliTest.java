package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Measuring from the command line, without a job. */
class MeasureCliTest {
    @TempDir
    private Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static JsonNode json(String... words) {
        String[] all = java.util.Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        Typed typed = Typed.run(all);
        assertThat(typed.exit()).as(typed.err()).isZero();
        return new JsonMapper().readTree(typed.out());
    }

    /** 86 mm of aluminium at 5 °C against a steel standard is 14.8 um off; expansions from memory. */
    @Test
    void coldAluminium() {
        Typed typed = Typed.run("measure", "reading", "86.000mm", "--of", "aluminium", "--at", "5°C");
        assertThat(typed.out()).contains("86.01").contains("Brought to 20 °C: +0.0148 mm");
    }

    @Test
    void tooCloseSaysWhatSettlesIt() {
        Typed typed = Typed.run(
                "measure",
                "reading",
                "86.076mm",
                "--with",
                "digital micrometer",
                "--of",
                "cast iron",
                "--at",
                "20°C",
                "--repeatability",
                "0.003mm",
                "--most",
                "86.080mm",
                "--typical");
        assertThat(typed.out().replaceAll("\\s+", " "))
                .contains("Too close to call")
                .contains("Provisional: the limit is typical only")
                .contains("Would settle it")
                .contains("Take again: the place");
    }

    @Test
    void theEditionChangesTheVerdict() {
        String[] words = {
            "measure",
            "reading",
            "50.0045mm",
            "--resolution",
            "0.001mm",
            "--may-err",
            "0.003mm",
            "--repeatability",
            "0.001mm",
            "--of",
            "steel",
            "--at",
            "20°C",
            "--most",
            "50.0085mm",
            "--edition",
            "2017"
        };
        assertThat(Typed.run(words).out()).contains("Within the limit");
        words[words.length - 1] = "1998";
        assertThat(Typed.run(words).out()).contains("Too close to call");
    }

    @Test
    void boresAndTheCommonOversize() throws IOException {
        String table = file("bores.csv", """
                # as read on the bench
                name;depth mm;direction;size mm
                bore 1;10;thrust;86,040
                bore 1;10;axial;86,030
                bore 3;10;thrust;86,130
                bore 3;10;axial;86,105
                bore 3;100;thrust;86,030
                bore 3;100;axial;86,026
                """);
        JsonNode answer = json(
                "measure",
                "bore",
                table,
                "--resolution",
                "0.001mm",
                "--may-err",
                "0.003mm",
                "--repeatability",
                "0.0015mm",
                "--of",
                "cast iron",
                "--at",
                "20°C",
                "--nominal",
                "86mm",
                "--unworn",
                "86.010mm",
                "--steps",
                "0.25mm,0.50mm",
                "--most",
                "size=86.080mm",
                "--most",
                "taper=0.040mm");
        JsonNode sheet = answer.get("sheet");
        assertThat(sheet.toString()).contains("\"trait\":\"out of round\"").contains("\"outcome\":\"beyond\"");
        JsonNode common = sheet.get("remarks").get(sheet.get("remarks").size() - 1);
        assertThat(common.get("said").get("common").get("step_mm").asDouble()).isEqualTo(0.5);
        assertThat(common.get("said").get("common").get("deciding").get("name").asString())
                .isEqualTo("bore 3");
        assertThat(answer.get("request").get("readings").size()).isEqualTo(6);
    }

    /** A dish: 0.02 mm between the middle line and the ends, computed by hand. */
    @Test
    void flatnessFromATable() throws IOException {
        StringBuilder table = new StringBuilder("x mm,y mm,height um\n");
        for (int x = -2; x <= 2; x++) {
            for (int y = -1; y <= 1; y++) {
                table.append(100 * x)
                        .append(',')
                        .append(60 * y)
                        .append(',')
                        .append(5 * x * x)
                        .append('\n');
            }
        }
        Typed typed = Typed.run("measure", "flatness", file("deck.csv", table.toString()), "--most", "0.05mm");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out())
                .contains("0.02")
                .contains("touches the upper plane")
                .contains("touches the lower plane");
        Typed three =
                Typed.run("measure", "flatness", file("three.csv", "x mm,y mm,height um\n0,0,1\n100,0,2\n0,50,9\n"));
        assertThat(three.out()).contains("a plane passes through any three");
    }

    @Test
    void aBentShaft() throws IOException {
        StringBuilder table = new StringBuilder("along mm,angle deg,height mm\n");
        for (int along : new int[] {0, 150, 300}) {
            for (int angle = 0; angle < 360; angle += 45) {
                double bow = along == 150 ? 0.03 * Math.cos(Math.toRadians(angle - 90)) : 0;
                table.append(String.format(Locale.ROOT, "%d,%d,%.6f%n", along, angle, bow));
            }
        }
        Typed typed = Typed.run("measure", "runout", file("crank.csv", table.toString()));
        assertThat(typed.out().replaceAll("\\s+", " "))
                .contains("bows most at 150.000 mm: 0.030 mm towards 90° from the mark");
    }

    @Test
    void theOthersAnswer() throws IOException {
        assertThat(Typed.run("measure", "clearance", "--bore", "60.041mm", "--shaft", "59.992mm", "--strip", "0.051mm")
                        .out())
                .contains("Both ways agree");
        assertThat(Typed.run("measure", "gap", "--passes", "0.45mm", "--stops", "0.50mm", "--least", "0.25mm")
                        .out())
                .contains("0.475 mm")
                .contains("Within the limit");
        assertThat(Typed.run("measure", "rod", "--apart", "150mm", "--upright", "0mm,0.03mm", "--lying", "0.1mm,0.07mm")
                        .out())
                .contains("0.020 mm over 100 mm");
        assertThat(Typed.run("measure", "seat", "1.3mm", "1.5mm", "--most", "largest=1.8mm")
                        .out())
                .contains("Within");
        assertThat(Typed.run("measure", "spring", "--free", "46mm", "--press", "36mm=200N", "--press", "26mm=400N")
                        .out())
                .contains("20.000 N/mm");
        assertThat(Typed.run(
                                "measure",
                                "wear",
                                "86.062mm",
                                "--new-from",
                                "86.000mm",
                                "--new-to",
                                "86.018mm",
                                "--ran",
                                "5200",
                                "--further",
                                "3000",
                                "--with",
                                "digital micrometer",
                                "--most",
                                "86.080mm")
                        .out())
                .contains("Size at the next opening");
        StringBuilder lobe = new StringBuilder("angle deg,height mm\n");
        for (int angle = 0; angle < 360; angle += 10) {
            lobe.append(angle)
                    .append(',')
                    .append(Math.max(0, 8 - Math.abs(angle - 110) / 10.0))
                    .append('\n');
        }
        assertThat(Typed.run(
                                "measure",
                                "lobe",
                                file("lobe.csv", lobe.toString()),
                                "--base-from",
                                "220deg",
                                "--base-to",
                                "350deg")
                        .out())
                .contains("for 140° of the cam, centre at 110°");
        StringBuilder round = new StringBuilder("angle deg,radius um\n");
        for (int angle = 0; angle < 360; angle += 10) {
            round.append(angle)
                    .append(',')
                    .append(String.format(Locale.ROOT, "%.3f", 6 * Math.cos(Math.toRadians(3 * angle))))
                    .append('\n');
        }
        assertThat(Typed.run("measure", "round", file("round.csv", round.toString()), "--nominal", "30mm")
                        .out())
                .contains("roundness")
                .contains("0.012 mm");
    }

    @Test
    void wrongInputSaysWhatWouldBeRight() throws IOException {
        assertThat(Typed.run("measure", "reading", "86.07").err()).contains("has no unit");
        assertThat(Typed.run("measure", "reading", "12mil").err()).contains("thou");
        assertThat(Typed.run("measure", "reading", "3mm", "--with", "yardstick").err())
                .contains("bore gauge");
        assertThat(Typed.run("measure", "reading", "3mm", "--of", "cheese").err())
                .contains("cast iron");
        assertThat(Typed.run("measure", "bore", "/no/such/file").exit()).isEqualTo(Exit.FAILED);
        Typed bad = Typed.run("measure", "flatness", file("bad.csv", "x mm,y mm,height mm\n0,0,0\n1,zero,0\n"));
        assertThat(bad.exit()).isEqualTo(Exit.USAGE);
        assertThat(bad.err()).contains("bad.csv:3:");
        assertThat(Typed.run("measure", "flatness", file("none.csv", "x,y,height\n0,0,0\n"))
                        .err())
                .contains("Maybe x mm?");
        assertThat(Typed.run("measure", "runout", file("two.csv", "angle deg,height mm\n0,0\n90,1\n"))
                        .err())
                .contains("three angles");
    }
}
