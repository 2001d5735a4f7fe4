package gudgeon.app.web.toolbox;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.Toolbox;
import gudgeon.app.document.Names;
import gudgeon.app.document.ToolWords;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Keeping;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What today's steps need, and whether it is there. */
public final class ToolboxPages {
    private final JobDesk desk;
    private final Pages pages;

    public ToolboxPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the page under its path. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/toolbox", request -> show(request, desk.job(request), asked(request)));
        routes.post("/jobs/{job}/toolbox/tool", this::marked);
    }

    private static Form asked(Context request) {
        return Form.empty()
                .with(
                        "minutes",
                        Optional.ofNullable(request.queryParam("minutes")).orElse(String.valueOf(LayOut.USUAL_MINUTES)));
    }

    private void show(Context request, Job job, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        OptionalInt minutes = form.whole("minutes", "the time", LayOut.SHORTEST, LayOut.LONGEST);
        ToolboxView view = new ToolboxView(
                job,
                Toolbox.of(desk.workshop(), job),
                minutes.orElse(LayOut.USUAL_MINUTES),
                form,
                desk::newEntry,
                SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Toolbox", JobLine.stage(job.stage()));
        if (form.sound()) {
            pages.show(request, "toolbox/toolbox.jte", sheet, view);
        } else {
            pages.showRefused(request, "toolbox/toolbox.jte", sheet, view);
        }
    }

    private void marked(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String tool = form.line("tool", "the tool");
        String from = form.optionalLine("from", "from whom");
        Keeping.Whose whose = form.oneOf("whose", "whose it is", List.of("OWNED", "BORROWED", "MISSING"))
                .map(Keeping.Whose::valueOf)
                .orElse(Keeping.Whose.MISSING);
        int minutes = form.whole("minutes", "the time", LayOut.SHORTEST, LayOut.LONGEST).orElse(LayOut.USUAL_MINUTES);
        if (form.sound()) {
            Keeping.ToolMarked said =
                    new Keeping.ToolMarked(tool, whose, whose == Keeping.Whose.BORROWED ? from : "");
            if (desk.write(job, Say.that(said), form, Names.capital(tool) + ": " + ToolWords.of(said) + ".")) {
                Pages.goTo(request, JobPaths.job(job) + "/toolbox?minutes=" + minutes + "&said=" + form.entry());
                return;
            }
        }
        show(request, job, form.with("minutes", String.valueOf(minutes)));
    }
}
