package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.document.BlockedWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.ProofWords;
import gudgeon.app.document.StepWords;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.strip.StepView;
import gudgeon.app.web.strip.StepViews;
import gudgeon.app.web.strip.StripView;
import gudgeon.core.book.Setup;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The strip of a job: what it is for, what will not come, what is left from here. */
public final class StripState {
    private final Job job;
    private final Names names;
    private final SaidView said;
    private final String entry;

    /** @param entry names the entry that a form of the page makes */
    StripState(Job job, SaidView said, String entry) {
        this.job = job;
        this.names = new Names(job.engine());
        this.said = said;
        this.entry = entry;
    }

    /** A joint that will not come. */
    public record Refusing(String id, String name) {}

    public String path() {
        return JobPaths.strip(job);
    }

    public String wayBack() {
        return JobPaths.job(job) + "/build";
    }

    public String bench() {
        return JobPaths.bench(job);
    }

    public SaidView said() {
        return said;
    }

    public String entry() {
        return entry;
    }

    private Setup.TargetSet target() {
        return job.facts().setting().target();
    }

    public boolean aimless() {
        return target().isEmpty();
    }

    /** Whether the engine is being put together again. */
    public boolean together() {
        return job.goingTogether();
    }

    /** What is to be reached, in words. */
    public List<String> goals() {
        List<String> goals = new ArrayList<>();
        target().off().forEach(id -> goals.add(names.part(id) + " off"));
        target().aside().forEach(id -> goals.add(names.part(id) + " aside"));
        target().open().forEach(id -> goals.add(names.any(id) + " open"));
        target().measure().forEach(id -> goals.add(names.any(id) + " measured"));
        return goals;
    }

    public List<StripView.Choices> choices() {
        return StripView.choices(job.engine());
    }

    /** Ways of lifting, and whether they are there. */
    public List<StripView.Way> ways() {
        return job.engine().workplace().waysOfLifting().stream()
                .filter(way -> !way.name().equals(StripQuestion.ALONE))
                .map(way -> new StripView.Way(
                        way.name(),
                        Figures.mass(way.limitKilograms()),
                        job.facts().setting().means().with().contains(way.name())))
                .toList();
    }

    public List<Refusing> refusing() {
        return job.facts().setting().willNotCome().stream()
                .map(id -> new Refusing(id, names.any(id)))
                .toList();
    }

    /** Why there is no way on; empty when there is one. */
    public List<String> blocked() {
        return !aimless() && !together() && job.strip() instanceof Reply.Stuck stuck
                ? new BlockedWords(job.engine()).reasons(stuck.blocked())
                : List.of();
    }

    private Optional<StripPlan> plan() {
        return job.findPlan();
    }

    public boolean planned() {
        return plan().isPresent();
    }

    private StripPlan made() {
        return plan().orElseThrow();
    }

    /** Whether nothing is left to undo. */
    public boolean reached() {
        return planned() && made().operations().isEmpty();
    }

    public String time() {
        return Figures.time(made().totalSeconds());
    }

    public int left() {
        return made().operations().size();
    }

    public int done() {
        return job.stepsDone();
    }

    public List<String> renew() {
        return StepWords.spends(made().destroyed());
    }

    public List<String> proof() {
        return List.of(ProofWords.opening(made().opening()), ProofWords.order(made().order()));
    }

    public List<StepView.Run> runs() {
        return new StepViews(job.engine(), made(), id -> path() + "/refuses?joint=" + EnginePaths.encoded(id)).runs();
    }
}
