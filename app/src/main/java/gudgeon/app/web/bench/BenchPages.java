package gudgeon.app.web.bench;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.PartsOff;
import gudgeon.app.desk.StepDone;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.planning.StripPlan;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The bench of a job in its strip: the next step; it's off; it was another count. */
public final class BenchPages {
    private static final int MOST_FASTENERS = 999;

    private final JobDesk desk;
    private final Pages pages;

    public BenchPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/bench", this::next);
        routes.get("/jobs/{job}/bench/sure", this::sure);
        routes.get("/jobs/{job}/bench/count", this::count);
        routes.post("/jobs/{job}/bench/done", this::done);
        routes.post("/jobs/{job}/bench/counted", this::counted);
    }

    /** Once something is put back, the bench is that of the way back: nobody is told to undo what was just built. */
    private void next(Context request) {
        Job job = desk.job(request);
        if (!job.goingTogether()) {
            show(request, job, "bench/bench.jte", Form.empty());
        } else {
            Pages.goTo(request, JobPaths.job(job) + "/build/bench" + JobDesk.saying(request));
        }
    }

    /** The second of two plain taps. */
    private void sure(Context request) {
        Form form = Form.empty()
                .with("place", Optional.ofNullable(request.queryParam("place")).orElse(""));
        showIfNext(request, "bench/sure.jte", form);
    }

    private void count(Context request) {
        showIfNext(request, "bench/count.jte", Form.empty());
    }

    /** A page about one step, from which one came back late, must not become a page about the step after it. */
    private void showIfNext(Context request, String template, Form form) {
        Job job = desk.job(request);
        String step = Optional.ofNullable(request.queryParam("step")).orElse("");
        if (desk.line(job).isPresent()
                && job.findNext().map(next -> BenchView.key(next).equals(step)).orElse(false)) {
            show(request, job, template, form);
        } else {
            Pages.goTo(request, JobPaths.bench(job));
        }
    }

    private void show(Context request, Job job, String template, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        Optional<StripPlan> plan = job.findPlan();
        Optional<StripPlan.Operation> step = job.findNext();
        if (step.isEmpty()) {
            Pages.goTo(request, JobPaths.job(job) + JobDesk.saying(request));
            return;
        }
        String entry = form.typed(Form.ENTRY).isEmpty() ? desk.newEntry() : form.typed(Form.ENTRY);
        int left = plan.map(all -> all.operations().size()).orElse(1);
        BenchView view = new BenchView(job, step.get(), left, form, entry, SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Step " + view.number(), JobLine.stage(job.stage()))
                .marked(view.number() + " of " + view.of())
                .forBench();
        if (form.sound()) {
            pages.show(request, template, sheet, view);
        } else {
            pages.showRefused(request, template, sheet, view);
        }
    }

    private void done(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        Deed deed = deed(form, OptionalInt.empty());
        written(request, job, form, deed, "bench/bench.jte");
    }

    private void counted(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        OptionalInt count = form.whole("count", "the count", 0, MOST_FASTENERS);
        Deed deed = deed(form, count);
        written(request, job, form, deed, "bench/count.jte");
    }

    private void written(Context request, Job job, Form form, Deed deed, String again) {
        String subject = form.optionalLine("subject", "the step");
        String bag = form.optionalLine("bag", "the bag's number");
        String where = bag.isEmpty() ? "." : ", in bag " + bag + ".";
        if (form.sound() && desk.write(job, deed, form, "Saved: " + subject + where)) {
            Pages.goTo(request, JobPaths.bench(job) + "?said=" + form.entry());
            return;
        }
        show(request, job, again, form);
    }

    private static Deed deed(Form form, OptionalInt count) {
        String parts = form.typed("parts");
        if (!parts.isEmpty()) {
            List<String> ids = Stream.of(parts.split(",", -1)).toList();
            String place = form.optionalLine("place", "the place");
            return new PartsOff(ids, place, form.ticked("aside"), form.optionalLine("marked", "the mark"));
        }
        String step = form.typed("step");
        if (step.isEmpty()) {
            throw Refusal.wrong(
                    "This form does not say which step it is about. Nothing was changed.", "Load the bench again.");
        }
        return new StepDone(step, count, form.optionalLine("bag", "the bag's number"), 0, form.ticked("cut"));
    }
}
