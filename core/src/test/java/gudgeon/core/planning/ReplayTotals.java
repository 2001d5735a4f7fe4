package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.Violation.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sums of a plan: times, money, what is destroyed. Part of {@link StripReplay}. */
final class ReplayTotals {
    private final Engine engine;
    private final StripRequest request;
    private final StripPlan plan;
    private final List<Violation> violations = new ArrayList<>();
    private long jointsSeconds;
    private long readySeconds;
    private long costSeconds;
    private double money;
    private long changeover;
    private long liftSeconds;
    private int lifts;
    private final Map<String, Integer> destroyed = new LinkedHashMap<>();

    private ReplayTotals(Engine engine, StripRequest request, StripPlan plan) {
        this.engine = engine;
        this.request = request;
        this.plan = plan;
    }

    static List<Violation> check(Engine engine, StripRequest request, StripPlan plan, long wayBackSeconds) {
        ReplayTotals totals = new ReplayTotals(engine, request, plan);
        plan.operations().forEach(totals::add);
        totals.changeover += wayBackSeconds;
        totals.compare();
        return totals.violations;
    }

    private void expect(boolean right, Kind kind, int step, String text) {
        if (!right) {
            violations.add(new Violation(kind, step, text));
        }
    }

    private void add(StripPlan.Operation operation) {
        changeover += operation.place().changeoverSeconds();
        if (operation.kind() == StripPlan.Kind.LIFT) {
            lifts++;
            liftSeconds += operation.seconds();
            expect(operation.destroys().isEmpty(), Kind.WRONG_DESTROYS, operation.number(), "a lift destroys nothing");
            return;
        }
        List<Spend> spends = new ArrayList<>();
        long seconds = 0;
        Optional<Joint> joint = engine.findJoint(operation.id());
        Optional<Ready> ready = engine.findReady(operation.id());
        if (joint.isPresent()) {
            seconds = seconds(joint.get(), spends);
            jointsSeconds += seconds;
        } else if (ready.isPresent()) {
            spends.addAll(ready.get().effect().spends());
            seconds = ready.get().seconds();
            readySeconds += seconds;
        }
        int step = operation.number();
        expect(operation.seconds() == seconds, Kind.WRONG_SECONDS, step, operation.seconds() + " should be " + seconds);
        boolean right = count(operation.destroys()).equals(count(spends));
        expect(right, Kind.WRONG_DESTROYS, step, operation.destroys() + " should be " + spends);
        count(spends).forEach((spec, count) -> destroyed.merge(spec, count, Integer::sum));
        double value = value(spends);
        money += value;
        costSeconds += seconds + inSeconds(value);
    }

    /** Time of the joint, or of its cut when it will not come; what is destroyed is added to the list. */
    private long seconds(Joint joint, List<Spend> spends) {
        spends.addAll(joint.makeup().spends());
        Optional<Joint.Cut> cut = joint.work().cut();
        if (request.willNotCome().contains(joint.id()) && cut.isPresent()) {
            spends.addAll(cut.get().destroys());
            return cut.get().seconds();
        }
        return joint.work().undo().fastenerSeconds()
                + (long) Math.floor(joint.work().undo().seizureChance()
                                * joint.work().undo().seizureSeconds()
                        + 0.5);
    }

    private static double value(List<Spend> spends) {
        return spends.stream()
                .mapToDouble(spend -> spend.count() * spend.priceEach().orElse(0))
                .sum();
    }

    private long inSeconds(double value) {
        double worth = request.means().worthPerHour();
        return worth == 0 ? 0 : (long) Math.floor(value * 3600 / worth + 0.5);
    }

    private static Map<String, Integer> count(List<Spend> spends) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        spends.forEach(spend -> counts.merge(spend.spec(), spend.count(), Integer::sum));
        return counts;
    }

    private void compare() {
        StripPlan.Opening opening = plan.opening();
        List<String> chosen = plan.operations().stream()
                .filter(operation -> operation.kind() != StripPlan.Kind.LIFT)
                .map(StripPlan.Operation::id)
                .toList();
        expect(opening.chosen().equals(chosen), Kind.WRONG_CHOSEN, 0, opening.chosen() + " should be " + chosen);
        opening("cost", opening.costSeconds(), costSeconds);
        opening("joints", opening.jointsSeconds(), jointsSeconds);
        opening("ready", opening.readySeconds(), readySeconds);
        boolean bound = opening.lowerBoundSeconds() <= opening.costSeconds()
                && (!opening.proven() || opening.lowerBoundSeconds() == opening.costSeconds());
        expect(bound, Kind.WRONG_OPENING, 0, "bound " + opening.lowerBoundSeconds());
        boolean moneyRight = Math.abs(opening.money().orElse(0) - money) < 1e-6;
        expect(moneyRight, Kind.WRONG_OPENING, 0, "money " + opening.money() + " should be " + money);
        StripPlan.Order order = plan.order();
        String text = order.changeoverSeconds() + " should be " + changeover;
        expect(order.changeoverSeconds() == changeover, Kind.WRONG_ORDER_TOTAL, 0, text);
        expect(order.lowerBoundSeconds() <= changeover, Kind.WRONG_ORDER_TOTAL, 0, "bound above the value");
        boolean liftsRight = plan.lifts().count() == lifts && plan.lifts().seconds() == liftSeconds;
        expect(liftsRight, Kind.WRONG_LIFTS_TOTAL, 0, plan.lifts() + " should be " + lifts + ", " + liftSeconds);
        long total = jointsSeconds + readySeconds + changeover + liftSeconds;
        expect(plan.totalSeconds() == total, Kind.WRONG_TOTAL, 0, plan.totalSeconds() + " should be " + total);
        Map<String, Integer> told = count(plan.destroyed());
        boolean merged = told.size() == plan.destroyed().size()
                && List.copyOf(told.entrySet()).equals(List.copyOf(destroyed.entrySet()));
        expect(merged, Kind.WRONG_DESTROYED_LIST, 0, plan.destroyed() + " should be " + destroyed);
    }

    private void opening(String what, long told, long right) {
        expect(told == right, Kind.WRONG_OPENING, 0, what + " " + told + " should be " + right);
    }
}
