package gudgeon.app.web.found;

import gudgeon.app.desk.CountFound;
import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Say;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.JointChoice;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Strip;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** As found: what came out of a joint, and how something flexible runs. */
public final class FoundPages {
    static final int PIECES = 3;
    private static final int MOST = 999;
    private static final double LONGEST_MM = 2_000;

    private final JobDesk desk;
    private final Pages pages;

    public FoundPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/found", this::ask);
        routes.post("/jobs/{job}/found", this::write);
        routes.post("/jobs/{job}/found/runs", this::runs);
    }

    private void ask(Context request) {
        String joint = Optional.ofNullable(request.queryParam("joint")).orElse("");
        show(request, desk.job(request), Form.empty().with("joint", joint));
    }

    private void show(Context request, Job job, Form form) {
        String entry = form.typed(Form.ENTRY).isEmpty() ? desk.newEntry() : form.typed(Form.ENTRY);
        FoundView view = new FoundView(
                job, form.typed("joint"), form, entry, desk.newEntry(), SaidView.of(job, desk.said(request)));
        Sheet sheet = desk.sheet(job, "As found", Sheet.Stage.STRIP).marked("as found");
        Sheet framed = view.chosen() ? sheet.forBench() : sheet;
        if (form.sound()) {
            pages.show(request, "found/found.jte", framed, view);
        } else {
            pages.showRefused(request, "found/found.jte", framed, view);
        }
    }

    private void write(Context request) {
        Job job = desk.job(request);
        Form form = JointChoice.chosen(job, Form.of(request));
        OptionalInt count = form.whole("count", "the count", 0, MOST);
        List<Strip.Piece> pieces = pieces(form);
        if (form.sound()) {
            Deed deed = new CountFound(
                    form.typed("joint"),
                    count,
                    pieces,
                    form.optionalLine("bag", "the bag"),
                    form.text("differs", "what differs"),
                    form.ticked("instead"));
            String name = job.engine()
                    .findJoint(form.typed("joint"))
                    .map(joint -> joint.name())
                    .orElse("");
            if (form.sound() && desk.write(job, deed, form, "Written down as found: " + name + ".")) {
                back(request, job, form);
                return;
            }
        }
        show(request, job, form);
    }

    /** Rows that say something; a row without a count is one piece. */
    private static List<Strip.Piece> pieces(Form form) {
        List<Strip.Piece> pieces = new ArrayList<>();
        for (int row = 1; row <= PIECES; row++) {
            String thread = form.optionalLine("thread-" + row, "the thread");
            String where = form.optionalLine("where-" + row, "the place");
            OptionalDouble length = form.number("length-" + row, "the length in mm", 0, LONGEST_MM);
            boolean many = !form.typed("many-" + row).isBlank();
            if (many || !thread.isEmpty() || !where.isEmpty() || length.isPresent()) {
                OptionalInt count = many ? form.whole("many-" + row, "how many", 0, MOST) : OptionalInt.of(1);
                pieces.add(new Strip.Piece(count.orElse(0), thread, length.orElse(0), where));
            }
        }
        return pieces;
    }

    private void runs(Context request) {
        Job job = desk.job(request);
        Form form = JointChoice.chosen(job, Form.of(request));
        String text = form.text("runs", "how it runs");
        if (text.isEmpty()) {
            form.refuse("runs", "Write how it runs: over, under, behind what, with which clips.");
        }
        String part = form.typed("part");
        if (form.sound() && desk.write(job, Say.that(new Strip.Routing(part, text)), form, "How it runs: noted.")) {
            back(request, job, form);
            return;
        }
        show(request, job, form);
    }

    private static void back(Context request, Job job, Form form) {
        Pages.goTo(
                request,
                JobPaths.job(job) + "/found?joint=" + EnginePaths.encoded(form.typed("joint")) + "&said="
                        + form.entry());
    }
}
