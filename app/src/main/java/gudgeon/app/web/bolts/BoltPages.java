package gudgeon.app.web.bolts;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JointTightening;
import gudgeon.app.desk.Toolbox;
import gudgeon.app.desk.Written;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.bolting.Adaptor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** The bolts of a job. */
public final class BoltPages {
    private final JobDesk desk;
    private final Pages pages;

    public BoltPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/bolts", request -> {
            Job job = desk.job(request);
            pages.show(request, "bolts/bolts.jte", desk.sheet(job, "Bolts", JobLine.stage(job.stage())), new BoltListView(job));
        });
        routes.get("/jobs/{job}/bolts/{joint}", this::show);
    }

    private void show(Context request) {
        Job job = desk.job(request);
        String joint = request.pathParam("joint");
        if (JointTightening.joints(job).stream().noneMatch(one -> one.id().equals(joint))) {
            throw new Refusal(
                    404, "There is no joint of this name that is tightened by stages.", "Choose one under Bolts.");
        }
        Form form = Form.empty();
        for (String field : List.of("offset", "wrench", "angle")) {
            form.with(field, Optional.ofNullable(request.queryParam(field)).orElse(""));
        }
        Optional<Adaptor> adaptor = Optional.empty();
        try {
            adaptor = JointTightening.adaptor(
                    form.typed("offset"), form.typed("wrench"), form.typed("angle"), new Written(false));
        } catch (IllegalArgumentException e) {
            form.refuse("offset", String.valueOf(e.getMessage()));
        }
        Toolbox toolbox = Toolbox.of(desk.workshop(), job);
        BoltView view = new BoltView(job, new JointTightening(job, joint, toolbox, adaptor), form);
        Sheet sheet = desk.sheet(job, view.name(), JobLine.stage(job.stage()));
        if (form.sound()) {
            pages.show(request, "bolts/bolt.jte", sheet, view);
        } else {
            pages.showRefused(request, "bolts/bolt.jte", sheet, view);
        }
    }
}
