package gudgeon.core.bolting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.core.bolting.PlacePattern.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Cross patterns, and orders that somebody wrote down. */
class CrossPatternTest {
    private static List<Spot> circle(int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> 2 * Math.PI * i / count)
                .mapToObj(angle -> new Spot(50 * Math.cos(angle), 50 * Math.sin(angle)))
                .toList();
    }

    /** ASME PCC-1, legacy cross pattern: 12 and 24 as published, 8 from memory. */
    @Test
    void asTheStandardPrintsThem() {
        assertThat(CrossPattern.order(8)).containsExactly(1, 5, 3, 7, 2, 6, 4, 8);
        assertThat(CrossPattern.order(12)).containsExactly(1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12);
        assertThat(CrossPattern.order(24))
                .containsExactly(1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11, 23, 3, 15, 9, 21, 6, 18, 12, 24);
    }

    @Test
    void everyNumberTakesEveryBoltOnceAndCrossesOver() {
        for (int bolts = 1; bolts <= 200; bolts++) {
            List<Integer> order = CrossPattern.order(bolts);
            assertThat(order.stream().sorted().toList())
                    .isEqualTo(IntStream.rangeClosed(1, bolts).boxed().toList());
            for (int turn = 0; bolts % 2 == 0 && turn < bolts; turn += 2) {
                assertThat(Math.abs(order.get(turn + 1) - order.get(turn))).isEqualTo(bolts / 2);
            }
        }
        assertThatThrownBy(() -> CrossPattern.order(0)).hasMessageContaining("1 to 1000");
    }

    /** The numbers of the file need not run round the circle: what counts is where they lie. */
    @Test
    void theCircleIsFoundWhateverTheNumbers() {
        List<Spot> spots = circle(8);
        Random random = new Random(3);
        for (int run = 0; run < 50; run++) {
            List<Integer> shuffled =
                    new ArrayList<>(IntStream.range(0, 8).boxed().toList());
            Collections.shuffle(shuffled, random);
            List<Spot> moved = shuffled.stream().map(spots::get).toList();
            List<Spot> inOrder = PlacePattern.order("cross", 8, moved).stream()
                    .map(position -> moved.get(position - 1))
                    .toList();
            for (int turn = 0; turn < 8; turn += 2) {
                assertThat(inOrder.get(turn).distance(inOrder.get(turn + 1)))
                        .as("seed 3, run %d", run)
                        .isGreaterThan(99.99);
            }
            assertThat(PatternCheck.lopsided(PlacePattern.order("cross", 8, moved), moved))
                    .isEqualTo(
                            PatternCheck.lopsided(PlacePattern.order("cross", 8, spots), spots),
                            org.assertj.core.api.Assertions.within(1e-9));
        }
    }

    @Test
    void whatIsWrongWithAnOrder() {
        assertThat(PatternCheck.of(List.of(1, 3, 3, 9), 4, List.of(), false).faults())
                .containsExactly(
                        new PatternCheck.Fault(PatternCheck.Kind.TWICE, 3, 0),
                        new PatternCheck.Fault(PatternCheck.Kind.UNKNOWN, 9, 0),
                        new PatternCheck.Fault(PatternCheck.Kind.MISSING, 2, 0),
                        new PatternCheck.Fault(PatternCheck.Kind.MISSING, 4, 0));
        PatternCheck along = PatternCheck.of(List.of(1, 2, 3, 4, 5, 6), 6, circle(6), false);
        assertThat(along.faults()).containsExactly(new PatternCheck.Fault(PatternCheck.Kind.NEIGHBOURS_FIRST, 2, 1));
        assertThat(along.lopsided()).isEqualTo(along.inLine()).isGreaterThan(2 * along.ours());
        assertThat(PatternCheck.of(CrossPattern.order(6), 6, circle(6), false).faults())
                .isEmpty();
    }

    /** A head in two rows of five, from the outside in: refused; from the middle out: sound. Common practice. */
    @Test
    void aHeadGoesFromTheInsideOut() {
        List<Spot> head = new ArrayList<>();
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 5; column++) {
                head.add(new Spot(90 * column, 80 * row));
            }
        }
        List<Integer> outward = PlacePattern.order("spiral-out", 10, head);
        assertThat(outward.subList(0, 2)).containsExactlyInAnyOrder(3, 8);
        assertThat(PatternCheck.of(outward, 10, head, true).faults()).isEmpty();
        PatternCheck inward = PatternCheck.of(outward.reversed(), 10, head, true);
        assertThat(inward.faults())
                .extracting(PatternCheck.Fault::kind)
                .containsExactly(PatternCheck.Kind.OUTSIDE_FIRST);
    }
}
