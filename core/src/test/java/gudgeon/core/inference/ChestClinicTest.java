package gudgeon.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;

/**
 * The chest clinic ("Asia") of S. L. Lauritzen and D. J. Spiegelhalter, Local computations with probabilities on graphical
 * structures, J. Royal Statistical Society B 50 (1988). Its tables as printed in the help of the R package gRain; the
 * posteriors were computed by full enumeration of its 256 states outside this program.
 */
class ChestClinicTest {
    private static final Network CLINIC = clinic();

    private static Network clinic() {
        return new Network()
                .add(Variable.yesNo("asia"), List.of(), .01, .99)
                .add(Variable.yesNo("tub"), List.of("asia"), .05, .95, .01, .99)
                .add(Variable.yesNo("smoke"), List.of(), .5, .5)
                .add(Variable.yesNo("lung"), List.of("smoke"), .10, .90, .01, .99)
                .add(Variable.yesNo("bronc"), List.of("smoke"), .60, .40, .30, .70)
                .add(Variable.yesNo("either"), List.of("tub", "lung"), 1, 0, 1, 0, 1, 0, 0, 1)
                .add(Variable.yesNo("xray"), List.of("either"), .98, .02, .05, .95)
                .add(Variable.yesNo("dysp"), List.of("bronc", "either"), .9, .1, .8, .2, .7, .3, .1, .9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            -                                  | 1           | .0104    | .055     | .45      | .064828  | .11029   | .4359706 | .5
            dysp=yes                           | .4359706    | .0188453 | .1027592 | .8339673 | .1205358 | .1620983 | 1        | .6339969
            asia=yes dysp=yes                  | .004501375  | .0877510 | .0995251 | .8114021 | .1822999 | .2195389 | 1        | .6259199
            asia=yes dysp=yes xray=yes         | .000988227  | .3917117 | .4442705 | .6288218 | .8137687 | 1        | 1        | .7020251
            asia=yes dysp=yes xray=no          | .003513148  | .0022487 | .0025504 | .8627608 | .0046716 | 0        | 1        | .6045119
            asia=yes smoke=yes xray=yes dysp=yes | .000693760 | .2895814 | .5791628 | .7009196 | .8397861 | 1      | 1        | 1
            asia=no smoke=yes xray=no dysp=yes | .218761092  | .0003711 | .0037109 | .9220069 | .0040449 | 0        | 1        | 1
            smoke=yes xray=yes                 | .075852400  | .0671831 | .6459914 | .6       | .7064562 | 1        | .7319369 | 1
            """)
    void agreesWithEnumeration(
            String evidence, double chance, double tub, double lung, double bronc, double either, double xray, double dysp,
            double smoke) {
        Answer.Believed answer = (Answer.Believed) CLINIC.ask(read(evidence));
        assertThat(answer.chance()).isCloseTo(chance, within(1e-6));
        assertThat(List.of(answer.chance("tub", "yes"), answer.chance("lung", "yes"), answer.chance("bronc", "yes"),
                        answer.chance("either", "yes"), answer.chance("xray", "yes"), answer.chance("dysp", "yes"),
                        answer.chance("smoke", "yes")))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1, Double.class)
                .isEqualTo(List.of(tub, lung, bronc, either, xray, dysp, smoke));
    }

    @Test
    void impossibleEvidenceIsRefused() {
        assertThat(CLINIC.ask(read("either=no tub=yes"))).isInstanceOf(Answer.Impossible.class);
    }

    static Map<String, List<String>> read(String evidence) {
        Map<String, List<String>> read = new LinkedHashMap<>();
        for (String pair : evidence.strip().split(" ")) {
            if (pair.contains("=")) {
                read.put(pair.substring(0, pair.indexOf('=')), List.of(pair.substring(pair.indexOf('=') + 1).split("/")));
            }
        }
        return read;
    }
}
