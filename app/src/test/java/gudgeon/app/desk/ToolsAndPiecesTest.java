package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.book.Keeping;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.planning.BuildPlan;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is in the toolbox, and what arrived beside what was taken off. Half a millimetre: common practice with a rule. */
class ToolsAndPiecesTest {
    /** A cover with a gasket and bolts used once; invented, values typical. */
    private static final String ENGINE = """
            format: 1
            engine: { id: finch-2, name: Finch 2, base: block }
            zones:
              top: { name: Top }
            parts:
              block: { mass: 30 kg }
              cover: { name: Cover, mass: 2 kg }
            joints:
              cover-bolts:
                between: [cover, block]
                fasteners: [{ count: 6, kind: bolt, thread: M6x1, length: 25 mm, drive: hexagon 10 mm, once: all }]
                seals: [{ gasket: cover gasket, once: true }, { washer: copper washer 10 x 16 x 1, count: 2, once: true }]
                tools: [long ratchet]
            """;

    private static final String GASKET = "cover gasket";

    @TempDir
    private Path folder = Path.of("");

    private TestBench bench() {
        return new TestBench(folder, new OpenJob.Start.Text(ENGINE), "cover");
    }

    private static String was(TestBench bench, String spec, OldBesideNew.Sort sort) {
        return OldBesideNew.of(bench.job, spec).facts().stream()
                .filter(fact -> fact.sort() == sort)
                .map(OldBesideNew.Fact::was)
                .findFirst()
                .orElse("none");
    }

    private static String bolt(TestBench bench) {
        return bench.job.engine().joint("cover-bolts").makeup().spends().stream()
                .map(spend -> spend.spec())
                .filter(spec -> spec.contains("M6x1"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theOldOneIsAsFoundElseAsTheFileSays() {
        try (TestBench bench = bench()) {
            assertThat(was(bench, GASKET, OldBesideNew.Sort.HOLES)).isEqualTo("6");
            assertThat(was(bench, GASKET, OldBesideNew.Sort.LENGTH)).isEqualTo("none");
            assertThat(was(bench, "copper washer 10 x 16 x 1", OldBesideNew.Sort.SIZE)).isEqualTo("10 x 16 x 1");
            assertThat(was(bench, "copper washer 10 x 16 x 1", OldBesideNew.Sort.COUNT)).isEqualTo("2");
            assertThat(was(bench, bolt(bench), OldBesideNew.Sort.COUNT)).isEqualTo("6");
            assertThat(was(bench, bolt(bench), OldBesideNew.Sort.LENGTH)).isEqualTo("25");
            assertThat(was(bench, bolt(bench), OldBesideNew.Sort.SIZE)).isEqualTo("M6x1");
            List<Strip.Piece> pieces = List.of(new Strip.Piece(6, "M6x1", 28, ""));
            bench.say(new CountFound("cover-bolts", OptionalInt.of(6), pieces, "1", "", false));
            assertThat(was(bench, bolt(bench), OldBesideNew.Sort.LENGTH)).isEqualTo("28");
        }
    }

    /** However few minutes there are: what is not there must be got before it is needed. */
    @Test
    void toolsThatAnyOpenStepLacksAreNamedWithTheOrder() {
        try (TestBench bench = bench()) {
            assertThat(LayOut.lacking(bench.job, Toolbox.of(bench.workshop, bench.job)))
                    .as("nobody said whether it is there")
                    .isEmpty();
            bench.say(Say.that(new Keeping.ToolMarked("Long ratchet", Keeping.Whose.MISSING, "")));
            assertThat(LayOut.lacking(bench.job, Toolbox.of(bench.workshop, bench.job)))
                    .extracting(LayOut.Tool::name)
                    .containsExactly("long ratchet");
            bench.later(Duration.ofMinutes(1));
            bench.say(Say.that(new Keeping.ToolMarked("long ratchet", Keeping.Whose.BORROWED, "Ann")));
            assertThat(LayOut.lacking(bench.job, Toolbox.of(bench.workshop, bench.job)))
                    .isEmpty();
        }
    }

    @Test
    void aDifferenceIsToldBeforeItIsFitted() {
        try (TestBench bench = bench()) {
            String bolt = bolt(bench);
            bench.say(StepDone.of(bench.job.findNext().orElseThrow().id()));
            bench.say(new PartsOff(List.of("cover"), "shelf", false, ""));
            bench.say(new CameIn(bolt, 6, true, Map.of(OldBesideNew.Sort.LENGTH, "25.4 mm"), ""));
            assertThat(OldBesideNew.differences(bench.job, bolt)).as("a rule cannot tell them apart").isEmpty();
            bench.say(new CameIn(bolt, 6, true, Map.of(OldBesideNew.Sort.LENGTH, "22"), ""));
            assertThat(OldBesideNew.differences(bench.job, bolt))
                    .containsExactly(new Keeping.Compared(bolt, "length", "25", "22"));
            assertThat(bench.job.state().history().reversed().stream()
                            .map(told -> told.entry().body())
                            .filter(Keeping.Received.class::isInstance)
                            .map(Keeping.Received.class::cast)
                            .findFirst())
                    .as("a tick does not outweigh a fact")
                    .hasValueSatisfying(received -> assertThat(received.compared()).isFalse());
            BuildBench build = new BuildBench(bench.job);
            List<BuildPlan.Operation> fits = build.plan().operations().stream()
                    .filter(step -> !build.differences(step).isEmpty())
                    .toList();
            assertThat(fits).isNotEmpty();
            BuildPlan.Operation turned = build.plan().operations().stream()
                    .filter(step -> step.id().equals("cover-bolts/snug"))
                    .findFirst()
                    .orElseThrow();
            assertThat(fits.getFirst().number()).as("before it is fast").isLessThanOrEqualTo(turned.number());
            assertThat(build.findNext()).as("at the bench at once").contains(fits.getFirst());
            bench.say(new CameIn(bolt, 6, false, Map.of(OldBesideNew.Sort.LENGTH, "25"), "sent back, others came"));
            assertThat(OldBesideNew.differences(bench.job, bolt)).isEmpty();
            assertThat(bench.refused(new CameIn(GASKET, 1, false, Map.of(OldBesideNew.Sort.HOLES, "six"), "")))
                    .extracting(FieldProblem::field)
                    .containsExactly("holes");
        }
    }

    @Test
    void theToolboxIsOnePersonsInAllTheirJobs() {
        try (TestBench bench = bench()) {
            Job first = bench.job;
            LayOut unknown = LayOut.of(first, Toolbox.of(bench.workshop, first), 90);
            assertThat(unknown.tools()).extracting(LayOut.Tool::name).contains("long ratchet");
            assertThat(unknown.missing()).isEmpty();
            bench.say(Say.that(new Keeping.ToolMarked("long ratchet", Keeping.Whose.MISSING, "")));
            assertThat(LayOut.of(bench.job, Toolbox.of(bench.workshop, bench.job), 90).missing())
                    .extracting(LayOut.Tool::name)
                    .containsExactly("long ratchet");
            assertThat(LayOut.of(bench.job, Toolbox.of(bench.workshop, bench.job), 0).missing())
                    .as("no time, no step, no tool")
                    .isEmpty();

            Job other = another(bench, "");
            Job strangers = another(bench, "Ann");
            assertThat(Toolbox.of(bench.workshop, other).isMissing("Long ratchet")).isTrue();
            assertThat(Toolbox.of(bench.workshop, strangers).isMissing("long ratchet")).isFalse();
            bench.later(Duration.ofMinutes(1));
            bench.job = other;
            bench.say(Say.that(new Keeping.ToolMarked("Long ratchet", Keeping.Whose.BORROWED, "Ann")));
            assertThat(Toolbox.of(bench.workshop, first).find("long ratchet"))
                    .hasValueSatisfying(said -> assertThat(said.from()).isEqualTo("Ann"));
        }
    }

    private static Job another(TestBench bench, String toolbox) {
        OpenJob open = new OpenJob(
                "Other" + toolbox,
                new OpenJob.Start.Text(ENGINE),
                new StripQuestion.Goal(List.of("cover"), List.of(), List.of(), List.of()),
                new Setup.Settings(List.of(), 0, "metric", toolbox));
        return ((OpenJob.Reply.Opened) open.open(bench.workshop, Who.SOMEBODY, Optional.empty())).job();
    }
}
