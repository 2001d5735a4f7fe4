package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.core.planning.BuildPlan.Tightening;
import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Torque;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The telephone rings in the middle of a stage. Rules: common practice. */
class ResumeTest {
    private static final List<String> TEN =
            Stream.of(5, 6, 4, 7, 3, 8, 2, 9, 1, 10).map(n -> "head-bolts/" + n).toList();

    private static Tightening torque() {
        return new Tightening(2, TEN, Torque.ofNewtonMetres(60), null, "oiled");
    }

    private static Tightening angle() {
        return new Tightening(3, TEN, null, Angle.ofDegrees(90), "oiled");
    }

    @Test
    void aTorqueStageStartsAgainAtItsFirstFastener() {
        for (boolean certain : new boolean[] {true, false}) {
            Resume resume = Resume.after(torque(), TEN.subList(0, 7), certain);
            assertThat(resume.turn()).isEqualTo(TEN);
            assertThat(resume.leave()).isEmpty();
            assertThat(resume.spent()).isEmpty();
        }
    }

    @Test
    void anAngleStageTurnsOnlyWhatHasNeitherMarkNorEntry() {
        Resume resume = Resume.after(angle(), TEN.subList(0, 7), true);
        assertThat(resume.turn()).containsExactly("head-bolts/9", "head-bolts/1", "head-bolts/10");
        assertThat(resume.leave()).isEqualTo(TEN.subList(0, 7));
        assertThat(resume.spent()).isEmpty();
    }

    @Test
    void whenItIsNotCertainWhichWereTurnedAllAreSpent() {
        Resume resume = Resume.after(angle(), TEN.subList(0, 7), false);
        assertThat(resume.turn()).isEmpty();
        assertThat(resume.spent()).isEqualTo(TEN);
    }

    @Test
    void aFastenerOfAnotherJointIsRefused() {
        assertThatThrownBy(() -> Resume.after(angle(), List.of("cover-screws/1"), true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cover-screws/1");
    }

    @Test
    void howeverOftenItRingsNoFastenerIsTurnedTwiceByAngle() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            int[] turns = new int[11];
            List<String> done = List.of();
            while (done.size() < TEN.size()) {
                List<String> turn = Resume.after(angle(), done, true).turn();
                int now = 1 + random.nextInt(turn.size());
                turn.subList(0, now).forEach(id -> turns[Integer.parseInt(id.substring(11))]++);
                done = Stream.concat(done.stream(), turn.subList(0, now).stream())
                        .toList();
            }
            assertThat(IntStream.rangeClosed(1, 10).map(n -> turns[n]))
                    .as("seed %d", seed)
                    .containsOnly(1);
        }
    }
}
