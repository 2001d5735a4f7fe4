package gudgeon.app.web.jobs;

import gudgeon.app.desk.EngineShelf;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.OpenJob;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.Who;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Setup;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The list of jobs, a new job, and where a job stands. */
public final class JobPages {
    private final JobDesk desk;
    private final EngineShelf shelf;
    private final Pages pages;

    public JobPages(JobDesk desk, EngineShelf shelf, Pages pages) {
        this.desk = desk;
        this.shelf = shelf;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/", this::list);
        routes.get("/new-job", this::ask);
        routes.post("/new-job", this::open);
        routes.get("/jobs/{job}", this::job);
    }

    private void list(Context request) {
        List<JobLine> lines = desk.workshop().jobIds().stream()
                .flatMap(id -> desk.workshop().findJob(id).stream())
                .map(job -> desk.line(job).map(JobLine::new).orElseGet(() -> JobLine.working(job)))
                .toList();
        pages.show(request, "jobs/jobs.jte", Sheet.of(Sheet.Section.JOBS, "Jobs").with("Sheet", "Jobs"), lines);
    }

    private void ask(Context request) {
        String engine = Optional.ofNullable(request.queryParam("engine")).orElse("");
        Form form = Form.empty().with("engine", engine);
        pages.show(request, "jobs/new.jte", newSheet(), new NewJobView(form, desk.newEntry(), starts()));
    }

    private void open(Context request) {
        Form form = Form.of(request);
        OpenJob question = question(form);
        if (form.sound()) {
            switch (question.open(desk.workshop(), Who.SOMEBODY, Optional.of(form.entry()))) {
                case OpenJob.Reply.Opened opened -> {
                    Pages.goTo(request, JobPaths.job(opened.job()));
                    return;
                }
                case OpenJob.Reply.Refused refused -> JobDesk.faults(form, refused.problems());
            }
        }
        pages.showRefused(
                request, "jobs/new.jte", newSheet(), new NewJobView(form, form.entry().toString(), starts()));
    }

    private OpenJob question(Form form) {
        String name = form.line("name", "the job's name");
        List<String> engines = Stream.concat(shelf.ids().stream(), Stream.of(NewJobView.EMPTY)).toList();
        String engine = form.oneOf("engine", "an engine to start from", engines).orElse("");
        String own = form.optionalLine("engine-name", "the engine's name");
        String target = form.optionalLine("target", "what must come off");
        OpenJob.Start start = engine.equals(NewJobView.EMPTY)
                ? new OpenJob.Start.Empty(own)
                : own.isEmpty() ? new OpenJob.Start.Shipped(engine) : new OpenJob.Start.Like(engine, own);
        List<String> ways = Stream.of("helper", "hoist").filter(form::ticked).toList();
        return new OpenJob(
                name,
                start,
                new StripQuestion.Goal(target.isEmpty() ? List.of() : List.of(target), List.of(), List.of(), List.of()),
                new Setup.Settings(ways, 0, "", ""));
    }

    private List<NewJobView.Start> starts() {
        return shelf.all().stream().map(NewJobView.Start::of).toList();
    }

    private static Sheet newSheet() {
        return Sheet.of(Sheet.Section.JOBS, "New job").with("Sheet", "New job");
    }

    private void job(Context request) {
        Job job = desk.job(request);
        Optional<JobList.Line> line = desk.line(job);
        if (line.isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        JobView view = new JobView(job, line.get(), desk.said(request), desk.workshop().now());
        pages.show(request, "jobs/job.jte", desk.sheet(job, "Where am I", view.line().stage()), view);
    }
}
