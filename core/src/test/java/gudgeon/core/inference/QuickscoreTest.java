package gudgeon.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Noisy-OR with inclusion and exclusion after D. Heckerman, A tractable inference algorithm for diagnosing multiple diseases
 * (1989). The table's numbers are invented; its posteriors by enumeration outside this program.
 */
class QuickscoreTest {
    private static final double[] PRIOR = {.01, .05, .02};
    private static final double[] ALARM = {.02, .05, .01};
    private static final double[][] STRENGTH = {{.8, .1, 0}, {.3, .6, .2}, {0, .5, .7}};

    @ParameterizedTest
    @CsvSource({
        "ab,  c,   .005359416091, .4946998927, .3575789876, .01139777051",
        "abc, '',  .002164606664, .1064599283, .9316164126, .08707558173",
        "'',  abc, .8629794166,   .001412144442, .009384775808, .004874086109",
        "b,   ac,  .05988832858,  .01071943202, .2212923263, .02353700814"
    })
    void threeFaults(String present, String absent, double chance, double one, double two, double three) {
        double all = chance(present, absent, -1);
        assertThat(all).isCloseTo(chance, Percentage.withPercentage(1e-7));
        assertThat(chance(present, absent, 0) / all).isCloseTo(one, Percentage.withPercentage(1e-7));
        assertThat(chance(present, absent, 1) / all).isCloseTo(two, Percentage.withPercentage(1e-7));
        assertThat(chance(present, absent, 2) / all).isCloseTo(three, Percentage.withPercentage(1e-7));
    }

    /** Chance of the findings, and of one fault being there when one is given. */
    private static double chance(String present, String absent, int certain) {
        Quickscore score = new Quickscore(alarms(present), alarms(absent));
        for (int fault = 0; fault < 3; fault++) {
            double[] weights = {fault == certain ? 0 : 1 - PRIOR[fault], PRIOR[fault]};
            score.cause(weights, passes(present, fault), passes(absent, fault));
        }
        return score.chance();
    }

    private static double[] alarms(String findings) {
        return findings.chars().mapToDouble(finding -> ALARM[finding - 'a']).toArray();
    }

    private static double[][] passes(String findings, int fault) {
        double[] away = findings.chars().mapToDouble(finding -> 1).toArray();
        double[] there = findings.chars().mapToDouble(finding -> 1 - STRENGTH[finding - 'a'][fault]).toArray();
        return new double[][] {away, there};
    }

    /** Against the network engine, which enumerates no subsets: causes with three states, random numbers of a printed seed. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void agreesWithTheNetwork(long seed) {
        Random random = new Random(seed);
        Network network = new Network();
        double[][][] pass = new double[3][4][3];
        double[][] prior = new double[3][3];
        for (int cause = 0; cause < 3; cause++) {
            prior[cause] = new double[] {.7, .2, .1};
            network.add(Variable.of("c" + cause, "none", "small", "large"), List.of(), prior[cause]);
            for (double[] finding : pass[cause]) {
                finding[0] = 1;
                finding[1] = random.nextDouble();
                finding[2] = random.nextDouble();
            }
        }
        for (int finding = 0; finding < 4; finding++) {
            double[] table = new double[54];
            for (int row = 0; row < 27; row++) {
                double away = (1 - .1 * finding) * pass[0][finding][row / 9] * pass[1][finding][row / 3 % 3]
                        * pass[2][finding][row % 3];
                table[2 * row] = 1 - away;
                table[2 * row + 1] = away;
            }
            network.add(Variable.yesNo("f" + finding), List.of("c0", "c1", "c2"), table);
        }
        Quickscore score = new Quickscore(new double[] {0, .1, .2}, new double[] {.3});
        for (int cause = 0; cause < 3; cause++) {
            double[][] present = new double[3][3];
            double[][] absent = new double[3][1];
            for (int state = 0; state < 3; state++) {
                present[state] = new double[] {pass[cause][0][state], pass[cause][1][state], pass[cause][2][state]};
                absent[state][0] = pass[cause][3][state];
            }
            score.cause(prior[cause], present, absent);
        }
        Answer.Believed answer =
                (Answer.Believed) network.ask(ChestClinicTest.read("f0=yes f1=yes f2=yes f3=no"));
        assertThat(score.chance()).as("seed " + seed).isCloseTo(answer.chance(), within(1e-12));
        double[] outside = score.outside(1);
        assertThat(outside).hasSize(8);
    }

    /** I. J. Good, Probability and the Weighing of Evidence: a factor of 2, 5 and 10 is 3.0103, 6.9897 and 10 decibans. */
    @Test
    void decibans() {
        assertThat(Weight.decibans(2)).isCloseTo(3.0103, within(5e-5));
        assertThat(Weight.decibans(5)).isCloseTo(6.9897, within(5e-5));
        assertThat(Weight.decibans(10)).isEqualTo(10);
    }

    /** Strength .82, false alarm .02, badly done in .07 of cases and then a coin toss; computed outside this program. */
    @Test
    void badlyDoneTestsWeighLess() {
        double there = .07 / 2 + .93 * (1 - .98 * .18);
        double away = .07 / 2 + .93 * .02;
        assertThat(there).isCloseTo(.8009, within(5e-5));
        assertThat(away).isCloseTo(.0536, within(5e-5));
        assertThat(Weight.decibans(there / away)).isCloseTo(11.744, within(5e-4));
        assertThat(Weight.decibans((1 - there) / (1 - away))).isCloseTo(-6.771, within(5e-4));
        assertThat(Weight.decibans((1 - .98 * .18) / .02)).isCloseTo(16.1, within(.06));
    }

    /** Two tests on a used car, an exercise of Jensen and Nielsen: .476803 bit of .881291, and .198022 bit. */
    @Test
    void information() {
        double[] prior = {.7, .3};
        assertThat(Weight.entropy(prior)).isCloseTo(.881291, within(5e-7));
        assertThat(Weight.information(prior, new double[][] {{.80, .05, .15}, {.05, .75, .20}}))
                .isCloseTo(.476803, within(5e-7));
        assertThat(Weight.information(prior, new double[][] {{.8, .2}, {.25, .75}})).isCloseTo(.198022, within(5e-7));
    }
}
