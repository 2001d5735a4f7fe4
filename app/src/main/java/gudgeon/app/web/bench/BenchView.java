package gudgeon.app.web.bench;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.ToldAtBench;
import gudgeon.app.desk.Watch;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.BeforeView;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.StripPlan;
import java.util.List;

/** What the bench shows: the step that is next. */
public final class BenchView {
    private final Job job;
    private final StripPlan.Operation step;
    private final int left;
    private final StepWords words;
    private final Names names;
    private final Form form;
    private final String entry;
    private final SaidView said;

    /**
     * @param left steps left, this one included
     * @param form what was typed
     * @param entry names the entry that the step makes
     */
    BenchView(Job job, StripPlan.Operation step, int left, Form form, String entry, SaidView said) {
        this.job = job;
        this.step = step;
        this.left = left;
        this.words = new StepWords(job.engine());
        this.names = new Names(job.engine());
        this.form = form;
        this.entry = entry;
        this.said = said;
    }

    public String path() {
        return JobPaths.bench(job);
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entry;
    }

    public SaidView said() {
        return said;
    }

    public String id() {
        return step.id();
    }

    /** Names the step in addresses: a lift by its parts, since lifts are numbered anew in every plan. */
    public String key() {
        return key(step);
    }

    static String key(StripPlan.Operation step) {
        return step.kind() == StripPlan.Kind.LIFT ? String.join(",", step.pieces()) : step.id();
    }

    /** Parts that would lose their place by this step, unmarked. */
    public List<String> falling() {
        return Watch.falling(job, step).stream().map(names::part).toList();
    }

    public String note() {
        return JobPaths.note(job, lift() ? step.pieces().getFirst() : step.id(), JobPaths.bench(job));
    }

    /** Where a photo of it is taken. */
    public String photo() {
        return JobPaths.photo(job, lift() ? parts() : step.id(), JobPaths.bench(job));
    }

    /** What the person wrote down and photographed of it. */
    public HowItWas was() {
        return lift() ? HowItWas.parts(job, step.pieces()) : HowItWas.joint(job, step.id());
    }

    public String undo() {
        return JobPaths.undo(job, JobPaths.bench(job));
    }

    /** Where a joint is said not to come; empty for other steps. */
    public String refuses() {
        return step.kind() == StripPlan.Kind.UNDO
                ? JobPaths.strip(job) + "/refuses?joint=" + EnginePaths.encoded(step.id()) + "&back="
                        + EnginePaths.encoded(JobPaths.bench(job))
                : "";
    }

    public int number() {
        return job.stepsDone() + 1;
    }

    public int of() {
        return job.stepsDone() + left;
    }

    /** What stands before the action. */
    public BeforeView before() {
        return BeforeView.of(ToldAtBench.strip(job, step));
    }

    /** Whether nothing was done yet: then it is told how the button works. */
    public boolean first() {
        return job.stepsDone() == 0;
    }

    public String instruction() {
        return words.instruction(step);
    }

    public String where() {
        return words.where(step);
    }

    public String tools() {
        return words.tools(step);
    }

    public boolean lift() {
        return step.kind() == StripPlan.Kind.LIFT;
    }

    public boolean joint() {
        return step.kind() == StripPlan.Kind.UNDO || step.kind() == StripPlan.Kind.CUT;
    }

    public boolean cut() {
        return step.kind() == StripPlan.Kind.CUT;
    }

    private boolean aside() {
        return step.lift() instanceof StripPlan.Lift lift && lift.aside();
    }

    /** Parts that come away, as the form names them. */
    public String parts() {
        return String.join(",", step.pieces());
    }

    /** How many fasteners there are; 0 for steps without. */
    public int count() {
        return joint() ? job.fasteners(step.id()) : 0;
    }

    public List<String> fasteners() {
        return words.fasteners(step);
    }

    /** The number to write on the bag; empty when nothing goes into one. */
    public String bag() {
        return count() > 0 ? String.valueOf(job.nextBag()) : "";
    }

    public List<String> renew() {
        return StepWords.spends(step.destroys());
    }

    public List<String> notes() {
        return words.notes(step);
    }

    public Sketch sketch() {
        return joint() ? Sketch.of(held()) : Sketch.NONE;
    }

    private Joint held() {
        return job.engine().joint(step.id());
    }

    public String time() {
        return Figures.time(step.seconds());
    }

    /** The words of the main button. */
    public String done() {
        return lift() && aside() ? "It's aside, next" : lift() || joint() ? "It's off, next" : "Done, next";
    }

    /** The same as a question, for the second tap. */
    public String sure() {
        return lift() && aside() ? "Yes, it's aside" : lift() || joint() ? "Yes, it's off" : "Yes, done";
    }

    /** Names the step in a line: the joint, the preparation, the parts. */
    public String subject() {
        return lift() ? Figures.list(names.parts(step.pieces()), 3) : names.any(step.id());
    }

    /** Whether the parts stay on the engine, hanging. */
    public boolean isAside() {
        return aside();
    }
}
