package gudgeon.app.web.strip;

import gudgeon.app.document.Bags;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.WhyWords;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Words a plan for a page, step by step. A caution is written out where the page first has it. Used once. */
public final class StepViews {
    private final StripPlan plan;
    private final StepWords words;
    private final WhyWords why;
    private final Names names;
    private final Bags bags;
    private final UnaryOperator<String> stuck;
    private final Map<String, Integer> writtenOut = new HashMap<>();

    /** @param stuck where the plan without a joint is, by the joint's id */
    public StepViews(Engine engine, StripPlan plan, UnaryOperator<String> stuck) {
        this.plan = plan;
        this.words = new StepWords(engine);
        this.why = new WhyWords(engine);
        this.names = new Names(engine);
        this.bags = Bags.of(engine, plan);
        this.stuck = stuck;
    }

    /** All steps, gathered by where one stands. */
    public List<StepView.Run> runs() {
        List<StepView.Run> runs = new ArrayList<>();
        List<StripPlan.Operation> together = new ArrayList<>();
        for (StripPlan.Operation operation : plan.operations()) {
            if (!together.isEmpty()
                    && !together.getLast().place().zone().equals(operation.place().zone())) {
                runs.add(run(together));
                together.clear();
            }
            together.add(operation);
        }
        if (!together.isEmpty()) {
            runs.add(run(together));
        }
        return runs;
    }

    private StepView.Run run(List<StripPlan.Operation> together) {
        long seconds = together.stream()
                .mapToLong(operation -> operation.seconds() + operation.place().changeoverSeconds())
                .sum();
        return new StepView.Run(
                names.zone(together.getFirst().place().zone()),
                Figures.time(seconds),
                together.stream().map(this::step).toList());
    }

    /** One step. */
    public StepView step(StripPlan.Operation operation) {
        boolean joint = operation.kind() == StripPlan.Kind.UNDO || operation.kind() == StripPlan.Kind.CUT;
        String bag = joint && bags.find(operation.id()).isPresent()
                ? String.valueOf(bags.find(operation.id()).getAsInt())
                : "";
        return new StepView(
                operation.number(),
                words.instruction(operation),
                words.tools(operation),
                words.fasteners(operation),
                words.notes(operation),
                StepWords.spends(operation.destroys()),
                Figures.time(operation.seconds()),
                warnings(operation),
                why.reasons(operation),
                bag,
                operation.kind() == StripPlan.Kind.UNDO ? stuck.apply(operation.id()) : "");
    }

    private List<StepView.Warning> warnings(StripPlan.Operation operation) {
        List<StepView.Warning> warnings = new ArrayList<>();
        for (Caution caution : Cautions.catalogue().ranked(operation.cautions())) {
            Integer before = writtenOut.putIfAbsent(caution.id(), operation.number());
            warnings.add(new StepView.Warning(caution, before == null ? 0 : before));
        }
        return warnings;
    }
}
