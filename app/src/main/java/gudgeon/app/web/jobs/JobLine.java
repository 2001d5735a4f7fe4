package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.TargetWords;
import gudgeon.app.web.page.Sheet;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A job in words: where it is, what comes next, what it waits for. */
public final class JobLine {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.UK);

    private final JobList.Line line;
    private final Names names;
    private final boolean working;

    JobLine(JobList.Line line) {
        this(line, false);
    }

    private JobLine(JobList.Line line, boolean working) {
        this.line = line;
        this.working = working;
        this.names = new Names(line.job().engine());
    }

    /** A job whose plan is being worked out. */
    static JobLine working(Job job) {
        return new JobLine(
                new JobList.Line(
                        job, Job.Stage.NO_TARGET, job.stepsDone(), 0, 0, Optional.empty(), "", List.of()),
                true);
    }

    public boolean working() {
        return working;
    }

    public String name() {
        return line.job().name();
    }

    public String engine() {
        return line.job().engine().identity().name();
    }

    public String path() {
        return JobPaths.job(line.job());
    }

    public String bench() {
        return JobPaths.bench(line.job());
    }

    public String strip() {
        return JobPaths.strip(line.job());
    }

    public Sheet.Stage stage() {
        return stage(line.stage());
    }

    /** Where a job stands in the eight stages. */
    public static Sheet.Stage stage(Job.Stage stage) {
        return switch (stage) {
            case NO_TARGET, STUCK, STRIPPING -> Sheet.Stage.STRIP;
            case STRIPPED -> Sheet.Stage.CLEAN;
            case BUILDING -> Sheet.Stage.BUILD;
            case TOGETHER -> Sheet.Stage.PROVE;
        };
    }

    /** One sentence. */
    public String standing() {
        return working ? "Its plan is being worked out." : stands();
    }

    private String stands() {
        return switch (line.stage()) {
            case NO_TARGET -> "Nothing is to be reached yet.";
            case STUCK -> "There is no way on, as it stands.";
            case STRIPPING -> "Stripping";
            case STRIPPED -> "What was to be reached is reached.";
            case BUILDING -> "Building";
            case TOGETHER -> "Every step of the way back is done.";
        };
    }

    public boolean stripping() {
        return line.stage() == Job.Stage.STRIPPING;
    }

    public boolean stuck() {
        return line.stage() == Job.Stage.STUCK;
    }

    public boolean aimless() {
        return line.stage() == Job.Stage.NO_TARGET;
    }

    public int done() {
        return line.stepsDone();
    }

    public int left() {
        return line.stepsLeft();
    }

    public String time() {
        return Figures.time(line.secondsLeft());
    }

    /** What the job is for; empty when nothing is to be reached. */
    public String target() {
        return line.stage() == Job.Stage.NO_TARGET
                ? ""
                : TargetWords.of(line.job().engine(), line.job().request().target()).replaceFirst("^Strip: ", "");
    }

    /** The next step as an instruction; empty when there is none. */
    public String next() {
        return line.next().map(new StepWords(line.job().engine())::instruction).orElse("");
    }

    public String nextWhere() {
        return line.next()
                .map(step -> names.zone(step.place().zone()))
                .orElse("");
    }

    public String last() {
        return line.last().map(JobLine::day).orElse("");
    }

    static String day(OffsetDateTime at) {
        return DAY.format(at);
    }

    /** What stands in the way, one line each. */
    public List<String> waits() {
        return line.waits().stream().map(this::wait).toList();
    }

    private String wait(JobList.Wait wait) {
        return switch (wait.sort()) {
            case TROUBLE -> "Trouble, not solved: " + names.any(wait.about()) + ".";
            case NOT_ARRIVED -> "Ordered, not here yet: " + wait.about() + ".";
            case LEFT_UNSAFE -> "The last session did not end safely"
                    + (wait.about().isBlank() ? "." : ": " + wait.about() + ".");
            case CONTRADICTION -> "The book contradicts itself about: " + names.any(wait.about()) + ".";
        };
    }
}
