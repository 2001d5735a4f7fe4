package gudgeon.app.web.correction;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JointAdded;
import gudgeon.app.desk.JointCorrected;
import gudgeon.app.desk.PartAdded;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.JointChoice;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;

/** Three fields are enough to add a joint; each is checked as a whole file before it counts. */
public final class CorrectionPages {
    private final JobDesk desk;
    private final Pages pages;

    public CorrectionPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/engine", request -> show(request, "all", Form.empty()));
        routes.get("/jobs/{job}/engine/file", this::file);
        routes.get("/jobs/{job}/engine/add-joint", request -> show(request, "add-joint", Form.empty()));
        routes.post("/jobs/{job}/engine/add-joint", request -> write(request, "add-joint"));
        routes.get("/jobs/{job}/engine/add-part", request -> show(request, "add-part", Form.empty()));
        routes.post("/jobs/{job}/engine/add-part", request -> write(request, "add-part"));
        routes.get(
                "/jobs/{job}/engine/joint",
                request -> show(
                        request,
                        "joint",
                        Form.empty()
                                .with(
                                        "joint",
                                        Optional.ofNullable(request.queryParam("joint"))
                                                .orElse(""))));
        routes.post("/jobs/{job}/engine/joint", request -> write(request, "joint"));
    }

    private void show(Context request, String page, Form form) {
        show(request, page, form, false);
    }

    private void show(Context request, String page, Form form, boolean checked) {
        Job job = desk.job(request);
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        if (page.equals("joint") && JointChoice.find(job, form.typed("joint")).isEmpty()) {
            throw Refusal.missing(
                    "No joint is called “" + form.typed("joint") + "”.", "Choose it on the page of the job's engine.");
        }
        String entry = form.typed(Form.ENTRY).isEmpty() ? desk.newEntry() : form.typed(Form.ENTRY);
        CorrectionView view = new CorrectionView(job, form, entry, checked, SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "Engine", JobLine.stage(job.stage()));
        if (form.sound()) {
            pages.show(request, "correction/" + page + ".jte", sheet, view);
        } else {
            pages.showRefused(request, "correction/" + page + ".jte", sheet, view);
        }
    }

    private void write(Context request, String page) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        form.entry();
        Deed deed = deed(page, form);
        if (form.sound() && form.ticked("check")) {
            if (deed.tell(job) instanceof Deed.Telling.Wrong wrong) {
                JobDesk.faults(form, wrong.problems());
            }
            show(request, page, form, form.sound());
            return;
        }
        String name = form.typed("name").isBlank() ? form.typed("joint") : form.typed("name");
        String text = page.equals("joint") ? "Put right: " + name + "." : "Added: " + name + ".";
        if (form.sound() && desk.write(job, deed, form, text)) {
            Pages.goTo(request, JobPaths.job(job) + "/engine?said=" + form.entry());
            return;
        }
        show(request, page, form);
    }

    private static Deed deed(String page, Form form) {
        String name = form.optionalLine("name", "the name");
        String between = form.optionalLine("between", "the parts");
        String fasteners = form.optionalLine("fasteners", "the fasteners");
        String tighten = form.optionalLine("tighten", "the tightening");
        return switch (page) {
            case "add-joint" -> new JointAdded(name, between, fasteners, tighten);
            case "add-part" -> new PartAdded(name, form.optionalLine("mass", "the mass"), between, fasteners);
            default -> new JointCorrected(form.typed("joint"), name, between, fasteners, tighten);
        };
    }

    /** The file of the job, corrections included, to be kept as one's own. */
    private void file(Context request) {
        Job job = desk.job(request);
        request.contentType("application/yaml; charset=utf-8")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + job.engine().identity().id().replaceAll("[^a-z0-9-]", "")
                                + ".yaml\"")
                .result(job.ownEngine().text());
    }
}
