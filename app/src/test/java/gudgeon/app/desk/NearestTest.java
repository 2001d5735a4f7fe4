package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Suggestions are near, few, and nearest first. */
class NearestTest {
    @ParameterizedTest
    @CsvSource({
        "head, head, 0",
        "haed, head, 1",
        "hed, head, 1",
        "headd, head, 1",
        "heat, head, 1",
        "kitten, sitting, 3"
    })
    void countsLettersPutInLeftOutExchangedOrSwapped(String a, String b, int distance) {
        assertThat(Nearest.distance(a, b)).isEqualTo(distance);
        assertThat(Nearest.distance(b, a)).isEqualTo(distance);
    }

    @Test
    void suggestsFewAndNearestFirst() {
        List<String> known = List.of("sump", "head", "head-gasket", "cylinder-head", "head-cover", "bed");
        assertThat(Nearest.to("haed", known)).containsExactly("head");
        assertThat(Nearest.to("head", known)).startsWith("head").hasSize(3);
        assertThat(Nearest.to("zzzzzz", known)).isEmpty();
    }
}
