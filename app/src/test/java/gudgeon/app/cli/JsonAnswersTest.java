package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The machine-readable answers keep the keys of docs/json.md, and echo everything that was asked. */
class JsonAnswersTest {
    private static final JsonMapper MAPPER = new JsonMapper();

    @Test
    void aStripPlanHasItsKeys() {
        JsonNode answer = json(0, "strip wren-160 --reach piston --json");
        assertKeys(answer, "engine request status objective operations opening landmarks order lifts total_seconds destroyed");
        assertThat(answer.get("status").asString()).isEqualTo("planned");
        assertThat(answer.get("objective").asString()).isEqualTo("opening, then order");
        assertKeys(answer.get("engine"), "id sha256");
        assertThat(answer.get("engine").get("sha256").asString()).matches("[0-9a-f]{64}");
        assertKeys(answer.get("opening"), "seconds lower_bound proven joints_seconds ready_seconds money");
        assertKeys(answer.get("order"), "changeover_seconds lower_bound proven method");
        assertKeys(answer.get("lifts"), "count seconds");
        for (JsonNode operation : answer.get("operations")) {
            assertKeys(
                    operation,
                    "n kind id joint parts piece zone tools from_zone changeover_seconds seconds destroys cautions why"
                            + " state_after");
            assertKeys(operation.get("state_after"), "off aside");
        }
    }

    @Test
    void theSumsAddUp() {
        JsonNode answer = json(0, "strip wren-160 --reach piston --json");
        long total = answer.get("opening").get("joints_seconds").asLong()
                + answer.get("opening").get("ready_seconds").asLong()
                + answer.get("order").get("changeover_seconds").asLong()
                + answer.get("lifts").get("seconds").asLong();
        assertThat(answer.get("total_seconds").asLong()).isEqualTo(total);
        long steps = 0;
        for (JsonNode operation : answer.get("operations")) {
            steps += operation.get("seconds").asLong();
        }
        assertThat(steps).isEqualTo(total - answer.get("order").get("changeover_seconds").asLong());
    }

    @Test
    void theRequestIsEchoedWithEveryDefault() {
        JsonNode request = json(0, "strip wren-160 --reach piston --undone cowl-screws --json").get("request");
        assertKeys(
                request,
                "reach aside open measure undone ready_done will_not_come ways_of_lifting worth_per_hour order_states"
                        + " changeover");
        assertThat(request.get("reach").get(0).asString()).isEqualTo("piston");
        assertThat(request.get("undone").get(0).asString()).isEqualTo("cowl-screws");
        assertThat(request.get("ways_of_lifting").size()).isEqualTo(1);
        assertThat(request.get("ways_of_lifting").get(0).get("name").asString()).isEqualTo("alone");
        assertThat(request.get("ways_of_lifting").get(0).get("limit_kg").asDouble()).isPositive();
        assertKeys(request.get("changeover"), "start_zone bench_zone tool_change_seconds rule");
    }

    @Test
    void waysOfLiftingMayComeInOneListOrSeveral() {
        JsonNode once = json(0, "strip wren-160 --reach piston --with helper,hoist --json").get("request");
        JsonNode twice = json(0, "strip wren-160 --reach piston --with hoist --with helper --json").get("request");
        assertThat(once).isEqualTo(twice);
        assertThat(once.get("ways_of_lifting").size()).isEqualTo(3);
    }

    @Test
    void aBlockedStripSaysWhy() {
        JsonNode answer = json(3, "strip wren-160 --reach head --will-not-come head-studs --json");
        assertThat(answer.get("status").asString()).isEqualTo("blocked");
        assertKeys(answer, "engine request blocked_by landmarks");
        JsonNode reason = answer.get("blocked_by").get(0);
        assertKeys(reason, "kind about mass_kg unblocked_by");
        assertThat(reason.get("kind").asString()).isEqualTo("will not come");
        assertThat(reason.get("about").get(0).asString()).isEqualTo("head-studs");
    }

    @Test
    void theWayBackHasItsKeys() {
        JsonNode answer = json(0, "build wren-160 --reach head --json");
        assertKeys(answer, "engine request status totals operations accounts corrections cures");
        for (JsonNode operation : answer.get("operations")) {
            assertKeys(
                    operation,
                    "n kind id joint fasteners torque_Nm angle_deg thread_state lags gate inputs blocked_by zone tools seconds"
                            + " cautions");
        }
        List<String> kinds = answer.get("operations").findValuesAsString("kind");
        assertThat(kinds).contains("place", "snug", "stage", "fill", "check");
    }

    @Test
    void theOrderListHasItsKeys() {
        JsonNode answer = json(0, "order wren-160 --reach head --json");
        assertKeys(answer, "engine request lines totals");
        for (JsonNode line : answer.get("lines")) {
            assertKeys(line, "section spec count litres_needed litres_to_buy places price_each known_price unpriced uses");
        }
        assertThat(answer.get("totals").get("lines").asInt()).isEqualTo(answer.get("lines").size());
    }

    @Test
    void anEngineHasItsKeys() {
        JsonNode answer = json(0, "engine wren-160 --json");
        assertKeys(
                answer,
                "format id sha256 base start_zone zones tool_change_seconds parts joints circuits ready ways_of_lifting");
    }

    @Test
    void theSameQuestionHasTheSameAnswerToTheLastByte() {
        String line = "strip wren-160 --reach piston --json";
        assertThat(Typed.line(line).out()).isEqualTo(Typed.line(line).out());
    }

    private static JsonNode json(int exit, String line) {
        Typed typed = Typed.line(line);
        assertThat(typed.exit()).as(typed.err()).isEqualTo(exit);
        assertThat(typed.err()).isEmpty();
        return MAPPER.readTree(typed.out());
    }

    private static void assertKeys(JsonNode node, String keys) {
        assertThat(node.propertyNames()).contains(keys.split(" "));
    }
}
