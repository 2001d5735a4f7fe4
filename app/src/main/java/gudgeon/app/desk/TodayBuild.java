package gudgeon.app.desk;

import gudgeon.core.book.Build;
import gudgeon.core.book.JobState;
import gudgeon.core.forecast.Nominal;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.session.BuildStands;
import gudgeon.core.session.CloseUp;
import gudgeon.core.session.SessionPlanner;
import gudgeon.core.session.SessionRequest;
import gudgeon.core.session.Stand;
import gudgeon.core.session.Step;
import gudgeon.core.session.Window;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Today's card on the way back. */
final class TodayBuild {
    private final Job job;
    private final TodayQuestion question;
    private final Optional<Today.Light> light;
    private final OffsetDateTime now;
    private final BuildBench bench;
    private final List<Today.LeftOut> left = new ArrayList<>();

    TodayBuild(Job job, TodayQuestion question, Optional<Today.Light> light, OffsetDateTime now) {
        this.job = job;
        this.question = question;
        this.light = light;
        this.now = now;
        this.bench = new BuildBench(job);
    }

    Today plan() {
        Set<String> done = done();
        List<BuildPlan.Operation> operations = doable(done);
        List<Stand> stands = new BuildStands(job.engine(), bench.plan(), CoveredJoints.of(job)).along(done, operations);
        List<Today.Work> works = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        for (int k = 0; k < operations.size(); k++) {
            Today.Work work = new Today.Work.Fit(operations.get(k), nominal(operations.get(k)));
            works.add(work);
            steps.add(new Step(work.id(), work.nominal(), needs(operations.get(k)), stands.get(k + 1)));
        }
        SessionRequest request = new SessionRequest(
                Math.max(1, question.timeThereIs(light, now)),
                question.chance(),
                question.keep().isPresent() ? CloseUp.keeping(question.keep().getAsDouble()) : CloseUp.USUAL,
                stands.getFirst(),
                steps,
                question.windows(),
                OwnPace.of(job));
        return new Today(job, question, now, light, request, SessionPlanner.plan(request), works, left);
    }

    /** Ids of steps that are done; a wait counts when what it waits for is done and the time is over. */
    private Set<String> done() {
        Set<String> done = new LinkedHashSet<>();
        for (BuildPlan.Operation operation : bench.plan().operations()) {
            boolean so = operation.kind() == BuildPlan.Kind.WAIT
                    ? done.contains(operation.subject().ref()) && waitLeft(operation) == 0
                    : bench.isDone(operation);
            if (so) {
                done.add(operation.id());
            }
        }
        return done;
    }

    private List<BuildPlan.Operation> doable(Set<String> done) {
        Set<String> reached = new LinkedHashSet<>(done);
        List<BuildPlan.Operation> operations = new ArrayList<>();
        for (BuildPlan.Operation operation : bench.plan().operations()) {
            if (done.contains(operation.id())) {
                continue;
            }
            Optional<Today.LeftOut> reason = reason(operation, reached);
            if (reason.isPresent()) {
                left.add(reason.get());
            } else {
                operations.add(operation);
                reached.add(operation.id());
            }
        }
        return operations;
    }

    private Optional<Today.LeftOut> reason(BuildPlan.Operation operation, Set<String> reached) {
        List<String> tools = operation.place().tools().stream()
                .filter(question.without()::contains)
                .toList();
        BuildPlan.Handling handling = operation.handling();
        String way = handling == null ? "" : handling.way();
        List<String> waits = operation.order().after().stream()
                .filter(id -> !reached.contains(id))
                .toList();
        if (!tools.isEmpty()) {
            return Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.TOOL, tools));
        }
        if (question.without().contains(way)) {
            return Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.LIFTING, List.of(way)));
        }
        if (!operation.holdUp().blockedBy().isEmpty()) {
            List<String> about = operation.holdUp().blockedBy().stream()
                    .flatMap(lack -> lack.about().stream())
                    .distinct()
                    .toList();
            return Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.LACKS, about));
        }
        return waits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.WAITS, waits));
    }

    private Nominal nominal(BuildPlan.Operation operation) {
        if (operation.kind() == BuildPlan.Kind.WAIT) {
            return new Nominal("WAIT", 0, waitLeft(operation), 0, 0);
        }
        return Nominal.work(
                BuildPlan.class.getSimpleName(),
                (operation.clock().seconds() + operation.place().changeoverSeconds()) / 60.0);
    }

    /** Minutes of a wait that are left, from when the step that it waits for was done; all of them while it is not. */
    private double waitLeft(BuildPlan.Operation wait) {
        double all = wait.clock().seconds() / 60.0;
        return job.state().history().stream()
                .filter(JobState.Told::counts)
                .map(JobState.Told::entry)
                .filter(entry -> entry.body() instanceof Build.StepBuilt built
                        && built.step().equals(wait.subject().ref()))
                .map(entry -> Duration.between(entry.stamp().at(), now).toSeconds() / 60.0)
                .reduce((first, second) -> second)
                .map(passed -> Math.max(0, all - passed))
                .orElse(all);
    }

    private List<String> needs(BuildPlan.Operation operation) {
        BuildPlan.Handling handling = operation.handling();
        return question.windows().stream()
                .map(Window::need)
                .filter(need -> operation.place().tools().contains(need)
                        || (handling != null && handling.way().equals(need)))
                .toList();
    }
}
