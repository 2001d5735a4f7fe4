package gudgeon.app.web.trouble;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.RescueTried;
import gudgeon.app.desk.TroubleMet;
import gudgeon.app.document.RescueWords;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.JointChoice;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Fault;
import gudgeon.core.engine.Joint;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Seized, rounded, snapped, stripped, missing: said, and worked through. */
public final class TroublePages {
    private static final int MOST_MINUTES = 10_000;

    private final JobDesk desk;
    private final Pages pages;

    public TroublePages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/trouble", this::ask);
        routes.post("/jobs/{job}/trouble", this::met);
        routes.get("/jobs/{job}/trouble/ladder", this::ladder);
        routes.post("/jobs/{job}/trouble/tried", this::tried);
    }

    private void ask(Context request) {
        String joint = Optional.ofNullable(request.queryParam("joint")).orElse("");
        show(request, desk.job(request), Form.empty().with("joint", joint));
    }

    private void show(Context request, Job job, Form form) {
        String entry = form.typed(Form.ENTRY).isEmpty() ? desk.newEntry() : form.typed(Form.ENTRY);
        TroubleView view = new TroubleView(job, form.typed("joint"), form, entry);
        Sheet sheet = desk.sheet(job, "Trouble", Sheet.Stage.STRIP).marked("trouble");
        Sheet framed = view.chosen() ? sheet.forBench() : sheet;
        if (form.sound()) {
            pages.show(request, "trouble/trouble.jte", framed, view);
        } else {
            pages.showRefused(request, "trouble/trouble.jte", framed, view);
        }
    }

    private void met(Context request) {
        Job job = desk.job(request);
        Form form = JointChoice.chosen(job, Form.of(request));
        List<String> kinds =
                Arrays.stream(Fault.Kind.values()).map(Fault.Kind::name).toList();
        Optional<Fault.Kind> kind =
                form.oneOf("kind", "what is the matter with it", kinds).map(Fault.Kind::valueOf);
        String note = form.text("note", "the note");
        if (form.sound() && kind.isPresent()) {
            Deed deed = new TroubleMet(form.typed("joint"), kind.get(), ticked(form), note);
            if (desk.write(job, deed, form, "Written down. Nothing is lost by stopping to think.")) {
                toLadder(request, job, form);
                return;
            }
        }
        show(request, job, form);
    }

    /** Numbers of the fasteners that are ticked; the engine file allows 999 to a joint. */
    private static List<String> ticked(Form form) {
        return IntStream.rangeClosed(1, 999)
                .filter(number -> form.ticked("f-" + number))
                .mapToObj(String::valueOf)
                .toList();
    }

    private void ladder(Context request) {
        Job job = desk.job(request);
        String joint = Optional.ofNullable(request.queryParam("joint")).orElse("");
        showLadder(request, job, joint, Form.empty());
    }

    private void showLadder(Context request, Job job, String id, Form form) {
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        Joint joint = JointChoice.find(job, id)
                .orElseThrow(() -> Refusal.missing("No joint is called " + id + ".", "Choose it on the trouble page."));
        LadderView view = new LadderView(job, joint, form, desk::newEntry, SaidView.of(job, desk.said(request)));
        if (!view.inTrouble()) {
            Pages.goTo(request, JobPaths.job(job) + "/trouble?joint=" + EnginePaths.encoded(id));
            return;
        }
        Sheet sheet =
                desk.sheet(job, "Trouble", Sheet.Stage.STRIP).marked("trouble").forBench();
        if (form.sound()) {
            pages.show(request, "trouble/ladder.jte", sheet, view);
        } else {
            pages.showRefused(request, "trouble/ladder.jte", sheet, view);
        }
    }

    private void tried(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        List<String> outcomes =
                Arrays.stream(Fault.Outcome.values()).map(Fault.Outcome::name).toList();
        Optional<Fault.Outcome> outcome =
                form.oneOf("outcome", "how it ended", outcomes).map(Fault.Outcome::valueOf);
        double minutes = form.number("minutes", "the minutes", 0, MOST_MINUTES).orElse(0);
        String rung = form.line("rung", "what you tried");
        if (form.sound() && outcome.isPresent()) {
            List<String> fasteners = Arrays.stream(form.typed("fasteners").split(",", -1))
                    .filter(fastener -> !fastener.isBlank())
                    .toList();
            Deed deed = new RescueTried(form.typed("joint"), fasteners, rung, minutes, outcome.get());
            String text = RescueWords.rung(rung) + ": " + RescueWords.outcome(outcome.get()) + ".";
            if (desk.write(job, deed, form, text)) {
                toLadder(request, job, form);
                return;
            }
        }
        showLadder(request, job, form.typed("joint"), form);
    }

    private static void toLadder(Context request, Job job, Form form) {
        Pages.goTo(
                request,
                JobPaths.job(job) + "/trouble/ladder?joint=" + EnginePaths.encoded(form.typed("joint")) + "&said="
                        + form.entry());
    }
}
