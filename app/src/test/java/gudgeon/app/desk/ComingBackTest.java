package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.book.Fluid;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a pause does to sealant and bare metal. Open times and oiling: common practice, as the engine file says. */
class ComingBackTest {
    private static final String SEALED = Finch.ENGINE.replace(
            "pattern: cross", "pattern: cross\n    sealant: { spec: flange sealant, open: 20 min, cure: 2 h }");

    @TempDir
    private Path folder = Path.of("");

    private TestBench stripped(OpenJob.Start start, String reach) {
        TestBench bench = new TestBench(folder, start, reach);
        while (bench.job.findNext().isPresent()) {
            StripPlan.Operation next = bench.job.findNext().orElseThrow();
            bench.say(
                    next.kind() == StripPlan.Kind.LIFT
                            ? new PartsOff(next.pieces(), "bench", false, "")
                            : StepDone.of(next.id()));
        }
        return bench;
    }

    private static ComingBack back(TestBench bench) {
        return ComingBack.to(bench.job, bench.workshop.now());
    }

    @Test
    void aSealantIsSpentAfterItsTimeAndFreshWhenItIsPutOnAgain() {
        try (TestBench bench = stripped(new OpenJob.Start.Text(SEALED), "head")) {
            bench.say(StepTogether.of("head-bolts/seal"));
            bench.later(Duration.ofMinutes(10));
            assertThat(back(bench).sealants())
                    .extracting(ComingBack.Sealed::state)
                    .containsExactly(ComingBack.Sealed.State.STILL_OPEN);
            bench.later(Duration.ofMinutes(30));
            assertThat(back(bench).sealants())
                    .extracting(ComingBack.Sealed::state)
                    .containsExactly(ComingBack.Sealed.State.SPENT);
            assertThat(back(bench).begin()).isEqualTo(new ComingBack.Begin.CleanOff("head-bolts"));

            bench.say(new FastenersRenewed("head-bolts", "sealant had gone off"));
            bench.say(StepTogether.of("head-bolts/seal"));
            assertThat(back(bench).sealants())
                    .extracting(ComingBack.Sealed::state)
                    .containsExactly(ComingBack.Sealed.State.STILL_OPEN);
        }
    }

    private static List<String> due(TestBench bench) {
        return back(bench).bare().stream()
                .filter(ComingBack.Bare::due)
                .map(ComingBack.Bare::surface)
                .toList();
    }

    @Test
    void aWordCountsAsOiledOnlyForWhatItNames() {
        try (TestBench bench = stripped(new OpenJob.Start.Shipped("wren-160"), "piston")) {
            bench.later(Duration.ofDays(41));
            List<String> before = due(bench);
            assertThat(before).isNotEmpty();
            bench.say(Say.that(new Fluid.Oiled("e", "engine oil")));
            assertThat(due(bench)).isEqualTo(before);
            bench.say(Say.that(new Fluid.Oiled("Barrels", "engine oil")));
            assertThat(due(bench)).hasSizeLessThan(before.size());
        }
    }
}
