package gudgeon.app.web.closing;

import gudgeon.app.desk.ClosingUp;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.WasteLedger;
import gudgeon.app.document.Figures;
import gudgeon.app.document.FluidWords;
import gudgeon.app.document.Names;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.engine.Circuit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What the page of the ledgers shows. */
public final class ClosingView {
    private final Job job;
    private final ClosingUp ledgers;
    private final Names names;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;

    ClosingView(Job job, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.ledgers = ClosingUp.of(job);
        this.names = new Names(job.engine());
        this.form = form;
        this.entries = entries;
        this.said = said;
    }

    /**
     * Something that does not balance.
     *
     * @param href where it is put right
     */
    public record Missing(String text, String href) {}

    /** Things of one sort that do not balance. */
    public record Group(String name, List<Missing> things) {
        public Group {
            things = List.copyOf(things);
        }
    }

    /** Fasteners of one joint. */
    public record Hole(String name, String bag, int byFile, int out, int in) {
        public boolean balanced() {
            return out == in && out == byFile;
        }
    }

    /** Litres of one circuit. */
    public record Fluid(String name, String drained, String filled, String capacity) {}

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
        return JobPaths.job(job) + "/closing";
    }

    /** Whether nothing was undone or put in yet, so that there is nothing to close. */
    public boolean untouched() {
        return job.facts().stripped().acts().isEmpty() && ledgers.isBalanced();
    }

    public boolean balanced() {
        return ledgers.isBalanced();
    }

    public boolean closed() {
        return ClosingUp.isClosed(job);
    }

    /** How many things do not balance. */
    public int wrong() {
        return ledgers.missing().size();
    }

    /** What does not balance, by sort. */
    public List<Group> missing() {
        Map<String, List<Missing>> byName = new LinkedHashMap<>();
        for (ClosingUp.Missing one : ledgers.missing()) {
            byName.computeIfAbsent(heading(one.sort()), key -> new ArrayList<>())
                    .add(new Missing(Names.capital(sentence(one)), href(one)));
        }
        List<Group> groups = new ArrayList<>();
        byName.forEach((name, things) ->
                groups.add(new Group(name, things.stream().distinct().toList())));
        return groups;
    }

    private static String heading(ClosingUp.Missing.Sort sort) {
        return switch (sort) {
            case FASTENERS_OUT -> "Still undone";
            case STILL_APART -> "Still apart";
            case FASTENERS_FEWER -> "Fewer came out than the file has";
            case BAG_COUNT -> "Bags that do not agree";
            case NOT_TIGHT -> "Not tight";
            case PART_AWAY -> "Still off";
            case COVERED -> "Still covered";
            case RAGS_IN -> "Rags still in";
            case NOT_FILLED -> "Not filled";
            case LITRES -> "Litres that do not agree";
            case STILL_FITTED -> "Still fitted";
            case NOT_SIGNED -> "Not signed";
            case TROUBLE -> "Trouble, not solved";
        };
    }

    private String sentence(ClosingUp.Missing one) {
        String about = names.any(one.about());
        return switch (one.sort()) {
            case FASTENERS_OUT -> about + ": " + pieces(one.want()) + " out";
            case FASTENERS_FEWER -> about + ": " + whole(one.have()) + ", the file has " + whole(one.want());
            case BAG_COUNT ->
                "bag " + one.about() + ": " + whole(one.have()) + " counted, " + whole(one.want()) + " went in";
            case RAGS_IN -> one.about() + ": " + whole(one.want()) + " in, " + whole(one.have()) + " out";
            case LITRES ->
                about + ": " + Figures.volume(one.have()) + " went in, " + Figures.volume(one.want()) + " belong in";
            case NOT_SIGNED -> check(one.about());
            case STILL_APART, NOT_TIGHT, PART_AWAY, COVERED, NOT_FILLED, STILL_FITTED, TROUBLE -> about;
        };
    }

    private String check(String id) {
        return job.engine().rules().checks().stream()
                .filter(check -> check.id().equals(id))
                .map(check -> check.name())
                .findFirst()
                .orElse(id.replace('-', ' '));
    }

    private static String pieces(double count) {
        return count == 1 ? "1 fastener" : whole(count) + " fasteners";
    }

    private static String whole(double count) {
        return String.valueOf(Math.round(count));
    }

    private String href(ClosingUp.Missing one) {
        String base = JobPaths.job(job);
        return switch (one.sort()) {
            case FASTENERS_OUT, STILL_APART, NOT_TIGHT, PART_AWAY, STILL_FITTED, NOT_SIGNED -> base + "/build";
            case FASTENERS_FEWER -> base + "/found?joint=" + EnginePaths.encoded(one.about());
            case BAG_COUNT -> base + "/bags/bag?bag=" + EnginePaths.encoded(one.about());
            case TROUBLE -> base + "/trouble/ladder?joint=" + EnginePaths.encoded(one.about());
            case COVERED, RAGS_IN, LITRES, NOT_FILLED -> "#ledgers";
        };
    }

    public List<Hole> holes() {
        return ledgers.fasteners().stream()
                .filter(hole -> hole.byFile() > 0 || hole.out() > 0)
                .map(hole -> new Hole(
                        Names.capital(names.any(hole.joint())), hole.bag(), hole.byFile(), hole.out(), hole.in()))
                .toList();
    }

    public int out() {
        return ledgers.fasteners().stream().mapToInt(ClosingUp.Hole::out).sum();
    }

    public int in() {
        return ledgers.fasteners().stream().mapToInt(ClosingUp.Hole::in).sum();
    }

    public List<ClosingUp.Rags> rags() {
        return ledgers.rags();
    }

    /** Openings that are covered now, and with what. */
    public List<String> covered() {
        return job.facts().ledger().covered().entrySet().stream()
                .map(cover -> cover.getKey() + (cover.getValue().isBlank() ? "" : ", " + cover.getValue()))
                .toList();
    }

    public List<String> openings() {
        return List.copyOf(job.facts().ledger().covered().keySet());
    }

    public List<Fluid> fluids() {
        return ledgers.litres().stream()
                .map(one -> new Fluid(
                        Names.capital(names.any(one.circuit())),
                        Figures.volume(one.drained()),
                        Figures.volume(one.filled()),
                        one.capacity().map(Figures::volume).orElse("–")))
                .toList();
    }

    /** Where what was drained went, a line each. */
    public List<String> waste() {
        return WasteLedger.of(job).stream()
                .map(gone -> FluidWords.gone(
                        Names.capital(names.any(gone.circuit())), gone.to(), gone.litres(), gone.unmeasured()))
                .toList();
    }

    public String wasteRule() {
        return FluidWords.WASTE;
    }

    /** Circuits with a fluid. */
    public List<Circuit> circuits() {
        return job.engine().circuits().stream()
                .filter(circuit -> !circuit.fluid().isBlank())
                .toList();
    }
}
