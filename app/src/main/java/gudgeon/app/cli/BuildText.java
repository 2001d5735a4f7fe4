package gudgeon.app.cli;

import gudgeon.app.desk.BuildQuestion.Reply;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Cautions;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlan.Operation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The way back for a person. */
final class BuildText {
    private static final int INDENT = 6;
    private static final int MOST_NAMED = 6;

    private final Screen screen;
    private final Layout layout;

    BuildText(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    void print(Reply.Planned planned) {
        BuildPlan plan = planned.plan();
        layout.heading(planned.strip().engine().identity().name() + ": the way back from "
                + GoalWords.of(
                        planned.strip().engine(), planned.strip().request().target()));
        layout.blank();
        layout.line("  "
                + Ink.STRONG.on(
                        screen,
                        Figures.time(plan.totals().totalSeconds()) + ", "
                                + Figures.count(plan.operations().size(), "step")));
        layout.line("  " + Figures.time(plan.totals().workSeconds()) + " work, "
                + Figures.time(plan.totals().changeoverSeconds()) + " changing place and tools, "
                + Figures.time(plan.totals().waitSeconds()) + " waiting");
        int blocked = plan.blocked().size();
        if (blocked > 0) {
            layout.line("  " + Ink.DANGER.on(screen, "BLOCKED") + "  " + Figures.count(blocked, "step")
                    + " cannot be done yet; the reason stands with each");
        }
        layout.blank();
        layOut(planned);
        steps(planned);
        accounts(plan);
    }

    private void layOut(Reply.Planned planned) {
        Set<String> tools = new LinkedHashSet<>();
        planned.plan()
                .operations()
                .forEach(operation -> tools.addAll(operation.place().tools()));
        list("lay out", List.copyOf(tools));
        list("in hand", new BuildWords(planned.strip().engine()).allInputs(planned.plan()));
        layout.blank();
    }

    private void list(String label, List<String> things) {
        if (!things.isEmpty()) {
            layout.hanging(String.format(Locale.ROOT, "  %-9s", label), 11, String.join("; ", things));
        }
    }

    private void steps(Reply.Planned planned) {
        BuildWords words = new BuildWords(planned.strip().engine());
        CautionLines cautions = new CautionLines(screen);
        ToldCautions told =
                new ToldCautions(Cautions.catalogue(), planned.strip().engine());
        Names names = new Names(planned.strip().engine());
        String zone = "";
        for (Operation operation : planned.plan().operations()) {
            if (!operation.place().zone().equals(zone)) {
                zone = operation.place().zone();
                layout.heading(names.zone(zone));
            }
            List<String> placed = operation.kind() == BuildPlan.Kind.PLACE
                    ? operation.subject().parts()
                    : List.of();
            cautions.print(INDENT, told.at(operation.number(), BuildWords.cautions(operation), placed));
            layout.withFigure(
                    String.format(Locale.ROOT, "%4d  ", operation.number()),
                    INDENT,
                    words.instruction(operation),
                    Figures.time(operation.clock().seconds()));
            BuildPlan.Tightening tightening = operation.tightening();
            if (tightening != null && words.ordered(operation)) {
                PatternSketch.of(
                                planned.strip()
                                        .engine()
                                        .joint(operation.subject().ref()),
                                tightening.fasteners())
                        .forEach(line -> layout.line("      " + line));
            }
            String details = Layout.sentences(details(words, planned.plan(), operation));
            if (!details.isEmpty()) {
                layout.paragraph(INDENT, details, Ink.SOFT);
            }
            words.inputs(operation).forEach(input -> layout.hanging("      in hand: ", 15, input));
            if (operation.order().gate()) {
                layout.paragraph(INDENT, "POINT OF NO RETURN: nothing goes on before this is signed.", Ink.STRONG);
            }
            holdUps(words, planned.plan(), operation);
        }
        layout.blank();
    }

    private static List<String> details(BuildWords words, BuildPlan plan, Operation operation) {
        List<String> details = new ArrayList<>();
        if (!operation.place().tools().isEmpty()) {
            details.add(String.join(", ", operation.place().tools()));
        }
        if (!words.thread(operation).isEmpty()) {
            details.add(words.thread(operation));
        }
        details.addAll(words.notes(operation));
        details.addAll(words.lags(operation, plan));
        return details;
    }

    private void holdUps(BuildWords words, BuildPlan plan, Operation operation) {
        String lead = "      " + Ink.DANGER.on(screen, "BLOCKED") + "  ";
        words.lacks(operation).forEach(lack -> layout.hanging(lead, 15, lack));
        List<String> waits = operation.holdUp().waitsFor();
        if (!waits.isEmpty()) {
            List<String> steps = plan.operations().stream()
                    .filter(other -> waits.contains(other.id()))
                    .map(other -> String.valueOf(other.number()))
                    .toList();
            layout.hanging("      waits for step ", 15, Figures.list(steps, MOST_NAMED), Ink.SOFT);
        }
    }

    private void accounts(BuildPlan plan) {
        layout.heading("At the end");
        long open =
                plan.accounts().stream().filter(account -> !account.settled()).count();
        layout.hanging(
                "  - ",
                4,
                Figures.count(plan.accounts().size(), "thing") + " accounted for, "
                        + (open == 0 ? "nothing left over" : open + " of them only when blocked steps go on"));
        plan.cures()
                .forEach(cure -> layout.hanging(
                        "  - ",
                        4,
                        "sealant of " + cure.joint() + " cures for " + Figures.time(cure.secondsLeft()) + " more"));
        plan.corrections()
                .forEach(correction -> layout.hanging(
                        "  - ",
                        4,
                        "the file says otherwise about " + correction.about() + ": "
                                + String.join(", ", correction.ids())));
    }
}
