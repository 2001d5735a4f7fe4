package gudgeon.app.document;

import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The strip on paper: what to lay out, then step by step with cautions before each action, by runs in one place. */
public final class StripCard {
    private final Engine engine;
    private final StripPlan plan;
    private final StripRequest.Target target;
    private final StepWords words;
    private final WhyWords why;
    private final Names names;
    private final Bags bags;
    private final CautionBars cautions;

    private StripCard(Engine engine, StripPlan plan, StripRequest.Target target, Bags bags, Cautions catalogue) {
        this.engine = engine;
        this.plan = plan;
        this.target = target;
        this.words = new StepWords(engine);
        this.why = new WhyWords(engine);
        this.names = new Names(engine);
        this.bags = bags;
        this.cautions = new CautionBars(catalogue, engine);
    }

    /** The card as PDF. */
    public static byte[] pdf(
            Engine engine, StripPlan plan, StripRequest.Target target, Cautions catalogue, Issue issue) {
        return pdf(engine, plan, target, Bags.of(engine, plan), catalogue, issue);
    }

    /** The card as PDF. @param bags the bags that its fasteners go into */
    public static byte[] pdf(
            Engine engine, StripPlan plan, StripRequest.Target target, Bags bags, Cautions catalogue, Issue issue) {
        StripCard card = new StripCard(engine, plan, target, bags, catalogue);
        String title = "Strip card: " + engine.identity().name();
        return Paper.pdf(title, Paper.cells(engine, issue, "Strip card"), card.body());
    }

    private Xhtml body() {
        Xhtml out = new Xhtml();
        out.text("h1", "", engine.identity().name());
        out.text("div", "lead", TargetWords.of(engine, target));
        sums(out);
        out.text("p", "proof", ProofWords.opening(plan.opening()));
        out.text("p", "proof", ProofWords.order(plan.order()));
        layOut(out);
        for (List<StripPlan.Operation> run :
                ZoneRuns.of(plan.operations(), operation -> operation.place().zone())) {
            run(out, run);
        }
        return out;
    }

    private void sums(Xhtml out) {
        out.open("table", "sums").open("tr", "");
        sum(out, "Time", Figures.time(plan.totalSeconds()));
        sum(out, "of it changeover", Figures.time(plan.order().changeoverSeconds()));
        sum(out, "Steps", String.valueOf(plan.operations().size()));
        sum(out, "Lifts", String.valueOf(plan.lifts().count()));
        sum(out, "Bags", String.valueOf(bags.count()));
        String money = plan.opening().money().isPresent()
                ? Figures.money(plan.opening().money().getAsDouble())
                : "–";
        sum(out, "To renew, known prices", money);
        out.close().close();
    }

    private static void sum(Xhtml out, String label, String value) {
        out.open("td", "").text("div", "label", label).text("div", "sum", value).close();
    }

    private void layOut(Xhtml out) {
        Set<String> tools = new LinkedHashSet<>();
        plan.operations().forEach(operation -> tools.addAll(operation.place().tools()));
        lay(out, "Lay out: ", tools.isEmpty() ? List.of("no tools") : List.copyOf(tools));
        List<String> ways = plan.operations().stream()
                .flatMap(operation -> java.util.stream.Stream.ofNullable(operation.lift()))
                .map(lift -> lift.way())
                .filter(way -> !way.equals("alone"))
                .distinct()
                .toList();
        if (!ways.isEmpty()) {
            lay(out, "Have ready for lifting: ", ways);
        }
        if (!plan.destroyed().isEmpty()) {
            lay(out, "Buy before building: ", StepWords.spends(plan.destroyed()));
        }
    }

    private static void lay(Xhtml out, String lead, List<String> things) {
        out.open("p", "lay")
                .text("b", "", lead)
                .text(String.join(" · ", things))
                .close();
    }

    private void run(Xhtml out, List<StripPlan.Operation> run) {
        StripPlan.Operation first = run.getFirst();
        long seconds = run.stream()
                .mapToLong(operation -> operation.seconds() + operation.place().changeoverSeconds())
                .sum();
        out.open("h2", "").text(names.zone(first.place().zone()));
        out.text("span", "go", "   " + Figures.time(seconds) + " with changeover");
        out.close();
        run.forEach(operation -> step(out, operation));
    }

    private void step(Xhtml out, StripPlan.Operation operation) {
        out.open("table", "step").open("tr", "");
        out.open("td", "box").text("div", "tick", "").close();
        out.text("td", "no", String.valueOf(operation.number()));
        out.open("td", "");
        List<String> lifted = operation.kind() == StripPlan.Kind.LIFT ? operation.pieces() : List.of();
        cautions.write(out, operation.number(), operation.cautions(), lifted);
        out.text("div", "do", words.instruction(operation));
        List<String> with = new ArrayList<>();
        if (!words.tools(operation).isEmpty()) {
            with.add(Names.capital(words.tools(operation)));
        }
        with.addAll(words.fasteners(operation));
        if (!with.isEmpty()) {
            out.text("div", "with", String.join(" · ", with));
        }
        boolean drawn = loosening(out, operation);
        List<String> notes = drawn ? words.notesBesideDrawing(operation) : words.notes(operation);
        if (!notes.isEmpty()) {
            out.text("div", "note", Figures.sentences(notes));
        }
        renew(out, operation);
        String because = why.inShort(operation);
        if (!because.isEmpty()) {
            out.text("div", "why", "Why: " + because);
        }
        out.close();
        Optional<String> bag = operation.kind() == StripPlan.Kind.LIFT ? Optional.empty() : bags.label(operation.id());
        out.open("td", "min").text(Figures.time(operation.seconds()));
        if (bag.isPresent()) {
            out.open("div", "bag").text("span", "label", "Bag ").text("span", "bagno", bag.get());
            out.close();
        }
        out.close();
        out.close().close();
    }

    /** Draws in which order to loosen, when there is one and the places are known; whether it did. */
    private boolean loosening(Xhtml out, StripPlan.Operation operation) {
        if (operation.kind() != StripPlan.Kind.UNDO) {
            return false;
        }
        Joint joint = engine.joint(operation.id());
        List<String> order = joint.makeup().loosen().order().stream()
                .map(position -> joint.makeup().fasteners().get(position - 1).id())
                .toList();
        Optional<Xhtml> picture = order.isEmpty() ? Optional.empty() : PatternPicture.of(joint, order);
        picture.ifPresent(out::add);
        return picture.isPresent();
    }

    private static void renew(Xhtml out, StripPlan.Operation operation) {
        if (!operation.destroys().isEmpty()) {
            out.open("div", "renew").text("span", "sign", "renew");
            out.text(" " + String.join(" · ", StepWords.spends(operation.destroys())))
                    .close();
        }
    }
}
