package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Readings: corrections and budgets by hand arithmetic. */
class ReadingTest {
    private static final Repeatability FINE = new Repeatability(0.002, 12, false);

    /** 86 mm x 15 K x (23.0 - 11.5) millionths = 14.835 um; handbook expansions, from memory. */
    @Test
    void aluminiumInACharmlessBarn() {
        Reading reading = new Reading(
                "top", List.of(86.000), Gauges.BORE_GAUGE, Conditions.soaked(5, Expanding.of(Material.ALUMINIUM)));
        assertThat(1000 * reading.worth().warmth_mm()).isCloseTo(14.835, within(0.01));
        Reading iron = new Reading("top", List.of(86.000), Gauges.BORE_GAUGE, Conditions.soaked(5, Gauges.IRON));
        assertThat(1000 * iron.worth().warmth_mm())
                .as("cast iron: next to nothing")
                .isCloseTo(-0.645, within(0.01));
    }

    @Test
    void theChecksOffsetIsTakenOff() {
        Instrument off = new Instrument(
                "m", 0.001, 0.002, new TwoLimits(0, 100), Gauges.STEEL, Optional.of(new Instrument.Check(0.004, 3)));
        Reading.Worth worth =
                new Reading("a", List.of(50.004, 50.006), off, Conditions.soaked(20, Gauges.STEEL)).worth(FINE);
        assertThat(worth.estimate().value()).isCloseTo(50.001, within(1e-12));
    }

    /** Common practice: 2 um of limits and 1.5 um of repeatability make 1.893 um; computed from the root of the sum of squares. */
    @Test
    void budgetOfOneReading() {
        Reading.Worth worth = Gauges.read(
                new Instrument("i", 0, 0.002, new TwoLimits(0, 100), Gauges.STEEL, Optional.empty()),
                "a",
                new Repeatability(0.0015, 1e9, false),
                0.000001);
        assertThat(worth.estimate().standardUncertainty()).isCloseTo(0.0018930, within(1e-6));
        assertThat(worth.estimate().budget().largestFirst().getFirst().source().kind())
                .isEqualTo(Source.Kind.REPEATS);
    }

    @Test
    void differencesForgetTheInstrument() {
        Estimate bore = Gauges.read(Gauges.BORE_GAUGE, "bore", FINE, 86.05).estimate();
        Estimate other = Gauges.read(Gauges.BORE_GAUGE, "below", FINE, 86.01).estimate();
        Source instrument = new Source(Source.Kind.INSTRUMENT, "bore gauge");
        assertThat(bore.budget().component(instrument)).isPositive();
        assertThat(bore.minus(other).budget().component(instrument)).isZero();
        assertThat(bore.plus(other).budget().component(instrument))
                .isCloseTo(2 * bore.budget().component(instrument), within(1e-15));
    }

    @Test
    void repeatsAreAveragedAndPooled() {
        Reading.Worth once = Gauges.read(Gauges.MICROMETER, "a", FINE, 50.001);
        Reading.Worth often = Gauges.read(Gauges.MICROMETER, "a", FINE, 50.000, 50.002, 50.001, 50.001);
        Source repeats = new Source(Source.Kind.REPEATS, "a");
        assertThat(once.estimate().budget().component(repeats)).isCloseTo(0.002, within(1e-12));
        // (12 x 0.002^2 + 2e-6) / 15, over 4
        assertThat(often.estimate().budget().component(repeats))
                .isCloseTo(Math.sqrt((12 * 4e-6 + 2e-6) / 15 / 4), within(1e-12));
        Reading.Worth guessed =
                new Reading("a", List.of(50.001), Gauges.MICROMETER, Conditions.soaked(20, Gauges.IRON)).worth();
        assertThat(guessed.estimate().budget().component(new Source(Source.Kind.REPEATS_ASSUMED, "a")))
                .isPositive();
    }

    @Test
    void badReadingsAreRefused() {
        Conditions conditions = Conditions.soaked(20, Gauges.IRON);
        assertThatThrownBy(() -> new Reading("top", List.of(), Gauges.BORE_GAUGE, conditions))
                .hasMessageContaining("top");
        assertThatThrownBy(() -> new Reading("top", List.of(Double.NaN), Gauges.BORE_GAUGE, conditions))
                .hasMessageContaining("finite");
        assertThatThrownBy(() -> Conditions.soaked(900, Gauges.IRON)).hasMessageContaining("300 °C");
    }
}
