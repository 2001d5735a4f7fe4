package gudgeon.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Alternatives against trying everything: what is dearer by so much without one joint is what the brute force finds when
 * that joint will not come (no joint of these engines has a destructive way then).
 */
class OtherWaysTest {
    private static final int ENGINES = 600;

    @Test
    void everyAlternativeCostsWhatTryingEverythingWithoutItCosts() {
        int ways = 0;
        int none = 0;
        for (long seed = 1; seed <= ENGINES; seed++) {
            RandomEngines.Case drawn = RandomEngines.small(seed);
            if (!(StripPlanner.plan(drawn.engine(), drawn.request()) instanceof StripPlan plan)) {
                continue;
            }
            OtherWays others = OtherWays.of(drawn.engine(), drawn.request(), plan, 0);
            for (OtherWays.Way way : others.ways()) {
                if (isPlainJoint(drawn, way.without())
                        && drawn.request().means().worthPerHour() == 0) {
                    long least = new BruteForce(new BruteModel(drawn.engine(), without(drawn.request(), way.without())))
                            .opening()
                            .costSeconds();
                    ways++;
                    // the brute force heeds pieces that are loose on the way, which these prices do not
                    assertThat(plan.opening().costSeconds() + way.price().workSeconds())
                            .as("seed %d without %s", seed, way.without())
                            .isLessThanOrEqualTo(least < 0 ? Long.MAX_VALUE : least);
                    assertThat(way.instead()).contains(way.without());
                    assertThat(way.by()).doesNotContain(way.without());
                }
            }
            for (String id : others.noWayRound()) {
                if (isPlainJoint(drawn, id)) {
                    none++;
                    assertThat(new BruteForce(new BruteModel(drawn.engine(), without(drawn.request(), id)))
                                    .opening()
                                    .costSeconds())
                            .as("seed %d without %s", seed, id)
                            .isNegative();
                }
            }
        }
        System.out.printf("alternatives: %d with their price, %d without a way round%n", ways, none);
        assertThat(ways).isGreaterThan(50);
        assertThat(none).isGreaterThan(500);
    }

    /** Two ways to the bolt: the cover (100 s) or the shield with its four bolts (130 s). Common sense. */
    @Test
    void theWayThatWasNotTakenSaysWhatItWouldHaveCost() {
        EngineBuilder builder = new EngineBuilder("stand");
        builder.part("pump", 1);
        builder.part("cover", 1);
        builder.part("shield", 1);
        builder.rigid("cover-bolts", 100, "cover", "stand");
        builder.rigid("shield-bolts", 130, "shield", "stand");
        builder.rigid("pump-bolts", 60, "pump", "stand")
                .access(EngineBuilder.away("cover"), EngineBuilder.away("shield"));
        StripRequest request = new StripRequest(
                StripRequest.Target.off("pump"),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(builder.build().workplace().waysOfLifting(), 0, 1000));
        StripPlan plan = (StripPlan) StripPlanner.plan(builder.build(), request);
        OtherWays others = OtherWays.of(builder.build(), request, plan, 5);
        assertThat(others.noWayRound()).containsExactly("pump-bolts");
        assertThat(others.ways()).singleElement().satisfies(way -> {
            assertThat(way.without()).isEqualTo("cover-bolts");
            assertThat(way.by()).containsExactly("shield-bolts");
            assertThat(way.price().workSeconds()).isEqualTo(30);
            assertThat(way.price().totalSeconds()).hasValue(30);
        });
    }

    private static boolean isPlainJoint(RandomEngines.Case drawn, String id) {
        return drawn.engine().findJoint(id).isPresent()
                && drawn.engine().joint(id).work().cut().isEmpty();
    }

    private static StripRequest without(StripRequest request, String joint) {
        List<String> stuck = new java.util.ArrayList<>(request.willNotCome());
        stuck.add(joint);
        return new StripRequest(
                request.target(), request.undone(), request.done(), stuck, request.means(), request.underway());
    }
}
