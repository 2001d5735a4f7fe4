package gudgeon.app.web.history;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.Withdraw;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.UUID;

/** The book, and one entry taken back. */
public final class HistoryPages {
    private final JobDesk desk;
    private final Pages pages;

    public HistoryPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/book", request -> book(request, desk.job(request), Form.empty()));
        routes.get("/jobs/{job}/book/entry", this::entry);
        routes.post("/jobs/{job}/book/entry", this::withdraw);
    }

    private Sheet sheet(Job job, String title) {
        Sheet.Stage stage =
                desk.line(job).map(line -> JobLine.stage(line.stage())).orElse(Sheet.Stage.STRIP);
        return desk.sheet(job, title, stage);
    }

    private void book(Context request, Job job, Form form) {
        HistoryView view = new HistoryView(job, form, desk.newEntry(), SaidView.of(job, desk.said(request)));
        pages.show(request, "history/book.jte", sheet(job, "Book"), view);
    }

    private void entry(Context request) {
        show(
                request,
                desk.job(request),
                Form.empty()
                        .with(
                                "withdraw",
                                Optional.ofNullable(request.queryParam("id")).orElse("")));
    }

    private void show(Context request, Job job, Form form) {
        HistoryView view = new HistoryView(job, form, desk.newEntry(), SaidView.of(job, Optional.empty()));
        if (view.asked().isEmpty()) {
            throw Refusal.missing("There is no such entry in this book.", "Open the book and choose one.");
        }
        if (form.sound()) {
            pages.show(request, "history/entry.jte", sheet(job, "Take back"), view);
        } else {
            pages.showRefused(request, "history/entry.jte", sheet(job, "Take back"), view);
        }
    }

    private void withdraw(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        UUID id = Form.findId(form.typed("withdraw"))
                .orElseThrow(() ->
                        Refusal.missing("There is no such entry in this book.", "Open the book and choose one."));
        String why = form.optionalLine("why", "the reason");
        if (form.sound()
                && desk.write(job, new Withdraw(id, why), form, "Taken back; it stays, struck through.")) {
            Pages.goTo(request, JobPaths.job(job) + "/book?said=" + form.entry());
            return;
        }
        form.faults().forEach(fault -> form.refuse("why", fault));
        show(request, job, form);
    }
}
