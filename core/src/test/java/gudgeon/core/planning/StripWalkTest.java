package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.session.Doable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Walking along plans of random engines: as planned, and with steps left out; judged by the replay, which shares no code. */
class StripWalkTest {
    private static final int ENGINES = 400;

    /** Faults that a run of steps can have when it stops short of the target and has no totals. */
    private static final Set<Violation.Kind> OF_STEPS = Set.of(
            Violation.Kind.NO_ACCESS,
            Violation.Kind.CIRCUIT_NOT_READY,
            Violation.Kind.NEED_NOT_DONE,
            Violation.Kind.HOLD_BROKEN,
            Violation.Kind.DONE_TWICE,
            Violation.Kind.NOT_WHOLE_PIECES,
            Violation.Kind.TOO_HEAVY,
            Violation.Kind.LIFT_CONDITION,
            Violation.Kind.WOULD_HANG,
            Violation.Kind.LOOSE_PIECE,
            Violation.Kind.ENGINE_STATE);

    @Test
    void aPlanCanBeWalkedAsItIsPlanned() {
        int plans = 0;
        for (long seed = 1; seed <= ENGINES; seed++) {
            RandomEngines.Case random = RandomEngines.small(seed);
            if (!(StripPlanner.plan(random.engine(), random.request()) instanceof StripPlan plan)) {
                continue;
            }
            plans++;
            StripWalk walk = StripWalk.along(random.engine(), random.request(), plan);
            for (StripPlan.Operation operation : plan.operations()) {
                assertThat(walk.isPossible(operation))
                        .as("seed %d, %s", seed, operation.id())
                        .isTrue();
                assertThat(walk.changeoverSeconds(operation))
                        .as("seed %d, %s", seed, operation.id())
                        .isEqualTo(operation.place().changeoverSeconds());
                walk = walk.after(operation);
            }
            assertThat(walk.loose()).as("seed %d", seed).isEmpty();
            List<StripPlan.Operation> steps = Doable.of(
                            StripWalk.along(random.engine(), random.request(), plan), plan.operations(), out -> false)
                    .steps()
                    .stream()
                    .map(Doable.Turn::operation)
                    .toList();
            assertThat(steps).as("seed %d", seed).isEqualTo(plan.operations());
        }
        assertThat(plans).isGreaterThan(ENGINES / 3);
    }

    @Test
    void withoutSomeStepsTheOthersAreStillRight() {
        int shortened = 0;
        for (long seed = 1; seed <= ENGINES; seed++) {
            RandomEngines.Case random = RandomEngines.small(seed);
            if (!(StripPlanner.plan(random.engine(), random.request()) instanceof StripPlan plan)
                    || plan.operations().size() < 3) {
                continue;
            }
            StripPlan.Operation out = plan.operations()
                    .get(new Random(seed).nextInt(plan.operations().size()));
            StripWalk start = StripWalk.along(random.engine(), random.request(), plan);
            Doable doable = Doable.of(
                    start, plan.operations(), operation -> operation.id().equals(out.id()));
            assertThat(doable.left()).contains(out);
            List<StripPlan.Operation> steps = new ArrayList<>();
            doable.steps().forEach(turn -> steps.add(numbered(turn.operation(), steps.size() + 1)));
            assertThat(steps.size() + doable.left().size())
                    .isEqualTo(plan.operations().size());
            shortened += steps.isEmpty() ? 0 : 1;
            List<Violation> faults = StripReplay.check(random.engine(), random.request(), only(steps)).stream()
                    .filter(fault -> OF_STEPS.contains(fault.kind()))
                    .toList();
            assertThat(faults).as("seed %d without %s", seed, out.id()).isEmpty();
        }
        assertThat(shortened).isGreaterThan(ENGINES / 10);
    }

    private static StripPlan.Operation numbered(StripPlan.Operation o, int number) {
        return new StripPlan.Operation(
                number,
                o.kind(),
                o.id(),
                o.pieces(),
                o.lift(),
                o.place(),
                o.seconds(),
                o.destroys(),
                o.cautions(),
                o.why(),
                o.after());
    }

    private static StripPlan only(List<StripPlan.Operation> steps) {
        return new StripPlan(
                steps,
                new StripPlan.Opening(List.of(), 0, 0, true, 0, 0, OptionalDouble.empty(), List.of()),
                new StripPlan.Order(0, 0, "", 0),
                new StripPlan.Lifts(0, 0),
                List.of());
    }
}
