package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The planner against trying everything, on random small engines: it finds a plan exactly when there is one, at exactly the
 * least opening cost, in an order of exactly the least changeover, and every plan passes the replay. An engine of this size must not take it 20 seconds.
 */
class PlannerAgainstBruteForceTest {
    private static final int ENGINES = Integer.getInteger("engines", 3000);

    private int planned;
    private int blocked;
    private int noOrder;
    private int operations;
    private int landmarks;
    private int endless;

    @Test
    void thePlannerAgreesOnEveryRandomEngine() {
        List<String> wrong = new ArrayList<>();
        for (long seed = 1; seed <= ENGINES; seed++) {
            try {
                String difference = compare(RandomEngines.small(seed));
                if (!difference.isEmpty()) {
                    wrong.add("seed " + seed + ": " + difference);
                }
            } catch (RuntimeException e) {
                wrong.add("seed " + seed + ": threw " + e);
            } catch (AssertionError e) {
                wrong.add("seed " + seed + ": " + e.getMessage());
                endless++;
            }
            if (endless > 2) {
                break;
            }
        }
        System.out.printf(
                "planner against brute force: %d engines, %d planned (%.1f operations a plan), %d out of reach,"
                        + " %d without an order; %d landmarks checked%n",
                ENGINES, planned, (double) operations / Math.max(planned, 1), blocked, noOrder, landmarks);
        assertThat(wrong).as("engines on which they differ").isEmpty();
        assertThat(planned).isGreaterThan(ENGINES / 2);
    }

    /** What differs; empty when nothing does. */
    private String compare(RandomEngines.Case drawn) {
        BruteForce brute = new BruteForce(new BruteModel(drawn.engine(), drawn.request()));
        BruteForce.Opening opening = brute.opening();
        StripAnswer given = assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> StripPlanner.plan(drawn.engine(), drawn.request()));
        return switch (given) {
            case Blocked answer -> compare(brute, opening, answer);
            case StripPlan plan -> compare(drawn, brute, opening, plan);
        };
    }

    private String compare(BruteForce brute, BruteForce.Opening opening, Blocked answer) {
        boolean order = answer.reasons().stream().anyMatch(reason -> reason.kind() == Blocked.Kind.ORDER);
        if (opening.costSeconds() < 0) {
            blocked++;
            return order ? "blocked by ORDER, but it is out of reach in any order" : "";
        }
        boolean someHasNone = opening.sets().stream()
                .anyMatch(set -> brute.order(set, BruteForce.Habit.NONE).isEmpty());
        if (order && someHasNone) {
            noOrder++;
            return "";
        }
        return "blocked by " + answer.reasons() + ", but " + names(brute, opening) + " opens it for "
                + opening.costSeconds() + " s";
    }

    private String compare(RandomEngines.Case drawn, BruteForce brute, BruteForce.Opening opening, StripPlan plan) {
        if (opening.costSeconds() != plan.opening().costSeconds()
                || !plan.opening().proven()) {
            return "opening " + plan.opening() + ", should cost " + opening.costSeconds() + " with "
                    + names(brute, opening);
        }
        long set = brute.model.start() | brute.model.opsOf(plan.opening().chosen());
        Optional<BruteForce.Tour> tour = brute.order(set, BruteForce.Habit.NONE);
        if (tour.isEmpty()) {
            return "no order of " + plan.opening().chosen() + " keeps the rules";
        }
        long best = tour.get().changeoverSeconds();
        if (plan.order().changeoverSeconds() != best || !plan.order().proven()) {
            return "order " + plan.order() + ", should be " + best + " as in "
                    + written(WrittenPlan.write(brute.model, tour.get().steps())) + " and not " + written(plan);
        }
        List<Violation> violations = StripReplay.check(drawn.engine(), drawn.request(), plan);
        planned++;
        operations += plan.opening().chosen().size();
        if (!violations.isEmpty()) {
            return violations + " in " + written(plan);
        }
        return landmarks(brute, opening, plan);
    }

    /** Every landmark must be hit by every optimal set. */
    private String landmarks(BruteForce brute, BruteForce.Opening opening, StripPlan plan) {
        for (List<String> landmark : plan.opening().landmarks()) {
            landmarks++;
            for (long set : opening.sets()) {
                if ((brute.model.opsOf(landmark) & set) == 0) {
                    return "landmark " + landmark + " is not hit by the optimal set " + names(brute, opening);
                }
            }
        }
        return "";
    }

    private static String names(BruteForce brute, BruteForce.Opening opening) {
        List<String> names = new ArrayList<>();
        for (int o = 0; o < brute.model.ops; o++) {
            if ((opening.sets().getFirst() >> o & 1) != 0) {
                names.add(brute.model.id(o));
            }
        }
        return names.toString();
    }

    static String written(StripPlan plan) {
        return plan.operations().stream()
                .map(operation -> operation.kind() == StripPlan.Kind.LIFT
                        ? "+" + String.join("+", operation.pieces())
                        : operation.id() + "@" + operation.place().zone())
                .toList()
                .toString();
    }
}
