package gudgeon.app.desk;

import gudgeon.core.book.Build;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Keeping;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.Resume;
import gudgeon.core.planning.StripPlan;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The way back of a job, from what was really undone: every step, what is done of it, what comes next. */
public final class BuildBench {
    /** Whoever comes back to a stage after longer than this has left it, whether they said so or not (decision 0024). */
    public static final Duration AWAY = Duration.ofMinutes(30);

    private final Job job;
    private final BuildRequest request;

    public BuildBench(Job job) {
        this.job = job;
        this.request = request(job);
    }

    /**
     * How far a tightening step is, fastener by fastener.
     *
     * @param turn fasteners still to be turned now, in order; for a broken-off torque stage all of them, from the first
     * @param leave fasteners that have had it and are left alone
     * @param spent fasteners of which it is not certain whether they had their angle: all are taken out and renewed
     * @param brokenOff whether the step was interrupted and not taken up again
     * @param left whether somebody left it without saying so, {@link BuildBench#AWAY}: a torque stage then starts at its first
     *     fastener; an angle stage turns nothing until it is said which bear a mark
     */
    public record Turning(
            List<String> turn, List<String> leave, List<String> spent, boolean brokenOff, boolean left) {
        public Turning {
            turn = List.copyOf(turn);
            leave = List.copyOf(leave);
            spent = List.copyOf(spent);
        }
    }

    /** The job that it is the way back of. */
    public Job job() {
        return job;
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
                        .ifPresent(ready -> steps.add(
                                new BuildRequest.Step(StripPlan.Kind.of(ready.kind()), ready.id(), List.of())));
            }
        }
        return new BuildRequest(
                steps, job.ways(), missing(facts), facts.setting().confirmed());
    }

    /** What is on order and has not come is not in hand. */
    private static List<String> missing(Facts facts) {
        return facts.kept().ordered().entrySet().stream()
                .filter(order -> facts.kept().received().getOrDefault(order.getKey(), 0) < order.getValue())
                .map(order -> order.getKey())
                .toList();
    }

    /** The whole way back. */
    public BuildPlan plan() {
        return job.plans().build(job.engine(), request);
    }

    /** A step by its id; empty when the plan has none. */
    public Optional<BuildPlan.Operation> find(String step) {
        return plan().operations().stream()
                .filter(operation -> operation.id().equals(step))
                .findFirst();
    }

    /** Whether a step is done. A wait is done when nothing before it is left. */
    public boolean isDone(BuildPlan.Operation operation) {
        return job.facts().built().steps().stream().anyMatch(step -> same(step, operation));
    }

    private static boolean same(Build.StepBuilt step, BuildPlan.Operation operation) {
        return operation.kind() == BuildPlan.Kind.PLACE
                ? !step.parts().isEmpty()
                        && step.parts().containsAll(operation.subject().parts())
                : step.step().equals(operation.id());
    }

    /** Steps that are not done, in order; waits are left out. */
    public List<BuildPlan.Operation> left() {
        return plan().operations().stream()
                .filter(operation -> operation.kind() != BuildPlan.Kind.WAIT)
                .filter(operation -> !isDone(operation))
                .toList();
    }

    /** The next step that lacks nothing; when all that are left lack something, the first of them; empty when all are done. */
    public Optional<BuildPlan.Operation> findNext() {
        List<BuildPlan.Operation> left = left();
        return left.stream()
                .filter(operation -> hinders(operation).isEmpty())
                .filter(operation -> operation.holdUp().blockedBy().isEmpty())
                .findFirst()
                .or(() -> left.stream().findFirst());
    }

    /** Ids of steps that must be done before this one and are not. */
    public List<String> hinders(BuildPlan.Operation operation) {
        List<String> undone = new ArrayList<>();
        for (String id : operation.order().after()) {
            find(id).filter(before -> before.kind() != BuildPlan.Kind.WAIT && !isDone(before))
                    .ifPresent(before -> undone.add(before.id()));
        }
        return undone;
    }

    /** Facts in which a new piece that this step fits was found to differ from the old one. */
    public List<Keeping.Compared> differences(BuildPlan.Operation operation) {
        return operation.needs().inputs().stream()
                .map(BuildPlan.Input::spec)
                .distinct()
                .flatMap(spec -> OldBesideNew.differences(job, spec).stream())
                .toList();
    }

    /** How far a tightening step is; empty for a step that turns nothing. */
    public Optional<Turning> turning(BuildPlan.Operation operation) {
        BuildPlan.Tightening tightening = operation.tightening();
        if (tightening == null || tightening.fasteners().isEmpty()) {
            return Optional.empty();
        }
        Facts.Tightened joint =
                job.facts().built().joints().get(operation.subject().ref());
        Facts.Stage stage = joint == null
                ? Facts.Stage.UNTOUCHED
                : joint.stages().getOrDefault(tightening.stage(), Facts.Stage.UNTOUCHED);
        boolean angle = tightening.angle() != null;
        List<String> had = (angle ? stage.turned() : stage.reached())
                .stream().filter(tightening.fasteners()::contains).toList();
        if (stage.certain() && left(joint, angle || !had.isEmpty())) {
            return Optional.of(
                    angle
                            ? new Turning(List.of(), had, List.of(), true, true)
                            : new Turning(tightening.fasteners(), List.of(), List.of(), true, true));
        }
        if (!angle && !stage.interrupted()) {
            List<String> rest = tightening.fasteners().stream()
                    .filter(fastener -> !had.contains(fastener))
                    .toList();
            return Optional.of(new Turning(rest, had, List.of(), false, false));
        }
        Resume resume = Resume.after(tightening, had, stage.certain());
        return Optional.of(new Turning(resume.turn(), resume.leave(), resume.spent(), stage.interrupted(), false));
    }

    /** Whether a stage lies as somebody left it. @param begun whether it matters: something of it may have been turned */
    private boolean left(Facts.@Nullable Tightened joint, boolean begun) {
        return begun
                && joint != null
                && joint.touched()
                        .map(at -> joint.leftSince() || Duration.between(at, job.now()).compareTo(AWAY) > 0)
                        .orElse(false);
    }
}
