package gudgeon.app.web.tags;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.Watch;
import gudgeon.app.document.Names;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobLine;
import gudgeon.app.web.page.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** The tags that must hang now. */
public final class TagPages {
    private final JobDesk desk;
    private final Pages pages;

    public TagPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Puts the page under its path. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/tags", this::show);
    }

    /**
     * What the page shows.
     *
     * @param now tags that must hang now
     */
    public record View(String job, List<Card> now) {
        public View {
            now = List.copyOf(now);
        }
    }

    /**
     * One tag.
     *
     * @param order what not to do, in large letters;
     * @param where what it hangs on
     */
    public record Card(String head, String order, String about, String where, boolean danger) {}

    private void show(Context request) {
        Job job = desk.job(request);
        if (desk.line(job).isEmpty()) {
            desk.showWorking(request, pages, job);
            return;
        }
        Names names = new Names(job.engine());
        List<Card> cards = Watch.tags(job).stream().map(tag -> card(tag, names)).toList();
        pages.show(
                request,
                "tags/tags.jte",
                desk.sheet(job, "Tags", JobLine.stage(job.stage())),
                new View(job.name(), cards));
    }

    private static Card card(Watch.Tag tag, Names names) {
        String about = Names.capital(names.any(tag.about()));
        return switch (tag.sort()) {
            case NO_OIL -> new Card("No oil", "Do not start", about, "on the key", true);
            case NO_COOLANT -> new Card("No coolant", "Do not start", about, "on the key", true);
            case NO_FLUID -> new Card("Empty", "Do not use", about, "on the key", false);
            case FUEL_OPEN -> new Card("Fuel open", "No flame, no starter", about, "on the key", true);
            case PINS_IN -> new Card("Pins in", "Do not turn", about, "on the key and the crank", true);
            case TORQUE_HALF_DONE ->
                new Card("Half tightened", "Do not start, do not fill", about, "on the joint", true);
            case SUPPORTED -> new Card("On a support", "Do not move", about, "on the support", true);
            case AID_FITTED -> new Card("Fitted for the work", "Off before starting", about, "on the key", false);
        };
    }
}
