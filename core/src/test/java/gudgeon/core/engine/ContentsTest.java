package gudgeon.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.engine.Contents.Point;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A level curve, worked out by hand. */
class ContentsTest {
    private static final Contents TANK =
            new Contents(List.of(new Point(-100, 0), new Point(0, 2), new Point(50, 5)), Map.of("hose", 25.0));

    @Test
    void itIsStraightBetweenItsPoints() {
        assertThat(TANK.below(-200)).isZero();
        assertThat(TANK.below(-50)).isCloseTo(1, within(1e-12));
        assertThat(TANK.below(25)).isCloseTo(3.5, within(1e-12));
        assertThat(TANK.below(80)).isEqualTo(5);
        assertThat(TANK.full_mm()).isEqualTo(50);
        assertThat(TANK.openedBy("hose")).hasValue(25);
        assertThat(TANK.openedBy("plug")).isEmpty();
    }

    @Test
    void aCurveThatDoesNotGrowIsRefused() {
        assertThatThrownBy(() -> new Contents(List.of(new Point(0, 0), new Point(0, 1)), Map.of()))
                .hasMessageContaining("must grow");
        assertThatThrownBy(() -> new Contents(List.of(new Point(0, 1), new Point(5, 2)), Map.of()))
                .hasMessageContaining("nothing below");
    }
}
