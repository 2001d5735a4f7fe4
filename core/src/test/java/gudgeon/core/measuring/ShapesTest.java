package gudgeon.core.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Shapes that are known before they are measured: computed from their own formulas. */
class ShapesTest {
    @Test
    void aFaceTiltedAndTurnedIsAsFlat() throws Exception {
        double flat = FaceSurvey.of(FacePlaneTest.moody()).width_mm();
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            List<FacePoint> face = grid(random);
            FaceSurvey straight = FaceSurvey.of(face);
            FaceSurvey tilted =
                    FaceSurvey.of(turned(face, random.nextDouble() * 0.3, random.nextDouble() * 0.3, random));
            assertThat(tilted.width_mm()).as("seed %d", seed).isCloseTo(straight.width_mm(), within(1e-6));
        }
        assertThat(flat)
                .as("microinch over inch: no tilt to speak of in the data")
                .isGreaterThan(0);
    }

    @Test
    void flatnessOfADish() {
        List<FacePoint> dish = new ArrayList<>();
        for (int x = -2; x <= 2; x++) {
            for (int y = -1; y <= 1; y++) {
                dish.add(new FacePoint(100 * x, 60 * y, 0.02 * (x * x) / 4.0));
            }
        }
        FaceSurvey survey = FaceSurvey.of(dish);
        assertThat(survey.width_mm()).as("0.02 from middle line to ends").isCloseTo(0.02, within(1e-9));
        assertThat(survey.saysSomething()).isTrue();
        assertThat(survey.lineOnly()).isFalse();
        Derived flatness = survey.flatness(
                new Instrument("dial", 0.001, 0.002, new TwoLimits(0, 1), Gauges.STEEL, java.util.Optional.empty()),
                new Repeatability(0.0015, 10, false));
        assertThat(flatness.estimate().standardUncertainty()).isBetween(0.0015, 0.0025);
        Derived skim = FaceSurvey.skim(flatness, 0.02);
        assertThat(skim.value()).isBetween(0.0425, 0.0445);
        assertThat(FaceSurvey.of(List.of(dish.get(0), dish.get(2), dish.get(4))).saysSomething())
                .isFalse();
        assertThat(FaceSurvey.of(List.of(dish.get(0), dish.get(3), dish.get(6), dish.get(9)))
                        .lineOnly())
                .isTrue();
    }

    @Test
    void eccentricOval() {
        List<Turn.Dial> dials = new ArrayList<>();
        for (int angle = 0; angle < 360; angle += 30) {
            dials.add(new Turn.Dial(angle, 0.5 + 0.018 * cos(angle - 120) + 0.003 * cos(2 * (angle - 35))));
        }
        Collections.shuffle(dials, new Random(1));
        Turn turn = Turn.of(dials);
        assertThat(turn.offset_mm()).isCloseTo(0.018, within(1e-9));
        assertThat(turn.direction_deg()).isCloseTo(120, within(1e-6));
        assertThat(turn.oval_mm()).isCloseTo(0.012, within(1e-9));
        assertThat(turn.ovalDirection_deg()).isCloseTo(35, within(1e-6));
        assertThat(turn.rest_mm()).isLessThan(1e-9);
        assertThat(Turn.of(List.of(dial(0, 0.02), dial(90, 0), dial(180, -0.02), dial(270, 0)))
                        .offset_mm())
                .as("four quarters do for the offset")
                .isCloseTo(0.02, within(1e-12));
        assertThatThrownBy(() -> Turn.of(List.of(dial(0, 1), dial(360, 2), dial(90, 0))))
                .hasMessageContaining("three angles");
    }

    /** A shaft bent 0.03 at its middle towards 210 degrees, lying askew in its blocks: the blocks' part is taken out. */
    @Test
    void bentShaft() {
        List<ShaftLine.Station> stations = new ArrayList<>();
        for (int place = 0; place <= 4; place++) {
            double bow = 0.03 * (1 - Math.pow((place - 2) / 2.0, 2));
            double x = bow * cos(210) + 0.005 - 0.002 * place;
            double y = bow * sin(210) + 0.001 * place;
            List<Turn.Dial> dials = new ArrayList<>();
            for (int angle = 0; angle < 360; angle += 45) {
                dials.add(dial(angle, x * cos(angle) + y * sin(angle)));
            }
            stations.add(new ShaftLine.Station(100 * place, Turn.of(dials)));
        }
        ShaftLine.Bow most = ShaftLine.of(stations).largest();
        assertThat(most.along_mm()).isEqualTo(200);
        assertThat(most.bow_mm()).isCloseTo(0.03, within(1e-9));
        assertThat(most.direction_deg()).isCloseTo(210, within(1e-6));
        assertThatThrownBy(() -> ShaftLine.of(stations.subList(0, 2))).hasMessageContaining("three places");
    }

    /** A cone of 0.01 over its height, shifted and tilted under the spindle: two coaxial cylinders 0.01 apart hold it. */
    @Test
    void shiftedCone() {
        List<Cylinder.Polar> radii = new ArrayList<>();
        for (int height = 0; height <= 100; height += 25) {
            for (int angle = 0; angle < 360; angle += 20) {
                double shift = 0.02 + 0.0001 * height;
                radii.add(
                        new Cylinder.Polar(height, angle, 30 + height * 1e-4 + shift * cos(angle) - 0.01 * sin(angle)));
            }
        }
        Cylinder cylinder = Cylinder.of(radii);
        assertThat(cylinder.width_mm()).isCloseTo(0.01, within(1e-9));
        assertThat(cylinder.tiltX()).isCloseTo(0.0001, within(1e-9));
        assertThat(cylinder.shiftX_mm()).isCloseTo(0.02, within(1e-7));
        assertThat(cylinder.determined()).isTrue();
        assertThat(RoundZone.of(Cylinder.outline(radii, 50, 0)).fit().width_mm())
                .as("a circle read off its centre is no circle in polar form, by e^2/2r")
                .isLessThan(2e-5);
    }

    @Test
    void springLobeSeatRod() {
        Spring spring = Spring.of(46, List.of(pressed(36, 200), pressed(31, 300), pressed(26, 400)));
        assertThat(spring.rate_N_per_mm()).isCloseTo(20, within(1e-9));
        assertThat(spring.load_N(30)).isCloseTo(320, within(1e-9));
        assertThat(spring.lostLength_mm()).isCloseTo(0, within(1e-9));
        assertThat(Spring.lean_deg(1.6, 46)).as("atan of 1.6/46").isCloseTo(1.992, within(0.001));
        Seat seat = Seat.of(List.of(1.3, 1.5, 1.4, 1.6), 0.4, 0.8);
        assertThat(seat.widest_mm() - seat.narrowest_mm()).isCloseTo(0.3, within(1e-12));
        assertThat(seat.offMiddle_mm()).isCloseTo(0.2, within(1e-12));
        RodLine rod = RodLine.of(150, 0.00, 0.03, 0.10, 0.07);
        assertThat(rod.bend_per100mm()).isCloseTo(0.02, within(1e-12));
        assertThat(rod.twist_per100mm()).isCloseTo(-0.02, within(1e-12));
        List<Turn.Dial> lobe = new ArrayList<>();
        for (int angle = 0; angle < 360; angle += 10) {
            double off = Math.abs(angle - 110);
            lobe.add(dial(angle, 2 + Math.max(0, 8 - off / 10.0) + (angle == 300 ? 0.01 : 0)));
        }
        CamLobe cam = CamLobe.of(lobe, 220, 350);
        assertThat(cam.lift_mm()).isCloseTo(8, within(0.001));
        assertThat(cam.top_deg()).isEqualTo(110);
        assertThat(cam.baseRunOut_mm()).isCloseTo(0.01, within(1e-9));
        assertThat(cam.duration_deg(1).orElseThrow()).as("70 either side").isCloseTo(140, within(0.05));
        assertThat(cam.centre_deg(1).orElseThrow()).isCloseTo(110, within(1e-6));
        assertThat(cam.duration_deg(9)).isEmpty();
    }

    @Test
    void ringGapClosesWithTheBore() {
        Derived gap = Clearances.byFeeler(Derived.Trait.GAP, "top ring", 0.45, 0.50);
        SizeSurvey bore = Gauges.survey(
                Gauges.BORE_GAUGE,
                "1",
                new Repeatability(0.002, 10, false),
                new double[] {30, 100},
                new String[] {"thrust"},
                86.06,
                86.01);
        Derived closed = Clearances.ringGapAt(gap, bore.largest(), bore.smallest());
        assertThat(closed.value()).as("0.475 - pi x 0.05").isCloseTo(0.475 - Math.PI * 0.05, within(1e-9));
        assertThatThrownBy(() -> Clearances.byFeeler(Derived.Trait.GAP, "x", 0.5, 0.45))
                .hasMessageContaining("thicker");
    }

    private static Turn.Dial dial(double angle, double height) {
        return new Turn.Dial(angle, height);
    }

    private static Spring.Pressed pressed(double length, double load) {
        return new Spring.Pressed(length, load);
    }

    private static double cos(double angle) {
        return Math.cos(Math.toRadians(angle));
    }

    private static double sin(double angle) {
        return Math.sin(Math.toRadians(angle));
    }

    private static List<FacePoint> grid(Random random) {
        List<FacePoint> face = new ArrayList<>();
        for (int x = 0; x <= 4; x++) {
            for (int y = 0; y <= 2; y++) {
                face.add(new FacePoint(100 * x, 70 * y, 0.08 * random.nextDouble()));
            }
        }
        return face;
    }

    /** A rigid body turned about x, then y, then moved, its points in another order. */
    private static List<FacePoint> turned(List<FacePoint> face, double aboutX, double aboutY, Random random) {
        List<FacePoint> turned = new ArrayList<>();
        for (FacePoint p : face) {
            double y = Math.cos(aboutX) * p.y_mm() - Math.sin(aboutX) * p.z_mm();
            double z = Math.sin(aboutX) * p.y_mm() + Math.cos(aboutX) * p.z_mm();
            double x = Math.cos(aboutY) * p.x_mm() + Math.sin(aboutY) * z;
            turned.add(new FacePoint(x + 55, y - 20, -Math.sin(aboutY) * p.x_mm() + Math.cos(aboutY) * z + 300));
        }
        Collections.shuffle(turned, random);
        return turned;
    }
}
