package gudgeon.app.web.order;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Say;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Keeping;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.OptionalInt;

/** The order list of a job. */
public final class OrderPages {
    private static final int MOST = 9_999;

    private final JobDesk desk;
    private final Pages pages;

    public OrderPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/order", request -> show(request, desk.job(request), Form.empty()));
        routes.post("/jobs/{job}/order/ordered", this::ordered);
        routes.post("/jobs/{job}/order/received", this::received);
    }

    private void show(Context request, Job job, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        OrderView view = new OrderView(job, form, desk::newEntry, SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Order", Sheet.Stage.ORDER);
        if (form.sound()) {
            pages.show(request, "order/order.jte", sheet, view);
        } else {
            pages.showRefused(request, "order/order.jte", sheet, view);
        }
    }

    private void ordered(Context request) {
        Form form = Form.of(request);
        String spec = form.line("spec", "what was ordered");
        OptionalInt count = form.whole("count", "how many", 1, MOST);
        written(request, form, new Keeping.Ordered(spec, count.orElse(0), -1), "Ordered: " + spec + ".");
    }

    private void received(Context request) {
        Form form = Form.of(request);
        String spec = form.line("spec", "what came");
        OptionalInt count = form.whole("count", "how many", 1, MOST);
        String note = form.optionalLine("note", "the note");
        written(
                request,
                form,
                new Keeping.Received(spec, count.orElse(0), form.ticked("compared"), note),
                "It came: " + spec + (form.ticked("compared") ? "; laid beside the old one." : "."));
    }

    private void written(Context request, Form form, Keeping body, String text) {
        Job job = desk.job(request);
        Deed deed = Say.that(body);
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, JobPaths.job(job) + "/order?said=" + form.entry());
            return;
        }
        show(request, job, form);
    }
}
