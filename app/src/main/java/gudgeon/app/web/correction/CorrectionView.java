package gudgeon.app.web.correction;

import gudgeon.app.desk.Job;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.format.Problem;
import gudgeon.app.web.engines.JointView;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.JointChoice;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Setup;
import gudgeon.core.engine.Joint;
import java.util.List;
import java.util.Optional;

/** What the pages show on which the engine of a job is put right. */
public final class CorrectionView {
    private final Job job;
    private final Form form;
    private final String entry;
    private final boolean checked;
    private final SaidView said;

    /**
     * @param checked whether the form was checked, found good, and nothing was written
     */
    CorrectionView(Job job, Form form, String entry, boolean checked, SaidView said) {
        this.job = job;
        this.form = form;
        this.entry = entry;
        this.checked = checked;
        this.said = said;
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entry;
    }

    public boolean checked() {
        return checked;
    }

    public SaidView said() {
        return said;
    }

    public String path() {
        return JobPaths.job(job) + "/engine";
    }

    public String engine() {
        return job.engine().identity().name();
    }

    public int parts() {
        return job.engine().parts().size();
    }

    public int joints() {
        return job.engine().joints().size();
    }

    /** What was put right so far. */
    public List<String> corrections() {
        return job.facts().setting().basis().patches().stream().map(this::line).toList();
    }

    private String line(Setup.Patch patch) {
        String[] keys = patch.path().split("/", -1);
        String about = keys.length > 1 ? Names.capital(new Names(job.engine()).any(keys[1])) : patch.path();
        String what = keys.length > 2 ? ": " + keys[2] : "";
        return about + what + (patch.old().isEmpty() ? ", new" : patch.now().isEmpty() ? ", taken out" : ", changed");
    }

    /** Corrections that do not fit and have no effect. */
    public List<String> setAside() {
        return job.ownEngine().setAside().stream().map(this::line).toList();
    }

    /** What the check of the file remarks. */
    public List<String> remarks() {
        return job.ownEngine().remarks().stream()
                .map(Problem::what)
                .distinct()
                .limit(12)
                .toList();
    }

    public JointChoice choice() {
        return new JointChoice(job);
    }

    private Optional<Joint> joint() {
        return JointChoice.find(job, form.typed("joint"));
    }

    public String id() {
        return joint().map(Joint::id).orElse("");
    }

    public String name() {
        return joint().map(Joint::name).orElse("");
    }

    /** The parts of the joint, by the file. */
    public String between() {
        return joint().map(one -> new Names(job.engine()).between(one)).orElse("");
    }

    /** The fasteners of the joint, by the file. */
    public String fasteners() {
        return joint().map(one -> String.join("; ", StepWords.fasteners(one)))
                .filter(text -> !text.isEmpty())
                .orElse("none");
    }

    /** How the joint is tightened, by the file. */
    public String tighten() {
        return joint().map(one -> String.join("; ", JointView.stages(one)))
                .filter(text -> !text.isEmpty())
                .orElse("the file does not say");
    }

    /** Names of all parts, to choose from while typing. */
    public List<String> partNames() {
        return job.engine().parts().stream().map(part -> part.name()).distinct().toList();
    }
}
