package gudgeon.app.web.measuring;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Gauges;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPapers;
import gudgeon.app.desk.MeasuredFeature;
import gudgeon.app.desk.MeasuringList;
import gudgeon.app.desk.ReadingsIn;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.TakeReading;
import gudgeon.app.document.ReadingsCsv;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Gauging;
import gudgeon.core.book.Setup;
import gudgeon.core.engine.Feature;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** Measuring: the list, a sheet for each feature, and what is said on them. */
public final class MeasuringPages {
    private static final double MOST_MM = 10;

    private final JobDesk desk;
    private final Pages pages;

    public MeasuringPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/measure", request -> list(request, desk.job(request), Form.empty()));
        routes.get("/jobs/{job}/measure/readings.csv", this::csv);
        routes.get("/jobs/{job}/measure/sheet.pdf", this::paper);
        routes.get(
                "/jobs/{job}/measure/feature/{feature}", request -> feature(request, desk.job(request), Form.empty()));
        routes.post("/jobs/{job}/measure/reading", this::reading);
        routes.post("/jobs/{job}/measure/cleaned", this::cleaned);
        routes.post("/jobs/{job}/measure/confirmed", this::confirmed);
        routes.post("/jobs/{job}/measure/instrument", this::instrument);
        routes.post("/jobs/{job}/measure/edition", this::edition);
        routes.post("/jobs/{job}/measure/import", this::takeIn);
    }

    private Gauges gauges(Job job) {
        return Gauges.of(desk.workshop(), job);
    }

    private void list(Context request, Job job, Form form) {
        MeasuringView view = new MeasuringView(
                job,
                MeasuringList.of(job, gauges(job)),
                gauges(job),
                form,
                desk::newEntry,
                SaidView.of(job, desk.said(request)));
        show(request, form, "measuring/list.jte", desk.sheet(job, "Measure", Sheet.Stage.MEASURE), view);
    }

    private void feature(Context request, Job job, Form form) {
        String id = Optional.ofNullable(request.pathParamMap().get("feature")).orElse(form.typed("feature"));
        Feature feature = find(job, id);
        FeatureView view = new FeatureView(
                job,
                MeasuredFeature.of(job, gauges(job), feature),
                gauges(job),
                form,
                desk::newEntry,
                SaidView.of(job, desk.said(request)));
        show(request, form, "measuring/feature.jte", desk.sheet(job, feature.name(), Sheet.Stage.MEASURE), view);
    }

    private void show(Context request, Form form, String template, Sheet sheet, Object view) {
        if (form.sound()) {
            pages.show(request, template, sheet, view);
        } else {
            pages.showRefused(request, template, sheet, view);
        }
    }

    private static Feature find(Job job, String id) {
        return job.engine().features().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        "Nothing called " + id + " is measured on this engine.",
                        "The list of what to measure names all."));
    }

    private void reading(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String feature = form.line("feature", "what was read");
        Feature found = find(job, feature);
        String which = form.optionalLine("which", "which one");
        String place = form.optionalLine("other", "another place");
        String where = place.isEmpty() ? form.optionalLine("place", "the place") : place;
        String shown = form.line("shown", "the reading");
        TakeReading deed = new TakeReading(
                feature,
                which.isEmpty() ? where : which + ", " + where,
                List.of(shown.split("\\s*[;]\\s*|\\s{2,}", -1)),
                form.optionalLine("instrument", "the instrument"),
                form.optionalLine("part", "how warm the part was"),
                form.optionalLine("standard", "how warm the standard was"),
                gauges(job),
                true);
        if (form.sound()
                && desk.write(
                        job,
                        deed,
                        form,
                        found.name() + ", " + (which.isEmpty() ? where : which + ", " + where) + ": " + shown + ".")) {
            Pages.goTo(request, MeasuringPaths.feature(job, feature) + "?said=" + form.entry());
            return;
        }
        feature(request, job, form);
    }

    private void cleaned(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String part = form.line("part", "what was cleaned");
        String how = form.optionalLine("how", "how");
        boolean clear = form.ticked("clear");
        boolean white = form.ticked("white");
        if (form.sound()) {
            toFeature(
                    request,
                    job,
                    form,
                    Say.that(new Gauging.Cleaned(part, how, clear, white)),
                    "Cleaning written down.");
            return;
        }
        feature(request, job, form);
    }

    private void confirmed(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        Setup.LimitConfirmed said = new Setup.LimitConfirmed(
                form.line("feature", "what is measured"), form.line("where", "where it stands in your manual"));
        toFeature(request, job, form, Say.that(said), "The limit is confirmed.");
    }

    private void toFeature(Context request, Job job, Form form, Deed deed, String text) {
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, MeasuringPaths.feature(job, form.typed("feature")) + "?said=" + form.entry());
            return;
        }
        feature(request, job, form);
    }

    private void instrument(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String name = form.line("name", "its name");
        double figure = form.number("figure", "the last figure", 0, MOST_MM).orElse(0.01);
        double errs = form.number("errs", "what it may err by", 0.0001, MOST_MM).orElse(0.01);
        String checked = form.typed("offset").strip();
        double offset = form.number("offset", "what it showed too much", -MOST_MM, MOST_MM)
                .orElse(0);
        double repeats =
                form.number("repeats", "the spread of your repeats", 0, MOST_MM).orElse(0);
        if (form.sound()) {
            Gauging.InstrumentDescribed said =
                    new Gauging.InstrumentDescribed(name, figure, errs, offset, !checked.isEmpty(), repeats);
            toList(request, job, form, Say.that(said), "Instrument: " + name + ".");
            return;
        }
        list(request, job, form);
    }

    private void edition(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        int year = form.oneOf("year", "the edition", List.of("1998", "2017"))
                .map(Integer::parseInt)
                .orElse(2017);
        toList(request, job, form, Say.that(new Gauging.EditionKept(year)), "Judged by the edition of " + year + ".");
    }

    private void takeIn(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String table = form.typed("table");
        toList(request, job, form, new ReadingsIn("the table", table, gauges(job)), "Readings taken in.");
    }

    private void toList(Context request, Job job, Form form, Deed deed, String text) {
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, MeasuringPaths.list(job) + "?said=" + form.entry());
            return;
        }
        list(request, job, form);
    }

    private void csv(Context request) {
        Job job = desk.job(request);
        request.header("Content-Disposition", "attachment; filename=\"readings.csv\"");
        request.contentType("text/csv; charset=utf-8");
        request.result(ReadingsCsv.of(job.facts().gauged().readings()));
    }

    private void paper(Context request) {
        Job job = desk.job(request);
        request.contentType("application/pdf");
        request.result(new JobPapers(job, "").measuringSheet(gauges(job)));
    }
}
