package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening jobs in all ways, and walking through a plan. */
class OpenJobTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aShippedEngineIsStrippedStepByStepAsPlanned() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "piston")) {
            long planned = bench.job.findPlan().orElseThrow().operations().size();
            int steps = 0;
            while (bench.job.findNext().isPresent() && steps < 200) {
                StripPlan.Operation next = bench.job.findNext().orElseThrow();
                Workshop.Noted.Done done = next.kind() == StripPlan.Kind.LIFT
                        ? bench.say(new PartsOff(next.pieces(), "shelf", false, ""))
                        : bench.say(StepDone.of(next.id()));
                assertThat(done.change().added()).as("after %s", next.id()).isEmpty();
                assertThat(done.change().gone()).as("after %s", next.id()).isEmpty();
                steps++;
            }
            assertThat(steps).isEqualTo(planned);
            assertThat(bench.job.stage()).isEqualTo(Job.Stage.STRIPPED);
            assertThat(bench.job.facts().contradictions()).isEmpty();
            assertThat(JobList.of(bench.workshop)).hasSize(1);
        }
    }

    @Test
    void aLikeEngineCarriesItsOwnNameAndPlansTheSame() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Like("wren-160", "Old mower"), "head")) {
            assertThat(bench.job.engine().identity().name()).isEqualTo("Old mower");
            assertThat(bench.job.facts().setting().like()).isEqualTo("wren-160");
            assertThat(bench.job.findNext()).isPresent();
        }
    }

    @Test
    void nearlyNothingIsASoundFile() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Empty("Pump engine"), "block")) {
            assertThat(bench.job.engine().identity().name()).isEqualTo("Pump engine");
            assertThat(bench.job.ownEngine().setAside()).isEmpty();
        }
    }
}
