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
            Map.entry("H-SPA-heliocentric_longitude_L", "the sun's place on the way to its height is not shown by the library"),
            Map.entry("H-SPA-Earth_radius_vector", "as above"),
            Map.entry("H-SPA-right_ascension", "as above"),
            Map.entry("H-SPA-declination", "as above"),
            Map.entry("H-SPA-hour_angle", "as above"),
            Map.entry("H-SPA-true_obliquity", "as above"),
            Map.entry("H-SPA-equation_of_time", "as above"));

    /** Functions that go by steps, names or yes and no: a small change of a number may rightly change nothing. */
    private static final Set<String> STEPPED = Set.of(
            "limit_deviation",
            "fit_clearance",
            "fit_interference",
            "unit_factor",
            "sunrise",
            "sunset",
            "crank_travel_ignition_to_inlet_opening");

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

    /** The arguments with one number moved, for each number at the top and the first of each list. */
    private static List<JsonNode> nudged(JsonNode args) {
        List<JsonNode> all = new ArrayList<>();
        args.propertyStream().forEach(entry -> {
            ObjectNode copy = (ObjectNode) args.deepCopy();
            if (nudge(copy, entry.getKey(), entry.getValue())) {
                all.add(copy);
            }
        });
        return all;
    }

    private static boolean nudge(ObjectNode copy, String key, JsonNode value) {
        if (value.isNumber()) {
            copy.put(key, value.asDouble() * 1.001 + 1e-6);
            return true;
        }
        JsonNode inner = copy.get(key);
        while (inner instanceof ArrayNode list && !list.isEmpty()) {
            if (list.get(0).isNumber()) {
                list.set(0, JsonMapper.shared().valueToTree(list.get(0).asDouble() * 1.001 + 1e-6));
                return true;
            }
            inner = list.get(0);
        }
        return false;
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
