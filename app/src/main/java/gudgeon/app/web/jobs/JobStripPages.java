package gudgeon.app.web.jobs;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JointRefuses;
import gudgeon.app.desk.Say;
import gudgeon.app.document.EngineDrawing;
import gudgeon.app.document.Figures;
import gudgeon.app.web.engines.EnginePages;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.app.web.page.Workroom;
import gudgeon.core.book.Setup;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The strip of a job: the plan from here, another target, what there is for lifting, a joint that will not come. */
public final class JobStripPages implements AutoCloseable {
    private static final int NARROW = 344;
    private static final int WIDE = 1160;

    private final JobDesk desk;
    private final Pages pages;
    private final Workroom<Drawn, String> drawings = new Workroom<>(1, Duration.ofSeconds(4));

    private record Drawn(String job, long seq, int width) {}

    public JobStripPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/strip", this::strip);
        routes.get("/jobs/{job}/strip/drawing", this::drawing);
        routes.get("/jobs/{job}/strip/refuses", this::refuses);
        routes.post("/jobs/{job}/strip/refuses", this::refused);
        routes.post("/jobs/{job}/strip/target", this::target);
        routes.post("/jobs/{job}/strip/means", this::means);
    }

    private void strip(Context request) {
        Job job = desk.job(request);
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        StripState view = new StripState(job, SaidView.of(job, desk.said(request)), desk.newEntry());
        Sheet sheet = desk.sheet(job, "Strip", JobLine.stage(job.stage()));
        pages.show(request, "jobs/strip.jte", view.planned() ? sheet.marked(view.time()) : sheet, view);
    }

    private void drawing(Context request) {
        Job job = desk.job(request);
        int width = "narrow".equals(request.queryParam("width")) ? NARROW : WIDE;
        Optional<String> svg = drawings.ask(
                new Drawn(job.id(), job.state().lastSeq(), width), () -> draw(job, width));
        String path = JobPaths.strip(job) + "/drawing";
        pages.show(
                request,
                "engines/drawing.jte",
                desk.sheet(job, "Drawing", Sheet.Stage.STRIP),
                new EnginePages.Drawn(svg.orElse(""), path + "?width=narrow", path));
    }

    private static String draw(Job job, int width) {
        Engine engine = job.engine();
        return job.findPlan()
                .map(plan -> EngineDrawing.of(engine, plan, job.request().target()))
                .orElseGet(() -> EngineDrawing.of(engine))
                .figure(width, id -> Optional.empty());
    }

    private void refuses(Context request) {
        Job job = desk.job(request);
        Joint joint = joint(job, Optional.ofNullable(request.queryParam("joint")).orElse(""));
        String cut = joint.work().cut().map(way -> Figures.time(way.seconds())).orElse("");
        String back = Pages.local(Optional.ofNullable(request.queryParam("back")).orElse(JobPaths.strip(job)));
        RefusesView view = new RefusesView(
                joint.id(), joint.name(), cut, JobPaths.strip(job) + "/refuses", back, desk.newEntry());
        pages.show(request, "jobs/refuses.jte", desk.sheet(job, "Will not come", Sheet.Stage.STRIP), view);
    }

    private static Joint joint(Job job, String id) {
        return job.engine()
                .findJoint(id)
                .orElseThrow(() -> Refusal.missing("No joint is called " + id + ".", "Choose it on the strip page."));
    }

    private void refused(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        boolean comes = form.ticked("comes");
        Joint joint = joint(job, form.typed("joint"));
        written(request, job, form, new JointRefuses(joint.id(), comes), comes
                ? "Comes after all: " + joint.name() + "."
                : "Will not come: " + joint.name() + ".");
    }

    private void target(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        Setup.TargetSet old = job.facts().setting().target();
        Stream<String> kept = form.ticked("instead") ? Stream.empty() : old.off().stream();
        List<String> off = Stream.concat(kept, Stream.of(form.line("reach", "a part")))
                .filter(part -> !part.isEmpty())
                .distinct()
                .toList();
        Setup.TargetSet now = form.ticked("instead")
                ? new Setup.TargetSet(off, List.of(), List.of(), List.of())
                : new Setup.TargetSet(off, old.aside(), old.open(), old.measure());
        written(request, job, form, Say.that(now), "To be reached: changed.");
    }

    private void means(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        Setup.Settings old = job.facts().setting().means();
        List<String> ways = job.engine().workplace().waysOfLifting().stream()
                .map(way -> way.name())
                .filter(way -> form.ticked("with-" + way))
                .toList();
        Setup.Settings now = new Setup.Settings(ways, old.worthPerHour(), old.units(), old.toolbox());
        written(request, job, form, Say.that(now), "For lifting: changed.");
    }

    private void written(Context request, Job job, Form form, Deed deed, String text) {
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, JobPaths.strip(job) + "?said=" + form.entry());
            return;
        }
        throw new Refusal(422, String.join(" ", form.faults()), "Go back, and choose again. Nothing was changed.");
    }

    @Override
    public void close() {
        drawings.close();
    }
}
