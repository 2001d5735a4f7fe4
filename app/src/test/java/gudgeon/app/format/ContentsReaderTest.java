package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.Spills;
import gudgeon.core.planning.Spills.Loss;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How high a fluid stands, read from a file, and what then runs out; litres worked out by hand from the curve. */
class ContentsReaderTest {
    private static final String FILE = """
            format: 1
            engine: { id: tank-1, name: Tank, base: stand, start: top }
            zones: { top: {} }
            circuits:
              oil:
                fluid: oil
                capacity: 5 l
                drains: [{ joint: plug, height: -90 mm }, { joint: high-plug, height: -50 mm, time: 2 min }]
                contents: [{ height: -100 mm, volume: 0 l }, { height: 0 mm, volume: 2 l }, { height: 50 mm, volume: 5 l }]
                opens_at: [{ joint: pan-bolts, height: -100 mm }, { joint: filter-thread, height: 25 mm }]
            parts:
              stand: {}
              pan: {}
              filter: {}
            joints:
              plug: { between: [pan, stand], opens: [oil], fasteners: [{ kind: plug, thread: M14x1.5 }] }
              high-plug: { between: [pan, stand], opens: [oil], fasteners: [{ kind: plug, thread: M14x1.5 }] }
              pan-bolts: { between: [pan, stand], opens: [oil], fasteners: [{ kind: bolt, thread: M6, count: 4 }] }
              filter-thread: { between: [filter, stand], kind: press fit, opens: [oil] }
            """;

    private static Reading read(String text) {
        return EngineFile.read("tank-1.yaml", text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void levelsFallStepByStep() {
        Engine engine = ((Reading.Sound) read(FILE)).engine();
        Spills spills = Spills.from(engine, List.of(), List.of());
        List<Loss> filter = spills.undo("filter-thread");
        assertThat(filter).hasSize(1);
        assertThat(filter.getFirst().litres()).isCloseTo(1.5, within(1e-12));
        assertThat(filter.getFirst().caught()).isFalse();
        List<Loss> drained = spills.drain("drain-plug");
        assertThat(drained.getFirst().litres()).isCloseTo(3.3, within(1e-12));
        assertThat(drained.getFirst().left_litres()).isCloseTo(0.2, within(1e-12));
        assertThat(drained.getFirst().caught()).isTrue();
        assertThat(spills.undo("pan-bolts").getFirst().litres()).isCloseTo(0.2, within(1e-12));
        assertThat(spills.undo("filter-thread")).isEmpty();
        assertThat(Spills.from(engine, List.of(), List.of("drain-high-plug")).left("oil"))
                .hasValue(1.0);
    }

    /** The higher drain is quicker, and leaves 0.8 l more to spill at the pan. */
    @Test
    void theDrainThatSpillsLeastComesFirst() {
        Engine engine = ((Reading.Sound) read(FILE)).engine();
        List<Spills.DrainChoice> choices = Spills.drains(engine, "oil", List.of("pan-bolts"));
        assertThat(choices).extracting(Spills.DrainChoice::drain).containsExactly("drain-plug", "drain-high-plug");
        assertThat(choices.get(0).spilled_litres()).isCloseTo(0.2, within(1e-12));
        assertThat(choices.get(1).spilled_litres()).isCloseTo(1.0, within(1e-12));
        assertThat(Spills.drains(engine, "oil", List.of("filter-thread")).getFirst().drain())
                .isEqualTo("drain-high-plug");
    }

    @Test
    void whatCannotBeIsToldWithItsPlace() {
        assertThat(faults(FILE.replace("{ height: 50 mm, volume: 5 l }", "{ height: -20 mm, volume: 5 l }")))
                .contains("do not grow");
        assertThat(faults(FILE.replace("volume: 0 l", "volume: 1 l"))).contains("begin with 0 l");
        assertThat(faults(FILE.replace("{ joint: filter-thread, height", "{ joint: filter-tread, height")))
                .contains("filter-tread");
        assertThat(faults(FILE.replace("kind: press fit, opens: [oil]", "kind: press fit")))
                .contains("does not open oil");
        assertThat(faults(FILE.replaceFirst("contents: .*", "")))
                .contains("no 'contents'");
    }

    private static String faults(String text) {
        return read(text) instanceof Reading.Faulty faulty
                ? String.join("\n", faulty.problems().stream().map(Problem::text).toList())
                : "sound";
    }
}
