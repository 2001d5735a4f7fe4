package gudgeon.app.web.bags;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.Places;
import gudgeon.app.document.Bags;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.List;

/** A sheet of labels: the bags that are there, then those that the plan will need, with the numbers they will get. */
public final class LabelsView {
    private final Job job;
    private final Names names;

    LabelsView(Job job) {
        this.job = job;
        this.names = new Names(job.engine());
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
        List<Label> labels = new ArrayList<>();
        Places places = Places.of(job);
        places.bags().forEach(bag -> labels.add(new Label(bag.bag(), PlacesView.contents(bag, names), true)));
        boolean comingApart = !job.goingTogether();
        job.findPlan().filter(plan -> comingApart).ifPresent(plan -> coming(plan, places.nextBag(), labels));
        return labels;
    }

    private void coming(StripPlan plan, int next, List<Label> labels) {
        Bags bags = Bags.of(job.engine(), plan);
        for (StripPlan.Operation step : plan.operations()) {
            bags.find(step.id()).ifPresent(number -> {
                List<String> about = new ArrayList<>();
                about.add(Names.capital(names.any(step.id())));
                about.addAll(StepWords.fasteners(job.engine().joint(step.id())));
                labels.add(new Label(String.valueOf(next + number - 1), about, false));
            });
        }
    }
}
