package gudgeon.app.cli;

import gudgeon.app.desk.OrderQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.document.Figures;
import gudgeon.app.document.InsideWords;
import gudgeon.app.document.Names;
import gudgeon.app.document.ProofWords;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.ToldCautions;
import gudgeon.app.document.WhyWords;
import gudgeon.app.format.Cautions;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlan.Kind;
import gudgeon.core.planning.StripPlan.Operation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/** A plan of the strip for a person: the answer first, then the steps by place, what to buy, and what is proved. */
final class StripText {
    private static final int INDENT = 6;

    private final Screen screen;
    private final Layout layout;
    private final boolean why;

    StripText(Screen screen, boolean why) {
        this.screen = screen;
        this.layout = new Layout(screen);
        this.why = why;
    }

    void print(Reply.Planned planned) {
        layout.heading(planned.engine().identity().name() + ": "
                + GoalWords.of(planned.engine(), planned.request().target()));
        head(planned);
        steps(planned);
        new OrderText(screen).summary(planned.engine(), new OrderQuestion(planned).ask());
        proofs(planned);
    }

    private void head(Reply.Planned planned) {
        StripPlan plan = planned.plan();
        layout.blank();
        if (plan.operations().isEmpty()) {
            layout.line("  Nothing need be undone for it.");
            layout.blank();
            return;
        }
        layout.line("  "
                + Ink.STRONG.on(
                        screen,
                        Figures.time(plan.totalSeconds()) + ", "
                                + Figures.count(plan.operations().size(), "step"))
                + proved(plan));
        layout.blank();
        StepWords words = new StepWords(planned.engine());
        int fasteners =
                plan.operations().stream().mapToInt(words::fastenerCount).sum();
        row(
                "undoing",
                plan.opening().jointsSeconds(),
                Figures.count(count(plan, true), "joint") + ", " + Figures.count(fasteners, "fastener"));
        row("preparing", plan.opening().readySeconds(), Figures.count(count(plan, false), "preparation"));
        row("changing", plan.order().changeoverSeconds(), "ways between places, tools taken up");
        row("lifting", plan.lifts().seconds(), lifts(plan));
        layout.blank();
        layOut(plan);
        List<String> inside = InsideWords.of(planned.engine(), planned.request(), plan);
        inside.forEach(sentence -> layout.paragraph(2, sentence + "."));
        if (!inside.isEmpty()) {
            layout.blank();
        }
    }

    /** What to have ready before the first step, and what will have to be bought before the way back. */
    private void layOut(StripPlan plan) {
        Set<String> tools = new LinkedHashSet<>();
        plan.operations().forEach(operation -> tools.addAll(operation.place().tools()));
        list("lay out", tools.isEmpty() ? List.of("no tools, it goes by hand") : List.copyOf(tools));
        list("destroys", StepWords.spends(plan.destroyed()));
        layout.blank();
    }

    private void list(String label, List<String> things) {
        if (!things.isEmpty()) {
            layout.hanging(String.format(Locale.ROOT, "  %-11s", label), 13, String.join("; ", things));
        }
    }

    private static String proved(StripPlan plan) {
        boolean set = plan.opening().proven();
        boolean order = plan.order().proven();
        if (set && order) {
            return "; proved: no cheaper set, no better order of it";
        }
        return set ? "; proved: no cheaper set; the order may have a better one" : "; not proved to be the cheapest";
    }

    private void row(String label, long seconds, String text) {
        layout.hanging(String.format(Locale.ROOT, "  %-11s%12s   ", label, Figures.time(seconds)), 28, text);
    }

    private static int count(StripPlan plan, boolean joints) {
        return (int) plan.operations().stream()
                .filter(operation -> operation.kind() != Kind.LIFT)
                .filter(operation -> (operation.kind() == Kind.UNDO || operation.kind() == Kind.CUT) == joints)
                .count();
    }

    private static String lifts(StripPlan plan) {
        double heaviest = plan.operations().stream()
                .filter(operation -> operation.kind() == Kind.LIFT)
                .mapToDouble(operation -> lift(operation).massKilograms())
                .max()
                .orElse(0);
        List<String> ways = plan.operations().stream()
                .filter(operation -> operation.kind() == Kind.LIFT)
                .map(operation -> lift(operation).way())
                .filter(way -> !way.equals("alone"))
                .distinct()
                .toList();
        String with = ways.isEmpty() ? "all alone" : "some with " + Figures.list(ways);
        return plan.lifts().count() == 0
                ? "nothing to lift"
                : Figures.count(plan.lifts().count(), "lift") + ", the heaviest " + Figures.mass(heaviest) + ", "
                        + with;
    }

    private static StripPlan.Lift lift(Operation operation) {
        return Objects.requireNonNull(operation.lift(), "a lift says how");
    }

    private void steps(Reply.Planned planned) {
        StepWords words = new StepWords(planned.engine());
        WhyWords whys = new WhyWords(planned.engine());
        CautionLines cautions = new CautionLines(screen);
        ToldCautions told = new ToldCautions(Cautions.catalogue(), planned.engine());
        Names names = new Names(planned.engine());
        String zone = "";
        for (Operation operation : planned.plan().operations()) {
            if (!operation.place().zone().equals(zone)) {
                zone = operation.place().zone();
                layout.heading(names.zone(zone));
            }
            List<String> lifted = operation.kind() == Kind.LIFT ? operation.pieces() : List.of();
            cautions.print(INDENT, told.at(operation.number(), operation.cautions(), lifted));
            layout.withFigure(
                    String.format(Locale.ROOT, "%4d  ", operation.number()),
                    INDENT,
                    words.instruction(operation),
                    Figures.time(operation.seconds()));
            boolean drawn = operation.kind() == Kind.UNDO
                    && PatternSketch.loosening(planned.engine().joint(operation.id()), layout);
            details(words, operation, drawn);
            if (why) {
                whys.reasons(operation).forEach(reason -> layout.hanging("      because ", 14, reason, Ink.SOFT));
            }
        }
        layout.blank();
    }

    private void details(StepWords words, Operation operation, boolean drawn) {
        List<String> details = new ArrayList<>();
        String tools = words.tools(operation);
        if (!tools.isEmpty()) {
            details.add(tools);
        }
        details.addAll(drawn ? words.notesBesideDrawing(operation) : words.notes(operation));
        if (!details.isEmpty()) {
            layout.paragraph(INDENT, Layout.sentences(details), Ink.SOFT);
        }
        String renew = words.renew(operation);
        if (!renew.isEmpty()) {
            layout.paragraph(INDENT, renew);
        }
    }

    private void proofs(Reply.Planned planned) {
        StripPlan plan = planned.plan();
        layout.heading("Proved");
        layout.hanging("  - ", 4, ProofWords.opening(plan.opening()));
        layout.hanging("  - ", 4, ProofWords.order(plan.order()));
        layout.hanging(
                "  - ", 4, "The set is chosen first, then its best order; the total is not claimed to be the least.");
        if (why) {
            layout.blank();
            layout.line("  One of each of these groups cannot be avoided:");
            plan.opening().landmarks().forEach(group -> layout.hanging("  - ", 4, String.join(" | ", group), Ink.SOFT));
        }
    }
}
