package gudgeon.app.web.today;

import gudgeon.app.desk.ComingBack;
import gudgeon.app.desk.CoveredAtOnce;
import gudgeon.app.desk.Deed;
import gudgeon.app.desk.FinishForecast;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Preparing;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.Soaked;
import gudgeon.app.desk.Today;
import gudgeon.app.desk.TodayQuestion;
import gudgeon.app.document.Figures;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.app.web.page.Workroom;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.Setup;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Today's card, the prepare card, coming back. */
public final class TodayPages implements AutoCloseable {
    /** The next sessions that the prepare card looks at are this many as long as one. */
    private static final int SESSIONS_AHEAD = 2;
    private static final int MOST_CARED = 100;

    private final JobDesk desk;
    private final Pages pages;
    private final Workroom<Asked, TodayQuestion.Reply> cards = new Workroom<>(2, Duration.ofSeconds(6));
    private final Workroom<Standing, FinishForecast> forecasts = new Workroom<>(1, Duration.ofSeconds(2));

    public TodayPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** What was asked at one place of a book, to the minute. */
    private record Asked(String job, long seq, TodayQuestion question, OffsetDateTime now) {}

    /** A job at one place of its book, on one day. */
    private record Standing(String job, long seq, LocalDate day) {}

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/today", this::today);
        routes.get("/jobs/{job}/prepare", this::prepare);
        routes.get("/jobs/{job}/back", request -> back(request, desk.job(request), Form.empty()));
        routes.post("/jobs/{job}/back", this::cared);
        routes.post("/jobs/{job}/today/place", this::place);
        routes.post("/jobs/{job}/today/soaked", this::soaked);
    }

    private void today(Context request) {
        Job job = desk.job(request);
        SessionForm asked = SessionForm.of(request, now());
        Optional<TodayQuestion.Reply> card = asked.form().sound() ? card(job, asked.question()) : Optional.empty();
        if (desk.line(job).isEmpty() || (asked.form().sound() && card.isEmpty())) {
            desk.showWorking(request, pages, job);
            return;
        }
        if (card.isPresent()) {
            asked.refuse(card.get());
        }
        show(request, job, asked, card);
    }

    private void show(Context request, Job job, SessionForm asked, Optional<TodayQuestion.Reply> card) {
        TodayView view = new TodayView(
                job,
                asked,
                card,
                card.flatMap(reply -> forecast(job)),
                desk::newEntry,
                SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Today's card", JobLine.stage(job.stage()));
        if (asked.form().sound()) {
            pages.show(request, "today/today.jte", sheet, view);
        } else {
            pages.showRefused(request, "today/today.jte", sheet, view);
        }
    }

    private Optional<TodayQuestion.Reply> card(Job job, TodayQuestion question) {
        OffsetDateTime now = now();
        return cards.ask(new Asked(job.id(), job.state().lastSeq(), question, now), () -> question.ask(job, now));
    }

    /** What is left until it is together; empty while it is being worked out, which no page waits long for. */
    private Optional<FinishForecast> forecast(Job job) {
        OffsetDateTime now = now();
        return forecasts.ask(
                new Standing(job.id(), job.state().lastSeq(), now.toLocalDate()), () -> FinishForecast.of(job, now));
    }

    private OffsetDateTime now() {
        return desk.workshop().now().truncatedTo(ChronoUnit.MINUTES);
    }

    private void prepare(Context request) {
        Job job = desk.job(request);
        SessionForm asked = SessionForm.of(request, now());
        TodayQuestion ahead = TodayQuestion.of(Math.min(
                TodayQuestion.LONGEST, SESSIONS_AHEAD * asked.question().minutes()));
        Optional<TodayQuestion.Reply> card = card(job, ahead);
        if (desk.line(job).isEmpty() || card.isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        List<Today.Work> works = card.get() instanceof TodayQuestion.Reply.Planned planned
                ? planned.today().works()
                : List.of();
        int steps = card.get() instanceof TodayQuestion.Reply.Planned planned
                ? Math.max(1, planned.today().plan().steps())
                : 0;
        Preparing ready = Preparing.of(job, works.subList(0, Math.min(works.size(), steps)));
        pages.show(
                request,
                "today/prepare.jte",
                desk.sheet(job, "Prepare", JobLine.stage(job.stage())),
                new PrepareView(job, asked.form(), ready));
    }

    private void back(Context request, Job job, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        OffsetDateTime now = now();
        BackView view = new BackView(
                job, ComingBack.to(job, now), forecast(job), form, desk, SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Coming back", JobLine.stage(job.stage()));
        if (form.sound()) {
            pages.show(request, "today/back.jte", sheet, view);
        } else {
            pages.showRefused(request, "today/back.jte", sheet, view);
        }
    }

    /** Covered, or oiled. */
    private void cared(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        List<String> about = form.lines("about", MOST_CARED);
        String with = form.optionalLine("with", "the cover or the oil");
        if (about.isEmpty()) {
            form.refuse("about", "Tick what it is about.");
        }
        boolean covered = form.typed("what").equals("covered");
        if (!covered && !form.typed("what").equals("oiled")) {
            throw Refusal.wrong("This form does not say what was done.", "Load the page again.");
        }
        Deed deed = covered
                ? new CoveredAtOnce(about, with)
                : Say.that(new Fluid.Oiled(about.isEmpty() ? "" : about.getFirst(), with));
        String said = covered ? "Covered: " + Figures.count(about.size(), "opening") + "." : "Oiled.";
        if (form.sound() && desk.write(job, deed, form, said)) {
            Pages.goTo(request, JobPaths.job(job) + "/back?said=" + form.entry());
            return;
        }
        back(request, job, form);
    }

    private void soaked(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String joint = form.line("joint", "the joint");
        if (form.sound() && desk.write(job, Soaked.joint(joint), form, "Soaked.")) {
            String minutes = form.optionalLine("minutes", "the time");
            Pages.goTo(
                    request,
                    JobPaths.saying(
                            JobPaths.job(job) + "/today" + (minutes.matches("[0-9]{1,4}") ? "?minutes=" + minutes : ""),
                            form.entry()));
            return;
        }
        throw new Refusal(422, "That was not written: " + String.join(" ", form.faults()), "Load the card again.");
    }

    private void place(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        double latitude = form.number("latitude", "the latitude", -90, 90).orElseGet(() -> missing(form, "latitude"));
        double longitude =
                form.number("longitude", "the longitude", -180, 180).orElseGet(() -> missing(form, "longitude"));
        boolean outdoors = form.ticked("outdoors");
        if (form.sound()
                && desk.write(job, Say.that(new Setup.PlaceSet(latitude, longitude, outdoors)), form, "Place noted.")) {
            Pages.goTo(request, JobPaths.job(job) + "/today?said=" + form.entry());
            return;
        }
        show(
                request,
                job,
                new SessionForm(form.with("minutes", SessionForm.USUAL), TodayQuestion.of(90)),
                Optional.empty());
    }

    private static double missing(Form form, String field) {
        form.refuse(field, "The " + field + " is missing.");
        return 0;
    }

    @Override
    public void close() {
        cards.close();
        forecasts.close();
    }
}
