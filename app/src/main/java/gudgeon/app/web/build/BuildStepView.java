package gudgeon.app.web.build;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.ToldAtBench;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.CompareWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.web.jobs.BeforeView;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.picture.HolePicture;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.BuildPlan;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What the bench shows of one step of the way back. */
public final class BuildStepView {
    private final Job job;
    private final BuildBench bench;
    private final BuildPlan.Operation step;
    private final BuildWords words;
    private final Names names;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;
    private final Optional<BuildBench.Turning> turning;

    BuildStepView(
            Job job, BuildBench bench, BuildPlan.Operation step, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.bench = bench;
        this.step = step;
        this.words = new BuildWords(job.engine());
        this.names = new Names(job.engine());
        this.form = form;
        this.entries = entries;
        this.said = said;
        this.turning = bench.turning(step).filter(some -> stage());
    }

    /**
     * A fastener of the pattern.
     *
     * @param number its place in the order of tightening
     */
    public record Turn(String id, int number) {}

    /** A feature whose typical limit nobody has confirmed. */
    public record Unconfirmed(String id, String name) {}

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
        return JobPaths.job(job) + "/build";
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    public String note() {
        return JobPaths.note(job, about(), JobPaths.buildBench(job));
    }

    /** Where the last stroke is taken back. */
    public String undo() {
        return JobPaths.undo(job, JobPaths.buildBench(job));
    }

    private String about() {
        return placing() ? step.subject().parts().getFirst() : ref();
    }

    /** Where a photo of it is taken. */
    public String photo() {
        return JobPaths.photo(
                job, placing() ? String.join(",", step.subject().parts()) : ref(), JobPaths.buildBench(job));
    }

    /** How it was before it came off: the person's own words and photos. */
    public HowItWas was() {
        return HowItWas.step(job, step);
    }

    public String id() {
        return step.id();
    }

    public String ref() {
        return step.subject().ref();
    }

    public int number() {
        return of() - bench.left().size() + 1;
    }

    public int of() {
        return (int) bench.plan().operations().stream()
                .filter(one -> one.kind() != BuildPlan.Kind.WAIT)
                .count();
    }

    /** What stands before the action. */
    public BeforeView before() {
        return BeforeView.of(ToldAtBench.build(bench, step));
    }

    /** Whether nothing is back in place yet: then it is told how the button works. */
    public boolean first() {
        return job.facts().built().steps().isEmpty();
    }

    public String instruction() {
        return words.instruction(step);
    }

    /** What is turned; for other steps than stages the instruction. */
    public String heading() {
        return stage() ? Names.capital(names.between(joint())) : instruction();
    }

    /** "Stage 2 of 4: 60 N·m, every bolt, 1 to 10"; empty for other steps. */
    public String sentence() {
        if (!stage()) {
            return "";
        }
        BuildPlan.Tightening tightening = tightening();
        int stages = joint().makeup().stages().size();
        int count = tightening.fasteners().size();
        String which = stages > 1 ? "Stage " + tightening.stage() + " of " + stages + ": " : "";
        String what = joint().makeup().fasteners().isEmpty()
                ? ""
                : count > 1 ? ", every " + kind() + ", 1 to " + count : ", the " + kind();
        return Names.capital(which + words.number(step) + (angle() ? " further" : "") + what);
    }

    private String kind() {
        return StepWords.word(joint().makeup().fasteners().getFirst().kind());
    }

    private Joint joint() {
        return job.engine().joint(step.subject().ref());
    }

    private BuildPlan.Tightening tightening() {
        BuildPlan.Tightening tightening = step.tightening();
        if (tightening == null) {
            throw new IllegalStateException("a stage turns fasteners: " + step.id());
        }
        return tightening;
    }

    public boolean stage() {
        return step.kind() == BuildPlan.Kind.STAGE || step.kind() == BuildPlan.Kind.ANGLE;
    }

    public boolean angle() {
        return step.kind() == BuildPlan.Kind.ANGLE;
    }

    public boolean check() {
        return step.kind() == BuildPlan.Kind.CHECK;
    }

    public boolean fill() {
        return step.kind() == BuildPlan.Kind.FILL;
    }

    private boolean placing() {
        return step.kind() == BuildPlan.Kind.PLACE;
    }

    public boolean gate() {
        return step.order().gate();
    }

    /** The one number: "60", "90°"; empty when the step has none. */
    public String figure() {
        return stage() ? words.number(step).replaceFirst(" .*", "") : "";
    }

    /** Its unit: "N·m"; empty for an angle. */
    public String unit() {
        return stage() && words.number(step).contains(" ") ? words.number(step).replaceFirst("^[^ ]* ", "") : "";
    }

    public String where() {
        return names.zone(step.place().zone());
    }

    public String tools() {
        return String.join(", ", step.place().tools());
    }

    public String thread() {
        return words.thread(step);
    }

    public List<String> inputs() {
        return words.inputs(step);
    }

    /** In what a new piece of this step differs from the old one; empty when in nothing that was looked at. */
    public String differs() {
        return CompareWords.differences(bench.differences(step));
    }

    public List<String> notes() {
        return words.notes(step);
    }

    public List<String> lags() {
        return words.lags(step, bench.plan());
    }

    /** Why it cannot be done now, one sentence each; empty when it can. */
    public List<String> blocked() {
        return words.lacks(step);
    }

    public List<Unconfirmed> unconfirmed() {
        return step.holdUp().blockedBy().stream()
                .filter(lack -> lack.kind() == BuildPlan.LackKind.LIMIT_NOT_CONFIRMED)
                .flatMap(lack -> lack.about().stream())
                .filter(id -> job.engine().findFeature(id).isPresent())
                .map(id -> new Unconfirmed(id, names.any(id)))
                .toList();
    }

    public boolean waitsForParts() {
        return step.holdUp().blockedBy().stream().anyMatch(lack -> lack.kind() == BuildPlan.LackKind.NOT_IN_HAND);
    }

    public boolean tooHeavy() {
        return step.holdUp().blockedBy().stream().anyMatch(lack -> lack.kind() == BuildPlan.LackKind.TOO_HEAVY);
    }

    public String strip() {
        return JobPaths.strip(job);
    }

    private List<String> order() {
        return tightening().fasteners();
    }

    private List<Turn> turns(List<String> ids) {
        return ids.stream().map(id -> new Turn(id, order().indexOf(id) + 1)).toList();
    }

    /** Fasteners that have it. */
    public List<Turn> had() {
        return turning.map(some -> turns(some.leave())).orElse(List.of());
    }

    /** Fasteners still to turn, in order. */
    public List<Turn> todo() {
        return turning.map(some -> turns(some.turn())).orElse(List.of());
    }

    /** All fasteners of the step, in order. */
    public List<Turn> all() {
        return stage() ? turns(order()) : List.of();
    }

    /** Fasteners that are spent. */
    public List<Turn> spent() {
        return turning.map(some -> turns(some.spent())).orElse(List.of());
    }

    public boolean brokenOff() {
        return turning.map(BuildBench.Turning::brokenOff).orElse(false);
    }

    /** Whether somebody left a stage without saying so. */
    public boolean left() {
        return turning.map(BuildBench.Turning::left).orElse(false);
    }

    /** Whether it must first be said which bear a mark: an angle stage that was left. */
    public boolean asksForMarks() {
        return left() && angle();
    }

    /** Fasteners of which nothing is known, when it must be said which bear a mark; otherwise those still to turn. */
    public List<Turn> unmarked() {
        List<String> had = turning.map(BuildBench.Turning::leave).orElse(List.of());
        return all().stream().filter(turn -> !had.contains(turn.id())).toList();
    }

    /** Those still to turn, as a form sends them; empty for other steps. */
    public String turn() {
        return String.join(",", todo().stream().map(Turn::id).toList());
    }

    /** "1, 3 and 4". */
    public static String numbers(List<Turn> turns) {
        return Figures.list(
                turns.stream().map(turn -> String.valueOf(turn.number())).toList());
    }

    /** The pattern, each fastener with its place in the order; done ones crossed as well as filled. */
    public HolePicture picture() {
        return stage() ? HolePicture.of(joint(), this::sign) : HolePicture.NONE;
    }

    private HolePicture.Sign sign(Fastener fastener, int place) {
        int number = order().indexOf(fastener.id()) + 1;
        BuildBench.Turning some = turning.orElse(new BuildBench.Turning(List.of(), List.of(), List.of(), false, false));
        HolePicture.State state = HolePicture.State.PLAIN;
        if (some.spent().contains(fastener.id())) {
            state = HolePicture.State.SPENT;
        } else if (some.leave().contains(fastener.id())) {
            state = HolePicture.State.DONE;
        } else if (!some.turn().isEmpty() && some.turn().getFirst().equals(fastener.id())) {
            state = HolePicture.State.NOW;
        }
        return new HolePicture.Sign(number > 0 ? String.valueOf(number) : "–", state);
    }

    /** The words of the main button. */
    public String done() {
        return switch (step.kind()) {
            case PLACE -> "It's in place, next";
            case SNUG -> "Snug, next";
            case STAGE, ANGLE -> all(todo().size());
            case TIGHTEN -> "Tight, next";
            case CHECK -> "I sign for this";
            case FILL -> "Filled, next";
            case SEAL -> "It's on, next";
            case RESTORE, BLEED, WAIT -> "Done, next";
        };
    }

    private String all(int count) {
        String rest = had().isEmpty() ? "All " + count : count == 2 ? "Both others" : "The other " + count;
        return count > 1 ? (count == 2 && had().isEmpty() ? "Both" : rest) + " have it" : "It has it, next";
    }

    /** The same for the second tap. */
    public String sure() {
        return switch (step.kind()) {
            case PLACE -> "Yes, it's in place";
            case SNUG -> "Yes, snug";
            case STAGE, ANGLE -> "Yes, " + numbers(todo()) + (todo().size() > 1 ? " have it" : " has it");
            case TIGHTEN -> "Yes, tight";
            case CHECK -> "Yes, I sign";
            case FILL, SEAL, RESTORE, BLEED, WAIT -> "Yes, done";
        };
    }
}
