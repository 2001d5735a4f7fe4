package gudgeon.app.web.build;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.Deed;
import gudgeon.app.desk.FastenersRenewed;
import gudgeon.app.desk.FastenersTurned;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.StageBroken;
import gudgeon.app.desk.StepTogether;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.app.web.page.Workroom;
import gudgeon.core.book.Setup;
import gudgeon.core.planning.BuildPlan;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The pages of the way back. */
public final class BuildPages implements AutoCloseable {
    private static final double MOST_LITRES = 1_000;

    private final JobDesk desk;
    private final Pages pages;
    private final Workroom<Standing, BuildBench> benches = new Workroom<>(1, Duration.ofSeconds(4));

    /** A job at one place of its book. */
    private record Standing(String job, long seq) {}

    public BuildPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/build", this::way);
        routes.get(
                "/jobs/{job}/build/bench",
                request -> next(request, desk.job(request), Form.empty(), "build/bench.jte"));
        routes.get("/jobs/{job}/build/sure", this::sure);
        routes.get("/jobs/{job}/build/broken", this::broken);
        routes.post("/jobs/{job}/build/done", this::done);
        routes.post("/jobs/{job}/build/turned", this::turned);
        routes.post("/jobs/{job}/build/broken", this::brokenOff);
        routes.post("/jobs/{job}/build/renewed", this::renewed);
        routes.post("/jobs/{job}/build/confirmed", this::confirmed);
    }

    @Override
    public void close() {
        benches.close();
    }

    private Optional<BuildBench> bench(Job job) {
        return benches.ask(new Standing(job.id(), job.state().lastSeq()), () -> {
            BuildBench bench = new BuildBench(job);
            bench.plan();
            return bench;
        });
    }

    private void way(Context request) {
        Job job = desk.job(request);
        Optional<BuildBench> bench = bench(job);
        if (bench.isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        pages.show(
                request,
                "build/way.jte",
                desk.sheet(job, "Way back", Sheet.Stage.BUILD),
                new WayBackView(job, bench.get(), SaidView.of(job, desk.said(request))));
    }

    /** The second of two plain taps; a page about a step that is done already becomes the bench. */
    private void sure(Context request) {
        Job job = desk.job(request);
        Form form = asked(request);
        boolean current = bench(job)
                .flatMap(BuildBench::findNext)
                .map(step -> step.id().equals(form.typed("step")))
                .orElse(false);
        if (current) {
            next(request, job, form, "build/sure.jte");
        } else {
            Pages.goTo(request, JobPaths.job(job) + "/build/bench");
        }
    }

    private void broken(Context request) {
        next(request, desk.job(request), asked(request), "build/broken.jte");
    }

    private static Form asked(Context request) {
        Form form = Form.empty();
        for (String field : List.of("step", "litres", "note")) {
            Optional.ofNullable(request.queryParam(field)).ifPresent(value -> form.with(field, value));
        }
        return form;
    }

    private void next(Context request, Job job, Form form, String template) {
        Optional<BuildBench> bench = bench(job);
        if (bench.isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        Optional<BuildPlan.Operation> step = bench.get().findNext();
        if (step.isEmpty()) {
            Pages.goTo(request, JobPaths.job(job) + "/build" + JobDesk.saying(request));
            return;
        }
        BuildStepView view = new BuildStepView(
                job, bench.get(), step.get(), form, desk::newEntry, SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Build " + view.number(), Sheet.Stage.BUILD)
                .marked(view.number() + " of " + view.of())
                .forBench();
        if (form.sound()) {
            pages.show(request, template, sheet, view);
        } else {
            pages.showRefused(request, template, sheet, view);
        }
    }

    private void done(Context request) {
        Form form = Form.of(request);
        double litres = form.number("litres", "the litres", 0, MOST_LITRES).orElse(0);
        List<String> turned = Stream.of(form.typed("turn").split(",", -1))
                .filter(fastener -> !fastener.isEmpty())
                .toList();
        Deed deed = turned.isEmpty()
                ? new StepTogether(step(form), 0, litres, form.text("note", "the note"))
                : new FastenersTurned(step(form), turned);
        written(request, form, deed, "Done.", "build/bench.jte");
    }

    private void turned(Context request) {
        Form form = Form.of(request);
        List<String> fasteners = List.of(form.typed("fastener"));
        written(
                request,
                form,
                new FastenersTurned(step(form), fasteners),
                "Number " + form.typed("number") + " has it.",
                "build/bench.jte");
    }

    private void brokenOff(Context request) {
        Form form = Form.of(request);
        List<String> marked = IntStream.rangeClosed(1, 999)
                .filter(number -> form.ticked("f-" + number))
                .mapToObj(String::valueOf)
                .toList();
        boolean certain = form.oneOf("certain", "whether it is certain", List.of("yes", "no"))
                .map("yes"::equals)
                .orElse(false);
        written(
                request,
                form,
                new StageBroken(step(form), certain, marked),
                "Broken off; it is written down.",
                "build/broken.jte");
    }

    private void renewed(Context request) {
        Form form = Form.of(request);
        Deed deed = new FastenersRenewed(form.typed("joint"), form.text("why", "the reason"));
        written(request, form, deed, "All out and renewed: it goes together from its first stage.", "build/bench.jte");
    }

    private void confirmed(Context request) {
        Form form = Form.of(request);
        String where = form.line("where", "where you looked it up");
        Deed deed = Say.that(new Setup.LimitConfirmed(form.typed("feature"), where));
        written(request, form, deed, "Confirmed from " + where + ".", "build/bench.jte");
    }

    private static String step(Form form) {
        String step = form.typed("step");
        if (step.isEmpty()) {
            throw Refusal.wrong(
                    "This form does not say which step it is about. Nothing was changed.", "Load the bench again.");
        }
        return step;
    }

    private void written(Context request, Form form, Deed deed, String text, String again) {
        Job job = desk.job(request);
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, JobPaths.job(job) + "/build/bench?said=" + form.entry());
            return;
        }
        next(request, job, form, again);
    }
}
