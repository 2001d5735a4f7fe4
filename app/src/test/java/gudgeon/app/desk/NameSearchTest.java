package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.Reading;
import gudgeon.app.format.ShippedEngines;
import gudgeon.core.engine.Engine;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words as a mechanic says them, common practice; the names are those of the shipped engines. */
class NameSearchTest {
    private static Engine engine(String id) {
        return ((Reading.Sound) EngineFile.read(ShippedEngines.find(id).orElseThrow())).engine();
    }

    private static List<String> maybe(String engine, String word) {
        NameSearch names = new NameSearch(engine(engine));
        assertThat(names.parts(List.of(word))).isEmpty();
        return names.unknown().getFirst().told();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "wren-160   | rings        | three piston rings (ring-set)",
        "wren-160   | ring piston  | three piston rings (ring-set)",
        "wren-160   | pistn rings  | three piston rings (ring-set)",
        "wren-160   | pistn        | piston",
        "dunlin-22d | injektor     | injectors 1 to 4 (injector-*)",
        "dunlin-22d | rail valve   | rail with sensor and valve (rail)",
    })
    void wordsAreFoundOneByOneAndToldByName(String engine, String typed, String told) {
        assertThat(maybe(engine, typed)).startsWith(told);
    }

    @Test
    void whatIsFarFromEveryNameSuggestsNothing() {
        assertThat(maybe("wren-160", "gearbox oil cooler")).isEmpty();
    }

    /** So that a suggestion can be taken over as it stands. */
    @Test
    void aSuggestionIsUnderstoodAsItIsTold() {
        NameSearch names = new NameSearch(engine("dunlin-22d"));
        assertThat(names.parts(List.of("injectors 1 to 4 (injector-*)")))
                .containsExactly("injector-1", "injector-2", "injector-3", "injector-4");
        assertThat(names.parts(List.of("rail with sensor and valve (rail)"))).containsExactly("rail");
        assertThat(names.unknown()).isEmpty();
    }
}
