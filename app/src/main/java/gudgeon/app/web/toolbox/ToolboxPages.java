package gudgeon.app.web.toolbox;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.Job;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.OptionalInt;

/** What today's steps need. */
public final class ToolboxPages {
    private static final int USUAL_MINUTES = 90;
    private static final int MOST_MINUTES = 1_440;

    private final JobDesk desk;
    private final Pages pages;

    public ToolboxPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the page under its path. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/toolbox", this::show);
    }

    private void show(Context request) {
        Job job = desk.job(request);
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        Form form = Form.empty()
                .with(
                        "minutes",
                        Optional.ofNullable(request.queryParam("minutes")).orElse(String.valueOf(USUAL_MINUTES)));
        OptionalInt minutes = form.whole("minutes", "the time", 5, MOST_MINUTES);
        Job.Stage stage = job.stage();
        boolean building = stage == Job.Stage.STRIPPED || stage == Job.Stage.BUILDING || stage == Job.Stage.TOGETHER;
        ToolboxView view = new ToolboxView(
                job,
                form,
                minutes.orElse(USUAL_MINUTES),
                building ? Optional.of(new BuildBench(job)) : Optional.empty());
        Sheet sheet = desk.sheet(job, "Toolbox", JobLine.stage(stage));
        if (form.sound()) {
            pages.show(request, "toolbox/toolbox.jte", sheet, view);
        } else {
            pages.showRefused(request, "toolbox/toolbox.jte", sheet, view);
        }
    }
}
