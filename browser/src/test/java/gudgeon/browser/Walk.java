package gudgeon.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import java.util.ArrayList;
import java.util.List;

/** Every page there is, with a job in the middle of its strip so that none is empty. A new page belongs in here. */
final class Walk {
    private Walk() {}

    /** A page by its name and path. */
    record Stop(String name, String path) {}

    /** The pages used most. */
    static List<Stop> some(Bench bench, Page page) {
        String job = open(bench, page, "Pump engine", "Wren 160", "piston");
        for (int i = 0; i < 3; i++) {
            stepByTwoTaps(bench, page, job);
        }
        List<Stop> stops = new ArrayList<>(List.of(
                new Stop("jobs", "/"),
                new Stop("new-job", "/new-job"),
                new Stop("engine", "/engines/wren-160"),
                new Stop("strip", "/engines/wren-160/strip?reach=piston"),
                new Stop("error", "/nowhere"),
                new Stop("job", job)));
        for (String room : List.of("bench", "strip", "trouble", "bags", "build", "closing", "book", "tags", "today", "back")) {
            stops.add(new Stop("job-" + room, job + "/" + room));
        }
        return stops;
    }

    /** Opens a job on the Wren, does three steps, and names every page. */
    static List<Stop> all(Bench bench, Page page) {
        List<Stop> stops = new ArrayList<>(List.of(
                new Stop("engines", "/engines"),
                new Stop("geometry", "/geometry?of=teeth&crank=22&cam=44&belt=137"),
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
                new Stop("sums", "/sums"),
                new Stop("sum-shims", "/sums/shims?wanted=0.15+mm+to+0.25+mm&valves=inlet+1%3A+0.10+mm%2C+2.70+mm%0Ainlet+2%3A+0.30+mm%2C+2.60+mm"),
                new Stop("sum-tin", "/sums/tin?bolts=4+x+M6x1x20&holes=edge%3A+4+x+M6%2C+clamped+8+mm%2C+aluminium+16+mm+deep&left=M6x1x20"),
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
        rooms(bench, page, job, stops);
        stops.add(new Stop("job-stuck", open(bench, page, "A job with a very long name, longer than any head of a page has room for",
                "Dunlin 22D", "cylinder head")));
        return stops;
    }

    /** The other pages of a job, none of them empty. */
    private static void rooms(Bench bench, Page page, String job, List<Stop> stops) {
        stops.add(new Stop("found-which", job + "/found"));
        stops.add(new Stop("found", job + "/found?joint=cowl-screws"));
        stops.add(new Stop("trouble", job + "/trouble?joint=cowl-screws"));
        bench.open(page, job + "/trouble?joint=cowl-screws");
        page.getByLabel("Seized").check();
        page.locator("main form button").last().click();
        stops.add(new Stop("trouble-ladder", path(page).replaceFirst("&said=.*", "")));
        stops.add(new Stop("trouble-which", job + "/trouble"));
        for (String room : List.of("bags", "labels", "order", "build", "closing", "book", "toolbox", "tags", "engine", "today", "prepare", "back")) {
            stops.add(new Stop(room, job + "/" + room));
        }
        stops.add(new Stop("bag", job + "/bags/bag?bag=1"));
        stops.add(new Stop("part-place", job + "/bags/part?part=rocker-gear"));
        stops.add(new Stop("add-joint", job + "/engine/add-joint"));
        stops.add(new Stop("add-part", job + "/engine/add-part"));
        stops.add(new Stop("correct-joint", job + "/engine/joint?joint=head-studs"));
        bench.open(page, job + "/book");
        stops.add(new Stop("take-back", page.locator(".entries .back").last().getAttribute("href")));
        String built = open(bench, page, "Half tightened", "Wren 160", "cylinder head");
        doAll(bench, page, built, "/bench", "/bench/done", "nothing");
        doAll(bench, page, built, "/build/bench", "/build/done", "head-studs/2");
        stops.add(new Stop("build-stage", built + "/build/bench"));
        stops.add(new Stop("build-sure", built + "/build/sure?step=head-studs%2F2"));
        stops.add(new Stop("build-broken", built + "/build/broken"));
        stops.add(new Stop("bolts", built + "/bolts"));
        stops.add(new Stop("bolt", built + "/bolts/head-studs"));
        stops.add(new Stop("build-way", built + "/build"));
        stops.add(new Stop("bags-all", built + "/bags"));
        stops.add(new Stop("tags-half", built + "/tags"));
        stops.add(new Stop("today-build", built + "/today?minutes=60"));
        stops.add(new Stop("today-short", job + "/today?minutes=5"));
        stops.add(new Stop("today-wrong", job + "/today?minutes=x&first=pistn"));
        stops.add(new Stop("back-build", built + "/back"));
    }

    /** Sends the form of one step after the other, until a step is next or none is left. */
    private static void doAll(Bench bench, Page page, String job, String from, String to, String until) {
        for (int i = 0; i < 60; i++) {
            bench.open(page, job + from);
            if (page.locator("#done").count() == 0 || page.locator("#done input[value='" + until + "']").count() > 0) {
                return;
            }
            FormData form = FormData.create();
            page.locator("#done input").all().forEach(field -> form.set(field.getAttribute("name"), field.inputValue()));
            page.request().post(bench.address(job + to), RequestOptions.create().setForm(form));
        }
        throw new AssertionError("not at " + until + " after 60 steps of " + job);
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
