package gudgeon.core.bolting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Torque, preload, adaptors, wrenches, and bolts once tightened into yield. */
class TighteningTest {
    private static final MetricThread M8 = new MetricThread(8, 1.25);
    private static final Tightening HEXAGON = new Tightening(M8, new Bearing(11.63, 9));

    /** VDI 2230, M8 8.8 at 90 % of yield and friction 0.12: 18.6 kN and 24.6 N·m; from memory. */
    @Test
    void theCustomaryTorque() {
        double preload_N = Preload.atYieldShare_N(M8, PropertyClass.C8_8, 0.9, 0.12);
        assertThat(preload_N).isCloseTo(18_600, within(100.0));
        assertThat(HEXAGON.torque_Nm(preload_N, Friction.of(0.12))).isCloseTo(24.6, within(0.3));
    }

    @Test
    void whatIsPutInComesOut() {
        Random random = new Random(11);
        for (int run = 0; run < 500; run++) {
            double pitch_mm = 0.5 + random.nextDouble() * 2;
            MetricThread thread = new MetricThread(5 + random.nextDouble() * 20, pitch_mm);
            Tightening tightening = new Tightening(thread, Bearing.typical(thread));
            Friction friction = new Friction(0.04 + random.nextDouble() / 4, 0.04 + random.nextDouble() / 4);
            double share = 0.1 + 0.9 * random.nextDouble();
            PropertyClass grade = thread.diameter_mm() > 16 ? PropertyClass.C10_9 : PropertyClass.C9_8;
            double preload_N = Preload.atYieldShare_N(thread, grade, share, friction.thread());
            double torque_Nm = tightening.torque_Nm(preload_N, friction);
            assertThat(tightening.preload_N(torque_Nm, friction))
                    .as("seed 11, run %d", run)
                    .isCloseTo(preload_N, within(1e-6));
            assertThat(tightening.equivalentStress_MPa(preload_N, friction.thread()))
                    .isCloseTo(share * grade.yield_MPa(thread.diameter_mm()), within(1e-6));
            assertThat(tightening.nutFactor(friction))
                    .isCloseTo(Preload.nutFactor(torque_Nm, preload_N, thread.diameter_mm()), within(1e-12));
        }
    }

    /** Why oil on a thread that is meant to be dry overloads it: the torque stays, the preload grows. */
    @Test
    void oilOnADryThreadOverloads() {
        double dry_Nm = HEXAGON.torque_Nm(Preload.atYieldShare_N(M8, PropertyClass.C8_8, 0.9, 0.2), Friction.of(0.2));
        Tightening.Band oiled = HEXAGON.band(dry_Nm, Friction.State.OILED.range(), PropertyClass.C8_8);
        assertThat(oiled.low().preload_N()).isLessThan(oiled.likely().preload_N());
        assertThat(oiled.high().yieldShare()).isGreaterThan(1.3);
        assertThat(oiled.ratio()).isGreaterThan(1.5);
        assertThat(Friction.State.find("Oiled")).contains(Friction.State.OILED);
        assertThat(Friction.State.find("wet")).isEmpty();
    }

    /** Hooke's law: 80 mm of 61.2 mm² steel, 30° of a 1.25 mm pitch. */
    @Test
    void angleAndStretch() {
        Preload.Spring bolt = new Preload.Spring(205, 61.2, 80, 0);
        double preload_N = bolt.preloadFromAngle_N(1.25, 30);
        assertThat(bolt.angleForPreload_deg(1.25, preload_N)).isCloseTo(30, within(1e-9));
        assertThat(bolt.stretch_mm(preload_N)).isCloseTo(1.25 / 12, within(1e-12));
        Preload.Spring inSoftJoint = new Preload.Spring(205, 61.2, 80, bolt.boltCompliance_mm_per_N());
        assertThat(inSoftJoint.preloadFromAngle_N(1.25, 30)).isCloseTo(preload_N / 2, within(1e-6));
        assertThat(bolt.preloadFromStretch_N(bolt.stretch_mm(1000))).isCloseTo(1000, within(1e-9));
    }

    /** 60 wanted, 400 mm wrench, 50 mm crow-foot in line: set 53.3. Common practice. */
    @Test
    void aCrowFoot() {
        assertThat(new Adaptor(400, 50, 0).setting(60)).isCloseTo(53.333, within(0.001));
        assertThat(new Adaptor(400, 50, 90).setting(60)).isCloseTo(60, within(1e-9));
        assertThat(new Adaptor(400, 50, 180).setting(60)).isCloseTo(60 * 400 / 350.0, within(1e-9));
        Adaptor slanted = new Adaptor(400, 50, 45);
        assertThat(slanted.torque(slanted.setting(60))).isCloseTo(60, within(1e-9));
        assertThatThrownBy(() -> new Adaptor(50, 400, 0)).hasMessageContaining("swapped");
    }

    /** The wrench for the setting, not for the torque; a 40 to 200 N·m wrench cannot do 10. */
    @Test
    void theRightWrench() {
        List<Wrench> toolbox =
                List.of(new Wrench("small", 5, 25), new Wrench("middle", 20, 100), new Wrench("large", 40, 200));
        assertThat(Wrench.choose(10, toolbox).best()).contains(toolbox.get(0));
        assertThat(Wrench.choose(53.3, toolbox).best()).contains(toolbox.get(1));
        assertThat(Wrench.choose(150, toolbox).best()).contains(toolbox.get(2));
        assertThat(Wrench.choose(10, toolbox).judged().get(2).fit()).isEqualTo(Wrench.Fit.BELOW_SCALE);
        assertThat(Wrench.choose(3, toolbox).best()).isEmpty();
        assertThat(new Wrench("long scale", 10, 200).fit(30)).isEqualTo(Wrench.Fit.LOW_ON_SCALE);
        assertThat(new Wrench("long scale", 10, 200).fit(40)).isEqualTo(Wrench.Fit.SUITS);
        assertThat(toolbox.get(1).fit(101)).isEqualTo(Wrench.Fit.ABOVE_SCALE);
    }

    /** Common practice: longer or thinner than its limit is renewed; too close decides nothing. */
    @Test
    void usedOnceMore() {
        StretchCheck.Compared shorter = StretchCheck.Compared.of(112.1, 112.5, 0.1);
        StretchCheck.Compared atTheLimit = StretchCheck.Compared.of(112.45, 112.5, 0.1);
        StretchCheck.Compared longer = StretchCheck.Compared.of(112.7, 112.5, 0.1);
        StretchCheck.Compared neck = StretchCheck.Compared.of(8.4, 8.2, 0.02);
        StretchCheck.Compared thin = StretchCheck.Compared.of(8.1, 8.2, 0.02);
        StretchCheck.Compared nothing = StretchCheck.Compared.NOTHING;
        assertThat(new StretchCheck(false, shorter, neck).advice()).isEqualTo(StretchCheck.Advice.MAY_BE_USED_AGAIN);
        assertThat(new StretchCheck(true, shorter, neck).advice()).isEqualTo(StretchCheck.Advice.RENEW);
        assertThat(new StretchCheck(false, shorter, thin).advice()).isEqualTo(StretchCheck.Advice.RENEW);
        assertThat(new StretchCheck(false, longer, neck).advice()).isEqualTo(StretchCheck.Advice.RENEW);
        assertThat(new StretchCheck(false, atTheLimit, neck).advice()).isEqualTo(StretchCheck.Advice.MEASURE_OR_RENEW);
        assertThat(new StretchCheck(false, nothing, nothing).advice()).isEqualTo(StretchCheck.Advice.NOTHING_KNOWN);
        assertThatThrownBy(() -> new StretchCheck.Compared(OptionalDouble.of(-1), OptionalDouble.empty(), 0))
                .hasMessageContaining("above 0");
    }
}
