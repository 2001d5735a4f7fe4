package gudgeon.core.bolting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Orders of tightening that every workshop wall shows (common practice), and that every order is one. */
class PlacePatternTest {
    private static List<PlacePattern.Spot> circle(int count) {
        List<PlacePattern.Spot> spots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * i / count;
            spots.add(new PlacePattern.Spot(50 * Math.cos(angle), 50 * Math.sin(angle)));
        }
        return spots;
    }

    /** Two rows of five: positions 1 to 5 in the lower row, 6 to 10 in the upper. */
    private static List<PlacePattern.Spot> headOfTen() {
        List<PlacePattern.Spot> spots = new ArrayList<>();
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 5; column++) {
                spots.add(new PlacePattern.Spot(90 * column, 80 * row));
            }
        }
        return spots;
    }

    @Test
    void aStarOnACircle() {
        assertThat(PlacePattern.order("cross", 4, circle(4))).containsExactly(1, 3, 2, 4);
        assertThat(PlacePattern.order("cross", 5, circle(5))).containsExactly(1, 3, 5, 2, 4);
        assertThat(PlacePattern.order("cross", 6, circle(6))).containsExactly(1, 4, 2, 5, 3, 6);
        assertThat(PlacePattern.order("cross", 8, circle(8))).containsExactly(1, 5, 3, 7, 2, 6, 4, 8);
    }

    @Test
    void aHeadFromTheMiddleOutward() {
        List<Integer> order = PlacePattern.order("cross", 10, headOfTen());
        assertThat(order.subList(0, 2)).containsExactlyInAnyOrder(3, 8);
        assertThat(order.subList(2, 6)).containsExactlyInAnyOrder(2, 4, 7, 9);
        assertThat(order.subList(6, 10)).containsExactlyInAnyOrder(1, 5, 6, 10);
        List<Integer> loosened = PlacePattern.order("cross-reversed", 10, headOfTen());
        assertThat(loosened).isEqualTo(order.reversed());
    }

    @Test
    void aSpiralGoesRoundInOneSense() {
        assertThat(PlacePattern.order("spiral-out", 6, circle(6))).containsExactly(1, 2, 3, 4, 5, 6);
    }

    @Test
    void fromTheEndsToTheMiddle() {
        List<PlacePattern.Spot> row = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            row.add(new PlacePattern.Spot(40 * i, 0));
        }
        assertThat(PlacePattern.order("ends-in", 5, row)).containsExactly(1, 5, 2, 4, 3);
        assertThat(PlacePattern.order("in-line", 5, List.of())).containsExactly(1, 2, 3, 4, 5);
        assertThat(PlacePattern.order("in-line-reversed", 3, List.of())).containsExactly(3, 2, 1);
    }

    @Test
    void everyPatternTakesEveryFastenerOnce() {
        Random random = new Random(7);
        for (int run = 0; run < 300; run++) {
            int count = 1 + random.nextInt(20);
            List<PlacePattern.Spot> spots = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                spots.add(new PlacePattern.Spot(random.nextInt(200), random.nextInt(100)));
            }
            for (String name : PlacePattern.NAMES) {
                List<Integer> order = PlacePattern.order(name, count, spots);
                assertThat(order).as("%s, seed 7, run %d", name, run).hasSize(count);
                assertThat(new HashSet<>(order)).hasSize(count);
                assertThat(order).allMatch(position -> position >= 1 && position <= count);
            }
        }
    }
}
