package gudgeon.core.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flow through leaks. Isentropic theory (ISO 9300, St Venant and Wantzel); tables computed outside this program. */
class LeakPhysicsTest {
    private static final double PSI = 6894.757293168;
    private static final double AIR_PA = 14.7 * PSI;

    @Test
    void criticalRatio() {
        assertThat(LeakFlow.criticalRatio(1.4)).isCloseTo(0.5282817877, within(1e-9));
    }

    /** Supply 80 psi gauge, air at 14.7 psi absolute: cylinder gauge pressure, leak over orifice. */
    @ParameterizedTest
    @CsvSource({
        "79,.213", "78,.303", "76,.433", "75,.487", "72,.625", "70,.707", "68,.783", "65,.890", "60,1.059", "55,1.221",
        "50,1.384", "45,1.549", "40,1.722", "30,2.119", "20,2.729", "10,3.872"
    })
    void leakOfAnEightyPoundTester(double cylinder, double ratio) {
        assertThat(Instruments.orifices(1 - cylinder / 80, 80 * PSI, Instruments.SMALL, AIR_PA))
                .isCloseTo(ratio, within(5.1e-4));
    }

    /** Supply 100 psi gauge: loss in per cent, leak over orifice. */
    @ParameterizedTest
    @CsvSource({
        "2,.275", "5,.440", "10,.636", "15,.797", "20,.942", "25,1.080", "30,1.214", "40,1.483", "50,1.768", "60,2.097",
        "70,2.566", "80,3.305"
    })
    void leakOfAHundredPoundTester(double loss, double ratio) {
        assertThat(Instruments.orifices(loss / 100, 100 * PSI, Instruments.SMALL, AIR_PA)).isCloseTo(ratio, within(5.1e-4));
    }

    @Test
    void theLargerOrificeDividesByTheSquare() {
        double small = Instruments.orifices(.25, 80 * PSI, Instruments.SMALL, AIR_PA);
        double large = Instruments.orifices(.25, 80 * PSI, Instruments.LARGE, AIR_PA);
        assertThat(large / small).isCloseTo(2.25, within(1e-9));
        assertThat(Instruments.loss(large, 80 * PSI, Instruments.LARGE, AIR_PA)).isCloseTo(.25, within(1e-9));
    }

    /** 500 cm³, 9.5:1, 200 rev/min: leak in orifices, gauge pressure kept. */
    @ParameterizedTest
    @CsvSource({
        ".1,.985", ".2,.970", ".35,.948", ".5,.926", ".75,.892", "1,.859", "1.5,.798", "2,.743", "3,.646", "5,.495", "8,.343"
    })
    void crankingCompressionKept(double orifices, double kept) {
        assertThat(new CrankingPressure(500e-6, 9.5, 200, 101325).kept(orifices * CrankingPressure.ORIFICE))
                .isCloseTo(kept, within(1.5e-3));
    }

    @Test
    void aSmallCylinderFeelsTheSameLeakMore() {
        assertThat(new CrankingPressure(250e-6, 9.5, 200, 101325).kept(.5 * CrankingPressure.ORIFICE))
                .isCloseTo(.859, within(1.5e-3));
    }

    /** A leak of 0.05 mm²: compression ratio, gauge psi. */
    @ParameterizedTest
    @CsvSource({"7,141", "8,170", "9,200", "10,231", "11,262", "12,295", "16,433", "18,505", "20,580", "22,657"})
    void compressionRatio(double ratio, double psi) {
        CrankingPressure cranking = new CrankingPressure(500e-6, ratio, 200, 101325);
        assertThat((cranking.highest(.05e-6) - 101325) / PSI).isCloseTo(psi, within(1.0));
    }

    /** Oil alone in 500 cm³ at 9.5:1, no ring effect: 3 ml +7, 5 ml +11, 10 ml +26, 15 ml +43 per cent. */
    @ParameterizedTest
    @CsvSource({"3,1.07", "5,1.11", "10,1.26", "15,1.43"})
    void oilTakesUpRoom(double ml, double ratio) {
        CrankingPressure cranking = new CrankingPressure(500e-6, 9.5, 200, 101325);
        assertThat(cranking.withOil(ml * 1e-6, .05e-6)).isCloseTo(ratio, within(.011));
    }

    /** Every reading is somewhere: good and bad parts together, and the two ends, sum to one. */
    @ParameterizedTest
    @CsvSource({"0,0.05,0.05", "-2,0.3,0.08", "0.95,0.2,0.05", "-3.9,0.5,0.3"})
    void readingsSumToOne(double mean, double scatter, double bad) {
        double[] range = Gauges.COMPRESSION;
        double sum = ReadingChance.of(range[0], mean, scatter, bad, range)
                + ReadingChance.of(range[1], mean, scatter, bad, range);
        int steps = 200_000;
        double width = (range[1] - range[0]) / steps;
        for (int i = 0; i < steps; i++) {
            sum += width * ReadingChance.of(range[0] + (i + .5) * width, mean, scatter, bad, range);
        }
        assertThat(sum).isCloseTo(1, within(1e-6));
    }

    @Test
    void theRecurrenceAgreesWithTheBell() {
        double[] into = new double[30];
        ReadingChance.falling(.9, .04, .1, .07, Gauges.COMPRESSION, into);
        for (int i = 0; i < into.length; i++) {
            double expected = ReadingChance.good(.9 - i * .04, .1, .07, Gauges.COMPRESSION);
            assertThat(into[i]).isCloseTo(expected, Percentage.withPercentage(1e-8));
        }
    }

    /** In a 1-3-4-2 four, testing 3 hisses at the intake of 4, testing 4 at the exhaust of 3 (common practice). */
    @Test
    void aBreachIsHeardAtTheOpenValveOfTheNeighbour() {
        java.util.List<Integer> firing = java.util.List.of(1, 3, 4, 2);
        Condition three = OpenValves.heard(Condition.HEALTHY, firing, 3, 4, .5);
        Condition four = OpenValves.heard(Condition.HEALTHY, firing, 4, 3, .5);
        assertThat(three.viaIntake()).isEqualTo(.5);
        assertThat(three.viaExhaust()).isZero();
        assertThat(four.viaExhaust()).isEqualTo(.5);
        assertThat(four.viaIntake()).isZero();
    }
}
