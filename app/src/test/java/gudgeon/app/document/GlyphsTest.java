package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.app.format.ShippedEngines;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class GlyphsTest {
    @Test
    void everyCharacterOfEveryShippedEngineIsDrawn() throws IOException {
        assertThat(ShippedEngines.ids()).isNotEmpty();
        for (String id : ShippedEngines.ids()) {
            assertDrawn(Files.readString(ShippedEngines.find(id).orElseThrow()));
        }
    }

    @Test
    void everyCharacterOfTheCautionsIsDrawn() {
        for (Caution caution : Cautions.catalogue().all()) {
            assertDrawn(caution.title() + caution.text());
        }
    }

    @Test
    void unitsAndSignsOfTheTradeAreDrawn() {
        assertThat(Glyphs.printable("24 N·m 90° Ø52 −0.01 3×M8 µm ½ é ß č"))
                .isEqualTo("24 N·m 90° Ø52 −0.01 3×M8 µm ½ é ß č");
    }

    @Test
    void spellsOutWhatTheFacesLack() {
        assertThat(Glyphs.printable("≤ 0.1 mm, 5 Ω, ⌀ 3, \u6f22")).isEqualTo("at most  0.1 mm, 5 ohm, Ø 3, ?");
    }

    @Test
    void digitsAreEquallyWide() {
        for (Typeface face : Typeface.values()) {
            double zero = face.width("0", 10);
            for (String digit : "123456789".split("")) {
                assertThat(face.width(digit, 10)).as(face + " " + digit).isEqualTo(zero);
            }
        }
    }

    private static void assertDrawn(String text) {
        String printable = Glyphs.printable(text.replace('?', '.'));
        assertThat(printable).doesNotContain("?");
        printable
                .codePoints()
                .forEach(c ->
                        assertThat(Glyphs.drawn(c)).as(Character.toString(c)).isTrue());
    }
}
