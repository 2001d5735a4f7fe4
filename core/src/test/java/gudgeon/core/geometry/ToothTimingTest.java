package gudgeon.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks that meet again; by the least common multiple, checked by turning the wheels tooth by tooth. */
class ToothTimingTest {
    @Test
    void aLongBeltMeetsItsMarksOnlyAfterManyTurns() {
        ToothTiming timing = new ToothTiming(22, 44, OptionalLong.of(137));
        assertThat(timing.oneTooth_crankDeg()).isCloseTo(16.36, within(0.005));
        assertThat(timing.ratio()).isEqualTo(2);
        assertThat(timing.wheelMarksMeet()).isEqualTo(2);
        assertThat(timing.crankAndBeltMeet()).hasValue(137);
        assertThat(timing.allMeet()).hasValue(274);
    }

    @Test
    void withoutABeltOnlyTheWheelsCount() {
        ToothTiming timing = new ToothTiming(21, 42, OptionalLong.empty());
        assertThat(timing.wheelMarksMeet()).isEqualTo(2);
        assertThat(timing.crankAndBeltMeet()).isEmpty();
        assertThat(timing.allMeet()).isEmpty();
    }

    @Test
    void turningToothByToothSaysTheSame() {
        Random random = new Random(20261125);
        for (int i = 0; i < 300; i++) {
            int crank = 8 + random.nextInt(30);
            int cam = 8 + random.nextInt(60);
            int belt = 40 + random.nextInt(150);
            ToothTiming timing = new ToothTiming(crank, cam, OptionalLong.of(belt));
            assertThat(timing.wheelMarksMeet()).isEqualTo(turns(crank, cam, 1));
            assertThat(timing.crankAndBeltMeet()).hasValue(turns(crank, belt, 1));
            assertThat(timing.allMeet()).hasValue(turns(crank, cam, belt));
        }
    }

    private static long turns(int crank, int cam, int belt) {
        long turns = 1;
        while (turns * crank % cam != 0 || turns * crank % belt != 0) {
            turns++;
        }
        return turns;
    }

    @Test
    void noTeethAreRefused() {
        assertThatThrownBy(() -> new ToothTiming(0, 44, OptionalLong.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above 0");
    }
}
