package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.ordering.Amount;
import gudgeon.core.ordering.OrderLine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What to have ready before the next sessions.
 *
 * @param steps how many steps it looks ahead
 * @param wash whether nothing was done yet: wash the engine first
 * @param warm steps that are done on a warm engine, so that they come first on their day
 * @param records what must be written down or saved before it is taken apart
 * @param helpers lifts that want more than two arms
 * @param special tools that not every box has
 * @param usual tools that most boxes have
 * @param soak joints to be soaked days before
 * @param catching circuits that will be drained, and how much comes
 * @param bags how many bags and labels the fasteners want
 * @param buy what these steps use up and what is not here
 * @param waiting ordered and not here
 */
public record Preparing(
        int steps,
        boolean wash,
        List<String> warm,
        List<String> records,
        List<Lift> helpers,
        List<String> special,
        List<String> usual,
        List<String> soak,
        List<Catch> catching,
        int bags,
        List<Piece> buy,
        List<String> waiting) {
    /** Tools that most boxes have (common practice); what a file calls otherwise is special. */
    private static final String USUAL =
            "(?i).*\\b(socket|spanner|ring|open-ended|screwdriver|pliers|hexagon key|key|hammer|mallet|knife|brush|ratchet"
                    + "|extension|wire brush|funnel|pan|can|rag|tape|marker|torch|lamp)\\b.*";

    public Preparing {
        warm = List.copyOf(warm);
        records = List.copyOf(records);
        helpers = List.copyOf(helpers);
        special = List.copyOf(special);
        usual = List.copyOf(usual);
        soak = List.copyOf(soak);
        catching = List.copyOf(catching);
        buy = List.copyOf(buy);
        waiting = List.copyOf(waiting);
    }

    /** A lift. @param way helper, hoist ... */
    public record Lift(List<String> parts, double kilograms, String way) {
        public Lift {
            parts = List.copyOf(parts);
        }
    }

    /** A circuit to be drained. @param litres its capacity; empty when not known */
    public record Catch(String circuit, Optional<Double> litres) {}

    /** Something to buy. @param count pieces; 0 when bought as needed */
    public record Piece(String spec, int count) {}

    /** @param works the steps of the next sessions */
    public static Preparing of(Job job, List<Today.Work> works) {
        Engine engine = job.engine();
        List<StripPlan.Operation> undo = new ArrayList<>();
        List<BuildPlan.Operation> fit = new ArrayList<>();
        Set<String> special = new LinkedHashSet<>();
        Set<String> usual = new LinkedHashSet<>();
        for (Today.Work work : works) {
            work.tools().forEach(tool -> (tool.matches(USUAL) ? usual : special).add(tool));
            switch (work) {
                case Today.Work.Undo one -> undo.add(one.operation());
                case Today.Work.Fit one -> fit.add(one.operation());
                case Today.Work.Soak soak -> {}
            }
        }
        return new Preparing(
                works.size(),
                job.facts().stripped().acts().isEmpty(),
                warm(engine, undo),
                records(engine, undo),
                helpers(undo, fit),
                List.copyOf(special),
                List.copyOf(usual),
                soak(job, undo),
                catching(engine, undo),
                bags(engine, undo),
                buy(job, undo, fit),
                waiting(job.facts()));
    }

    private static List<String> warm(Engine engine, List<StripPlan.Operation> undo) {
        return undo.stream()
                .filter(operation -> engine.findJoint(operation.id())
                                .filter(joint -> joint.freedom().engineState() == Joint.EngineState.WARM)
                                .isPresent()
                        || engine.findReady(operation.id())
                                .filter(ready -> ready.effect().engineState() == Joint.EngineState.WARM)
                                .isPresent())
                .map(StripPlan.Operation::id)
                .toList();
    }

    private static List<String> records(Engine engine, List<StripPlan.Operation> undo) {
        return undo.stream()
                .filter(operation -> engine.findReady(operation.id())
                        .filter(ready -> ready.kind() == ReadyKind.RECORD)
                        .isPresent())
                .map(StripPlan.Operation::id)
                .toList();
    }

    private static List<Lift> helpers(List<StripPlan.Operation> undo, List<BuildPlan.Operation> fit) {
        List<Lift> lifts = new ArrayList<>();
        for (StripPlan.Operation operation : undo) {
            StripPlan.Lift lift = operation.lift();
            if (lift != null && !lift.way().equals(StripQuestion.ALONE)) {
                lifts.add(new Lift(operation.pieces(), lift.massKilograms(), lift.way()));
            }
        }
        for (BuildPlan.Operation operation : fit) {
            BuildPlan.Handling handling = operation.handling();
            if (handling != null && !handling.way().equals(StripQuestion.ALONE)) {
                lifts.add(new Lift(operation.subject().parts(), handling.massKilograms(), handling.way()));
            }
        }
        return lifts;
    }

    private static List<String> soak(Job job, List<StripPlan.Operation> undo) {
        return undo.stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.UNDO)
                .filter(operation -> !Soaked.lately(job, operation.id(), job.now()))
                .filter(operation -> job.engine().findJoint(operation.id())
                        .filter(joint -> joint.work().undo().seizureChance() >= TodayStrip.WORTH_A_SOAK)
                        .isPresent())
                .map(StripPlan.Operation::id)
                .toList();
    }

    private static List<Catch> catching(Engine engine, List<StripPlan.Operation> undo) {
        return undo.stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.DRAIN)
                .flatMap(operation -> engine.circuits().stream()
                        .filter(circuit -> circuit.drains().contains(operation.id())))
                .distinct()
                .map(circuit -> new Catch(circuit.id(), litres(circuit)))
                .toList();
    }

    private static Optional<Double> litres(Circuit circuit) {
        return circuit.capacity().map(volume -> volume.litres());
    }

    private static int bags(Engine engine, List<StripPlan.Operation> undo) {
        return (int) undo.stream()
                .map(operation -> engine.findJoint(operation.id()))
                .flatMap(Optional::stream)
                .filter(joint -> !joint.makeup().fasteners().isEmpty())
                .count();
    }

    /** Single-use pieces and fluids of these steps that are neither here nor ordered. */
    private static List<Piece> buy(Job job, List<StripPlan.Operation> undo, List<BuildPlan.Operation> fit) {
        JobOrder order = JobOrder.of(job);
        Set<String> about = new LinkedHashSet<>();
        undo.forEach(operation -> about.add(operation.id()));
        fit.forEach(operation -> about.add(operation.subject().ref()));
        return order.list().lines().stream()
                .filter(line -> line.uses().stream().anyMatch(use -> about.contains(use.id())))
                .filter(line -> !isHereOrComing(order, line))
                .map(line -> new Piece(line.spec(), line.amount() instanceof Amount.Pieces(int count) ? count : 0))
                .toList();
    }

    private static boolean isHereOrComing(JobOrder order, OrderLine line) {
        int want = line.amount() instanceof Amount.Pieces(int count) ? count : 1;
        int have = Math.max(
                order.ordered().getOrDefault(line.spec(), 0), order.received().getOrDefault(line.spec(), 0));
        return have >= want;
    }

    private static List<String> waiting(Facts facts) {
        return facts.kept().ordered().entrySet().stream()
                .filter(one -> facts.kept().received().getOrDefault(one.getKey(), 0) < one.getValue())
                .map(one -> one.getKey())
                .toList();
    }
}
