package gudgeon.app.web.bags;

import gudgeon.app.desk.Job;
import gudgeon.app.document.Figures;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Part;
import java.util.List;
import java.util.function.Supplier;

/** What the page of one part shows: where it lies, how it is marked. */
public final class PartPlaceView {
    private final Job job;
    private final Part part;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;

    PartPlaceView(Job job, String id, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.part = job.engine().part(id);
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

    public String id() {
        return part.id();
    }

    public String name() {
        return part.name();
    }

    /** Whether it is off or aside. */
    public boolean away() {
        return job.facts().stripped().away().containsKey(part.id());
    }

    public String place() {
        String place = job.facts().stripped().away().getOrDefault(part.id(), "");
        return away() ? place.isBlank() ? "not said" : place : "on the engine";
    }

    public String mark() {
        return job.facts().kept().marked().getOrDefault(part.id(), "");
    }

    /** What must be kept and is not marked; empty when all is well. */
    public String unmarked() {
        List<String> keep = part.care().keep();
        return keep.isEmpty() || !mark().isEmpty() ? "" : Figures.list(keep);
    }

    public List<String> conditions() {
        return job.facts().findings().conditions().getOrDefault(part.id(), List.of());
    }

    public List<String> routings() {
        return job.facts().findings().routings().getOrDefault(part.id(), List.of());
    }

    /** Where a photo of it is taken. */
    public String photo() {
        return JobPaths.photo(job, part.id(), path() + "?part=" + EnginePaths.encoded(part.id()));
    }

    /** Photos of it; its words stand above. */
    public HowItWas was() {
        return new HowItWas(List.of(), HowItWas.parts(job, List.of(part.id())).shots());
    }

    public String path() {
        return JobPaths.job(job) + "/bags/part";
    }

    public String all() {
        return JobPaths.job(job) + "/bags";
    }
}
