package gudgeon.app.desk;

import gudgeon.app.document.BuildWords;
import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Cautions;
import gudgeon.core.book.Build;
import gudgeon.core.book.Facts;
import gudgeon.core.book.JobState;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripCautions;
import gudgeon.core.planning.StripPlan;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * How fully the bench tells the cautions of the step that is next: written out where they are met first, by their titles while
 * they are fresh, as a list does (decision 0020). What was done shortly before comes from the book; whoever was away longer
 * than {@link BuildBench#AWAY} meets all of them anew.
 */
public final class ToldAtBench {
    private final Job job;
    private final ToldCautions told;
    private int number;

    private ToldAtBench(Job job) {
        this.job = job;
        this.told = new ToldCautions(Cautions.catalogue(), job.engine());
    }

    /** The cautions of the next step of the strip. */
    public static ToldCautions.Told strip(Job job, StripPlan.Operation step) {
        ToldAtBench bench = new ToldAtBench(job);
        for (JobState.Told entry : bench.lately()) {
            bench.job.facts().stripped().acts().stream()
                    .filter(act -> act.entry().equals(entry.entry().id()))
                    .forEach(bench::done);
        }
        return bench.next(step.cautions(), step.kind() == StripPlan.Kind.LIFT ? step.pieces() : List.of());
    }

    /** The cautions of the next step of the way back. */
    public static ToldCautions.Told build(BuildBench way, BuildPlan.Operation step) {
        ToldAtBench bench = new ToldAtBench(way.job());
        for (JobState.Told entry : bench.lately()) {
            if (entry.entry().body() instanceof Build.StepBuilt built) {
                way.find(built.step()).ifPresent(bench::done);
            }
        }
        return bench.next(BuildWords.cautions(step), placed(step));
    }

    /** Entries since the last pause, in order. */
    private List<JobState.Told> lately() {
        List<JobState.Told> counting =
                job.state().history().stream().filter(JobState.Told::counts).toList();
        OffsetDateTime later = job.now();
        int from = counting.size();
        while (from > 0) {

            OffsetDateTime at = counting.get(from - 1).entry().stamp().at();
            if (Duration.between(at, later).compareTo(BuildBench.AWAY) > 0) {
                break;
            }
            from--;
            later = at;
        }
        return counting.subList(from, counting.size());
    }

    private void done(Facts.Act act) {
        Engine engine = job.engine();
        List<String> parts = act.parts().stream()
                .filter(part -> engine.findPart(part).isPresent())
                .toList();
        List<String> ids = engine.findJoint(act.operation())
                .map(joint -> StripCautions.undoing(engine, joint))
                .or(() -> engine.findReady(act.operation()).map(ready -> StripCautions.readying(engine, ready)))
                .orElseGet(() -> StripCautions.lifting(engine, parts, false));
        next(ids, parts);
    }

    private void done(BuildPlan.Operation operation) {
        next(BuildWords.cautions(operation), placed(operation));
    }

    private ToldCautions.Told next(List<String> ids, List<String> parts) {
        number++;
        return told.at(number, ids, parts);
    }

    private static List<String> placed(BuildPlan.Operation step) {
        return step.kind() == BuildPlan.Kind.PLACE ? step.subject().parts() : List.of();
    }
}
