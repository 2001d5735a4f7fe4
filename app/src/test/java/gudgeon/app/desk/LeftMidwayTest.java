package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.book.Build;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody leaves a stage without a word and comes back. Rules: common practice for bolted joints: a torque stage starts again at
 * the first bolt, an angle is never turned twice.
 */
class LeftMidwayTest {
    private static final String TORQUE = "head-bolts/1";
    private static final String ANGLE = "head-bolts/2";

    @TempDir
    private Path folder = Path.of("");

    /** Stripped, with a note about the joint and one about the part; back in place and snug. */
    private TestBench snug() {
        TestBench bench = new TestBench(folder, new OpenJob.Start.Text(Finch.ENGINE), "head");
        bench.say(new Say(new Word.Note("left rear one is stiff"), Things.refs(bench.job, List.of("head-bolts"))));
        bench.say(new Say(new Word.Note("arrow to the belt"), Things.refs(bench.job, List.of("head"))));
        while (bench.job.findNext().isPresent()) {
            StripPlan.Operation next = bench.job.findNext().orElseThrow();
            bench.say(
                    next.kind() == StripPlan.Kind.LIFT
                            ? new PartsOff(next.pieces(), "bench", false, "")
                            : StepDone.of(next.id()));
        }
        bench.say(StepTogether.of(new BuildBench(bench.job).findNext().orElseThrow().id()));
        bench.say(StepTogether.of("head-bolts/snug"));
        return bench;
    }

    private static BuildBench.Turning turning(TestBench bench, String step) {
        BuildBench build = new BuildBench(bench.job);
        return build.turning(build.find(step).orElseThrow()).orElseThrow();
    }

    private static List<FieldProblem.Kind> kinds(List<FieldProblem> problems) {
        return problems.stream().map(FieldProblem::kind).toList();
    }

    @Test
    void aTorqueStageLeftForLongStartsAgainAtTheFirst() {
        try (TestBench bench = snug()) {
            List<String> pattern = turning(bench, TORQUE).turn();
            bench.say(new FastenersTurned(TORQUE, pattern.subList(0, 2)));
            bench.later(BuildBench.AWAY);
            assertThat(turning(bench, TORQUE).turn())
                    .as("just as long as one may be away")
                    .isEqualTo(pattern.subList(2, 4));
            bench.later(Duration.ofSeconds(1));
            assertThat(turning(bench, TORQUE).turn()).isEqualTo(pattern);
            assertThat(turning(bench, TORQUE).left()).isTrue();
            assertThat(turning(bench, TORQUE).leave()).isEmpty();

            assertThat(kinds(bench.refused(new FastenersTurned(TORQUE, pattern.subList(2, 4)))))
                    .as("what an old page still offers")
                    .containsExactly(FieldProblem.Kind.LEFT_MIDWAY);
            assertThat(kinds(bench.refused(StepTogether.of(TORQUE)))).containsExactly(FieldProblem.Kind.LEFT_MIDWAY);
            Workshop.Noted.Done done = bench.say(new FastenersTurned(TORQUE, pattern.subList(0, 1)));
            assertThat(done.entries().getFirst().body())
                    .as("the book tells it too")
                    .isEqualTo(new Build.Interrupted("head-bolts", 1, true));
            assertThat(turning(bench, TORQUE).turn()).isEqualTo(pattern.subList(1, 4));
            assertThat(turning(bench, TORQUE).left()).isFalse();
        }
    }

    @Test
    void anotherSessionIsALeavingHoweverShort() {
        try (TestBench bench = snug()) {
            List<String> pattern = turning(bench, TORQUE).turn();
            bench.say(Say.that(new Setup.SessionStarted("saturday")));
            bench.say(new FastenersTurned(TORQUE, pattern.subList(0, 1)));
            bench.say(Say.that(new Setup.SessionEnded("saturday", true, "")));
            assertThat(turning(bench, TORQUE).turn()).isEqualTo(pattern);
            bench.say(Say.that(new Setup.SessionStarted("sunday")));
            assertThat(turning(bench, TORQUE).turn()).isEqualTo(pattern);
            bench.say(new FastenersTurned(TORQUE, pattern));
            assertThat(bench.job.facts().built().steps().getLast().step()).isEqualTo(TORQUE);
        }
    }

    @Test
    void anAngleStageLeftAsksForTheMarksAndTurnsNoneTwice() {
        try (TestBench bench = snug()) {
            List<String> pattern = turning(bench, TORQUE).turn();
            bench.say(StepTogether.of(TORQUE));
            bench.say(new FastenersTurned(ANGLE, pattern.subList(0, 1)));
            bench.later(Duration.ofDays(6));
            BuildBench.Turning left = turning(bench, ANGLE);
            assertThat(left.turn()).as("nothing before the marks are told").isEmpty();
            assertThat(left.leave()).isEqualTo(pattern.subList(0, 1));
            for (Deed deed : List.of(
                    StepTogether.of(ANGLE),
                    new FastenersTurned(ANGLE, pattern.subList(1, 4)),
                    new FastenersTurned(ANGLE, pattern.subList(1, 2)))) {
                assertThat(kinds(bench.refused(deed))).containsExactly(FieldProblem.Kind.MARKS_NOT_SAID);
            }
            bench.say(new StageBroken(ANGLE, true, pattern.subList(1, 2)));
            assertThat(turning(bench, ANGLE).turn()).isEqualTo(pattern.subList(2, 4));
            assertThat(kinds(bench.refused(new FastenersTurned(ANGLE, pattern.subList(1, 2)))))
                    .containsExactly(FieldProblem.Kind.TURNED_ALREADY);
            bench.later(Duration.ofHours(2));
            bench.say(new StageBroken(ANGLE, true, pattern.subList(2, 4)));
            assertThat(bench.job.stage()).as("all marks have moved").isEqualTo(Job.Stage.TOGETHER);
        }
    }

    @Test
    void anAngleStageOfWhichNothingIsWrittenIsAskedForToo() {
        try (TestBench bench = snug()) {
            List<String> pattern = turning(bench, TORQUE).turn();
            bench.say(StepTogether.of(TORQUE));
            assertThat(turning(bench, ANGLE).turn()).isEqualTo(pattern);
            bench.later(Duration.ofHours(1));
            assertThat(turning(bench, ANGLE).left()).isTrue();
            assertThat(turning(bench, ANGLE).turn()).isEmpty();
            bench.say(new StageBroken(ANGLE, false, List.of()));
            assertThat(turning(bench, ANGLE).spent()).hasSize(4);
        }
    }

    @Test
    void sayingItTwiceAfterALeavingIsOnce() {
        try (TestBench bench = snug()) {
            List<String> pattern = turning(bench, TORQUE).turn();
            bench.say(new FastenersTurned(TORQUE, pattern.subList(0, 2)));
            bench.later(Duration.ofHours(1));
            Optional<java.util.UUID> id = Optional.of(bench.workshop.nextId());
            FastenersTurned first = new FastenersTurned(TORQUE, pattern.subList(0, 1));
            Workshop.Noted once = bench.workshop.note(bench.job, first, Who.SOMEBODY, id);
            bench.job = ((Workshop.Noted.Done) once).job();
            Workshop.Noted twice = bench.workshop.note(bench.job, first, Who.SOMEBODY, id);
            assertThat(((Workshop.Noted.Done) twice).entries()).isEqualTo(((Workshop.Noted.Done) once).entries());
            List<JobState.Told> book = bench.job.state().history();
            assertThat(book.stream().filter(told -> told.entry().body() instanceof Build.StageReached))
                    .hasSize(2);
        }
    }

    @Test
    void whatWasWrittenAtTheStripIsToldWhenItGoesBack() {
        try (TestBench bench = snug()) {
            bench.say(new CountFound(
                    "head-bolts",
                    OptionalInt.of(4),
                    List.of(new Strip.Piece(1, "M10x1.25", 95, "left rear")),
                    "1",
                    "one is longer",
                    false));
            BuildBench build = new BuildBench(bench.job);
            Remembered joint = Remembered.step(bench.job, build.find(TORQUE).orElseThrow());
            assertThat(joint.words()).containsExactly("one is longer", "left rear one is stiff");
            assertThat(joint.pieces()).extracting(Strip.Piece::position).containsExactly("left rear");
            assertThat(Remembered.parts(bench.job, List.of("head")).words()).containsExactly("arrow to the belt");
            assertThat(Remembered.inList(bench.job, build.find(TORQUE).orElseThrow())
                            .words())
                    .isEmpty();
            assertThat(Remembered.inList(bench.job, build.find("head-bolts/snug").orElseThrow())
                            .words())
                    .hasSize(2);
        }
    }
}
