package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.planning.StripPlan;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which jobs are there, and what does each wait for? */
public final class JobList {
    private JobList() {}

    /**
     * A job in one line.
     *
     * @param stage where it is
     * @param stepsDone steps done in strip and build
     * @param stepsLeft steps left in the stage
     * @param secondsLeft time left in the stage
     * @param next the next step of the strip; empty when there is none
     * @param nextBuild id of the next step of the build; empty when there is none
     * @param waits what stands in the way
     */
    public record Line(
            Job job,
            Job.Stage stage,
            int stepsDone,
            int stepsLeft,
            long secondsLeft,
            Optional<StripPlan.Operation> next,
            String nextBuild,
            List<Wait> waits) {
        public Line {
            waits = List.copyOf(waits);
        }

        public Optional<OffsetDateTime> last() {
            return job.facts().clocked().last();
        }
    }

    /** Something that stands in the way. @param about id, specification or note */
    public record Wait(Sort sort, String about) {
        /** Sorts of wait. */
        public enum Sort {
            /** A fastener resists. */
            TROUBLE,
            /** Something ordered has not come. */
            NOT_ARRIVED,
            /** The last session did not end safely. */
            LEFT_UNSAFE,
            /** Entries do not fit together. */
            CONTRADICTION
        }
    }

    /** All jobs, the one begun last first. */
    public static List<Line> of(Workshop workshop) {
        return workshop.jobIds().stream()
                .flatMap(id -> workshop.findJob(id).stream())
                .map(JobList::line)
                .toList();
    }

    /** One job. */
    public static Line line(Job job) {
        Job.Stage stage = job.stage();
        boolean building = stage == Job.Stage.BUILDING || stage == Job.Stage.TOGETHER;
        if (building) {
            BuildBench bench = new BuildBench(job);
            return new Line(
                    job,
                    stage,
                    job.stepsDone(),
                    bench.left().size(),
                    bench.left().stream()
                            .mapToLong(step -> step.clock().seconds())
                            .sum(),
                    Optional.empty(),
                    bench.findNext().map(step -> step.id()).orElse(""),
                    waits(job));
        }
        Optional<StripPlan> plan = job.findPlan();
        return new Line(
                job,
                stage,
                job.stepsDone(),
                plan.map(left -> left.operations().size()).orElse(0),
                plan.map(StripPlan::totalSeconds).orElse(0L),
                job.findNext(),
                "",
                waits(job));
    }

    private static List<Wait> waits(Job job) {
        Facts facts = job.facts();
        List<Wait> waits = new ArrayList<>();
        if (!facts.clocked().leftSafe()) {
            waits.add(new Wait(Wait.Sort.LEFT_UNSAFE, facts.clocked().left()));
        }
        facts.findings().troubles().stream()
                .filter(trouble -> !trouble.solved())
                .forEach(trouble ->
                        waits.add(new Wait(Wait.Sort.TROUBLE, trouble.trouble().joint())));
        facts.kept().ordered().forEach((spec, count) -> {
            if (facts.kept().received().getOrDefault(spec, 0) < count) {
                waits.add(new Wait(Wait.Sort.NOT_ARRIVED, spec));
            }
        });
        facts.contradictions().stream()
                .map(contradiction -> new Wait(Wait.Sort.CONTRADICTION, contradiction.about()))
                .distinct()
                .forEach(waits::add);
        return waits;
    }
}
