package gudgeon.app.web.order;

import gudgeon.app.desk.CameIn;
import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.OldBesideNew;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.Toolbox;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Keeping;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
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
        OrderView view = new OrderView(
                job,
                LayOut.lacking(job, Toolbox.of(desk.workshop(), job)),
                form,
                desk::newEntry,
                SaidView.of(job, desk.said(request)));
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
        written(request, form, Say.that(new Keeping.Ordered(spec, count.orElse(0), -1)), "Ordered: " + spec + ".");
    }

    private void received(Context request) {
        Form form = Form.of(request);
        String spec = form.line("spec", "what came");
        OptionalInt count = form.whole("count", "how many", 1, MOST);
        String note = form.optionalLine("note", "the note");
        Map<OldBesideNew.Sort, String> facts = new LinkedHashMap<>();
        for (OldBesideNew.Sort sort : OldBesideNew.Sort.values()) {
            facts.put(sort, form.optionalLine("new-" + sort.word(), "the " + sort.word()));
        }
        boolean same = form.ticked("compared");
        written(request, form, new CameIn(spec, count.orElse(0), same, facts, note), "It came: " + spec + ".");
    }

    private void written(Context request, Form form, Deed deed, String text) {
        Job job = desk.job(request);
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, JobPaths.job(job) + "/order?said=" + form.entry());
            return;
        }
        show(request, job, form);
    }
}
