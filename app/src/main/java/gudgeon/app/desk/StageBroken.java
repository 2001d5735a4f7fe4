package gudgeon.app.desk;

import gudgeon.core.book.Build;
import gudgeon.core.planning.BuildPlan;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A stage was broken off. A torque stage then begins again at its first fastener, nothing backed off; of an angle stage only
 * fasteners without a mark and without an entry get the angle, and when that is not certain all are spent.
 *
 * @param step id of a stage or angle step
 * @param certain whether every fastener that was turned bears a mark or an entry
 * @param marked fasteners that bear a mark and have no entry yet
 */
public record StageBroken(String step, boolean certain, List<String> marked) implements Deed {
    public StageBroken {
        marked = List.copyOf(marked);
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
        if (bench.isDone(found.get())) {
            return Telling.wrong(FieldProblem.of("step", FieldProblem.Kind.ALREADY_DONE, step));
        }
        String joint = found.get().subject().ref();
        List<FieldProblem> problems = new java.util.ArrayList<>();
        List<String> had =
                bench.turning(found.get()).map(BuildBench.Turning::leave).orElse(List.of());
        List<String> fresh = TroubleMet.fasteners(job.engine(), joint, marked, problems).stream()
                .filter(fastener -> !had.contains(fastener))
                .toList();
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        if (tightening.angle() != null
                && certain
                && Stream.concat(had.stream(), fresh.stream()).toList().containsAll(tightening.fasteners())) {
            return allHaveIt(joint, tightening.stage(), fresh);
        }
        Build.Interrupted broken = new Build.Interrupted(joint, tightening.stage(), certain);
        return tightening.angle() != null && !fresh.isEmpty()
                ? Telling.facts(new Build.AngleTurned(joint, tightening.stage(), fresh), broken)
                : Telling.facts(broken);
    }

    /** Every mark has moved: nothing of the step is left. */
    private Telling allHaveIt(String joint, int stage, List<String> fresh) {
        Build.StepBuilt done = new Build.StepBuilt(step, List.of(), 0);
        return fresh.isEmpty() ? Telling.facts(done) : Telling.facts(new Build.AngleTurned(joint, stage, fresh), done);
    }
}
