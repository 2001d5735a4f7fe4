package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Build;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Fault;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.engine.Engine;
import gudgeon.core.forecast.Paces;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The pace that a book shows: operations whose minutes were said, or that were begun and done in one session, against what the
 * engine file gives. Joints that gave trouble are left out: what was lost there is no pace.
 */
final class OwnPace {
    /** Longer between beginning and end is a pause (common practice). */
    private static final Duration LONGEST = Duration.ofHours(4);

    private final Job job;
    private final Map<String, Double> build = new HashMap<>();
    private final Set<String> trouble = new HashSet<>();
    private final List<Paces.Timed> timed = new ArrayList<>();
    private String begun = "";
    private OffsetDateTime since = OffsetDateTime.MIN;

    private OwnPace(Job job) {
        this.job = job;
    }

    /** The pace of whoever works on a job. */
    static Paces of(Job job) {
        return Paces.learned(new OwnPace(job).timed());
    }

    private List<Paces.Timed> timed() {
        job.facts()
                .findings()
                .troubles()
                .forEach(one -> trouble.add(one.trouble().joint()));
        if (!job.facts().built().steps().isEmpty()) {
            new BuildBench(job)
                    .plan()
                    .operations()
                    .forEach(step -> build.put(step.id(), step.clock().seconds() / 60.0));
        }
        job.state().history().stream()
                .filter(JobState.Told::counts)
                .map(JobState.Told::entry)
                .forEach(this::add);
        return timed;
    }

    private void add(Entry entry) {
        Body body = entry.body();
        switch (body) {
            case Strip.OperationStarted(String operation) -> {
                begun = operation;
                since = entry.stamp().at();
            }
            case Setup.SessionEnded ended -> begun = "";
            case Strip.OperationDone done -> {
                if (!done.cut()) {
                    strip(done.operation(), minutes(entry, done.operation(), done.minutes()));
                }
                begun = "";
            }
            case Build.StepBuilt built -> {
                built(built.step(), minutes(entry, built.step(), built.minutes()));
                begun = "";
            }
            case Fault fault -> begun = "";
            default -> {}
        }
    }

    private OptionalDouble minutes(Entry entry, String operation, double said) {
        if (said > 0) {
            return OptionalDouble.of(said);
        }
        Duration took =
                begun.equals(operation) ? Duration.between(since, entry.stamp().at()) : Duration.ZERO;
        return took.compareTo(Duration.ofSeconds(5)) > 0 && took.compareTo(LONGEST) < 0
                ? OptionalDouble.of(took.toSeconds() / 60.0)
                : OptionalDouble.empty();
    }

    private void strip(String id, OptionalDouble actual) {
        Engine engine = job.engine();
        if (actual.isEmpty() || trouble.contains(id)) {
            return;
        }
        engine.findJoint(id)
                .ifPresent(joint -> record(
                        StripPlan.Kind.UNDO.name(),
                        joint.work().undo().fastenerSeconds() / 60.0,
                        actual.getAsDouble()));
        engine.findReady(id)
                .ifPresent(ready ->
                        record(StripPlan.Kind.of(ready.kind()).name(), ready.seconds() / 60.0, actual.getAsDouble()));
    }

    private void built(String step, OptionalDouble actual) {
        Double nominal = build.get(step);
        if (actual.isPresent() && nominal != null) {
            record(BuildPlan.class.getSimpleName(), nominal, actual.getAsDouble());
        }
    }

    private void record(String kind, double nominal, double actual) {
        if (nominal > 0) {
            timed.add(new Paces.Timed(kind, nominal, actual));
        }
    }
}
