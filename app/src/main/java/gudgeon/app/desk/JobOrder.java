package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.book.Fault;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import gudgeon.core.ordering.OrderList;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What must be bought for a job: for what was really undone, for what is still to be undone, and for what was spoilt.
 *
 * @param list everything single-use, fluids, compounds
 * @param spoilt fasteners that were drilled, snapped, stripped, rounded or missing
 * @param ordered how many of each specification were ordered
 * @param received how many arrived
 */
public record JobOrder(
        OrderList list, List<Spend> spoilt, Map<String, Integer> ordered, Map<String, Integer> received) {
    public JobOrder {
        spoilt = List.copyOf(spoilt);
    }

    /** The order list of a job. */
    public static JobOrder of(Job job) {
        return new JobOrder(
                OrderList.of(job.engine(), wholeStrip(job)),
                spoilt(job),
                job.facts().kept().ordered(),
                job.facts().kept().received());
    }

    /** The strip as it was done so far, with what is left of the plan behind it; the numbers run through. */
    public static StripPlan wholeStrip(Job job) {
        List<StripPlan.Operation> operations = new ArrayList<>();
        for (Facts.Act act : job.facts().stripped().acts()) {
            done(job, act, operations.size() + 1, operations);
        }
        StripPlan left = job.findPlan().orElse(null);
        if (left != null) {
            for (StripPlan.Operation operation : left.operations()) {
                operations.add(numbered(operation, operations.size() + 1));
            }
        }
        List<Spend> destroyed = operations.stream()
                .flatMap(operation -> operation.destroys().stream())
                .toList();
        StripPlan.Opening opening = left != null
                ? left.opening()
                : new StripPlan.Opening(List.of(), 0, 0, true, 0, 0, OptionalDouble.empty(), List.of());
        StripPlan.Order order = left != null ? left.order() : new StripPlan.Order(0, 0, "done", 0);
        StripPlan.Lifts lifts = left != null ? left.lifts() : new StripPlan.Lifts(0, 0);
        return new StripPlan(operations, opening, order, lifts, merged(destroyed));
    }

    private static StripPlan.Operation numbered(StripPlan.Operation operation, int number) {
        return new StripPlan.Operation(
                number,
                operation.kind(),
                operation.id(),
                operation.pieces(),
                operation.lift(),
                operation.place(),
                operation.seconds(),
                operation.destroys(),
                operation.cautions(),
                operation.why(),
                operation.after());
    }

    private static void done(Job job, Facts.Act act, int number, List<StripPlan.Operation> operations) {
        Engine engine = job.engine();
        if (!act.parts().isEmpty()) {
            double mass = act.parts().stream()
                    .flatMap(part -> engine.findPart(part).stream())
                    .mapToDouble(part -> part.massKilograms())
                    .sum();
            operations.add(operation(
                    number,
                    StripPlan.Kind.LIFT,
                    "lift-done-" + number,
                    act.parts(),
                    new StripPlan.Lift(mass, StripQuestion.ALONE, false, List.of()),
                    engine.workplace().startZone(),
                    List.of()));
            return;
        }
        engine.findJoint(act.operation()).ifPresent(joint -> {
            List<Spend> spends = new ArrayList<>(joint.makeup().spends());
            if (act.cut()) {
                joint.work().cut().ifPresent(cut -> spends.addAll(cut.destroys()));
            }
            StripPlan.Kind kind = act.cut() ? StripPlan.Kind.CUT : StripPlan.Kind.UNDO;
            operations.add(operation(
                    number,
                    kind,
                    joint.id(),
                    joint.between(),
                    null,
                    joint.work().zone(),
                    merged(spends)));
        });
        engine.findReady(act.operation()).ifPresent(ready -> operations.add(ready(number, ready)));
    }

    private static StripPlan.Operation ready(int number, Ready ready) {
        return operation(
                number,
                StripPlan.Kind.of(ready.kind()),
                ready.id(),
                List.of(),
                null,
                ready.zone(),
                ready.effect().spends());
    }

    private static StripPlan.Operation operation(
            int number,
            StripPlan.Kind kind,
            String id,
            List<String> pieces,
            StripPlan.@org.jspecify.annotations.Nullable Lift lift,
            String zone,
            List<Spend> spends) {
        return new StripPlan.Operation(
                number,
                kind,
                id,
                pieces,
                lift,
                new StripPlan.Place(zone, List.of(), zone, 0),
                0,
                spends,
                List.of(),
                List.of(),
                new StripPlan.After(List.of(), List.of()));
    }

    private static List<Spend> merged(List<Spend> spends) {
        Map<List<Object>, Spend> bySpec = new LinkedHashMap<>();
        spends.forEach(spend -> bySpec.merge(
                List.of(spend.spec(), spend.priceEach()),
                spend,
                (a, b) -> new Spend(a.spec(), a.count() + b.count(), a.priceEach())));
        return List.copyOf(bySpec.values());
    }

    /** Fasteners that trouble has spoilt, and that are not renewed anyway. */
    static List<Spend> spoilt(Job job) {
        List<Spend> spoilt = new ArrayList<>();
        for (Facts.TroubleSoFar trouble : job.facts().findings().troubles()) {
            boolean seizedOnly =
                    trouble.trouble().kind() == Fault.Kind.SEIZED && trouble.outcome() != Fault.Outcome.DRILLED;
            job.engine()
                    .findJoint(trouble.trouble().joint())
                    .filter(joint -> !seizedOnly)
                    .ifPresent(joint -> {
                        for (Fastener fastener :
                                fasteners(joint, trouble.trouble().fasteners())) {
                            if (fastener.once().isEmpty()) {
                                spoilt.add(new Spend(spec(fastener), 1, OptionalDouble.empty()));
                            }
                        }
                    });
        }
        return merged(spoilt);
    }

    /** The fasteners that were named; one when none was. */
    private static List<Fastener> fasteners(Joint joint, List<String> ids) {
        List<Fastener> all = joint.makeup().fasteners();
        List<Fastener> named =
                all.stream().filter(fastener -> ids.contains(fastener.id())).toList();
        return named.isEmpty() && !all.isEmpty() ? List.of(all.getFirst()) : named;
    }

    private static String spec(Fastener fastener) {
        StringBuilder spec = new StringBuilder(fastener.kind().word());
        if (!fastener.thread().isEmpty()) {
            spec.append(' ').append(fastener.thread());
        }
        fastener.length().ifPresent(length -> spec.append(" x ").append(length.typed()));
        if (!fastener.grade().isEmpty()) {
            spec.append(", class ").append(fastener.grade());
        }
        return spec.toString();
    }
}
