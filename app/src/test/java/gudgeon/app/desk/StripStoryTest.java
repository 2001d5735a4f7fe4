package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.book.Facts;
import gudgeon.core.book.Fault;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Word;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten steps of a strip as they go in a barn: a miscount, a seized bolt that is drilled, a joint the file lacks, a note. */
class StripStoryTest {
    @TempDir
    private Path folder = Path.of("");

    private static void step(TestBench bench) {
        StripPlan.Operation next = bench.job.findNext().orElseThrow();
        if (next.kind() == StripPlan.Kind.LIFT) {
            bench.say(new PartsOff(next.pieces(), "shelf", false, ""));
        } else {
            bench.say(new StepDone(next.id(), OptionalInt.empty(), String.valueOf(bench.job.nextBag()), 4, false));
        }
    }

    @Test
    void tenStepsWithEverythingThatHappens() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "piston")) {
            for (int n = 0; n < 10; n++) {
                step(bench);
            }
            assertThat(bench.job.facts().stripped().acts()).hasSize(10);
            assertThat(bench.job.facts().contradictions()).isEmpty();

            miscount(bench);
            seizedAndDrilled(bench);
            addedJoint(bench);
            bench.say(new Say(new Word.Note("left stud worn"), List.of(Ref.part("Cylinder head"))));
            assertThat(bench.job.state().history().getLast().entry().about()).containsExactly(Ref.part("head"));
        }
    }

    @Test
    void aSnappedFastenerMustBeBought() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "piston")) {
            Joint joint = bench.job.engine().joints().stream()
                    .filter(one -> one.makeup().fasteners().stream()
                            .anyMatch(fastener -> fastener.once().isEmpty() && !fastener.thread().isEmpty()))
                    .findFirst()
                    .orElseThrow();
            Fastener snapped = joint.makeup().fasteners().stream()
                    .filter(fastener -> fastener.once().isEmpty())
                    .findFirst()
                    .orElseThrow();
            PlanChange change = bench.say(new TroubleMet(joint.id(), Fault.Kind.SNAPPED, List.of(snapped.id()), ""))
                    .change();
            assertThat(change.buyMore()).singleElement().satisfies(spend -> {
                assertThat(spend.count()).isEqualTo(1);
                assertThat(spend.spec()).contains(snapped.thread());
            });
            assertThat(change.isNothing()).isFalse();
            assertThat(bench.say(new UndoLast()).change().buyLess()).hasSize(1);
        }
    }

    /** What must keep its place, is not marked, and is held by nothing after the step: said before the step, until it is marked. */
    @Test
    void whatWouldLoseItsPlaceIsToldBeforeTheStep() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "crankshaft")) {
            int told = 0;
            for (int n = 0; n < 200 && bench.job.findNext().isPresent(); n++) {
                StripPlan.Operation next = bench.job.findNext().orElseThrow();
                List<String> falling = Watch.falling(bench.job, next);
                for (String part : falling) {
                    told++;
                    assertThat(bench.job.engine().part(part).care().keep()).as(part).isNotEmpty();
                    assertThat(bench.job.facts().stripped().away()).doesNotContainKey(part);
                    bench.say(Say.that(new Keeping.Marked(List.of(part), "scribed")));
                }
                assertThat(Watch.falling(bench.job, next)).as("marked before " + next.id()).isEmpty();
                step(bench);
            }
            assertThat(told).as("parts of the Wren that would lose their place").isPositive();
        }
    }

    private static void miscount(TestBench bench) {
        String joint = bench.job.facts().stripped().acts().stream()
                .map(Facts.Act::operation)
                .filter(id -> bench.job.engine().findJoint(id).isPresent())
                .filter(id -> bench.job.fasteners(id) > 1)
                .findFirst()
                .orElseThrow();
        int right = bench.job.fasteners(joint);
        bench.say(CountFound.wrongCount(joint, right - 1));
        assertThat(bench.job.fasteners(joint)).isEqualTo(right - 1);
        assertThat(bench.job.facts().contradictions())
                .as("a corrected count is no contradiction")
                .isEmpty();
        assertThat(ClosingUp.of(bench.job).missing()).anySatisfy(missing -> {
            assertThat(missing.sort()).isEqualTo(ClosingUp.Missing.Sort.FASTENERS_FEWER);
            assertThat(missing.about()).isEqualTo(joint);
        });
        bench.say(new UndoLast());
        assertThat(bench.job.fasteners(joint))
                .as("undone, both entries of the stroke")
                .isEqualTo(right);
    }

    private static void seizedAndDrilled(TestBench bench) {
        String joint = "head-studs";
        bench.say(new TroubleMet(joint, Fault.Kind.SEIZED, List.of("2"), ""));
        assertThat(JobList.line(bench.job).waits())
                .extracting(JobList.Wait::about)
                .contains(joint);
        assertThat(TroubleMet.ladder(bench.job, joint, Fault.Kind.SEIZED)).isNotEmpty();
        bench.say(new RescueTried(joint, List.of("2"), "soak", 3, Fault.Outcome.NO));
        assertThat(TroubleMet.ladder(bench.job, joint, Fault.Kind.SEIZED))
                .extracting(rung -> rung.id())
                .doesNotContain("soak");
        bench.say(new RescueTried(joint, List.of("head-studs/2"), "drill", 70, Fault.Outcome.DRILLED));
        assertThat(JobList.line(bench.job).waits())
                .extracting(JobList.Wait::about)
                .doesNotContain(joint);
        assertThat(bench.job.facts().findings().troubles().getFirst().outcome()).isEqualTo(Fault.Outcome.DRILLED);
    }

    private static void addedJoint(TestBench bench) {
        long before = bench.job.findPlan().orElseThrow().totalSeconds();
        assertThat(bench.refused(new JointAdded("", "piston", "4 y M8", "")))
                .extracting(FieldProblem::field)
                .contains("name", "between", "fasteners");
        assertThat(bench.refused(new JointAdded("Bracket", "Cylinder hed, crankcase", "2 x M8x25", "")))
                .singleElement()
                .satisfies(problem -> assertThat(problem.near()).contains("cylinder head (head)"));
        Workshop.Noted.Done done = bench.say(
                new JointAdded("Extra bracket bolts", "Cylinder head to Crankcase half, stand side", "2 x M8x25", ""));
        assertThat(done.change().added()).extracting(StripPlan.Operation::id).contains("extra-bracket-bolts");
        assertThat(bench.job.engine().joint("extra-bracket-bolts").makeup().fasteners())
                .hasSize(2)
                .allSatisfy(fastener -> assertThat(fastener.thread()).isEqualTo("M8x1.25"));
        assertThat(bench.job.findPlan().orElseThrow().totalSeconds()).isGreaterThan(before);
        Workshop.Noted.Done undone = bench.say(new UndoLast());
        assertThat(undone.change().gone()).extracting(StripPlan.Operation::id).contains("extra-bracket-bolts");
    }

    @Test
    void offOutOfTurnIsTakenAndThePlanFollows() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "piston")) {
            List<StripPlan.Operation> plan = bench.job.findPlan().orElseThrow().operations();
            StripPlan.Operation later = plan.stream()
                    .filter(operation -> operation.kind() == StripPlan.Kind.UNDO)
                    .skip(3)
                    .findFirst()
                    .orElseThrow();
            bench.say(StepDone.of(later.id()));
            assertThat(bench.job.findPlan().orElseThrow().operations())
                    .extracting(StripPlan.Operation::id)
                    .doesNotContain(later.id());
            assertThat(bench.refused(StepDone.of(later.id())))
                    .extracting(FieldProblem::kind)
                    .containsExactly(FieldProblem.Kind.ALREADY_DONE);
        }
    }

    @Test
    void aJointThatWillNotComeChangesThePlanAndBack() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "silencer")) {
            long before = bench.job.findPlan().orElseThrow().totalSeconds();
            Workshop.Noted.Done done = bench.say(new JointRefuses("exhaust-nuts", false));
            assertThat(done.change().isNothing()).isFalse();
            assertThat(done.change().buyMore()).isNotEmpty();
            bench.say(new JointRefuses("exhaust-nuts", true));
            assertThat(bench.job.findPlan().orElseThrow().totalSeconds()).isEqualTo(before);
        }
    }

    @Test
    void whatHasComeLooseIsLiftedBeforeAnythingElse() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "head")) {
            for (int n = 0; n < 60 && bench.job.findNext().isPresent(); n++) {
                StripPlan.Operation planned = bench.job.findPlan().orElseThrow().operations().stream()
                        .skip(1)
                        .findFirst()
                        .orElse(null);
                step(bench);
                if (planned != null && planned.kind() == StripPlan.Kind.LIFT) {
                    assertThat(bench.job.findNext().orElseThrow().kind())
                            .as("the plan from the present state goes on as the one before")
                            .isEqualTo(StripPlan.Kind.LIFT);
                }
            }
            assertThat(bench.job.stage()).isEqualTo(Job.Stage.STRIPPED);
        }
    }

    @Test
    void sendingTheSameTwiceIsHarmless() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Shipped("wren-160"), "head")) {
            java.util.UUID id = bench.workshop.nextId();
            StepDone done = StepDone.of(bench.job.findNext().orElseThrow().id());
            bench.workshop.note(bench.job, done, Who.SOMEBODY, java.util.Optional.of(id));
            Job after = bench.workshop.findJob(bench.job.id()).orElseThrow();
            assertThat(bench.workshop.note(after, done, Who.SOMEBODY, java.util.Optional.of(id)))
                    .isInstanceOf(Workshop.Noted.Done.class);
            assertThat(bench.workshop
                            .findJob(bench.job.id())
                            .orElseThrow()
                            .facts()
                            .stripped()
                            .acts())
                    .hasSize(1);
        }
    }
}
