package gudgeon.bench.ordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Reading of problems; the instances are our own. */
class SopInstanceTest {
    private static final List<String> PLAIN = List.of("0 3 5 9", "-1 0 2 4", "-1 -1 0 1", "-1 -1 -1 0");

    @Test
    void readsWithoutAHeader() {
        SopInstance instance = SopInstance.parse("four", PLAIN);
        assertThat(instance.size()).isEqualTo(4);
        assertThat(instance.entries()[0]).containsExactly(0, 3, 5, 9);
        assertThat(instance.precedes()[1][2]).isTrue();
        assertThat(instance.precedes()[2][1]).isFalse();
    }

    @Test
    void readsAHeaderWithAndWithoutTheNumberOfNodes() {
        List<String> head = List.of("NAME: four", "TYPE: SOP", "DIMENSION: 4", "EDGE_WEIGHT_SECTION");
        List<String> without = new java.util.ArrayList<>(head);
        without.addAll(PLAIN);
        without.add("EOF");
        List<String> with = new java.util.ArrayList<>(head);
        with.add("4");
        with.addAll(PLAIN);
        assertThat(SopInstance.parse("four", without).entries()).isDeepEqualTo(SopInstance.parse("four", PLAIN).entries());
        assertThat(SopInstance.parse("four", with).entries()).isDeepEqualTo(SopInstance.parse("four", PLAIN).entries());
    }

    @Test
    void refusesWhatIsNoSquareOrNoNumber() {
        assertThatThrownBy(() -> SopInstance.parse("torn", List.of("0 1", "2")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("torn");
        assertThatThrownBy(() -> SopInstance.parse("torn", List.of("0 x", "2 0")))
                .hasMessageContaining("\"x\"");
    }
}
