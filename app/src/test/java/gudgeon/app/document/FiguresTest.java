package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class FiguresTest {
    @Test
    void timesAreShortWhereTheyAreShort() {
        assertThat(Figures.time(0)).isEqualTo("0 s");
        assertThat(Figures.time(59)).isEqualTo("59 s");
        assertThat(Figures.time(60)).isEqualTo("1 min");
        assertThat(Figures.time(89)).isEqualTo("1 min");
        assertThat(Figures.time(90)).isEqualTo("2 min");
        assertThat(Figures.time(3570)).isEqualTo("1 h");
        assertThat(Figures.time(7500)).isEqualTo("2 h 05 min");
        assertThatThrownBy(() -> Figures.time(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void smallMassesAreGrams() {
        assertThat(Figures.mass(0.005)).isEqualTo("5 g");
        assertThat(Figures.mass(0.0996)).isEqualTo("0.1 kg");
        assertThat(Figures.mass(3.14)).isEqualTo("3.1 kg");
        assertThat(Figures.mass(9.96)).isEqualTo("10 kg");
        assertThat(Figures.mass(100)).isEqualTo("100 kg");
    }

    @Test
    void listsReadAloud() {
        assertThat(Figures.list(List.of())).isEmpty();
        assertThat(Figures.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(Figures.list(List.of("valves with cap, spring", "head"))).isEqualTo("valves with cap, spring; head");
        assertThat(Figures.list(List.of("barrel", "half, stand side"))).isEqualTo("barrel and half, stand side");
        assertThat(Figures.list(List.of("a", "b", "c", "d"), 2)).isEqualTo("a, b and 2 more");
        assertThat(Figures.count(2, "banjo bolt")).isEqualTo("2 banjo bolts");
        assertThat(Figures.count(2, "collets")).isEqualTo("2 collets");
        assertThat(Figures.sentences(List.of("One", "Two."))).isEqualTo("One. Two.");
    }
}
