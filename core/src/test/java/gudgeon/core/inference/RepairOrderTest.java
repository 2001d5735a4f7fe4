package gudgeon.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.inference.RepairOrder.Action;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Costs of repair by hand. The method: D. Heckerman, J. Breese, K. Rommelse, Decision-theoretic troubleshooting (1995). The
 * first problem has the structure and totals of an example in the papers of F. V. Jensen and others on printers (from memory);
 * the second is invented, its figures computed outside this program.
 */
class RepairOrderTest {
    private static final RepairOrder SHARED = new RepairOrder(
            new double[] {.20, .25, .40, .15},
            new double[0],
            List.of(
                    new Action("A1", List.of(0, 1), 1, 0, -1),
                    new Action("A2", List.of(2, 3), 1, 0, -1),
                    new Action("A3", List.of(1, 2), 1, 0, -1)));

    @ParameterizedTest
    @CsvSource({
        "A1 A2 A3, 1.55", "A1 A3 A2, 1.70", "A2 A1 A3, 1.45", "A2 A3 A1, 1.65", "A3 A1 A2, 1.50", "A3 A2 A1, 1.55"
    })
    void everyOrder(String order, double cost) {
        assertThat(SHARED.cost(Stream.of(order.split(" ")).toList())).isCloseTo(cost, within(1e-12));
    }

    @Test
    void chanceOverCostIsNotTheBest() {
        assertThat(SHARED.byRatio().names()).containsExactly("A3", "A1", "A2");
        assertThat(SHARED.byRatio().cost()).isCloseTo(1.50, within(1e-12));
        assertThat(SHARED.best().names()).containsExactly("A2", "A1");
        assertThat(SHARED.best().cost()).isCloseTo(1.45, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"T V R, 9.1", "V T R, 10.9", "V R T, 13.3", "T R V, 13.9", "R T V, 18.1", "R V T, 18.1"})
    void nestedOpening(String order, double hours) {
        RepairOrder problem = nested(.30, .60, .10);
        assertThat(problem.cost(Stream.of(order.split(" ")).toList())).isCloseTo(hours, within(1e-12));
        assertThat(problem.best().cost()).isCloseTo(9.1, within(1e-12));
    }

    @Test
    void informationThatCannotChangeThePlanIsWorthNothing() {
        assertThat(nested(.31875, .675, .00625).best().cost()).isCloseTo(8.18125, within(1e-9));
        assertThat(nested(.225, .30, .475).best().cost()).isCloseTo(12.775, within(1e-9));
        assertThat(afterListening(Double.POSITIVE_INFINITY)).isCloseTo(9.1, within(1e-9));
    }

    /** Another engine at 12 hours, to be decided on before anything is opened. */
    @Test
    void theSameInformationIsWorthSomethingWhenAnotherEngineCanBeHad() {
        assertThat(9.1 - afterListening(12)).isCloseTo(.155, within(1e-9));
    }

    private static double afterListening(double anotherEngine) {
        return .80 * Math.min(anotherEngine, nested(.31875, .675, .00625).best().cost())
                + .20 * Math.min(anotherEngine, nested(.225, .30, .475).best().cost());
    }

    private static RepairOrder nested(double tight, double valve, double rings) {
        return new RepairOrder(
                new double[] {tight, valve, rings},
                new double[] {1, 6, 8},
                List.of(
                        new Action("T", List.of(0), 0, 1, 0),
                        new Action("V", List.of(1), 0, 4, 1),
                        new Action("R", List.of(2), 0, 4, 2)));
    }
}
