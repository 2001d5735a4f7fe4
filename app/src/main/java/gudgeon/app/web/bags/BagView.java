package gudgeon.app.web.bags;

import gudgeon.app.desk.Job;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.engines.EngineView;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Facts;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

/** What the page of one bag shows. */
public final class BagView {
    private final Job job;
    private final Facts.Bag bag;
    private final Names names;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;

    BagView(Job job, String bag, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.bag = Objects.requireNonNull(job.facts().kept().bags().get(bag), "asked for a bag that is there");
        this.names = new Names(job.engine());
        this.form = form;
        this.entries = entries;
        this.said = said;
    }

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

    public String number() {
        return bag.bag();
    }

    public String place() {
        return bag.place().isBlank() ? "not said" : bag.place();
    }

    public String path() {
        return JobPaths.job(job) + "/bags/bag";
    }

    public String all() {
        return JobPaths.job(job) + "/bags";
    }

    /** Joints whose fasteners are in it. */
    public List<EngineView.Item> joints() {
        return bag.joints().entrySet().stream()
                .map(joint -> new EngineView.Item(
                        names.any(joint.getKey()),
                        JobPaths.job(job) + "/found?joint=" + EnginePaths.encoded(joint.getKey()),
                        Figures.count(joint.getValue(), "piece")))
                .toList();
    }

    public String contents() {
        return bag.contents();
    }

    /** All fasteners in it, by the entries about joints. */
    public int sum() {
        return bag.joints().values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How the last count agrees; empty when it was never counted. */
    public String counted() {
        if (bag.counts().isEmpty()) {
            return "";
        }
        int last = bag.counts().getLast();
        return last == sum() || bag.joints().isEmpty()
                ? "Counted: " + last + "."
                : "Counted: " + last + ", but " + sum() + " went in.";
    }

    public boolean differs() {
        return !bag.counts().isEmpty()
                && !bag.joints().isEmpty()
                && bag.counts().getLast() != sum();
    }

    public int opened() {
        return bag.opened();
    }
}
