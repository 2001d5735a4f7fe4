package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.bolting.Adaptor;
import gudgeon.core.bolting.Wrench;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Setup;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tighten with what I own: mixed units, three wrenches, a crow-foot, the phone at bolt 7 of 10. Rules and figures: common practice. */
class TightenWithWhatIOwnTest {
    private static final String ENGINE = """
            format: 1
            engine: { id: siskin, name: Siskin, cycle: petrol four-stroke, cylinders: 1, base: block }
            zones: { top: {} }
            circuits: {}
            parts:
              block: { name: Block, mass: 20 kg }
              head: { name: Head, mass: 4 kg, rest: on-blocks }
              stand: { name: Stand, mass: 30 kg }
            joints:
              mount:
                between: [block, stand]
                zone: top
                fasteners: [{ count: 2, kind: bolt, thread: M10x1.5, length: 40 mm, drive: hexagon 17 mm }]
                tighten: [{ torque: 40 N·m, thread: dry }]
              head-bolts:
                between: [head, block]
                zone: top
                rests: true
                fasteners:
                  - { count: 10, kind: bolt, thread: M10x1.5, length: 95 mm, drive: hexagon 15 mm, class: 10.9,
                      at: [[0, 0], [80, 0], [160, 0], [240, 0], [320, 0], [0, 90], [80, 90], [160, 90], [240, 90], [320, 90]] }
                tighten: [{ torque: 10 N·m, thread: oiled }, { torque: 44.25 lbf·ft, thread: oiled }, { angle: 90 °, thread: oiled }]
                pattern: spiral-out
            """;

    @TempDir
    private Path folder = Path.of("");

    private static JointTightening tightening(TestBench bench, String joint, Optional<Adaptor> adaptor) {
        return new JointTightening(bench.job, joint, Toolbox.of(bench.workshop, bench.job), adaptor);
    }

    private static void owns(TestBench bench, String... tools) {
        for (String tool : tools) {
            bench.say(Say.that(new Keeping.ToolMarked(tool, Keeping.Whose.OWNED, "")));
        }
    }

    @Test
    void theRightWrenchWithTheOffsetCorrected() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Text(ENGINE), "head")) {
            owns(bench, "torque wrench 5-25 N·m", "torque wrench 20 to 100 Nm", "torque wrench 40–200 N·m", "mallet");
            List<JointTightening.Stage> straight =
                    tightening(bench, "head-bolts", Optional.empty()).stages();
            assertThat(straight.get(0)
                            .choice()
                            .flatMap(Wrench.Choice::best)
                            .orElseThrow()
                            .name())
                    .contains("5-25");
            assertThat(straight.get(0).choice().orElseThrow().judged())
                    .extracting(Wrench.Judged::fit)
                    .containsExactly(Wrench.Fit.SUITS, Wrench.Fit.BELOW_SCALE, Wrench.Fit.BELOW_SCALE);
            assertThat(straight.get(1).setting_Nm().orElseThrow()).isCloseTo(59.995, within(0.001));
            JointTightening.Stage footed = tightening(bench, "head-bolts", Optional.of(new Adaptor(400, 50, 0)))
                    .stages()
                    .get(1);
            assertThat(footed.setting_Nm().orElseThrow()).isCloseTo(53.33, within(0.01));
            assertThat(footed.choice()
                            .flatMap(Wrench.Choice::best)
                            .orElseThrow()
                            .name())
                    .contains("20 to 100");
            assertThat(straight.get(1).band().orElseThrow().ratio()).isBetween(1.6, 2.0);
            assertThat(straight.get(2).setting_Nm())
                    .as("an angle is not set on a wrench")
                    .isEmpty();
        }
    }

    @Test
    void withoutTheStateOfTheThreadItIsRefused() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Text(ENGINE), "head")) {
            OpenJob unsaid = new OpenJob(
                    "Unsaid",
                    new OpenJob.Start.Text(ENGINE.replace("torque: 40 N·m, thread: dry", "torque: 40 N·m")),
                    new StripQuestion.Goal(List.of("head"), List.of(), List.of(), List.of()),
                    new Setup.Settings(List.of(), 0, "metric", ""));
            OpenJob.Reply reply = unsaid.open(bench.workshop, Who.SOMEBODY, Optional.empty());
            assertThat(reply).isInstanceOf(OpenJob.Reply.Refused.class);
            assertThat(reply.toString()).contains("without the state of the thread");
            JointTightening mount = tightening(bench, "mount", Optional.empty());
            assertThat(mount.stages()).noneMatch(JointTightening.Stage::refused);
            assertThat(mount.stages().getFirst().band())
                    .as("no class on the head, no band")
                    .isEmpty();
        }
    }

    @Test
    void thePhoneRingsAtBoltSeven() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Text(ENGINE), "head")) {
            while (bench.job.findNext().isPresent()) {
                StripPlan.Operation next = bench.job.findNext().orElseThrow();
                bench.say(
                        next.kind() == StripPlan.Kind.LIFT
                                ? new PartsOff(next.pieces(), "bench", false, "scratched")
                                : StepDone.of(next.id()));
            }
            BuildBench build = new BuildBench(bench.job);
            for (String id :
                    build.plan().operations().stream().map(step -> step.id()).toList()) {
                if (id.equals("head-bolts/1")) {
                    break;
                }
                bench.say(StepTogether.of(id));
            }
            List<String> order =
                    tightening(bench, "head-bolts", Optional.empty()).order();
            assertThat(order).hasSize(10).doesNotHaveDuplicates();
            bench.say(new FastenersTurned("head-bolts/1", order));
            bench.say(new FastenersTurned("head-bolts/2", order.subList(0, 7)));
            assertThat(stage(bench, 2).had()).hasSize(7);
            bench.say(new StageBroken("head-bolts/2", true, List.of()));
            assertThat(stage(bench, 2).had())
                    .as("the stage starts again at bolt 1")
                    .isEmpty();
            bench.say(new FastenersTurned("head-bolts/2", order));
            bench.say(new FastenersTurned("head-bolts/3", order.subList(0, 7)));
            bench.say(new StageBroken("head-bolts/3", true, List.of()));
            assertThat(stage(bench, 3).had())
                    .as("an angle is never turned twice")
                    .isEqualTo(order.subList(0, 7));
            BuildBench angle = new BuildBench(bench.job);
            assertThat(angle.turning(angle.find("head-bolts/3").orElseThrow())
                            .orElseThrow()
                            .turn())
                    .isEqualTo(order.subList(7, 10));
            JointTightening known = tightening(bench, "head-bolts", Optional.empty());
            assertThat(known.joint().makeup().fasteners()).allMatch(fastener -> known.cycles(fastener) == 1);
            bench.say(new StageBroken("head-bolts/3", false, List.of()));
            BuildBench spent = new BuildBench(bench.job);
            assertThat(spent.turning(spent.find("head-bolts/3").orElseThrow())
                            .orElseThrow()
                            .spent())
                    .hasSize(10);
            bench.say(new FastenersRenewed("head-bolts", "not certain which had their angle"));
            JointTightening anew = tightening(bench, "head-bolts", Optional.empty());
            assertThat(anew.stages()).allMatch(stage -> stage.had().isEmpty());
            assertThat(IntStream.range(0, 10)
                            .map(i -> anew.cycles(
                                    anew.joint().makeup().fasteners().get(i))))
                    .containsOnly(1);
        }
    }

    private static JointTightening.Stage stage(TestBench bench, int number) {
        return tightening(bench, "head-bolts", Optional.empty()).stages().get(number - 1);
    }
}
