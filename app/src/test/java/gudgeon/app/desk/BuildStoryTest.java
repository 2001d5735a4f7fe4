package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.book.Fluid;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Setup;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way back with torque and angle stages, an interruption in each, and a gate that refuses until all balances. */
class BuildStoryTest {
    @TempDir
    private Path folder = Path.of("");

    private TestBench stripped() {
        TestBench bench = new TestBench(folder, new OpenJob.Start.Text(Finch.ENGINE), "head");
        while (bench.job.findNext().isPresent()) {
            StripPlan.Operation next = bench.job.findNext().orElseThrow();
            bench.say(
                    next.kind() == StripPlan.Kind.LIFT
                            ? new PartsOff(next.pieces(), "bench", false, "scratched")
                            : StepDone.of(next.id()));
        }
        return bench;
    }

    private static BuildPlan.Operation next(TestBench bench) {
        return new BuildBench(bench.job).findNext().orElseThrow();
    }

    private static BuildBench.Turning turning(TestBench bench, String step) {
        BuildBench build = new BuildBench(bench.job);
        return build.turning(build.find(step).orElseThrow()).orElseThrow();
    }

    @Test
    void interruptedInTheTorqueStageAndInTheAngleStage() {
        try (TestBench bench = stripped()) {
            bench.say(StepTogether.of(next(bench).id()));
            assertThat(next(bench).kind()).isEqualTo(BuildPlan.Kind.SNUG);
            assertThat(bench.refused(StepTogether.of("head-bolts/1")))
                    .extracting(FieldProblem::kind)
                    .containsExactly(FieldProblem.Kind.NOT_YET);
            bench.say(StepTogether.of("head-bolts/snug"));

            List<String> pattern = turning(bench, "head-bolts/1").turn();
            assertThat(pattern).hasSize(4).startsWith("head-bolts/1", "head-bolts/3");
            bench.say(new FastenersTurned("head-bolts/1", pattern.subList(0, 2)));
            assertThat(turning(bench, "head-bolts/1").turn()).isEqualTo(pattern.subList(2, 4));
            bench.say(new StageBroken("head-bolts/1", true, List.of()));
            assertThat(turning(bench, "head-bolts/1").turn())
                    .as("a torque stage begins again at the first fastener")
                    .isEqualTo(pattern);
            bench.say(new FastenersTurned("head-bolts/1", pattern));
            assertThat(next(bench).id()).isEqualTo("head-bolts/2");

            bench.say(new FastenersTurned("head-bolts/2", pattern.subList(0, 1)));
            bench.say(new StageBroken("head-bolts/2", true, List.of(pattern.get(1))));
            assertThat(turning(bench, "head-bolts/2").turn())
                    .as("an angle is never turned twice: entry or mark")
                    .isEqualTo(pattern.subList(2, 4));
            assertThat(bench.refused(new FastenersTurned("head-bolts/2", pattern.subList(0, 1))))
                    .extracting(FieldProblem::kind)
                    .containsExactly(FieldProblem.Kind.TURNED_ALREADY);
            bench.say(new FastenersTurned("head-bolts/2", pattern.subList(2, 4)));
            assertThat(bench.job.stage()).isEqualTo(Job.Stage.TOGETHER);
            assertThat(ClosingUp.of(bench.job).missing()).isEmpty();
        }
    }

    @Test
    void whenItIsNotCertainWhichWereTurnedAllAreSpentAndTheJointBeginsAnew() {
        try (TestBench bench = stripped()) {
            bench.say(StepTogether.of(next(bench).id()));
            bench.say(StepTogether.of("head-bolts/snug"));
            bench.say(StepTogether.of("head-bolts/1"));
            bench.say(new FastenersTurned("head-bolts/2", List.of("1")));
            bench.say(new StageBroken("head-bolts/2", false, List.of()));
            assertThat(turning(bench, "head-bolts/2").turn()).isEmpty();
            assertThat(turning(bench, "head-bolts/2").spent()).hasSize(4);
            assertThat(bench.refused(new FastenersTurned("head-bolts/2", List.of("2"))))
                    .isNotEmpty();
            bench.say(new FastenersRenewed("head-bolts", "lost count"));
            assertThat(next(bench).id()).isEqualTo("head-bolts/snug");
            bench.say(StepTogether.of("head-bolts/snug"));
            bench.say(StepTogether.of("head-bolts/1"));
            bench.say(StepTogether.of("head-bolts/2"));
            assertThat(bench.job.stage()).isEqualTo(Job.Stage.TOGETHER);
        }
    }

    /** With its fasteners when it has some, as apart when it has none: nobody is told that no fasteners are out. */
    private static void everyOpenJointIsToldOnce(TestBench bench) {
        List<ClosingUp.Missing> apart = ClosingUp.of(bench.job).missing().stream()
                .filter(missing -> missing.sort() == ClosingUp.Missing.Sort.FASTENERS_OUT
                        || missing.sort() == ClosingUp.Missing.Sort.STILL_APART)
                .toList();
        assertThat(apart)
                .extracting(ClosingUp.Missing::about)
                .containsExactlyInAnyOrderElementsOf(bench.job.facts().stripped().open().stream()
                        .filter(id -> bench.job.engine().findJoint(id).isPresent())
                        .toList());
        assertThat(apart).allSatisfy(missing -> assertThat(bench.job.fasteners(missing.about()) > 0)
                .isEqualTo(missing.sort() == ClosingUp.Missing.Sort.FASTENERS_OUT));
    }

    @Test
    void theGateRefusesUntilEverythingBalances() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "head")) {
            while (bench.job.findNext().isPresent()) {
                StripPlan.Operation next = bench.job.findNext().orElseThrow();
                bench.say(
                        next.kind() == StripPlan.Kind.LIFT
                                ? new PartsOff(next.pieces(), "shelf", false, "tag")
                                : StepDone.of(next.id()));
            }
            bench.say(Say.that(new Fluid.Drained("oil", 0.55, "recycling point")));
            bench.say(Say.that(new Keeping.RagIn("crankcase mouth", 2)));
            bench.say(Say.that(new Keeping.Covered("inlet port", "tape")));
            List<ClosingUp.Missing.Sort> open = sorts(bench);
            assertThat(open)
                    .contains(
                            ClosingUp.Missing.Sort.FASTENERS_OUT,
                            ClosingUp.Missing.Sort.PART_AWAY,
                            ClosingUp.Missing.Sort.RAGS_IN,
                            ClosingUp.Missing.Sort.COVERED,
                            ClosingUp.Missing.Sort.NOT_FILLED);
            everyOpenJointIsToldOnce(bench);
            assertThat(Watch.tags(bench.job)).extracting(Watch.Tag::sort).contains(Watch.Tag.Sort.NO_OIL);
            assertThat(bench.refused(new ClosingUp.Close(""))).isNotEmpty();

            build(bench);
            assertThat(sorts(bench))
                    .containsExactlyInAnyOrder(ClosingUp.Missing.Sort.RAGS_IN, ClosingUp.Missing.Sort.COVERED);
            bench.say(Say.that(new Keeping.RagOut("crankcase mouth", 1)));
            assertThat(sorts(bench)).contains(ClosingUp.Missing.Sort.RAGS_IN);
            bench.say(Say.that(new Keeping.RagOut("crankcase mouth", 1)));
            bench.say(Say.that(new Keeping.Uncovered("inlet port")));
            assertThat(sorts(bench)).isEmpty();
            bench.say(new ClosingUp.Close("by lamp and mirror"));
            assertThat(ClosingUp.isClosed(bench.job)).isTrue();
            assertThat(Watch.tags(bench.job)).isEmpty();
        }
    }

    private static List<ClosingUp.Missing.Sort> sorts(TestBench bench) {
        return ClosingUp.of(bench.job).missing().stream()
                .map(ClosingUp.Missing::sort)
                .distinct()
                .toList();
    }

    private static void build(TestBench bench) {
        List<String> confirmed = new ArrayList<>();
        for (int n = 0; n < 300; n++) {
            Optional<BuildPlan.Operation> next = new BuildBench(bench.job).findNext();
            if (next.isEmpty()) {
                return;
            }
            BuildPlan.Operation step = next.get();
            for (BuildPlan.Lack lack : step.holdUp().blockedBy()) {
                assertThat(lack.kind()).isEqualTo(BuildPlan.LackKind.LIMIT_NOT_CONFIRMED);
                lack.about().stream()
                        .filter(confirmed::add)
                        .forEach(feature -> bench.say(Say.that(new Setup.LimitConfirmed(feature, "manual"))));
            }
            bench.say(new StepTogether(step.id(), 2, step.kind() == BuildPlan.Kind.FILL ? 0.58 : 0, "seen"));
        }
    }
}
