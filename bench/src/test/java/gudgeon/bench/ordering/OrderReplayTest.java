package gudgeon.bench.ordering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The replay refuses one fault of each kind; sums worked out by hand. */
class OrderReplayTest {
    private static final SopInstance FIVE = SopInstance.parse(
            "five", List.of("0 3 5 7 99", "-1 0 2 4 6", "-1 8 0 1 2", "-1 -1 9 0 3", "-1 -1 -1 -1 0"));

    @Test
    void addsUpASoundOrder() {
        OrderReplay.Verdict verdict = OrderReplay.replay(FIVE, List.of(0, 1, 2, 3, 4));
        assertThat(verdict.faults()).isEmpty();
        assertThat(verdict.cost()).isEqualTo(3 + 2 + 1 + 3);
    }

    @Test
    void refusesWhatIsMissingOrTwice() {
        assertThat(OrderReplay.replay(FIVE, List.of(0, 1, 2, 4)).sound()).isFalse();
        assertThat(OrderReplay.replay(FIVE, List.of(0, 1, 1, 3, 4)).sound()).isFalse();
        assertThat(OrderReplay.replay(FIVE, List.of(0, 1, 2, 7, 4)).sound()).isFalse();
    }

    @Test
    void refusesAnOrderAgainstThePrecedences() {
        assertThat(OrderReplay.replay(FIVE, List.of(0, 3, 1, 2, 4)).faults())
                .containsExactly("node 1 must come before node 3");
    }

    @Test
    void refusesAnotherBeginningOrEnd() {
        SopInstance loose = SopInstance.parse("three", List.of("0 1 1", "1 0 1", "1 1 0"));
        assertThat(OrderReplay.replay(loose, List.of(1, 0, 2)).sound()).isFalse();
        assertThat(OrderReplay.replay(loose, List.of(0, 2, 1)).sound()).isFalse();
    }
}
