package gudgeon.bench.engines;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.SequencingAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Drawn engines are what they say, the same every time, and can be stripped. */
class EngineLikeTest {
    @Test
    void isTheSameForTheSameSeed() {
        assertThat(EngineLike.draw(80, 4)).isEqualTo(EngineLike.draw(80, 4));
        assertThat(EngineLike.draw(80, 4)).isNotEqualTo(EngineLike.draw(80, 5));
    }

    @Test
    void hasAsManyJointsAsAskedFor() {
        for (int joints : new int[] {20, 60, 200}) {
            Engine engine = EngineLike.draw(joints, 1).engine();
            assertThat(engine.joints()).hasSize(joints);
            assertThat(engine.joints().stream().filter(joint -> joint.flexible())).isNotEmpty();
        }
    }

    @Test
    void canBeStrippedAndItsNumbersBoundItsOrder() {
        for (int seed = 1; seed <= 3; seed++) {
            EngineLike.Drawn drawn = EngineLike.draw(60, seed);
            StripRequest request = new StripRequest(
                    StripRequest.Target.off(drawn.deepest().getFirst()),
                    List.of(),
                    List.of(),
                    List.of(),
                    new StripRequest.Means(drawn.engine().workplace().waysOfLifting(), 0, 20_000));
            assertThat(StripPlanner.plan(drawn.engine(), request)).isInstanceOfSatisfying(StripPlan.class, plan -> {
                SequencingAnswer answer = Sequencer.best(
                        Sequencer.numbers(drawn.engine(), request, plan.opening().chosen())
                                .problem(),
                        20_000);
                assertThat(answer.lowerBound()).isLessThanOrEqualTo((int) plan.order().changeoverSeconds());
            });
        }
    }
}
