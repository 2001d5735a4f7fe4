package gudgeon.app.web.bags;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPapers;
import gudgeon.app.desk.Places;
import gudgeon.app.desk.Watch;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Facts;
import gudgeon.core.engine.Part;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What the page of all bags and places shows. */
public final class PlacesView {
    private final Job job;
    private final Places places;
    private final Names names;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;

    PlacesView(Job job, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.places = Places.of(job);
        this.names = new Names(job.engine());
        this.form = form;
        this.entries = entries;
        this.said = said;
    }

    /** A bag with its contents. */
    public record Bag(String number, List<String> contents, String place, String path) {
        public Bag {
            contents = List.copyOf(contents);
        }
    }

    /**
     * A thing and where it is.
     *
     * @param mark how it is marked, or what must be kept and is not marked
     */
    public record Thing(String id, String name, String place, String mark, boolean unmarked, String path) {}

    public Form form() {
        return form;
    }

    /** A name for the entry of one form. */
    public String entry() {
        return entries.get();
    }

    public SaidView said() {
        return said;
    }

    public String path() {
        return JobPaths.job(job) + "/bags";
    }

    public String labels() {
        return JobPaths.job(job) + "/labels";
    }

    public int next() {
        return places.nextBag();
    }

    public List<Bag> bags() {
        return places.bags().stream()
                .map(bag -> new Bag(
                        bag.bag(),
                        contents(bag, names),
                        bag.place(),
                        path() + "/bag?bag=" + EnginePaths.encoded(bag.bag())))
                .toList();
    }

    static List<String> contents(Facts.Bag bag, Names names) {
        return JobPapers.contents(bag, names);
    }

    /** Joints that are undone and whose fasteners are in no bag. */
    public List<Thing> loose() {
        return places.unbagged().stream()
                .map(joint -> new Thing(
                        joint,
                        job.fasteners(joint) + " from " + Names.withArticle(names.any(joint)),
                        "",
                        "",
                        false,
                        JobPaths.job(job) + "/found?joint=" + EnginePaths.encoded(joint)))
                .toList();
    }

    /** Parts that are away. */
    public List<Thing> parts() {
        return places.parts().stream().map(this::thing).toList();
    }

    private Thing thing(Places.PartPlace place) {
        List<String> keep = job.engine()
                .findPart(place.part())
                .map(part -> part.care().keep())
                .orElse(List.of());
        boolean unmarked = !keep.isEmpty() && place.marked().isEmpty();
        String mark = place.marked().isEmpty()
                ? unmarked ? "must keep its " + Figures.list(keep) + ", not marked" : ""
                : "marked: " + place.marked();
        String where = place.aside() ? "hangs aside" : place.place();
        return new Thing(
                place.part(),
                Names.capital(names.part(place.part())),
                where,
                mark,
                unmarked,
                path() + "/part?part=" + EnginePaths.encoded(place.part()));
    }

    /** Parts to mark now: away and not marked, or about to come loose with the next step. */
    public List<Thing> toMark() {
        boolean comingApart = !job.goingTogether();
        List<String> soon = job.findNext()
                .filter(step -> comingApart)
                .map(step -> Watch.falling(job, step))
                .orElse(List.of());
        Stream<String> away = places.parts().stream().map(Places.PartPlace::part);
        return Stream.concat(soon.stream(), away)
                .distinct()
                .flatMap(id -> job.engine().findPart(id).stream())
                .filter(part -> !part.care().keep().isEmpty())
                .filter(part -> !job.facts().kept().marked().containsKey(part.id()))
                .map(part -> toMark(part, soon.contains(part.id())))
                .toList();
    }

    private Thing toMark(Part part, boolean soon) {
        String keep = "its " + Figures.list(part.care().keep());
        return new Thing(part.id(), part.name(), keep, soon ? "comes loose with the next step" : "", true, "");
    }
}
