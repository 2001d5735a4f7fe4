package gudgeon.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.geometry.PistonToValve.Lift;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An inlet valve around overlap: its nearest approach, against a plain search over a finer grid worked out here. */
class PistonToValveTest {
    private static final SliderCrank CRANK = new SliderCrank(43, 144);

    /** An invented lift curve: half a cosine of 9 mm over 240°, opening 14° before top dead centre. */
    private static List<Lift> curve() {
        List<Lift> curve = new ArrayList<>();
        for (int angle = -14; angle <= 226; angle += 2) {
            curve.add(new Lift(angle, lift(angle)));
        }
        return curve;
    }

    private static double lift(double angle) {
        double share = (angle + 14) / 240;
        return share <= 0 || share >= 1 ? 0 : 4.5 * (1 - Math.cos(2 * Math.PI * share));
    }

    @Test
    void theNearestApproachIsFound() {
        PistonToValve both = new PistonToValve(CRANK, curve(), 3.0, 12);
        PistonToValve.Nearest nearest = both.nearest(0);
        double least = Double.POSITIVE_INFINITY;
        for (double angle = -20; angle < 120; angle += 0.02) {
            double drop = 43 + 144 - 43 * Math.cos(Math.toRadians(angle))
                    - Math.sqrt(144 * 144 - Math.pow(43 * Math.sin(Math.toRadians(angle)), 2));
            least = Math.min(least, 3.0 + drop * Math.cos(Math.toRadians(12)) - lift(angle));
        }
        assertThat(nearest.clearance_mm()).isCloseTo(least, within(0.01));
        assertThat(nearest.crank_deg()).isBetween(0.0, 40.0);
    }

    /** One tooth of a 22-tooth wheel early brings an inlet valve into the rising piston; one tooth late takes it away. */
    @Test
    void aToothEarlyTouchesAndAToothLateDoesNot() {
        PistonToValve both = new PistonToValve(CRANK, curve(), 1.2, 12);
        double tooth = new ToothTiming(22, 44, java.util.OptionalLong.empty()).oneTooth_crankDeg();
        double right = both.nearest(0).clearance_mm();
        assertThat(right).isPositive();
        assertThat(both.nearest(-tooth).clearance_mm()).isNegative().isLessThan(right);
        assertThat(both.nearest(tooth).clearance_mm()).isGreaterThan(right);
    }

    @Test
    void anglesThatDoNotGrowAreRefused() {
        assertThatThrownBy(() -> new PistonToValve(CRANK, List.of(new Lift(10, 1), new Lift(10, 2)), 1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must grow");
    }
}
