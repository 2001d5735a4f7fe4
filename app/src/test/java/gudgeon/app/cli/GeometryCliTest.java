package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shape and timing on the command line; the figures are checked against published ones in the measurements. */
class GeometryCliTest {
    @TempDir
    private Path folder = Path.of("");

    private static Typed ratio(String... more) {
        String[] words = {
            "geometry", "ratio", "--bore", "86 mm", "--stroke", "86mm", "--chamber", "45 ml", "--gasket", "1.2mm",
            "--gasket-hole", "87.5 mm", "--deck", "0.3 mm", "--dish", "5ml"
        };
        String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return Typed.run(all);
    }

    /** Row C-CR-2 of the geometry table: 499.5572, 58.9585 and 9.473 (computed outside). */
    @Test
    void theRatioComesWithItsDoubt() {
        Typed typed = ratio();
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
        assertThat(typed.out()).contains("9.47 ±", "499.6 cm³", "58.96 cm³", "chamber");
        assertThat(typed.out()).doesNotContain("After the change");
    }

    @Test
    void lengthsInInchesAreTheSame() {
        Typed metric = ratio("--json");
        Typed inches = ratio("--json", "--skim-head", "0 in");
        assertThat(inches.out()).isEqualTo(metric.out());
        assertThat(ratio("--skim-head", "8 thou").out()).contains("After the change", "9.6");
    }

    /** A cam wheel of 44 teeth, a crank wheel of 22, a belt of 137: by hand, the least common multiples. */
    @Test
    void theMarksMeetAgain() {
        Typed typed = Typed.line("geometry teeth --crank 22 --cam 44 --belt 137");
        assertThat(typed.out()).contains("16.36 degrees", "2 turns", "137 turns", "274 turns", "fault: stop");
    }

    @Test
    void aValveThatTouchesAToothEarlyIsTold() throws IOException {
        Path lift = folder.resolve("lift.csv");
        Files.writeString(lift, "angle, lift\n-14, 0\n0, 0.6\n10, 1.6\n20, 2.9\n40, 5.3\n60, 7.6\n106, 9\n");
        String[] words = {
            "geometry", "touch", "--lift", lift.toString(), "--depth", "1.2 mm", "--tilt", "12", "--stroke", "86 mm",
            "--rod", "144 mm", "--crank-teeth", "22"
        };
        Typed typed = Typed.run(words);
        assertThat(typed.out()).containsPattern("1 tooth early .*touches").containsPattern("1 tooth late .*clear");
        assertThat(typed.out()).contains("two whole turns of the crank by hand");
        Files.writeString(lift, "0, 0\n5; x\n");
        Typed wrong = Typed.run(words);
        assertThat(wrong.exit()).isEqualTo(Exit.USAGE);
        assertThat(wrong.err()).contains("line 2", "write 12, 3.45");
    }

    @Test
    void wrongNumbersAreOneClearMessage() {
        assertThat(Typed.line("geometry teeth --crank 0 --cam 44").err()).contains("teeth: 0", "above 0");
        assertThat(ratio("--rebore", "86").err()).contains("--rebore", "has no unit");
        assertThat(ratio("--rebore", "3 pints").err()).contains("--rebore", "UK or of the US");
        assertThat(ratio("--skim-block", "20 mm").err()).contains("wrong sign");
    }
}
