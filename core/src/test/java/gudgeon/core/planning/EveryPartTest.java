package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Every part at once, against trying everything for one part after the other (whole engines), and against planning one part
 * after the other (engines that a plan has opened), on random small engines.
 */
class EveryPartTest {
    private static final int ENGINES = Integer.getInteger("engines", 300);

    private int reached;
    private int opened;
    private int never;
    private int bounds;
    private int equal;

    @Test
    void everyPartAtOnceIsWhatTryingEverythingGives() {
        List<String> wrong = new ArrayList<>();
        for (long seed = 1; seed <= ENGINES; seed++) {
            RandomEngines.Case drawn = RandomEngines.small(seed);
            StripRequest whole = WhileOpen.whole(drawn.request());
            EveryPart every = EveryPartPlanner.plan(drawn.engine(), whole, 0);
            for (Part part : parts(drawn)) {
                BruteForce brute = new BruteForce(new BruteModel(drawn.engine(), reaching(whole, part.id())));
                String difference =
                        compare(every.reach(part.id()), brute.opening().costSeconds());
                if (!difference.isEmpty()) {
                    wrong.add("seed " + seed + ", " + part.id() + ": " + difference);
                }
            }
        }
        System.out.printf(
                "every part at once against trying everything: %d engines, %d parts reached, %d at the very least, %d never%n",
                ENGINES, reached, equal, never);
        assertThat(wrong).isEmpty();
        assertThat(reached).isGreaterThan(ENGINES);
        assertThat(equal).isGreaterThan(reached * 9 / 10);
        assertThat(never).isGreaterThan(ENGINES / 20);
    }

    @Test
    void whileItIsOpenIsWhatPlanningEachPartFromThereGives() {
        List<String> wrong = new ArrayList<>();
        for (long seed = 1; seed <= 2L * ENGINES; seed++) {
            RandomEngines.Case drawn = RandomEngines.small(seed);
            if (!(StripPlanner.plan(drawn.engine(), drawn.request()) instanceof StripPlan first)) {
                continue;
            }
            opened++;
            StripRequest open = WhileOpen.after(drawn.request(), first);
            EveryPart every = EveryPartPlanner.plan(drawn.engine(), open, 20);
            for (Part part : parts(drawn)) {
                StripAnswer plan = StripPlanner.plan(drawn.engine(), reaching(open, part.id()));
                String difference = compare(every.reach(part.id()), plan);
                if (!difference.isEmpty()) {
                    wrong.add("seed " + seed + ", " + part.id() + ": " + difference);
                }
            }
        }
        System.out.printf(
                "while it is open against planning each part: %d opened engines, %d parts reached, %d not; %d bounds held%n",
                opened, reached, never, bounds);
        assertThat(wrong).isEmpty();
        assertThat(reached).isGreaterThan(ENGINES / 2);
    }

    private static List<Part> parts(RandomEngines.Case drawn) {
        return drawn.engine().parts().stream()
                .filter(part -> !part.id().equals(drawn.engine().workplace().base()))
                .toList();
    }

    private static StripRequest reaching(StripRequest from, String part) {
        return new StripRequest(
                StripRequest.Target.off(part),
                from.undone(),
                from.done(),
                from.willNotCome(),
                from.means(),
                from.underway());
    }

    /**
     * Without an order looked for: never more than the least, and the least but where pieces are loose on the way.
     *
     * @param cost the least; -1 when out of reach
     */
    private String compare(EveryPart.Reach reach, long cost) {
        return switch (reach) {
            case EveryPart.Reach.Off off -> cost == 0 ? "" : "off already, should cost " + cost;
            case EveryPart.Reach.Never hindered -> {
                never++;
                yield cost < 0 ? "" : "never by " + hindered.reasons() + ", should cost " + cost;
            }
            case EveryPart.Reach.By by -> {
                reached++;
                equal += by.trip().costSeconds() == cost ? 1 : 0;
                yield cost < 0 || by.trip().costSeconds() <= cost ? "" : by.trip() + " should cost " + cost;
            }
        };
    }

    private String compare(EveryPart.Reach reach, StripAnswer alone) {
        return switch (reach) {
            case EveryPart.Reach.Off off ->
                alone instanceof StripPlan plan && plan.opening().costSeconds() == 0
                        ? ""
                        : "off already, alone " + alone;
            case EveryPart.Reach.Never hindered -> {
                never++;
                yield alone instanceof Blocked blocked
                                && kinds(blocked.reasons()).equals(kinds(hindered.reasons()))
                        ? ""
                        : "never by " + hindered.reasons() + ", alone " + alone;
            }
            case EveryPart.Reach.By by -> {
                reached++;
                yield alone instanceof StripPlan plan
                                && plan.opening().costSeconds() == by.trip().costSeconds()
                        ? bounds(by.trip(), alone)
                        : by.trip() + ", alone " + alone;
            }
        };
    }

    private static List<Blocked.Kind> kinds(List<Blocked.Reason> reasons) {
        return reasons.stream().map(Blocked.Reason::kind).distinct().sorted().toList();
    }

    /** No bound is above a plan; what was found is not below the best one, where the sets are the same. */
    private String bounds(Trip trip, StripAnswer alone) {
        if (!(alone instanceof StripPlan plan)) {
            return trip.strip().foundSeconds().isEmpty() ? "" : "an order was found where there is none";
        }
        bounds++;
        boolean same = plan.opening().chosen().stream()
                .sorted()
                .toList()
                .equals(trip.operations().stream().sorted().toList());
        if (same && trip.strip().atLeastSeconds() > plan.totalSeconds()) {
            return "at least " + trip.strip().atLeastSeconds() + " s, but the plan takes " + plan.totalSeconds();
        }
        Optional<Long> found = trip.strip().foundSeconds().isPresent()
                ? Optional.of(trip.strip().foundSeconds().getAsLong())
                : Optional.empty();
        return same
                        && found.isPresent()
                        && found.get() != plan.totalSeconds()
                        && plan.lifts().count() == 0
                ? "found " + found.get() + " s, but the plan takes " + plan.totalSeconds()
                : "";
    }
}
