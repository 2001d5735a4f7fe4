package gudgeon.app.web.today;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.Preparing;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.page.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to have ready before the next sessions. */
public final class PrepareView {
    private final Job job;
    private final Form form;
    private final Preparing ready;
    private final Names names;

    PrepareView(Job job, Form form, Preparing ready) {
        this.job = job;
        this.form = form;
        this.ready = ready;
        this.names = new Names(job.engine());
    }

    /** Things to have, under a heading. @param note a word on them; may be empty */
    public record Group(String name, String note, List<String> things) {
        public Group {
            things = List.copyOf(things);
        }
    }

    public Form form() {
        return form;
    }

    public String path() {
        return JobPaths.job(job) + "/prepare";
    }

    public String today() {
        return JobPaths.job(job) + "/today";
    }

    public String order() {
        return JobPaths.job(job) + "/order";
    }

    public int steps() {
        return ready.steps();
    }

    /** All groups that have something in them. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        if (ready.steps() == 0) {
            return groups;
        }
        add(groups, "Before anything", "", first());
        add(
                groups,
                "Buy",
                "Neither here nor ordered.",
                ready.buy().stream().map(this::piece).toList());
        add(groups, "On its way", "Ordered and not here.", ready.waiting());
        add(groups, "Have, borrow or hire", "Tools that not every box has.", ready.special());
        add(groups, "Lay out", "", ready.usual());
        add(groups, "Who helps", "", ready.helpers().stream().map(this::lift).toList());
        add(
                groups,
                "Cans and pans",
                "",
                ready.catching().stream().map(this::can).toList());
        add(
                groups,
                "Soak days before",
                "Penetrating oil, each evening; they are likely to be seized.",
                any(ready.soak()));
        add(groups, "On a warm engine, so first", "", any(ready.warm()));
        return groups;
    }

    private static void add(List<Group> groups, String name, String note, List<String> things) {
        if (!things.isEmpty()) {
            groups.add(new Group(name, note, things));
        }
    }

    private List<String> first() {
        List<String> first = new ArrayList<>();
        if (ready.wash()) {
            first.add("Wash the engine and let it dry: dirt kills more rebuilds than wear");
        }
        first.addAll(any(ready.records()));
        if (ready.bags() > 0) {
            first.add(Figures.count(ready.bags(), "bag") + " with labels, from bag " + job.nextBag());
        }
        return first;
    }

    private List<String> any(List<String> ids) {
        return ids.stream().map(names::any).map(Names::capital).toList();
    }

    private String piece(Preparing.Piece piece) {
        return piece.count() > 0 ? piece.count() + " × " + piece.spec() : piece.spec();
    }

    private String lift(Preparing.Lift lift) {
        return Names.capital(lift.way()) + ": " + Figures.list(names.parts(lift.parts()), 2) + ", "
                + Figures.mass(lift.kilograms());
    }

    private String can(Preparing.Catch one) {
        Optional<Double> litres = one.litres();
        return Names.capital(names.any(one.circuit()))
                + litres.map(most -> ": up to " + Figures.volume(most)).orElse(": how much is not known");
    }
}
