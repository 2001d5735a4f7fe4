package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Build;
import gudgeon.core.book.Fluid;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A step of the build is done. For a stage that means every fastener that was left of it.
 *
 * @param step id of the step in the plan
 * @param minutes how long it took; 0 when not said
 * @param litres what was filled, for a filling; 0 when not measured
 * @param note what is answered for, for a check; may be empty
 */
public record StepTogether(String step, double minutes, double litres, String note) implements Deed {
    /** Done. */
    public static StepTogether of(String step) {
        return new StepTogether(step, 0, 0, "");
    }

    @Override
    public Telling tell(Job job) {
        BuildBench bench = new BuildBench(job);
        List<FieldProblem> problems = new ArrayList<>(Checks.minutes(minutes));
        if (!(litres >= 0 && litres <= 1000)) {
            problems.add(FieldProblem.of("litres", FieldProblem.Kind.NUMBER, String.valueOf(litres)));
        }
        problems.addAll(Checks.text("note", note));
        Optional<BuildPlan.Operation> found = bench.find(step);
        if (found.isEmpty()) {
            problems.add(FieldProblem.of("step", FieldProblem.Kind.UNKNOWN, Checks.shortened(step)));
            return new Telling.Wrong(problems);
        }
        problems.addAll(ready(bench, found.get()));
        bench.turning(found.get())
                .filter(BuildBench.Turning::left)
                .ifPresent(turning -> problems.addAll(FastenersTurned.afterLeaving(found.get(), List.of())));
        return problems.isEmpty()
                ? new Telling.Facts(bodies(bench, found.get()), List.of())
                : new Telling.Wrong(problems);
    }

    static List<FieldProblem> ready(BuildBench bench, BuildPlan.Operation operation) {
        List<FieldProblem> problems = new ArrayList<>();
        if (bench.isDone(operation)) {
            problems.add(FieldProblem.of("step", FieldProblem.Kind.ALREADY_DONE, operation.id()));
        }
        List<String> before = bench.hinders(operation);
        if (!before.isEmpty()) {
            problems.add(new FieldProblem("step", FieldProblem.Kind.NOT_YET, operation.id(), before, ""));
        }
        operation.holdUp().blockedBy().forEach(lack -> {
            List<String> about = new ArrayList<>(List.of(lack.kind().name()));
            about.addAll(lack.about());
            problems.add(new FieldProblem("step", FieldProblem.Kind.LACKS, operation.id(), about, ""));
        });
        bench.turning(operation)
                .filter(turning -> !turning.spent().isEmpty())
                .ifPresent(turning -> problems.add(new FieldProblem(
                        "fasteners", FieldProblem.Kind.TURNED_ALREADY, operation.id(), turning.spent(), "")));
        return problems;
    }

    private List<Body> bodies(BuildBench bench, BuildPlan.Operation operation) {
        List<Body> bodies = new ArrayList<>();
        String ref = operation.subject().ref();
        BuildPlan.Tightening tightening = operation.tightening();
        switch (operation.kind()) {
            case STAGE, ANGLE -> {
                List<String> turn =
                        bench.turning(operation).map(BuildBench.Turning::turn).orElse(List.of());
                if (tightening != null && !turn.isEmpty()) {
                    bodies.add(
                            tightening.angle() == null
                                    ? new Build.StageReached(ref, tightening.stage(), turn)
                                    : new Build.AngleTurned(ref, tightening.stage(), turn));
                }
            }
            case FILL -> bodies.add(new Fluid.Filled(ref, litres));
            case CHECK -> bodies.add(new Build.CheckSigned(ref, note.strip()));
            case SEAL, PLACE, SNUG, TIGHTEN, RESTORE, BLEED, WAIT -> {}
        }
        List<String> parts =
                operation.kind() == BuildPlan.Kind.PLACE ? operation.subject().parts() : List.of();
        bodies.add(new Build.StepBuilt(operation.id(), parts, minutes));
        return bodies;
    }
}
