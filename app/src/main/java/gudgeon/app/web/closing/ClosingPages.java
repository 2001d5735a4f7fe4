package gudgeon.app.web.closing;

import gudgeon.app.desk.ClosingUp;
import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Say;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Body;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.Keeping;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The page of the ledgers. */
public final class ClosingPages {
    private static final int MOST_RAGS = 999;
    private static final double MOST_LITRES = 1_000;

    private final JobDesk desk;
    private final Pages pages;

    public ClosingPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/closing", request -> show(request, desk.job(request), Form.empty()));
        routes.post("/jobs/{job}/closing", this::close);
        routes.post("/jobs/{job}/closing/entry", this::enter);
    }

    private void show(Context request, Job job, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        ClosingView view = new ClosingView(job, form, desk::newEntry, SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Closing up", JobLine.stage(job.stage()));
        if (form.sound()) {
            pages.show(request, "closing/closing.jte", sheet, view);
        } else {
            pages.showRefused(request, "closing/closing.jte", sheet, view);
        }
    }

    private void close(Context request) {
        Form form = Form.of(request);
        written(request, form, new ClosingUp.Close(form.text("note", "the note")), "Closed up, and signed for.");
    }

    private void enter(Context request) {
        Form form = Form.of(request);
        Body body = body(form);
        written(request, form, Say.that(body), "In the ledger.");
    }

    private static Body body(Form form) {
        String what = form.typed("what");
        return switch (what) {
            case "rag-in", "rag-out" -> {
                String where = form.line("where", "where the rags are");
                int count =
                        form.whole("rags", "the number of rags", 1, MOST_RAGS).orElse(0);
                yield what.equals("rag-in") ? new Keeping.RagIn(where, count) : new Keeping.RagOut(where, count);
            }
            case "covered" ->
                new Keeping.Covered(form.line("opening", "the opening"), form.optionalLine("with", "the cover"));
            case "uncovered" -> new Keeping.Uncovered(form.line("opening", "the opening"));
            case "drained" ->
                new Fluid.Drained(
                        form.line("circuit", "the circuit"),
                        form.number("litres", "the litres", 0, MOST_LITRES).orElse(0),
                        form.optionalLine("to", "where it went"));
            case "filled" ->
                new Fluid.Filled(
                        form.line("circuit", "the circuit"),
                        form.number("litres", "the litres", 0, MOST_LITRES).orElse(0));
            default -> throw Refusal.wrong("This form does not say which ledger it is for.", "Load the page again.");
        };
    }

    private void written(Context request, Form form, Deed deed, String text) {
        Job job = desk.job(request);
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, JobPaths.job(job) + "/closing?said=" + form.entry());
            return;
        }
        show(request, job, form);
    }
}
