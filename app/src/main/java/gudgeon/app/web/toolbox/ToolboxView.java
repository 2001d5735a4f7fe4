package gudgeon.app.web.toolbox;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.Toolbox;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.ToolWords;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import java.util.List;
import java.util.function.Supplier;

/** What to lay out for the time there is. */
public final class ToolboxView {
    private static final int SECONDS = 60;

    private final Job job;
    private final Form form;
    private final int minutes;
    private final LayOut out;
    private final StepWords strip;
    private final BuildWords build;
    private final Names names;
    private final Supplier<String> entries;
    private final SaidView said;

    ToolboxView(Job job, Toolbox toolbox, int minutes, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.form = form;
        this.minutes = minutes;
        this.out = LayOut.of(job, toolbox, minutes);
        this.strip = new StepWords(job.engine());
        this.build = new BuildWords(job.engine());
        this.names = new Names(job.engine());
        this.entries = entries;
        this.said = said;
    }

    /**
     * A tool.
     *
     * @param steps for how many steps
     * @param first the first of them
     * @param word "yours", "borrowed from Ann", "not there"; empty when nothing was said
     */
    public record Tool(String name, String steps, String first, String word, boolean missing) {}

    public SaidView said() {
        return said;
    }

    /** A name for the entry of one form. */
    public String entry() {
        return entries.get();
    }

    private String instruction(LayOut.Work work) {
        return work.strip()
                .map(strip::instruction)
                .or(() -> work.build().map(build::instruction))
                .orElse("");
    }

    public Form form() {
        return form;
    }

    public String path() {
        return JobPaths.job(job) + "/toolbox";
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    public int minutes() {
        return minutes;
    }

    public int steps() {
        return out.today().size();
    }

    public int left() {
        return out.left();
    }

    public String time() {
        return Figures.time(out.today().stream().mapToLong(LayOut.Work::seconds).sum());
    }

    /** The last of today's steps. */
    public String last() {
        return out.today().isEmpty() ? "" : instruction(out.today().getLast());
    }

    public List<Tool> tools() {
        return out.tools().stream().map(this::tool).toList();
    }

    /** Those that are needed and not there. */
    public List<Tool> missing() {
        return tools().stream().filter(Tool::missing).toList();
    }

    private Tool tool(LayOut.Tool tool) {
        return new Tool(
                tool.name(),
                Figures.count(tool.works().size(), "step"),
                instruction(tool.works().getFirst()),
                tool.said().map(ToolWords::of).orElse(""),
                tool.missing());
    }

    /** New pieces and fluids to have in hand. */
    public List<String> pieces() {
        return out.today().stream()
                .flatMap(work -> work.build().stream())
                .flatMap(step -> build.inputs(step).stream())
                .distinct()
                .toList();
    }

    public List<String> zones() {
        return out.today().stream().map(work -> names.zone(work.zone())).distinct().toList();
    }
}
