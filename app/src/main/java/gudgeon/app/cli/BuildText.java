package gudgeon.app.cli;

import gudgeon.app.desk.BuildQuestion.Reply;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlan.Operation;
import java.util.List;
import java.util.Locale;

/** The way back for a person. */
final class BuildText {
    private static final int INDENT = 6;

    private final Screen screen;
    private final Layout layout;

    BuildText(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    void print(Reply.Planned planned) {
        BuildPlan plan = planned.plan();
        layout.heading(planned.strip().engine().identity().name() + ": the way back from "
                + GoalWords.of(planned.strip().engine(), planned.strip().request().target()));
        layout.blank();
        layout.line("  " + Ink.STRONG.on(screen, Figures.time(plan.totals().totalSeconds()) + ", "
                + Figures.count(plan.operations().size(), "step")));
        layout.line("  " + Figures.time(plan.totals().workSeconds()) + " work, "
                + Figures.time(plan.totals().changeoverSeconds()) + " changing place and tools, "
                + Figures.time(plan.totals().waitSeconds()) + " waiting");
        layout.blank();
        steps(planned);
        accounts(plan);
    }

    private void steps(Reply.Planned planned) {
        BuildWords words = new BuildWords(planned.strip().engine());
        CautionLines cautions = new CautionLines(screen);
        Names names = new Names(planned.strip().engine());
        String zone = "";
        for (Operation operation : planned.plan().operations()) {
            if (!operation.place().zone().equals(zone)) {
                zone = operation.place().zone();
                layout.heading(names.zone(zone));
            }
            cautions.print(INDENT, operation.needs().cautions());
            layout.withFigure(
                    String.format(Locale.ROOT, "%4d  ", operation.number()),
                    INDENT,
                    words.instruction(operation),
                    Figures.time(operation.clock().seconds()));
            List<String> details = words.details(operation);
            if (!details.isEmpty()) {
                layout.paragraph(INDENT, String.join(". ", details), Ink.SOFT);
            }
            words.lacks(operation)
                    .forEach(lack -> layout.hanging("      " + Ink.DANGER.on(screen, "BLOCKED") + "  ", 15, lack));
        }
        layout.blank();
    }

    private void accounts(BuildPlan plan) {
        layout.heading("At the end");
        long open = plan.accounts().stream().filter(account -> !account.settled()).count();
        layout.hanging("  - ", 4, Figures.count(plan.accounts().size(), "thing") + " accounted for, "
                + (open == 0 ? "nothing left over" : open + " of them only when blocked steps go on"));
        plan.cures().forEach(cure -> layout.hanging(
                "  - ", 4, "sealant of " + cure.joint() + " cures for " + Figures.time(cure.secondsLeft()) + " more"));
        plan.corrections().forEach(correction -> layout.hanging(
                "  - ",
                4,
                "the file says otherwise about " + correction.about() + ": " + String.join(", ", correction.ids())));
    }
}
