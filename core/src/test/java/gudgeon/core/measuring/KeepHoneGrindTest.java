package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.measuring.DecisionRule.Outcome;
import gudgeon.core.measuring.Rework.Centring;
import gudgeon.core.measuring.Rework.Worn;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Keep, hone, bore, grind, scrap: four bores by three depths by two directions, five mains, four crankpins, the gauge's
 * repeatability. Invented readings; the arithmetic beside each figure was done by hand.
 */
class KeepHoneGrindTest {
    private static final double[] DEPTHS = {10, 55, 100};
    private static final String[] DIRECTIONS = {"thrust", "axial"};
    private static final DecisionRule RULE = DecisionRule.PROBABILITY_2017;
    private static final Limits WEAR = Limits.atMost("wear", 86.080, true);
    private static final Limits TAPER = Limits.atMost("taper", 0.040, true);
    private static final List<Double> STEPS = List.of(0.25, 0.50, 0.75, 1.00);

    /** Two places read five times: deviations of 2, 1, 0, -1, -2 um and 1, 1, 0, -1, -1 um: 14e-6 mm2 over 8. */
    private static final Repeatability TAKER = Repeatability.pooled(
            List.of(List.of(86.012, 86.011, 86.010, 86.009, 86.008), List.of(86.031, 86.031, 86.030, 86.029, 86.029)));

    private static final SizeSurvey ONE = bore("1", 86.040, 86.030, 86.020, 86.018, 86.014, 86.012);
    private static final SizeSurvey TWO = bore("2", 86.062, 86.050, 86.032, 86.030, 86.025, 86.022);
    private static final SizeSurvey THREE = bore("3", 86.130, 86.105, 86.060, 86.050, 86.030, 86.026);
    private static final SizeSurvey FOUR = bore("4", 86.055, 86.046, 86.030, 86.029, 86.019, 86.020);

    private static SizeSurvey bore(String name, double... sizes) {
        return Gauges.survey(Gauges.BORE_GAUGE, name, TAKER, DEPTHS, DIRECTIONS, sizes);
    }

    private static Verdict verdict(Derived derived, Limits limits) {
        return Verdict.of(derived.estimate(), limits, RULE, 1, OptionalDouble.of(0.003));
    }

    @Test
    void repeatability() {
        assertThat(TAKER.standardDeviation_mm()).isCloseTo(Math.sqrt(14e-6 / 8), within(1e-12));
        assertThat(TAKER.degreesOfFreedom()).isEqualTo(8);
    }

    @Test
    void boresByDepthAndDirection() {
        assertThat(ONE.taper().orElseThrow().value()).as("86.040 - 86.014").isCloseTo(0.026, within(1e-9));
        assertThat(ONE.outOfRound().orElseThrow().value()).as("86.040 - 86.030").isCloseTo(0.010, within(1e-9));
        assertThat(THREE.largest().value()).isCloseTo(86.130, within(1e-9));
        assertThat(THREE.boreWear(Estimate.exactly(86.010)).value()).isCloseTo(0.120, within(1e-9));
        assertThat(verdict(ONE.largest(), WEAR).outcome()).isEqualTo(Outcome.WITHIN);
        assertThat(verdict(THREE.largest(), WEAR).outcome()).isEqualTo(Outcome.BEYOND);
        assertThat(verdict(THREE.taper().orElseThrow(), TAPER).outcome()).isEqualTo(Outcome.BEYOND);
    }

    /** Taper of bore 4 is 36 um against 40; at 37.5 the repeats of two readings straddle it. The instrument's error cancels. */
    @Test
    void refusesWhereUncertaintyStraddlesAndNamesTheReading() {
        Derived taper = FOUR.taper().orElseThrow();
        Verdict verdict = verdict(taper, TAPER);
        assertThat(taper.value()).isCloseTo(0.036, within(1e-9));
        assertThat(verdict.outcome()).isEqualTo(Outcome.WITHIN);
        Derived close = bore("4", 86.055, 86.046, 86.030, 86.029, 86.0175, 86.018)
                .taper()
                .orElseThrow();
        Verdict straddles = verdict(close, TAPER);
        assertThat(straddles.outcome()).isEqualTo(Outcome.TOO_CLOSE);
        assertThat(straddles.conformance()).isBetween(0.6, 0.95);
        assertThat(close.readAgain()).contains("4, 10.0, thrust");
        assertThat(straddles.settling().orElseThrow().moreRepeats()).isPresent();
    }

    @Test
    void oneOversizeForAllFour() {
        List<Worn> bores = List.of(worn("1", ONE), worn("2", TWO), worn("3", THREE), worn("4", FOUR));
        Rework.Common about = Rework.oversize(bores, 86.000, STEPS, 0.030, Centring.WORN_CENTRE);
        assertThat(about.deciding().name()).isEqualTo("3");
        // 86.130 + about 9 um of doubt + 30 um to hone
        assertThat(about.deciding().size_mm()).isBetween(86.165, 86.180);
        assertThat(about.step_mm()).contains(0.25);
        Rework.Common old = Rework.oversize(bores, 86.000, STEPS, 0.030, Centring.OLD_CENTRE);
        // 86.010 + 2 x 120 um is 86.250 already
        assertThat(old.deciding().size_mm()).isGreaterThan(86.280);
        assertThat(old.step_mm()).as("about the old centre the next size").contains(0.50);
        assertThat(old.size_mm()).isCloseTo(86.500, within(1e-9));
        assertThat(Rework.oversize(bores, 86.000, List.of(0.25), 0.030, Centring.OLD_CENTRE)
                        .step_mm())
                .as("none on offer: a liner, or another block")
                .isEmpty();
    }

    @Test
    void journalsAndWhetherTheCrankMayBeGround() {
        List<Worn> mains = new ArrayList<>();
        double[] smallest = {59.988, 59.985, 59.979, 59.984, 59.990};
        for (int i = 0; i < smallest.length; i++) {
            SizeSurvey main = Gauges.survey(
                    Gauges.MICROMETER,
                    "main " + (i + 1),
                    TAKER,
                    new double[] {10},
                    new String[] {"0", "45", "90", "135"},
                    smallest[i],
                    59.991,
                    59.992,
                    59.990);
            assertThat(verdict(main.smallest(), Limits.atLeast("wear", 59.950, true))
                            .outcome())
                    .isEqualTo(Outcome.WITHIN);
            mains.add(new Worn("main " + (i + 1), main.smallest(), Estimate.exactly(59.994)));
        }
        SizeSurvey pin = Gauges.survey(
                Gauges.MICROMETER,
                "crankpin 2",
                TAKER,
                new double[] {5, 20},
                new String[] {"0", "90"},
                49.962,
                49.990,
                49.975,
                49.988);
        assertThat(pin.outOfRound().orElseThrow().value()).as("49.990 - 49.962").isCloseTo(0.028, within(1e-9));
        assertThat(verdict(pin.outOfRound().orElseThrow(), Limits.atMost("out-of-round", 0.010, true))
                        .outcome())
                .isEqualTo(Outcome.BEYOND);
        List<Worn> pins = List.of(
                new Worn("crankpin 1", good("crankpin 1"), Estimate.exactly(49.994)),
                new Worn("crankpin 2", pin.smallest(), Estimate.exactly(49.994)),
                new Worn("crankpin 3", good("crankpin 3"), Estimate.exactly(49.994)),
                new Worn("crankpin 4", good("crankpin 4"), Estimate.exactly(49.994)));
        Rework.Common ground = Rework.undersize(pins, 50.000, STEPS, 0.010, Centring.OLD_CENTRE, 49.500);
        assertThat(ground.deciding().name()).isEqualTo("crankpin 2");
        assertThat(ground.step_mm()).contains(0.25);
        assertThat(Rework.undersize(pins, 50.000, STEPS, 0.010, Centring.OLD_CENTRE, 49.800)
                        .step_mm())
                .as("the maker allows no grinding that deep")
                .isEmpty();
        assertThat(Rework.undersize(mains, 60.000, List.of(0.05, 0.25), 0.005, Centring.WORN_CENTRE, 59.5)
                        .step_mm())
                .as("59.979 less 5 um and the doubt: 0.05 cleans all five")
                .contains(0.05);
    }

    @Test
    void clearanceTwoWays() {
        SizeSurvey shell = Gauges.survey(
                Gauges.BORE_GAUGE,
                "shells 3",
                TAKER,
                new double[] {10},
                new String[] {"up", "45", "across", "135"},
                60.040,
                60.041,
                60.043,
                60.041);
        SizeSurvey journal = Gauges.survey(
                Gauges.MICROMETER,
                "main 3",
                TAKER,
                new double[] {10},
                new String[] {"0", "45", "90", "135"},
                59.990,
                59.991,
                59.992,
                59.990);
        Derived differs = Clearances.between(shell.smallest(), journal.largest());
        assertThat(differs.value()).as("60.040 - 59.992").isCloseTo(0.048, within(1e-9));
        Derived strip = Clearances.byStrip("main 3", 0.050, 0.050, 0.013);
        assertThat(differs.estimate().normalisedError(strip.estimate()))
                .as("they agree")
                .isLessThan(1);
        Derived crooked = Clearances.byStrip("main 3", 0.075, 0.075, 0.013);
        assertThat(differs.estimate().normalisedError(crooked.estimate()))
                .as("one of them is wrong")
                .isGreaterThan(1);
    }

    /** Bore 2: 86.062 from 86.009 when new in 5,200 h is 10.2 um a thousand hours: 86.0926 after 3,000 more. */
    @Test
    void insideTodayAndRefusedAllTheSame() {
        assertThat(verdict(TWO.largest(), WEAR).outcome()).isEqualTo(Outcome.WITHIN);
        Estimate whenNew = WearRate.newWithin(new TwoLimits(86.000, 86.018));
        WearRate rate = new WearRate(TWO.largest().estimate(), whenNew, 5200);
        assertThat(rate.rate().value() * 1000).isCloseTo(0.01019, within(1e-5));
        Estimate then = rate.after(3000);
        assertThat(then.value()).isCloseTo(86.0926, within(1e-4));
        assertThat(Verdict.of(then, WEAR, RULE).outcome()).isNotEqualTo(Outcome.WITHIN);
        assertThat(then.expanded()).isGreaterThan(TWO.largest().estimate().expanded());
        assertThat(Verdict.of(new WearRate(ONE.largest().estimate(), whenNew, 5200).after(3000), WEAR, RULE)
                        .outcome())
                .as("bore 1 lasts")
                .isEqualTo(Outcome.WITHIN);
    }

    @Test
    void sizeToHoneTo() {
        Derived piston = new Derived(
                Derived.Trait.SIZE,
                Gauges.read(Gauges.BORE_GAUGE, "piston 3", TAKER, 86.430).estimate(),
                List.of("piston 3"));
        TwoLimits hone = Rework.honeTo(piston, 0.060, 0.080).orElseThrow();
        assertThat(hone.lower()).isBetween(86.490, 86.496);
        assertThat(hone.upper()).isBetween(86.504, 86.510);
        assertThat(Rework.honeTo(piston, 0.069, 0.070))
                .as("finer than the piston is known")
                .isEmpty();
    }

    private static Worn worn(String name, SizeSurvey bore) {
        return new Worn(name, bore.largest(), Estimate.exactly(86.010));
    }

    private static Derived good(String name) {
        return new Derived(
                Derived.Trait.SMALLEST,
                Gauges.read(Gauges.MICROMETER, name, TAKER, 49.986).estimate(),
                List.of(name));
    }
}
