package gudgeon.app.web.build;

import gudgeon.app.desk.BuildBench;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Remembered;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.CompareWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.List;

/** The way back as a list: done, next, waiting and why. */
public final class WayBackView {
    private final Job job;
    private final SaidView said;
    private final BuildBench bench;
    private final BuildPlan plan;
    private final BuildWords words;
    private final Names names;

    WayBackView(Job job, BuildBench bench, SaidView said) {
        this.job = job;
        this.said = said;
        this.bench = bench;
        this.plan = bench.plan();
        this.words = new BuildWords(job.engine());
        this.names = new Names(job.engine());
    }

    public SaidView said() {
        return said;
    }

    /**
     * One step.
     *
     * @param figure torque or angle, otherwise the time
     * @param lacks what it lacks itself
     * @param waits what it waits for; empty when it can be done
     * @param was what the person wrote down about it when it came off
     */
    public record Step(
            int number,
            String instruction,
            String figure,
            boolean done,
            boolean now,
            boolean gate,
            List<String> lacks,
            String waits,
            List<String> was) {
        public Step {
            lacks = List.copyOf(lacks);
            was = List.copyOf(was);
        }

        public String style() {
            return done ? "step past" : now ? "step at" : lacks.isEmpty() ? "step" : "step stuck";
        }
    }

    /** Steps in one place, one after the other. */
    public record Run(String zone, List<Step> steps) {
        public Run {
            steps = List.copyOf(steps);
        }
    }

    public String bench() {
        return JobPaths.job(job) + "/build/bench";
    }

    public String order() {
        return JobPaths.job(job) + "/order";
    }

    public String closing() {
        return JobPaths.job(job) + "/closing";
    }

    /** Whether nothing was undone, so that there is no way back. */
    public boolean nothing() {
        return plan.operations().isEmpty();
    }

    public int left() {
        return bench.left().size();
    }

    public int done() {
        return (int) plan.operations().stream().filter(bench::isDone).count();
    }

    public String time() {
        return Figures.time(
                bench.left().stream().mapToLong(step -> step.clock().seconds()).sum());
    }

    /** How many steps lack something. */
    public int stuck() {
        return (int) bench.left().stream()
                .filter(step -> !step.holdUp().blockedBy().isEmpty())
                .count();
    }

    public List<Run> runs() {
        String next = bench.findNext().map(BuildPlan.Operation::id).orElse("");
        List<Run> runs = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        String zone = "";
        for (BuildPlan.Operation operation : plan.operations()) {
            String here = operation.kind() == BuildPlan.Kind.WAIT
                    ? zone
                    : names.zone(operation.place().zone());
            if (!here.equals(zone) && !steps.isEmpty()) {
                runs.add(new Run(zone, steps));
                steps = new ArrayList<>();
            }
            zone = here;
            steps.add(step(operation, next));
        }
        if (!steps.isEmpty()) {
            runs.add(new Run(zone, steps));
        }
        return runs;
    }

    private Step step(BuildPlan.Operation operation, String next) {
        String number = words.number(operation);
        boolean done = bench.isDone(operation);
        List<String> before = operation.holdUp().waitsFor();
        String waits = done || before.isEmpty()
                ? ""
                : "Waits for " + words.step(before.getFirst(), plan)
                        + (before.size() > 1 ? ", and " + (before.size() - 1) + " more" : "");
        return new Step(
                operation.number(),
                words.instruction(operation),
                number.isEmpty() ? Figures.time(operation.clock().seconds()) : number,
                done,
                operation.id().equals(next),
                operation.order().gate(),
                done ? List.of() : lacks(operation),
                waits,
                done ? List.of() : HowItWas.lines(Remembered.inList(job, operation)));
    }

    /** What it lacks, and what is there and not like the old one. */
    private List<String> lacks(BuildPlan.Operation operation) {
        List<String> lacks = new ArrayList<>(words.lacks(operation));
        String differs = CompareWords.differences(bench.differences(operation));
        if (!differs.isEmpty()) {
            lacks.add("The new piece is not like the old one: " + differs);
        }
        return lacks;
    }

    /** Where the strip, as it really was, contradicts the file. */
    public List<String> corrections() {
        return plan.corrections().stream()
                .map(one -> Names.capital(names.any(one.about())) + ": " + contradicted(one))
                .toList();
    }

    private String contradicted(BuildPlan.Correction one) {
        String ids = Figures.list(one.ids().stream().map(names::any).toList(), 3);
        return switch (one.kind()) {
            case ACCESS -> "it came undone without the room that the file asks for (" + ids + ")";
            case LIFT -> "it came out without the room that the file asks for (" + ids + ")";
            case NEEDS -> "it came undone without what the file asks for first (" + ids + ")";
            case CIRCUIT -> "it came undone before the circuit was made ready (" + ids + ")";
            case HOLD -> "it was cracked loose although nothing held it (" + ids + ")";
            case HANGS -> "it hung on what should not carry it (" + ids + ")";
        };
    }
}
