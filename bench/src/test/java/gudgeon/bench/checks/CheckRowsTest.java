package gudgeon.bench.checks;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.checks.CheckRow.Outcome;
import gudgeon.bench.checks.CheckRow.Result;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Every row of the tables of outside values; each row names its source and how its value came into the table. */
class CheckRowsTest {
    /** Rows that are not met, and why. The test fails when one of them is met after all, so that the list stays true. */
    private static final Map<String, String> NOT_MET = Map.ofEntries(
            Map.entry("E-RB-P/pmax-1.0-0.8", "the table's figure is 2.1 % below any solution of Reynolds' equation tried"),
            Map.entry("E-RB-P/pmax-0.5-0.8", "as above, 2.5 %"),
            Map.entry("D-FLAT-N", "the source worked in single precision: 3e-7 beyond the tolerance"),
            Map.entry("H-SPA-heliocentric_longitude_L", "the sun's place on the way to its height is not shown by the library"),
            Map.entry("H-SPA-Earth_radius_vector", "as above"),
            Map.entry("H-SPA-right_ascension", "as above"),
            Map.entry("H-SPA-declination", "as above"),
            Map.entry("H-SPA-hour_angle", "as above"),
            Map.entry("H-SPA-true_obliquity", "as above"),
            Map.entry("H-SPA-equation_of_time", "as above"),
            Map.entry("G-OR-200", "the instance is not at hand"),
            Map.entry("G-OR-300", "as above"),
            Map.entry("G-OR-400", "as above"),
            Map.entry("G-OR-500", "as above"),
            Map.entry("G-OR-600", "as above"),
            Map.entry("G-OR-700", "as above"),
            Map.entry("G-OR-800", "as above"));

    /** Functions that go by steps, names or yes and no: a small change of a number may rightly change nothing. */
    private static final Set<String> STEPPED = Set.of(
            "limit_deviation",
            "fit_clearance",
            "fit_interference",
            "unit_factor",
            "sunrise",
            "sunset",
            "cross_pattern_order",
            "tester_orifice_diameter",
            "tester_orifice_length",
            "tester_orifice_approach_angle",
            "compression_lowest_to_highest_pass",
            "compression_mean_rule_pass",
            "elongation_min",
            "proof_stress_rp02_min",
            "linear_expansion_coefficient",
            "crank_travel_ignition_to_inlet_opening");

    /** Functions whose numbers stand in a file beside the table. */
    private static final Set<String> FROM_FILES =
            Set.of("minimum_zone_flatness", "least_squares_plane_flatness", "bottleneck_assignment_optimum");

    @TestFactory
    Stream<DynamicTest> everyRow() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.id() + " " + row.function() + " (" + row.source() + "; " + row.provenance() + ")",
                        () -> check(row.result())));
    }

    private static void check(Result result) {
        if (result.outcome() == Outcome.NO_COMPUTATION) {
            return;
        }
        if (NOT_MET.containsKey(result.row().id())) {
            assertThat(result.outcome()).as(result.row() + " is met now").isNotEqualTo(Outcome.WITHIN);
            return;
        }
        assertThat(result.outcome())
                .as(result.row() + " came out as " + Arrays.toString(result.computed()) + " " + result.reason())
                .isEqualTo(Outcome.WITHIN);
    }

    /** Nothing is looked up: of every function some row's value moves when one of its numbers is moved by a thousandth. */
    @Test
    void everyFunctionComputesFromItsArguments() {
        Set<String> still = new TreeSet<>();
        Set<String> moves = new TreeSet<>();
        for (CheckRow row : rows()) {
            if (!STEPPED.contains(row.function())
                    && !FROM_FILES.contains(row.function())
                    && !moves.contains(row.function())
                    && row.result().outcome() == Outcome.WITHIN) {
                (moves(row) ? moves : still).add(row.function());
            }
        }
        still.removeAll(moves);
        assertThat(moves).isNotEmpty();
        assertThat(still).isEmpty();
    }

    private static boolean moves(CheckRow row) {
        double[] before = row.result().computed();
        for (JsonNode other : nudged(row.args().json())) {
            CheckRow moved = new CheckRow(
                    row.place(),
                    row.id(),
                    row.source(),
                    row.provenance(),
                    row.function(),
                    new Args(other, row.args().folder()),
                    row.expected(),
                    row.absTol(),
                    row.relTol());
            Result after = moved.result();
            if (after.outcome() != Outcome.NOT_COMPUTED && !Arrays.equals(before, after.computed())) {
                return true;
            }
        }
        return false;
    }

    /** The arguments with one number moved by a thousandth, for each number in them, however deep. */
    private static List<JsonNode> nudged(JsonNode args) {
        List<JsonNode> all = new ArrayList<>();
        int numbers = numbersIn(args);
        for (int which = 0; which < numbers; which++) {
            JsonNode copy = args.deepCopy();
            nudge(copy, new int[] {which});
            all.add(copy);
        }
        return all;
    }

    private static int numbersIn(JsonNode node) {
        if (node.isNumber()) {
            return 1;
        }
        int sum = 0;
        for (JsonNode inner : node) {
            sum += numbersIn(inner);
        }
        return sum;
    }

    /** Moves the number that is the so-manyth still to come; counts down what it passes. */
    private static void nudge(JsonNode node, int[] toCome) {
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> entry : List.copyOf(object.properties())) {
                if (!entry.getValue().isNumber()) {
                    nudge(entry.getValue(), toCome);
                } else if (toCome[0]-- == 0) {
                    object.put(entry.getKey(), moved(entry.getValue()));
                }
            }
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                if (!list.get(i).isNumber()) {
                    nudge(list.get(i), toCome);
                } else if (toCome[0]-- == 0) {
                    list.set(i, JsonMapper.shared().<JsonNode>valueToTree(moved(list.get(i))));
                }
            }
        }
    }

    private static double moved(JsonNode number) {
        return number.asDouble() * 1.001 + 1e-6;
    }

    @Test
    void anArgumentThatIsMissingIsNamed() {
        CheckRow row = rows().stream()
                .filter(each -> each.function().equals("piston_position"))
                .findFirst()
                .orElseThrow();
        CheckRow without = new CheckRow(
                row.place(),
                row.id(),
                row.source(),
                row.provenance(),
                row.function(),
                new Args(JsonMapper.shared().readTree("{\"crank_radius_mm\": 43}"), row.args().folder()),
                row.expected(),
                row.absTol(),
                row.relTol());
        assertThat(without.result().outcome()).isEqualTo(Outcome.NOT_COMPUTED);
        assertThat(without.result().reason()).contains("rod_length_mm");
    }

    private static List<CheckRow> rows() {
        try {
            return CheckTable.inFolder(Path.of(
                    Objects.requireNonNull(CheckRowsTest.class.getResource("/checks")).toURI()));
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
