package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Caution;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A danger is read before the hand moves, where it is met first and after every pause: common practice of safety at work. */
class ToldAtBenchTest {
    /** Six pipes in a row under the same pressure; invented. */
    private static final String PIPES = """
            format: 1
            engine: { id: petrel-1, name: Petrel 1, base: block }
            zones: { top: { name: Top } }
            parts:
              block: { mass: 30 kg }
              pipe-1: { mass: 0.1 kg }
              pipe-2: { mass: 0.1 kg }
              pipe-3: { mass: 0.1 kg }
              pipe-4: { mass: 0.1 kg }
            joints:
              union-1: { between: [pipe-1, block], cautions: [fuel-pressure], fasteners: [{ kind: union nut }] }
              union-2: { between: [pipe-2, block], cautions: [fuel-pressure], access: [pipe-1], fasteners: [{ kind: union nut }] }
              union-3: { between: [pipe-3, block], cautions: [fuel-pressure], access: [pipe-2], fasteners: [{ kind: union nut }] }
              union-4: { between: [pipe-4, block], cautions: [fuel-pressure], access: [pipe-3], fasteners: [{ kind: union nut }] }
            """;

    @TempDir
    private Path folder = Path.of("");

    private TestBench pipes() {
        return new TestBench(folder, new OpenJob.Start.Text(PIPES), "pipe-4");
    }

    private static ToldCautions.Told told(TestBench bench) {
        return ToldAtBench.strip(bench.job, bench.job.findNext().orElseThrow());
    }

    /** Does the next step; a lift is named by its parts. */
    private static void step(TestBench bench) {
        StripPlan.Operation next = bench.job.findNext().orElseThrow();
        bench.say(
                next.kind() == StripPlan.Kind.LIFT
                        ? new PartsOff(next.pieces(), "bench", false, "")
                        : StepDone.of(next.id()));
    }

    @Test
    void aDangerIsWrittenOutWhereItIsMetFirstAndNeverAbsentLater() {
        try (TestBench bench = pipes()) {
            List<String> how = new ArrayList<>();
            while (bench.job.findNext().isPresent()) {
                ToldCautions.Told told = told(bench);
                how.add(told.dangers().isEmpty() ? told.recent().isEmpty() ? "-" : "title" : "text");
                step(bench);
            }
            assertThat(how).containsExactly("text", "-", "title", "-", "text", "-", "title", "-");
        }
    }

    @Test
    void whoeverWasAwayReadsItAgain() {
        try (TestBench bench = pipes()) {
            step(bench);
            step(bench);
            assertThat(told(bench).dangers()).as("fresh").isEmpty();
            bench.later(BuildBench.AWAY.plus(Duration.ofSeconds(1)));
            assertThat(told(bench).dangers()).extracting(Caution::id).containsExactly("fuel-pressure");
        }
    }

    @Test
    void aStepTakenBackHasToldNothing() {
        try (TestBench bench = pipes()) {
            step(bench);
            bench.say(new UndoLast());
            assertThat(told(bench).dangers()).extracting(Caution::id).containsExactly("fuel-pressure");
        }
    }
}
