package gudgeon.app.desk;

import gudgeon.core.book.Entry;
import gudgeon.core.book.Facts;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a fact changed in the plan, beyond the step that it says was done.
 *
 * @param before how it stood
 * @param after how it stands
 * @param added steps that were not in the plan
 * @param gone steps that are no longer needed
 * @param buyMore things that must be bought that need not have been
 * @param buyLess things that need no longer be bought
 */
public record PlanChange(
        Standing before,
        Standing after,
        List<StripPlan.Operation> added,
        List<StripPlan.Operation> gone,
        List<Spend> buyMore,
        List<Spend> buyLess) {
    /** Nothing changed. */
    public static final PlanChange NONE =
            new PlanChange(Standing.NONE, Standing.NONE, List.of(), List.of(), List.of(), List.of());

    public PlanChange {
        added = List.copyOf(added);
        gone = List.copyOf(gone);
        buyMore = List.copyOf(buyMore);
        buyLess = List.copyOf(buyLess);
    }

    /**
     * How a plan stands.
     *
     * @param planned whether there is a plan
     * @param steps steps left
     * @param seconds time left
     */
    public record Standing(boolean planned, int steps, long seconds) {
        static final Standing NONE = new Standing(false, 0, 0);

        static Standing of(Job job) {
            return job.findPlan()
                    .map(plan -> new Standing(true, plan.operations().size(), plan.totalSeconds()))
                    .orElse(NONE);
        }
    }

    /** Whether anything changed but that steps were done. */
    public boolean isNothing() {
        return added.isEmpty()
                && gone.isEmpty()
                && buyMore.isEmpty()
                && buyLess.isEmpty()
                && before.planned() == after.planned();
    }

    /** What lies between two states of a job, of which the later one has these entries more. */
    static PlanChange between(Job before, Job after, List<Entry> news) {
        boolean planned = !after.goingTogether() && !before.facts().setting().target().isEmpty();
        List<StripPlan.Operation> old = planned ? operations(before) : List.of();
        List<StripPlan.Operation> now = planned ? operations(after) : List.of();
        Map<String, Spend> spentBefore = spends(old);
        Map<String, Spend> spentAfter = spends(now);
        JobOrder.spoilt(before).forEach(spend -> add(spentBefore, spend, spend.count()));
        JobOrder.spoilt(after).forEach(spend -> add(spentAfter, spend, spend.count()));
        if (!planned) {
            return new PlanChange(
                    Standing.NONE,
                    Standing.NONE,
                    List.of(),
                    List.of(),
                    more(spentAfter, spentBefore),
                    more(spentBefore, spentAfter));
        }
        Set<String> done = new HashSet<>();
        acts(after, before).forEach(act -> {
            done.add(act.operation());
            done.addAll(act.parts());
        });
        List<StripPlan.Operation> gone = without(old, now).stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.LIFT
                        ? !done.containsAll(operation.pieces())
                        : !done.contains(operation.id()))
                .toList();
        old.stream()
                .filter(operation -> done.contains(operation.id()))
                .flatMap(operation -> operation.destroys().stream())
                .forEach(spend -> add(spentAfter, spend, spend.count()));
        return new PlanChange(
                Standing.of(before),
                Standing.of(after),
                without(now, old),
                gone,
                more(spentAfter, spentBefore),
                more(spentBefore, spentAfter));
    }

    private static List<Facts.Act> acts(Job after, Job before) {
        List<Facts.Act> acts = new ArrayList<>(after.facts().stripped().acts());
        acts.removeAll(before.facts().stripped().acts());
        return acts;
    }

    private static List<StripPlan.Operation> operations(Job job) {
        return job.findPlan().map(StripPlan::operations).orElse(List.of());
    }

    private static List<StripPlan.Operation> without(
            List<StripPlan.Operation> operations, List<StripPlan.Operation> others) {
        Set<Object> there = new HashSet<>();
        others.forEach(operation -> there.add(key(operation)));
        return operations.stream()
                .filter(operation -> !there.contains(key(operation)))
                .toList();
    }

    private static Object key(StripPlan.Operation operation) {
        return operation.kind() == StripPlan.Kind.LIFT
                ? Set.copyOf(operation.pieces())
                : List.of(operation.kind(), operation.id());
    }

    private static Map<String, Spend> spends(List<StripPlan.Operation> operations) {
        Map<String, Spend> spends = new LinkedHashMap<>();
        operations.stream()
                .flatMap(operation -> operation.destroys().stream())
                .forEach(spend -> add(spends, spend, spend.count()));
        return spends;
    }

    private static void add(Map<String, Spend> spends, Spend spend, int count) {
        spends.merge(spend.spec(), spend, (a, b) -> new Spend(a.spec(), a.count() + count, price(a, b)));
    }

    private static OptionalDouble price(Spend a, Spend b) {
        return a.priceEach().isPresent() ? a.priceEach() : b.priceEach();
    }

    private static List<Spend> more(Map<String, Spend> here, Map<String, Spend> there) {
        List<Spend> more = new ArrayList<>();
        here.forEach((spec, spend) -> {
            Spend other = there.get(spec);
            int count = spend.count() - (other == null ? 0 : other.count());
            if (count > 0) {
                more.add(new Spend(spec, count, spend.priceEach()));
            }
        });
        return more;
    }
}
