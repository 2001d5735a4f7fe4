package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Operation;
import java.util.List;
import java.util.stream.IntStream;

/** A way back that the replay accepts. */
record WayBack(Engine engine, BuildRequest request, BuildPlan plan) {
    List<Operation> steps() {
        return plan.operations();
    }

    int find(String id) {
        return IntStream.range(0, steps().size())
                .filter(i -> steps().get(i).id().equals(id))
                .findFirst()
                .orElse(-1);
    }

    BuildEdit edit() {
        return new BuildEdit(engine, plan);
    }

    Joint joint(Operation step) {
        return engine.joint(step.subject().ref());
    }

    int last(String joint) {
        int last = -1;
        for (int i = 0; i < steps().size(); i++) {
            Operation step = steps().get(i);
            boolean turns =
                    List.of(Kind.SNUG, Kind.TIGHTEN, Kind.STAGE, Kind.ANGLE).contains(step.kind());
            last = turns && step.subject().ref().equals(joint) ? i : last;
        }
        return last;
    }
}
