package gudgeon.app.web.bags;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPapers;
import gudgeon.app.web.jobs.JobPaths;
import java.util.List;

/** A sheet of labels: the bags that are there, then those that the plan will need, with the numbers they will get. */
public final class LabelsView {
    private final Job job;

    LabelsView(Job job) {
        this.job = job;
    }

    /**
     * One label.
     *
     * @param about contents and, for bags to come, what the file says of the fasteners
     */
    public record Label(String number, List<String> about, boolean filled) {
        public Label {
            about = List.copyOf(about);
        }
    }

    public String jobName() {
        return job.name();
    }

    public String back() {
        return JobPaths.job(job) + "/bags";
    }

    public List<Label> labels() {
        return new JobPapers(job, "")
                .labels().stream()
                        .map(label -> new Label(label.bag(), label.lines(), label.filled()))
                        .toList();
    }
}
