package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Joint;
import java.util.List;
import java.util.Optional;

/** The joints of a job to choose from, those that are undone first. */
public final class JointChoice {
    private final Job job;

    public JointChoice(Job job) {
        this.job = job;
    }

    /** The form itself; refused when it names no joint of the engine, so that the page that lets one choose says why it is shown. */
    public static Form chosen(Job job, Form form) {
        return find(job, form.typed("joint")).isPresent()
                ? form
                : form.refuse("joint", "Choose the joint first: this form names none that the engine has.");
    }

    /** A joint of the list. */
    public record Line(String id, String name) {}

    /** The next joint of the strip; empty when there is none, when it is no joint, and on the way back. */
    public List<Line> next() {
        boolean comingApart = !job.goingTogether();
        return job
                .findNext()
                .filter(step -> comingApart)
                .flatMap(step -> job.engine().findJoint(step.id()))
                .stream()
                .map(JointChoice::line)
                .toList();
    }

    /** Undone, the one undone last first. */
    public List<Line> undone() {
        return job.facts().stripped().open().reversed().stream()
                .flatMap(id -> job.engine().findJoint(id).stream())
                .map(JointChoice::line)
                .toList();
    }

    /** Not undone, in the order of the file. */
    public List<Line> together() {
        return job.engine().joints().stream()
                .filter(joint -> !job.facts().stripped().open().contains(joint.id()))
                .map(JointChoice::line)
                .toList();
    }

    /** The joint that is meant; empty when none is, or the engine has it no more. */
    public static Optional<Joint> find(Job job, String id) {
        return job.engine().findJoint(id);
    }

    private static Line line(Joint joint) {
        return new Line(joint.id(), joint.name());
    }
}
