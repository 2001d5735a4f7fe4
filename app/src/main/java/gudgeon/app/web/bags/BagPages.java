package gudgeon.app.web.bags;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Say;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Keeping;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Where everything is: all bags and parts, one bag, one part, a sheet of labels. */
public final class BagPages {
    private static final int MOST = 9_999;

    private final JobDesk desk;
    private final Pages pages;

    public BagPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/bags", request -> all(request, desk.job(request), Form.empty()));
        routes.post("/jobs/{job}/bags/new", this::made);
        routes.post("/jobs/{job}/bags/marked", this::marked);
        routes.get(
                "/jobs/{job}/bags/bag",
                request -> bag(
                        request,
                        desk.job(request),
                        Form.empty()
                                .with(
                                        "bag",
                                        Optional.ofNullable(request.queryParam("bag"))
                                                .orElse(""))));
        routes.post("/jobs/{job}/bags/bag", this::about);
        routes.get(
                "/jobs/{job}/bags/part",
                request -> part(
                        request,
                        desk.job(request),
                        Form.empty()
                                .with(
                                        "part",
                                        Optional.ofNullable(request.queryParam("part"))
                                                .orElse(""))));
        routes.post("/jobs/{job}/bags/part", this::moved);
        routes.get("/jobs/{job}/labels", this::labels);
    }

    private void all(Context request, Job job, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        PlacesView view = new PlacesView(job, form, desk::newEntry, SaidView.of(job, desk.said(request)));
        show(request, form, "bags/bags.jte", sheet(job, "Bags and places"), view);
    }

    private Sheet sheet(Job job, String title) {
        Sheet.Stage stage =
                desk.line(job).map(line -> JobLine.stage(line.stage())).orElse(Sheet.Stage.STRIP);
        return desk.sheet(job, title, stage);
    }

    private void show(Context request, Form form, String template, Sheet sheet, Object view) {
        if (form.sound()) {
            pages.show(request, template, sheet, view);
        } else {
            pages.showRefused(request, template, sheet, view);
        }
    }

    private void made(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String bag = form.line("bag", "what is written on the bag");
        String contents = form.line("contents", "what is in it");
        String place = form.optionalLine("place", "the place");
        if (job.facts().kept().bags().containsKey(bag)) {
            form.refuse("bag", "There is a bag " + bag + " already; the next free number is " + job.nextBag() + ".");
        }
        if (form.sound()
                && desk.write(job, Say.that(new Keeping.BagMade(bag, contents, place)), form, "Bag " + bag + ".")) {
            Pages.goTo(request, JobPaths.job(job) + "/bags?said=" + form.entry());
            return;
        }
        all(request, job, form);
    }

    private void marked(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        List<String> parts = job.engine().parts().stream()
                .map(part -> part.id())
                .filter(part -> form.ticked("p-" + part))
                .toList();
        String how = form.line("how", "how they are marked");
        if (parts.isEmpty()) {
            form.refuse("how", "Tick the parts that are marked now.");
        }
        if (form.sound() && desk.write(job, Say.that(new Keeping.Marked(parts, how)), form, "Marked: " + how + ".")) {
            Pages.goTo(request, JobPaths.job(job) + "/bags?said=" + form.entry());
            return;
        }
        all(request, job, form);
    }

    private void bag(Context request, Job job, Form form) {
        String bag = form.typed("bag");
        if (!job.facts().kept().bags().containsKey(bag)) {
            throw Refusal.missing("No bag is called “" + bag + "”.", "All bags are on the page of bags and places.");
        }
        BagView view = new BagView(job, bag, form, desk::newEntry, SaidView.of(job, desk.said(request)));
        show(request, form, "bags/bag.jte", sheet(job, "Bag " + bag).forBench(), view);
    }

    private void about(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        Optional<Keeping> body = said(form);
        if (form.sound() && body.isPresent()) {
            Deed deed = Say.that(body.get());
            if (desk.write(job, deed, form, "Bag " + form.typed("bag") + ": written down.")) {
                Pages.goTo(
                        request,
                        JobPaths.job(job) + "/bags/bag?bag=" + EnginePaths.encoded(form.typed("bag")) + "&said="
                                + form.entry());
                return;
            }
        }
        bag(request, job, form);
    }

    private static Optional<Keeping> said(Form form) {
        String bag = form.line("bag", "the bag");
        return switch (form.typed("what")) {
            case "moved" -> {
                String place = form.line("place", "the place");
                yield place.isEmpty() ? Optional.empty() : Optional.of(new Keeping.BagMoved(bag, place));
            }
            case "counted" -> {
                OptionalInt count = form.whole("count", "the count", 0, MOST);
                yield count.isEmpty() ? Optional.empty() : Optional.of(new Keeping.Counted(bag, count.getAsInt()));
            }
            case "opened" -> Optional.of(new Keeping.BagOpened(bag, form.optionalLine("why", "why")));
            default -> throw Refusal.wrong("This form does not say what happened to the bag.", "Load the page again.");
        };
    }

    private void part(Context request, Job job, Form form) {
        String id = form.typed("part");
        if (job.engine().findPart(id).isEmpty()) {
            throw Refusal.missing(
                    "No part is called “" + id + "”.", "Parts that are off are on the page of bags and places.");
        }
        PartPlaceView view = new PartPlaceView(job, id, form, desk::newEntry, SaidView.of(job, desk.said(request)));
        show(request, form, "bags/part.jte", sheet(job, "Place of a part").forBench(), view);
    }

    private void moved(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String part = form.typed("part");
        Keeping body = form.typed("what").equals("marked")
                ? new Keeping.Marked(List.of(part), form.line("how", "how it is marked"))
                : new Keeping.PartMoved(part, form.line("place", "the place"));
        if (form.sound() && desk.write(job, Say.that(body), form, "Written down.")) {
            Pages.goTo(
                    request,
                    JobPaths.job(job) + "/bags/part?part=" + EnginePaths.encoded(part) + "&said=" + form.entry());
            return;
        }
        part(request, job, form);
    }

    private void labels(Context request) {
        Job job = desk.job(request);
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        pages.show(request, "bags/labels.jte", sheet(job, "Labels"), new LabelsView(job));
    }
}
