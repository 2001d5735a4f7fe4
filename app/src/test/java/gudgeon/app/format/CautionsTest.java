package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.core.planning.BuildPlan;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The catalogue is complete, short enough for a step, and answers by id. */
class CautionsTest {
    /** Every id that engine files may name; adding one is fine, losing one breaks files. */
    private static final List<String> PROMISED = List.of(
                    ("petrol-vapour fuel-pressure high-pressure-jet hot-coolant used-oil-skin coolant-poison raised-vehicle"
                                    + " engine-support lifting-tackle heavy-lift battery-earth-first battery-gas airbag high-voltage"
                                    + " refrigerant compressed-air springs old-gaskets seals-overheated torque-wrench"
                                    + " pull-not-push blind-holes fan-and-belts sharp-edges no-cranking-fuel-open"
                                    + " timing-drive-off gasket-faces belt-tensioner brakes-after-vacuum impact-tools"
                                    + " press-and-puller soot-dust cover-openings hot-engine unmarked-followers"
                                    + " glow-plug-snap injector-stuck manifold-studs licensed-work hydraulic-lock"
                                    + " oil-before-start diesel-runaway carbon-monoxide solvents fire-extinguisher"
                                    + " sodium-valves remote-cranking engine-stand")
                            .split(" "));

    @Test
    void holdsEveryPromisedId() {
        assertThat(Cautions.catalogue().ids()).containsAll(PROMISED);
    }

    @Test
    void everyTextFitsIntoAStep() {
        assertThat(Cautions.catalogue().all()).allSatisfy(caution -> {
            assertThat(caution.title().length()).as(caution.id()).isBetween(5, 50);
            assertThat(caution.text().length()).as(caution.id()).isBetween(40, 200);
            assertThat(caution.text()).as(caution.id()).endsWith(".");
        });
    }

    @Test
    void ranksDangerFirstAndEachOnce() {
        assertThat(Cautions.catalogue().ranked(List.of("sharp-edges", "hot-coolant", "sharp-edges", "unknown")))
                .extracting(Caution::id)
                .containsExactly("hot-coolant", "sharp-edges");
    }

    /** Common practice: what is stuck, hot or under pressure on the way in is not so on the way back. */
    @Test
    void theWayBackLeavesOutWhatIsAboutTakingApart() {
        assertThat(Cautions.catalogue()
                        .puttingTogether(
                                BuildPlan.Kind.SNUG,
                                List.of("hot-coolant", "glow-plug-snap", "cover-openings", "unknown")))
                .containsExactly("cover-openings", "unknown");
    }

    /** Common practice: coolant is topped up and looked for on a warm engine, old oil comes out before the fresh goes in. */
    @ParameterizedTest
    @EnumSource(
            value = BuildPlan.Kind.class,
            names = {"FILL", "BLEED", "CHECK"})
    void whatIsFilledBledOrCheckedTellsAllItHas(BuildPlan.Kind kind) {
        List<String> ids = List.of("hot-coolant", "used-oil-skin", "old-gaskets");
        assertThat(Cautions.catalogue().puttingTogether(kind, ids)).isEqualTo(ids);
    }

    @Test
    void anUnknownIdIsNamed() {
        assertThat(Cautions.catalogue().find("no-such")).isEmpty();
        assertThatThrownBy(() -> Cautions.catalogue().caution("no-such")).hasMessageContaining("no-such");
    }
}
