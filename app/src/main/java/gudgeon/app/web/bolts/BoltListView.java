package gudgeon.app.web.bolts;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JointTightening;
import gudgeon.app.document.Figures;
import gudgeon.app.web.engines.EngineView;
import gudgeon.app.web.engines.JointView;
import gudgeon.app.web.jobs.JobPaths;
import java.util.List;

/** The joints of a job that are tightened by stages. */
public final class BoltListView {
    private final Job job;

    BoltListView(Job job) {
        this.job = job;
    }

    public List<EngineView.Item> joints() {
        return JointTightening.joints(job).stream()
                .map(joint -> new EngineView.Item(
                        joint.name() + ": "
                                + Figures.count(joint.makeup().fasteners().size(), "fastener") + ", "
                                + String.join("; ", JointView.stages(joint)),
                        JobPaths.job(job) + "/bolts/" + joint.id(),
                        ""))
                .toList();
    }

    public String jobPath() {
        return JobPaths.job(job);
    }
}
