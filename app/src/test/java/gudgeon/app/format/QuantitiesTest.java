package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Units at the edge. Values: exact definitions of inch, pound and standard gravity, worked out by hand; NIST SP 811 app. B rounds the same. */
class QuantitiesTest {
    private static final Quantities.Range ANY = new Quantities.Range(-1e12, 1e12, "");

    private static Optional<Quantities.Measure> read(String text, QuantityKind kind, Problems problems) {
        return Quantities.read(new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN), kind, ANY, problems);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "LENGTH | 65.000 mm | 65",
                "LENGTH | 2 cm | 20",
                "LENGTH | 1.5 m | 1500",
                "LENGTH | 1 in | 25.4",
                "LENGTH | 0.5\" | 12.7",
                "LENGTH | 10 thou | 0.254",
                "LENGTH | 12 µm | 0.012",
                "LENGTH | 12 um | 0.012",
                "MASS | 400 g | 0.4",
                "MASS | 1 lb | 0.45359237",
                "TORQUE | 24 N·m | 24",
                "TORQUE | 24 Nm | 24",
                "TORQUE | 24 N m | 24",
                "TORQUE | 1 kgf·m | 9.80665",
                "TORQUE | 1 lbf·ft | 1.3558179483314004",
                "TORQUE | 1 ft-lb | 1.3558179483314004",
                "TORQUE | 1 lbf·in | 0.1129848290276167",
                "VOLUME | 0.6 l | 0.6",
                "VOLUME | 600 ml | 0.6",
                "VOLUME | 160 cc | 0.16",
                "VOLUME | 160 cm3 | 0.16",
                "TIME | 12 min | 720",
                "TIME | 2 h | 7200",
                "TIME | 90 s | 90",
                "ANGLE | 90 ° | 90",
                "ANGLE | 90 deg | 90",
                "SHARE | 10 % | 10",
                "TEMPERATURE | 20 °C | 20",
                "TEMPERATURE | 68 °F | 20",
                "PRESSURE | 2 bar | 200",
                "PRESSURE | 1 psi | 6.894757293168361",
            })
    void convertsToTheUnitOfItsKind(QuantityKind kind, String text, double expected) {
        Problems problems = new Problems("t");
        Quantities.Measure measure = read(text, kind, problems).orElseThrow();
        assertThat(measure.value()).isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
        assertThat(measure.typed()).isEqualTo(text);
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "12",
        "twelve mm",
        "12 furlong",
        "'12,5 mm'",
        "1e3 mm",
        "12 mil",
        "12 kg",
        "NaN mm",
        "mm",
        "1234567890123 mm"
    })
    void refusesWhatIsNoLength(String text) {
        Problems problems = new Problems("t");
        assertThat(read(text, QuantityKind.LENGTH, problems)).isEmpty();
        assertThat(problems.inFileOrder()).hasSize(1);
    }

    /** Stress areas of ISO 898-1 table of coarse and fine threads (M6: 20.1, M8: 36.6, M10: 58.0, M12: 84.3 mm²), from memory. */
    @Test
    void stressAreas() {
        assertThat(ThreadSize.find("M6").orElseThrow().stressArea_mm2()).isCloseTo(20.1, within(0.05));
        assertThat(ThreadSize.find("M8x1.25").orElseThrow().stressArea_mm2()).isCloseTo(36.6, within(0.05));
        assertThat(ThreadSize.find("M10 x 1.5 LH").orElseThrow().stressArea_mm2())
                .isCloseTo(58.0, within(0.05));
        assertThat(ThreadSize.find("M12").orElseThrow().stressArea_mm2()).isCloseTo(84.3, within(0.05));
        assertThat(ThreadSize.find("G1/4")).isEmpty();
    }
}
