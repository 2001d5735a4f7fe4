package gudgeon.app.cli;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.PlanChange;
import gudgeon.app.desk.Remembered;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.Watch;
import gudgeon.app.desk.Workshop.Noted;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.CompareWords;
import gudgeon.app.document.EntryWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A job for a person: what was noted, what it changed, what comes next. */
final class JobText {
    private final Screen screen;
    private final Layout layout;
    private final Job job;
    private final StepWords steps;
    private final Names names;

    JobText(Screen screen, Job job) {
        this.screen = screen;
        this.layout = new Layout(screen);
        this.job = job;
        this.steps = new StepWords(job.engine());
        this.names = new Names(job.engine());
    }

    void noted(Noted.Done done) {
        EntryWords words = new EntryWords(job.engine());
        done.entries().forEach(entry -> layout.hanging("  + ", 4, words.of(entry)));
        change(done.change());
        next();
    }

    private void change(PlanChange change) {
        if (change.isNothing()) {
            return;
        }
        layout.heading("This changes the plan");
        if (!change.after().planned()) {
            layout.line("  There is no plan any more: gudgeon job plan tells why.");
        } else if (change.before().planned()) {
            layout.line("  " + Figures.time(change.before().seconds()) + " were left, now "
                    + Figures.time(change.after().seconds()));
        }
        change.added().forEach(step -> layout.hanging("  new   ", 8, steps.instruction(step)));
        change.gone().forEach(step -> layout.hanging("  gone  ", 8, steps.instruction(step)));
        change.buyMore().forEach(spend -> layout.line("  buy   " + spend.count() + " × " + spend.spec()));
        change.buyLess().forEach(spend -> layout.line("  not   " + spend.count() + " × " + spend.spec()));
    }

    /** The next step, with its cautions first. */
    void next() {
        Job.Stage stage = job.stage();
        switch (stage) {
            case NO_TARGET -> layout.line("Nothing is to be reached yet: gudgeon tell \"target set\" off=PART");
            case STUCK -> {
                layout.line("There is no plan:");
                if (job.strip() instanceof StripQuestion.Reply.Stuck stuck) {
                    new BlockedText(screen).print(stuck);
                }
            }
            case STRIPPING -> job.findNext().ifPresent(this::strip);
            case STRIPPED -> {
                layout.line("What was to be reached is reached. The way back begins with:");
                build(new BuildBench(job).findNext());
            }
            case BUILDING -> build(new BuildBench(job).findNext());
            case TOGETHER -> layout.line("Every step of the way back is done: gudgeon job ledger");
        }
    }

    private void strip(StripPlan.Operation step) {
        layout.heading("Next, " + names.zone(step.place().zone()));
        new CautionLines(screen).print(4, step.cautions());
        layout.withFigure("    ", 4, steps.instruction(step), Figures.time(step.seconds()));
        String tools = steps.tools(step);
        if (!tools.isEmpty()) {
            layout.paragraph(4, tools, Ink.SOFT);
        }
        steps.notes(step).forEach(note -> layout.paragraph(4, note, Ink.SOFT));
        List<String> falling = Watch.falling(job, step);
        if (!falling.isEmpty()) {
            layout.paragraph(
                    4, "Mark first, or it is lost where it was: " + Figures.list(names.parts(falling)), Ink.STRONG);
        }
        layout.line(
                step.kind() == StripPlan.Kind.LIFT
                        ? "    gudgeon off \"" + String.join(",", step.pieces()) + "\" --to PLACE"
                        : "    gudgeon done " + step.id()
                                + (steps.fastenerCount(step) > 0 ? " --bag " + job.nextBag() : ""));
    }

    private void build(Optional<BuildPlan.Operation> next) {
        if (next.isEmpty()) {
            layout.line("  Nothing was undone.");
            return;
        }
        BuildPlan.Operation step = next.get();
        BuildWords words = new BuildWords(job.engine());
        layout.heading("Next, " + names.zone(step.place().zone()));
        new CautionLines(screen).print(4, BuildWords.cautions(step));
        layout.withFigure("    ", 4, words.instruction(step), words.number(step));
        Remembered was = Remembered.step(job, step);
        EntryWords.remembered(was.pieces(), was.words()).forEach(line -> layout.paragraph(4, "was: " + line));
        differs(step);
        words.lacks(step).forEach(lack -> layout.paragraph(4, lack, Ink.STRONG));
        new BuildBench(job).turning(step).ifPresent(this::turning);
        layout.line("    gudgeon together " + step.id());
    }

    private void differs(BuildPlan.Operation step) {
        String differs = CompareWords.differences(new BuildBench(job).differences(step));
        if (!differs.isEmpty()) {
            layout.paragraph(4, "The new piece is not like the old one: " + differs, Ink.STRONG);
        }
    }

    private void turning(BuildBench.Turning turning) {
        if (!turning.spent().isEmpty()) {
            layout.paragraph(
                    4,
                    "It is not certain which were turned: take all out and renew them. " + numbers(turning.spent()),
                    Ink.STRONG);
            return;
        }
        if (turning.left() && turning.turn().isEmpty()) {
            layout.paragraph(
                    4,
                    "It was left midway. Turn nothing yet: look at the marks, then say --broken-off with --fastener for"
                            + " each whose mark has moved, or --uncertain",
                    Ink.STRONG);
            return;
        }
        if (turning.brokenOff()) {
            layout.paragraph(4, "It was interrupted: back nothing off, turn none by its angle twice.", Ink.STRONG);
        }
        layout.paragraph(4, "In this order: " + numbers(turning.turn()));
        if (!turning.leave().isEmpty()) {
            layout.paragraph(4, "Had it, leave alone: " + numbers(turning.leave()));
        }
    }

    private static String numbers(List<String> fasteners) {
        return String.join(
                " ",
                fasteners.stream()
                        .map(id -> id.substring(id.lastIndexOf('/') + 1))
                        .toList());
    }

    /** Where the job is. */
    void where() {
        JobList.Line line = JobList.line(job);
        layout.heading(job.name());
        layout.line("  " + stage(line.stage()) + "; " + Figures.count(line.stepsDone(), "step") + " done, "
                + line.stepsLeft() + " left, " + Figures.time(line.secondsLeft()));
        line.waits()
                .forEach(wait -> layout.line("  waits: "
                        + wait.sort().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", "
                        + names.any(wait.about())));
        Watch.tags(job)
                .forEach(tag -> layout.line("  hang on the key: "
                        + tag.sort().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", "
                        + names.any(tag.about())));
    }

    static String stage(Job.Stage stage) {
        return switch (stage) {
            case NO_TARGET -> "nothing is to be reached yet";
            case STUCK -> "no plan";
            case STRIPPING -> "coming apart";
            case STRIPPED -> "apart";
            case BUILDING -> "going together";
            case TOGETHER -> "together";
        };
    }
}
