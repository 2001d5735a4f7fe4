package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tightening as manuals write it. The ways of writing: common practice. */
class TightenWordsTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10 Nm, 22 N·m, 90°, oiled | [{ torque: 10 N·m, thread: oiled }, { torque: 22 N·m, thread: oiled }, { angle: 90 °, thread: oiled }]",
                "30 N.m then 60 degrees; dry | [{ torque: 30 N·m, thread: dry }, { angle: 60 °, thread: dry }]",
                "Locked, 7,5 Nm | [{ torque: 7.5 N·m, thread: locked }]",
            })
    void whatAManualSaysIsRead(String words, String yaml) {
        assertThat(TightenWords.yaml(words)).contains(yaml);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "30 N·m",
                "oiled",
                "30, oiled",
                "hand tight, dry",
                "30 N·m, dry, oiled",
                "90° x, dry",
                "30,60 N·m, oiled",
                "1,200 N·m, dry",
                "-3 N·m, dry"
            })
    void whatIsNotClearIsRefused(String words) {
        assertThat(TightenWords.yaml(words)).isEmpty();
    }

    @Test
    void theJointIsTightenedAsTheManualOfItsOwnerSays() {
        try (TestBench bench = new TestBench(folder, new OpenJob.Start.Like("wren-160", "Barn mower"), "head")) {
            bench.say(new JointCorrected("head-studs", "", "", "", "10 N·m, 22 N·m, 90°, oiled"));
            assertThat(bench.job.engine().joint("head-studs").makeup().stages())
                    .satisfiesExactly(
                            first -> assertThat(first.torque()).isPresent(),
                            second -> assertThat(second.torque()).isPresent(),
                            third -> assertThat(third.angle().orElseThrow().degrees())
                                    .isEqualTo(90));
            assertThat(bench.refused(new JointCorrected("head-studs", "", "", "", "22 N·m")))
                    .extracting(FieldProblem::field, FieldProblem::kind)
                    .containsExactly(org.assertj.core.groups.Tuple.tuple("tighten", FieldProblem.Kind.TIGHTENING));
            assertThat(bench.refused(new JointCorrected("head-studs", "", "", "", "22 mm, dry")))
                    .as("no unit of torque: the check of the file says so")
                    .extracting(FieldProblem::field)
                    .isEqualTo(List.of("tighten"));
        }
    }
}
