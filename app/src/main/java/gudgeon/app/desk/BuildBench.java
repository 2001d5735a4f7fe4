package gudgeon.app.desk;

import gudgeon.core.book.Build;
import gudgeon.core.book.Facts;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The way back of a job, from what was really undone: every step, what is done of it, what comes next. */
public final class BuildBench {
    private final Job job;
    private final BuildRequest request;

    public BuildBench(Job job) {
        this.job = job;
        this.request = request(job);
    }

    /** What was really done in the strip, in order; ids that the engine does not have are left out. */
    public BuildRequest request() {
        return request;
    }

    private static BuildRequest request(Job job) {
        Engine engine = job.engine();
        Facts facts = job.facts();
        List<BuildRequest.Step> steps = new ArrayList<>();
        for (Facts.Act act : facts.stripped().acts()) {
            if (!act.parts().isEmpty()) {
                List<String> parts = act.parts().stream()
                        .filter(part -> engine.findPart(part).isPresent())
                        .toList();
                steps.add(new BuildRequest.Step(StripPlan.Kind.LIFT, "lift-" + act.entry(), parts));
            } else if (engine.findJoint(act.operation()).isPresent()) {
                StripPlan.Kind kind = act.cut() ? StripPlan.Kind.CUT : StripPlan.Kind.UNDO;
                steps.add(new BuildRequest.Step(kind, act.operation(), List.of()));
            } else {
                engine.findReady(act.operation())
                        .ifPresent(ready -> steps.add(new BuildRequest.Step(
                                StripPlan.Kind.of(ready.kind()), ready.id(), List.of())));
            }
        }
        return new BuildRequest(steps, job.ways(), List.of(), facts.setting().confirmed());
    }

    /** The whole way back. */
    public BuildPlan plan() {
        return job.plans().build(job.engine(), request);
    }

    /** Whether a step is done. */
    public boolean isDone(BuildPlan.Operation operation) {
        return job.facts().built().steps().stream().anyMatch(step -> same(step, operation));
    }

    private static boolean same(Build.StepBuilt step, BuildPlan.Operation operation) {
        return operation.kind() == BuildPlan.Kind.PLACE
                ? !step.parts().isEmpty()
                        && List.copyOf(step.parts())
                                .containsAll(operation.subject().parts())
                : step.step().equals(operation.id());
    }

    /** Steps that are not done, in order. */
    public List<BuildPlan.Operation> left() {
        return plan().operations().stream()
                .filter(operation -> operation.kind() != BuildPlan.Kind.WAIT)
                .filter(operation -> !isDone(operation))
                .toList();
    }

    /** The next step; empty when all are done, or nothing was undone. */
    public Optional<BuildPlan.Operation> findNext() {
        return left().stream().findFirst();
    }
}
