package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Build;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Some fasteners of a stage have had it. When they are the last of it, the step is done.
 *
 * @param step id of a stage or angle step
 * @param fasteners ids, or their numbers in the joint
 */
public record FastenersTurned(String step, List<String> fasteners) implements Deed {
    public FastenersTurned {
        fasteners = List.copyOf(fasteners);
    }

    @Override
    public Telling tell(Job job) {
        BuildBench bench = new BuildBench(job);
        Optional<BuildPlan.Operation> found = bench.find(step);
        BuildPlan.Tightening tightening =
                found.map(BuildPlan.Operation::tightening).orElse(null);
        if (found.isEmpty() || tightening == null || tightening.stage() == 0) {
            return Telling.wrong(FieldProblem.of("step", FieldProblem.Kind.UNKNOWN, Checks.shortened(step)));
        }
        BuildPlan.Operation operation = found.get();
        List<FieldProblem> problems = StepTogether.ready(bench, operation);
        String joint = operation.subject().ref();
        List<String> turned = TroubleMet.fasteners(job.engine(), joint, fasteners, problems);
        if (turned.isEmpty() && problems.isEmpty()) {
            problems.add(FieldProblem.of("fasteners", FieldProblem.Kind.EMPTY, ""));
        }
        BuildBench.Turning turning = bench.turning(operation).orElseThrow();
        boolean angle = tightening.angle() != null;
        if (angle && turned.stream().anyMatch(turning.leave()::contains)) {
            List<String> twice =
                    turned.stream().filter(turning.leave()::contains).toList();
            problems.add(new FieldProblem("fasteners", FieldProblem.Kind.TURNED_ALREADY, step, twice, ""));
        }
        if (turning.left()) {
            problems.addAll(afterLeaving(operation, turned));
        }
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        List<Body> bodies = new ArrayList<>();
        if (turning.left()) {
            bodies.add(new Build.Interrupted(joint, tightening.stage(), true));
        }
        bodies.add(
                angle
                        ? new Build.AngleTurned(joint, tightening.stage(), turned)
                        : new Build.StageReached(joint, tightening.stage(), turned));
        if (turned.containsAll(turning.turn())) {
            bodies.add(new Build.StepBuilt(step, List.of(), 0));
        }
        return new Telling.Facts(bodies, List.of());
    }

    /** After somebody left, a torque stage is taken up at its first fastener, and an angle stage not before its marks are told. */
    static List<FieldProblem> afterLeaving(BuildPlan.Operation operation, List<String> turned) {
        BuildPlan.Tightening tightening = operation.tightening();
        if (tightening == null || turned.contains(tightening.fasteners().getFirst()) && tightening.angle() == null) {
            return List.of();
        }
        FieldProblem.Kind kind =
                tightening.angle() == null ? FieldProblem.Kind.LEFT_MIDWAY : FieldProblem.Kind.MARKS_NOT_SAID;
        return List.of(new FieldProblem("fasteners", kind, operation.id(), tightening.fasteners(), ""));
    }
}
