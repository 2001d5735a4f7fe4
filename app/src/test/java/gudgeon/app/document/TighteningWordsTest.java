package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlanner;
import gudgeon.core.planning.BuildRequest;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The words of tightening: no order that could be read as another one. */
class TighteningWordsTest {
    private static final Shipped WREN = Shipped.plan("wren-160", "barrel");
    private static final Engine ENGINE = WREN.engine();
    private static final BuildPlan BUILD = BuildPlanner.plan(
            ENGINE,
            WREN.plan(),
            BuildRequest.after(WREN.plan(), ENGINE.workplace().waysOfLifting()));

    private final BuildWords words = new BuildWords(ENGINE);

    @Test
    void anOrderIsNamedOnlyWhereTheFileHasOneAndPointsToTheDrawing() {
        int ordered = 0;
        for (BuildPlan.Operation operation : BUILD.operations()) {
            BuildPlan.Tightening tightening = operation.tightening();
            if (tightening == null || tightening.stage() == 0) {
                continue;
            }
            Joint joint = ENGINE.joint(operation.subject().ref());
            String instruction = words.instruction(operation);
            assertThat(instruction).doesNotContainPattern("order 1");
            if (joint.makeup().pattern().isEmpty() || tightening.fasteners().size() < 2) {
                assertThat(instruction).doesNotContain("order");
            } else if (PatternPicture.places(joint)) {
                assertThat(instruction).endsWith("in the order drawn");
                assertThat(PatternPicture.of(joint, tightening.fasteners())).isPresent();
                ordered++;
            } else {
                assertThat(String.join(" ", words.notes(operation)))
                        .contains(String.join(
                                ", then ",
                                joint.makeup().pattern().stream()
                                        .map(String::valueOf)
                                        .toList()));
                ordered++;
            }
        }
        assertThat(ordered).isPositive();
    }

    @Test
    void whatToHaveInHandIsAddedUp() {
        Engine dunlin = Shipped.engine("dunlin-22d");
        Shipped pipes = Shipped.plan("dunlin-22d", "injector-pipe-1", "injector-pipe-2", "injector-pipe-3");
        BuildPlan build = BuildPlanner.plan(
                dunlin,
                pipes.plan(),
                BuildRequest.after(pipes.plan(), dunlin.workplace().waysOfLifting()));

        List<String> inputs = new BuildWords(dunlin).allInputs(build);

        assertThat(inputs).contains("3 × injector pipe, new").doesNotContain("injector pipe, new");
    }
}
