package gudgeon.app.document;

import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The way back on paper: step by step, the number of each stage large, the pattern drawn, gates and blocked steps marked. */
public final class BuildSheet {
    private final Engine engine;
    private final BuildPlan plan;
    private final BuildWords words;
    private final Names names;
    private final Bags bags;
    private final Set<String> done;
    private final CautionBars cautions;

    private BuildSheet(Engine engine, BuildPlan plan, Bags bags, Set<String> done, Cautions catalogue) {
        this.engine = engine;
        this.plan = plan;
        this.words = new BuildWords(engine);
        this.names = new Names(engine);
        this.bags = bags;
        this.done = done;
        this.cautions = new CautionBars(catalogue, engine);
    }

    /**
     * The sheet as PDF.
     *
     * @param strip the strip that the plan leads back from; its bag numbers are used
     * @param subject what the strip was for, such as the words of a target
     */
    public static byte[] pdf(
            Engine engine, StripPlan strip, BuildPlan plan, String subject, Cautions catalogue, Issue issue) {
        return pdf(engine, Bags.of(engine, strip), plan, Set.of(), subject, catalogue, issue);
    }

    /**
     * The sheet of a way back that is underway.
     *
     * @param bags the bags that its fasteners lie in
     * @param done ids of steps that are done, whose boxes are crossed
     */
    public static byte[] pdf(
            Engine engine,
            Bags bags,
            BuildPlan plan,
            Set<String> done,
            String subject,
            Cautions catalogue,
            Issue issue) {
        BuildSheet sheet = new BuildSheet(engine, plan, bags, done, catalogue);
        String title = "Build sheet: " + engine.identity().name();
        return Paper.pdf(title, Paper.cells(engine, issue, "Build sheet"), sheet.body(subject));
    }

    private Xhtml body(String subject) {
        Xhtml out = new Xhtml();
        out.text("h1", "", engine.identity().name());
        out.text("div", "lead", "The way back. " + subject);
        sums(out);
        blockedAtTheTop(out);
        layOut(out);
        for (BuildPlan.Correction correction : plan.corrections()) {
            out.text(
                    "p",
                    "",
                    "Correct the engine file: the " + correction.kind().name().toLowerCase(java.util.Locale.ROOT)
                            + " condition of the " + names.any(correction.about()) + " did not hold when it was done ("
                            + Figures.list(
                                    correction.ids().stream().map(names::any).toList(), 3) + ").");
        }
        for (List<BuildPlan.Operation> run :
                ZoneRuns.of(plan.operations(), operation -> operation.place().zone())) {
            long seconds = run.stream()
                    .mapToLong(operation ->
                            operation.clock().seconds() + operation.place().changeoverSeconds())
                    .sum();
            out.open("h2", "").text(names.zone(run.getFirst().place().zone()));
            out.text("span", "go", "   " + Figures.time(seconds) + " with changeover")
                    .close();
            run.forEach(operation -> step(out, operation));
        }
        end(out);
        return out;
    }

    private void sums(Xhtml out) {
        out.open("table", "sums").open("tr", "");
        sum(out, "Work", Figures.time(plan.totals().workSeconds()));
        sum(out, "Changeover", Figures.time(plan.totals().changeoverSeconds()));
        long waiting = plan.totals().waitSeconds();
        sum(out, "Waiting", waiting == 0 ? "none" : Figures.time(waiting));
        sum(out, "Steps", String.valueOf(plan.operations().size()));
        sum(out, "Blocked", String.valueOf(plan.blocked().size()));
        out.close().close();
        out.text(
                "p",
                "proof",
                "The order keeps every rule of the engine file. Its changeover is "
                        + Figures.time(plan.totals().changeoverSeconds()) + "; none is below "
                        + Figures.time(plan.totals().changeoverLowerBoundSeconds()) + ".");
    }

    private static void sum(Xhtml out, String label, String value) {
        out.open("td", "").text("div", "label", label).text("div", "sum", value).close();
    }

    private void blockedAtTheTop(Xhtml out) {
        if (plan.blocked().isEmpty()) {
            return;
        }
        out.open("div", "blocked").text("b", "", "Settle before you start: ");
        out.text(Figures.sentences(plan.blocked().stream()
                .map(operation -> "step " + operation.number() + ", " + Figures.list(words.lacks(operation)))
                .toList()));
        out.close();
    }

    private void layOut(Xhtml out) {
        Set<String> tools = new LinkedHashSet<>();
        plan.operations().forEach(operation -> tools.addAll(operation.place().tools()));
        lay(out, "Lay out: ", List.copyOf(tools));
        lay(out, "Have in hand: ", words.allInputs(plan));
    }

    private static void lay(Xhtml out, String lead, List<String> things) {
        if (!things.isEmpty()) {
            out.open("p", "lay")
                    .text("b", "", lead)
                    .text(String.join(" · ", things))
                    .close();
        }
    }

    private void step(Xhtml out, BuildPlan.Operation operation) {
        out.open("table", "step").open("tr", "");
        out.open("td", "box").text("div", "tick", done.contains(operation.id()) ? "×" : "").close();
        out.text("td", "no", String.valueOf(operation.number()));
        out.open("td", "");
        List<String> placed =
                operation.kind() == BuildPlan.Kind.PLACE ? operation.subject().parts() : List.of();
        cautions.write(out, operation.number(), BuildWords.cautions(operation), placed);
        heldUp(out, operation);
        out.text("div", "do", words.instruction(operation));
        tightening(out, operation);
        String tools = String.join(", ", operation.place().tools());
        if (!tools.isEmpty()) {
            out.text("div", "with", Names.capital(tools));
        }
        List<String> inputs = operation.kind() == BuildPlan.Kind.FILL ? List.of() : words.inputs(operation);
        if (!inputs.isEmpty()) {
            out.open("div", "renew")
                    .text("span", "sign", "in hand")
                    .text(" " + String.join(" · ", inputs))
                    .close();
        }
        List<String> notes = new ArrayList<>(words.notes(operation));
        notes.addAll(words.lags(operation, plan));
        if (!notes.isEmpty()) {
            out.text("div", "note", Figures.sentences(notes));
        }
        if (operation.order().gate()) {
            out.open("div", "gate").text("b", "", "Point of no return. ");
            out.text("Nothing after this starts until it is signed: ............................")
                    .close();
        }
        out.close();
        out.open("td", "min").text(Figures.time(operation.clock().seconds()));
        Optional<String> bag = operation.kind() == BuildPlan.Kind.SNUG
                ? bags.label(operation.subject().ref())
                : Optional.empty();
        if (bag.isPresent()) {
            out.open("div", "bag").text("span", "label", "Bag ").text("span", "bagno", bag.get());
            out.close();
        }
        out.close().close().close();
    }

    private void heldUp(Xhtml out, BuildPlan.Operation operation) {
        for (String lack : words.lacks(operation)) {
            out.open("div", "blocked")
                    .text("b", "", "Blocked. ")
                    .text(lack + ".")
                    .close();
        }
        List<String> waits = operation.holdUp().waitsFor();
        if (!waits.isEmpty() && operation.holdUp().blockedBy().isEmpty()) {
            String steps = Figures.list(
                    plan.operations().stream()
                            .filter(other -> waits.contains(other.id()))
                            .map(other -> String.valueOf(other.number()))
                            .toList(),
                    6);
            out.text("div", "why", "Waits for what blocks step " + steps);
        }
    }

    private void tightening(Xhtml out, BuildPlan.Operation operation) {
        BuildPlan.Tightening tightening = operation.tightening();
        if (tightening == null) {
            return;
        }
        String number = words.number(operation);
        String thread = words.thread(operation);
        if (!number.isEmpty()) {
            out.open("div", "with").text("span", "big", number);
            if (!thread.isEmpty()) {
                out.text("span", "u", "   " + thread);
            }
            out.close();
        }
        if (words.ordered(operation)) {
            PatternPicture.of(engine.joint(operation.subject().ref()), tightening.fasteners())
                    .ifPresent(out::add);
        }
    }

    private void end(Xhtml out) {
        long open =
                plan.accounts().stream().filter(account -> !account.settled()).count();
        out.text("h2", "", "At the end");
        out.text(
                "p",
                "",
                "Accounted for: " + Figures.count(plan.accounts().size(), "thing") + " that came off or was used up"
                        + (open == 0
                                ? ", every one with the step that settles it."
                                : ", " + open + " of them still open."));
        for (BuildPlan.Cure cure : plan.cures()) {
            out.text(
                    "p",
                    "",
                    "Still curing: " + names.any(cure.joint()) + ", another " + Figures.time(cure.secondsLeft()) + ".");
        }
        out.text("p", "", "Nothing is left in the trays, tools counted: ............................");
    }
}
