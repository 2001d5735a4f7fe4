package gudgeon.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;

/** Every page there is, with a job in the middle of its strip so that none is empty. A new page belongs in here. */
final class Walk {
    private Walk() {}

    /** A page by its name and path. */
    record Stop(String name, String path) {}

    /** Opens a job on the Wren, does three steps, and names every page. */
    static List<Stop> all(Bench bench, Page page) {
        List<Stop> stops = new ArrayList<>(List.of(
                new Stop("engines", "/engines"),
                new Stop("engine", "/engines/wren-160"),
                new Stop("engine-found", "/engines/wren-160?find=piston"),
                new Stop("engine-not-found", "/engines/wren-160?find=pistn"),
                new Stop("part", "/engines/wren-160/parts/head"),
                new Stop("joint", "/engines/wren-160/joints/head-studs"),
                new Stop("drawing", "/engines/wren-160/drawing"),
                new Stop("strip-empty", "/engines/wren-160/strip"),
                new Stop("strip", "/engines/wren-160/strip?reach=piston"),
                new Stop("strip-large", "/engines/dunlin-22d/strip?reach=head&with=helper"),
                new Stop("strip-stuck", "/engines/wren-160/strip?reach=piston&stuck=head-studs"),
                new Stop("strip-blocked", "/engines/dunlin-22d/strip?reach=head"),
                new Stop("strip-unknown", "/engines/wren-160/strip?reach=pistn"),
                new Stop("jobs-none", "/"),
                new Stop("new-job", "/new-job"),
                new Stop("error", "/nowhere")));
        // the page of no jobs is only there before the first job: looked at now, and again with one
        bench.open(page, "/");
        String job = open(bench, page, "Pump engine", "Wren 160", "piston");
        for (int i = 0; i < 5; i++) {
            stepByTwoTaps(bench, page, job);
        }
        stops.add(new Stop("job", job));
        stops.add(new Stop("bench", job + "/bench"));
        bench.open(page, job + "/bench");
        page.locator(".hold").click();
        stops.add(new Stop("bench-sure", path(page)));
        stops.add(new Stop("job-strip", job + "/strip"));
        stops.add(new Stop("job-refuses", job + "/strip/refuses?joint=head-studs"));
        stops.add(new Stop("job-drawing", job + "/strip/drawing"));
        stops.add(new Stop("note", job + "/note?about=head-studs"));
        stops.add(new Stop("undo", job + "/undo"));
        stops.add(new Stop("job-stuck", open(bench, page, "A job with a very long name, longer than any head of a page has room for",
                "Dunlin 22D", "cylinder head")));
        return stops;
    }

    /** Begins a job as a person does, and gives its path. */
    static String open(Bench bench, Page page, String name, String engine, String target) {
        bench.open(page, "/new-job");
        page.getByLabel("What do you call it?").fill(name);
        page.getByLabel(engine).check();
        page.getByLabel("What must come off?").fill(target);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Begin")).click();
        return path(page).replaceFirst("[?].*", "");
    }

    private static String path(Page page) {
        return page.url().replaceFirst("^http://[^/]+", "");
    }

    /** The next step is done, by two plain taps. */
    static void stepByTwoTaps(Bench bench, Page page, String job) {
        bench.open(page, job + "/bench");
        page.locator(".hold").click();
        page.locator("form.sure button").click();
        page.waitForURL("**/bench?said=*");
    }
}
