package gudgeon.app.web.jobs;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.FieldProblem;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.PlanChange;
import gudgeon.app.desk.Who;
import gudgeon.app.desk.Workshop;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.app.web.page.Workroom;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What every page about a job needs: the job itself, its frame, writing down what was sent. */
public final class JobDesk implements AutoCloseable {
    private static final DateTimeFormatter SAVED = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.UK);
    private static final int MOST_REMEMBERED = 200;

    private final Workshop workshop;
    private final Workroom<Standing, JobList.Line> lines = new Workroom<>(2, Duration.ofSeconds(3), Standing::outdates);
    private final Workroom<Written, PlanChange> changes =
            new Workroom<>(1, Duration.ofSeconds(1), (fresh, old) -> fresh.at().outdates(old.at()));
    private final Map<UUID, Kept> said = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<UUID, Kept> eldest) {
            return size() > MOST_REMEMBERED;
        }
    };

    public JobDesk(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * What the page after a write says.
     *
     * @param text what was written
     * @param change what it changed; empty while that is being worked out
     */
    public record Said(String text, Optional<PlanChange> change) {}

    /** What was written, and the two states of the job that it lies between. */
    private record Kept(String text, Workshop.Noted.Done done) {}

    /** A job at one place of its book. */
    private record Standing(String job, long seq) {
        static Standing of(Job job) {
            return new Standing(job.id(), job.state().lastSeq());
        }

        /** Whether the same job has gone on from there. */
        boolean outdates(Standing old) {
            return job.equals(old.job) && seq > old.seq;
        }
    }

    /** An entry, and where its job stood after it. */
    private record Written(UUID entry, Standing at) {}

    /** Where a job stands; empty while its plan is being worked out. */
    public Optional<JobList.Line> line(Job job) {
        return lines.ask(Standing.of(job), () -> JobList.line(job));
    }

    /** Shows that the plan of a job is being worked out. */
    public void showWorking(Context request, Pages pages, Job job) {
        pages.show(request, "jobs/working.jte", sheet(job, "Being worked out", Sheet.Stage.NONE), job.name());
    }

    @Override
    public void close() {
        lines.close();
        changes.close();
    }

    public Workshop workshop() {
        return workshop;
    }

    /** A name for the entry that a form is about to make. */
    public String newEntry() {
        return workshop.nextId().toString();
    }

    /**
     * The job that the path names.
     *
     * @throws Refusal when there is none
     */
    public Job job(Context request) {
        String id = request.pathParam("job");
        return workshop.findJob(id)
                .orElseThrow(() -> Refusal.missing("No job is called " + id + ".", "The first page lists all jobs."));
    }

    /** The frame of a page about a job. */
    public Sheet sheet(Job job, String title, Sheet.Stage stage) {
        String saved = job.facts().clocked().last().map(SAVED::format).orElse("–");
        return Sheet.of(Sheet.Section.JOBS, title)
                .about(job.name(), JobPaths.job(job))
                .at(stage)
                .with("Job", job.name())
                .with("Sheet", title)
                .with("Book", "saved " + saved);
    }

    /**
     * Writes down what a form says, once however often it is sent. On refusal the faults are in the form, under the names of its fields.
     *
     * @param text what the next page says of it
     * @return whether it is in the book
     */
    public boolean write(Job job, Deed deed, Form form, String text) {
        return kept(workshop.note(job, deed, Who.SOMEBODY, Optional.of(form.entry())), form, text);
    }

    /**
     * Remembers what the next page says of what was written; on refusal the faults are in the form.
     *
     * @return whether it is in the book
     */
    public boolean kept(Workshop.Noted noted, Form form, String text) {
        return switch (noted) {
            case Workshop.Noted.Done done -> {
                remember(form.entry(), new Kept(text, done)); // planning anew is left to the page that shows it
                yield true;
            }
            case Workshop.Noted.Refused refused -> {
                faults(form, refused.problems());
                yield false;
            }
        };
    }

    /** Puts problems beside the fields that they are about. */
    public static void faults(Form form, List<FieldProblem> problems) {
        problems.forEach(problem -> form.refuse(problem.field(), FieldFaults.text(problem)));
    }

    private void remember(UUID entry, Kept what) {
        synchronized (said) {
            said.putIfAbsent(entry, what);
        }
    }

    /** The end of an address that leads on from this one, so that what was saved is still told there; may be empty. */
    public static String saying(Context request) {
        return findSaid(request).map(entry -> "?said=" + entry).orElse("");
    }

    /** What was said of the entry that the address names; empty after a restart and on other pages. */
    public Optional<Said> said(Context request) {
        Optional<UUID> id = findSaid(request);
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Kept kept;
        synchronized (said) {
            kept = said.get(id.get());
        }
        return kept == null
                ? Optional.empty()
                : Optional.of(new Said(kept.text(), changes.ask(new Written(id.get(), Standing.of(kept.done().job())), kept.done()::change)));
    }

    private static Optional<UUID> findSaid(Context request) {
        return Optional.ofNullable(request.queryParam("said")).flatMap(Form::findId);
    }
}
