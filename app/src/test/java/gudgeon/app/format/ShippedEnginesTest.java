package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every shipped engine is sound, validates against the published schema (an independent validator), and is written as JSON. */
class ShippedEnginesTest {
    private static final Path SCHEMA = Path.of("../schema/engine-1.schema.json");

    static Stream<String> ids() {
        return ShippedEngines.ids().stream();
    }

    private static @Nullable Schema schema;

    private static Schema schema() throws IOException {
        Schema known = schema;
        if (known == null) {
            known = published();
            schema = known;
        }
        return known;
    }

    private static Schema published() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
    }

    @Test
    void theyAreFoundFromTheWorkingFolder() {
        assertThat(ShippedEngines.ids()).contains("dunlin-22d", "tern-16", "wren-160");
        assertThat(ShippedEngines.resolve("wren-160")).exists().hasFileName("wren-160.yaml");
        assertThat(ShippedEngines.find("../wren-160")).isEmpty();
        assertThat(ShippedEngines.resolve("no-such")).isEqualTo(Path.of("no-such"));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void isSoundWithoutWarnings(String id) {
        Reading reading = EngineFile.read(ShippedEngines.resolve(id));
        switch (reading) {
            case Reading.Faulty faulty ->
                Assertions.fail(String.join(
                        "\n", faulty.problems().stream().map(Problem::text).toList()));
            case Reading.Sound sound -> {
                assertThat(sound.engine().identity().id()).isEqualTo(id);
                assertThat(sound.remarks()).noneMatch(problem -> problem.severity() == Severity.WARNING);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void validatesAgainstThePublishedSchema(String id) throws IOException {
        List<Error> errors = schema().validate(Files.readString(ShippedEngines.resolve(id)), InputFormat.YAML);
        assertThat(errors).isEmpty();
    }

    /** One unknown key in each kind of thing: the schema and the reader refuse it alike. */
    @ParameterizedTest
    @MethodSource("unknownKeys")
    void unknownKeysAreRefusedByBoth(String before, String after) throws IOException {
        String whole = Files.readString(ShippedEngines.resolve("wren-160"));
        assertThat(whole).contains(before);
        String changed = whole.replaceFirst(java.util.regex.Pattern.quote(before), after);
        assertThat(schema().validate(changed, InputFormat.YAML))
                .as("schema, %s", after)
                .isNotEmpty();
        Reading reading = EngineFile.read("changed.yaml", changed.getBytes(StandardCharsets.UTF_8));
        assertThat(reading)
                .as("reader, %s", after)
                .isInstanceOfSatisfying(
                        Reading.Faulty.class,
                        faulty -> assertThat(faulty.problems())
                                .anyMatch(problem -> problem.what().startsWith("the key 'zzz' is not known in ")));
    }

    static Stream<org.junit.jupiter.params.provider.Arguments> unknownKeys() {
        return Stream.of(
                        new String[] {"format: 1", "format: 1\nzzz: 1"},
                        new String[] {"  id: wren-160", "  id: wren-160\n  zzz: 1"},
                        new String[] {"top: { name: Top", "top: { zzz: 1, name: Top"},
                        new String[] {"    name: Engine oil", "    name: Engine oil\n    zzz: 1"},
                        new String[] {"[{ joint: sump-plug,", "[{ zzz: 1, joint: sump-plug,"},
                        new String[] {"    name: Close the fuel tap", "    name: Close the fuel tap\n    zzz: 1"},
                        new String[] {"bench-stand: { ", "bench-stand: { zzz: 1, "},
                        new String[] {"    between: [tank, crankcase]", "    between: [tank, crankcase]\n    zzz: 1"},
                        new String[] {"fasteners: [{ count: 4,", "fasteners: [{ zzz: 1, count: 4,"},
                        new String[] {"hole: { material", "hole: { zzz: 1, material"},
                        new String[] {"seals: [{ washer", "seals: [{ zzz: 1, washer"},
                        new String[] {"tighten: [{ torque", "tighten: [{ zzz: 1, torque"},
                        new String[] {"seizure: { chance", "seizure: { zzz: 1, chance"},
                        new String[] {"cut: { time", "cut: { zzz: 1, time"},
                        new String[] {"hold: { intact", "hold: { zzz: 1, intact"},
                        new String[] {"crack_loose: { time", "crack_loose: { zzz: 1, time"},
                        new String[] {"loosen: { passes", "loosen: { zzz: 1, passes"},
                        new String[] {"  - { first", "  - { zzz: 1, first"},
                        new String[] {"  geometry:", "  geometry:\n    zzz: 1"},
                        new String[] {"valves: { intake", "valves: { zzz: 1, intake"},
                        new String[] {"teeth: { crank", "teeth: { zzz: 1, crank"},
                        new String[] {"levels:", "levels:\n  zzz: [head]"},
                        new String[] {"    name: Cylinder bore", "    name: Cylinder bore\n    zzz: 1"},
                        new String[] {"wear: { max", "wear: { zzz: 1, max"},
                        new String[] {"    when: [gudgeon-pin-circlips]", "    when: [gudgeon-pin-circlips]\n    zzz: 1"
                        })
                .map(pair -> org.junit.jupiter.params.provider.Arguments.of((Object[]) pair));
    }

    /** Numbers as they stand in the file. */
    @Test
    void shapeAndLevelsAreWrittenAsJson() {
        Reading.Sound sound = (Reading.Sound) EngineFile.read(ShippedEngines.resolve("tern-16"));
        JsonNode json = JsonMapper.builder().build().readTree(EngineJson.write(sound.engine()));
        JsonNode shape = json.get("geometry");
        assertThat(shape.get("bore_mm").asDouble()).isEqualTo(78.6);
        assertThat(shape.get("rod_mm").asDouble()).isEqualTo(134);
        assertThat(shape.get("compression_ratio").asDouble()).isEqualTo(10.2);
        assertThat(shape.get("intake_closes_deg").asDouble()).isEqualTo(48);
        assertThat(shape.get("teeth").toString()).isEqualTo("{\"crank\":22,\"cam\":44,\"belt\":137}");
        assertThat(shape.get("basis").asString()).isEqualTo("typical");
        assertThat(json.get("levels").toString())
                .isEqualTo(
                        "[{\"depth\":\"covers\",\"parts\":[\"cam-cover\",\"upper-timing-cover\"]},"
                                + "{\"depth\":\"head-off\",\"parts\":[\"head\"]},"
                                + "{\"depth\":\"bottom-end\",\"parts\":[\"piston-1\",\"piston-2\",\"piston-3\",\"piston-4\",\"crankshaft\"]}]");
    }

    /** The top keys that the contract for machine-readable answers promises, and one joint worked out by hand. */
    @Test
    void isWrittenAsJson() {
        Reading.Sound sound = (Reading.Sound) EngineFile.read(ShippedEngines.resolve("wren-160"));
        String text = EngineJson.write(sound.engine());
        assertThat(EngineJson.write(sound.engine())).isEqualTo(text);
        JsonNode json = JsonMapper.builder().build().readTree(text);
        Set<String> keys = new TreeSet<>(json.propertyNames());
        assertThat(keys)
                .contains(
                        "format",
                        "id",
                        "sha256",
                        "base",
                        "start_zone",
                        "zones",
                        "tool_change_seconds",
                        "parts",
                        "joints",
                        "circuits",
                        "ready",
                        "ways_of_lifting");
        JsonNode studs = json.get("joints")
                .valueStream()
                .filter(joint -> joint.get("id").asString().equals("head-studs"))
                .findFirst()
                .orElseThrow();
        assertThat(studs.get("access").toString())
                .isEqualTo("[[[{\"part\":\"cowl\"}]],[[{\"part\":\"push-rod-1\"}]],[[{\"part\":\"push-rod-2\"}]]]");
        assertThat(studs.get("undo_seconds").asInt()).isEqualTo(240); // 4 x 60 s
        assertThat(studs.get("build_seconds").asInt()).isEqualTo(312); // 1.3 times
        assertThat(studs.get("destroyed_value").asDouble()).isEqualTo(8.4); // 4 nuts of 0.6, a gasket of 6
        assertThat(studs.get("pattern").toString()).isEqualTo("[1,3,2,4]");
        assertThat(studs.get("fasteners").get(2).get("position").toString()).isEqualTo("[52.0,52.0]");
        assertThat(studs.get("opens").toString()).isEqualTo("[\"oil\"]");
    }
}
