package gudgeon.app.web.jobs;

import gudgeon.app.desk.ComingBack;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.Watch;
import gudgeon.app.document.BlockedWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.engine.Circuit;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the page of a job shows: where am I. */
public final class JobView {
    private final Job job;
    private final OffsetDateTime now;
    private final JobLine line;
    private final Names names;
    private final Optional<JobDesk.Said> said;

    JobView(Job job, JobList.Line line, Optional<JobDesk.Said> said, OffsetDateTime now) {
        this.job = job;
        this.now = now;
        this.line = new JobLine(line);
        this.names = new Names(job.engine());
        this.said = said;
    }

    public JobLine line() {
        return line;
    }

    /** What was just written; empty when nothing was. */
    public SaidView said() {
        return SaidView.of(job, said);
    }

    /** Circuits that stand open: a joint that opens them is undone. */
    public List<String> open() {
        List<String> open = new ArrayList<>();
        for (Circuit circuit : job.engine().circuits()) {
            List<String> joints = job.engine().joints().stream()
                    .filter(joint -> joint.freedom().opens().contains(circuit.id()))
                    .filter(joint -> job.facts().stripped().open().contains(joint.id()))
                    .map(joint -> names.any(joint.id()))
                    .toList();
            if (!joints.isEmpty()) {
                open.add(circuit.name() + ": " + Figures.list(joints, 3));
            }
        }
        return open;
    }

    /** Parts that are away, and where they lie. */
    public List<String> away() {
        List<String> away = new ArrayList<>();
        job.facts()
                .stripped()
                .away()
                .forEach((part, place) -> away.add(names.part(part) + (place.isBlank() ? "" : ": " + place)));
        return away;
    }

    /** What must hang on the key. */
    public List<String> tags() {
        return Watch.tags(job).stream().map(tag -> TagWords.of(tag, names)).toList();
    }

    /** Why there is no way on; empty when there is one. */
    public List<String> blocked() {
        return line.stuck() && job.strip() instanceof StripQuestion.Reply.Stuck stuck
                ? new BlockedWords(job.engine()).reasons(stuck.blocked())
                : List.of();
    }

    /** Whether it is long enough ago that one should come back rather than go on. */
    public boolean returning() {
        return !job.facts().stripped().acts().isEmpty() && ComingBack.isAway(job, now);
    }

    public int bags() {
        return job.facts().kept().bags().size();
    }

    /** Joints that will not come. */
    public List<String> willNotCome() {
        return job.facts().setting().willNotCome().stream().map(names::any).toList();
    }

    /** What does not fit together. */
    public List<String> contradictions() {
        return job.facts().contradictions().stream()
                .map(one -> ContradictionWords.of(one, names))
                .toList();
    }
}
