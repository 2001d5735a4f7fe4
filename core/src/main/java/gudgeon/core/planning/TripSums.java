package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Adds up what a chosen set takes, there and back. Joints and ready operations add up exactly; of the changeover the least
 * is a tour of the zones that must be entered and every tool taken up once; of the lifts that of the part itself.
 * With an order in hand, the strip costs what that order does, and the build what it does walked backwards with the tools of
 * the way back.
 */
final class TripSums {
    private final Standing standing;
    private final Model model;
    private final State initial;
    private final List<String> zones;
    private final long[][] travel;
    private final int start;

    TripSums(Standing standing) {
        this.standing = standing;
        this.model = standing.model();
        this.initial = standing.reach().initial();
        List<Zone> all = model.engine.workplace().zones();
        zones = all.stream().map(Zone::id).toList();
        travel = OrderProblem.travel(all);
        start = zones.indexOf(model.engine.workplace().startZone());
    }

    /**
     * @param part what it is for
     * @param end the closure of the set
     * @param order an order of the set; empty when none was found
     */
    Trip trip(int part, BitSet chosen, State end, Optional<OrderSearch.Found> order) {
        if (chosen.isEmpty()) {
            return Trip.NONE;
        }
        List<Spend> spends = new ArrayList<>();
        long work = 0;
        for (int a = chosen.nextSetBit(0); a >= 0; a = chosen.nextSetBit(a + 1)) {
            work += Steps.seconds(model, standing.request(), a);
            spends.addAll(Steps.spends(model, standing.request(), a));
        }
        long build = buildWork(chosen);
        long lifts = leastLift(part);
        Trip.Span strip = new Trip.Span(
                work + lifts + leastChangeover(chosen, end, false),
                found(work + liftSeconds(order), order.map(OrderSearch.Found::changeover)));
        Trip.Span back = new Trip.Span(
                build + lifts + leastChangeover(chosen, end, true),
                found(build + liftSeconds(order), order.map(this::walkedBack)));
        return new Trip(
                chosen.stream().mapToObj(model::actionId).toList(),
                chosen.stream().mapToLong(a -> standing.cost()[a]).sum(),
                strip,
                back,
                Steps.merged(spends),
                StripPlanner.value(spends));
    }

    private static OptionalLong found(long work, Optional<Long> changeover) {
        return changeover.isPresent() ? OptionalLong.of(work + changeover.get()) : OptionalLong.empty();
    }

    /** Everything of the way back that adds up: joints, what is taken back, sealing, filling, bleeding, checks. */
    private long buildWork(BitSet chosen) {
        long seconds = 0;
        for (int a = chosen.nextSetBit(0); a >= 0; a = chosen.nextSetBit(a + 1)) {
            if (a < model.joints) {
                Joint joint = model.engine.joints().get(a);
                seconds += joint.work().buildSeconds();
                seconds += joint.makeup().sealant().isPresent() ? BuildSite.SEAL_SECONDS : 0;
            } else if (isTakenBack(a)) {
                seconds += Steps.ready(model, a).seconds();
            }
        }
        BitSet all = (BitSet) initial.done.clone();
        all.or(chosen);
        for (Circuit circuit : model.engine.circuits()) {
            if (!circuit.fluid().isEmpty() && isTouched(circuit, all) && !isTouched(circuit, initial.done)) {
                seconds += BuildSite.FILL_SECONDS + (circuit.bleed().isEmpty() ? 0 : BuildSite.BLEED_SECONDS);
            }
        }
        for (Check check : checks(chosen)) {
            seconds += check.work().seconds();
        }
        return seconds;
    }

    /** Checks of the way back that the set makes due. */
    private List<Check> checks(BitSet chosen) {
        return model.engine.rules().checks().stream()
                .filter(check -> isDue(check, chosen) && !isDue(check, initial.done))
                .toList();
    }

    private boolean isDue(Check check, BitSet done) {
        return check.when().isEmpty()
                ? !done.isEmpty()
                : check.when().stream().anyMatch(id -> done.get(model.action(id)));
    }

    private boolean isTakenBack(int action) {
        return BuildNet.isTakenBack(Steps.ready(model, action));
    }

    private boolean isTouched(Circuit circuit, BitSet done) {
        return circuit.drains().stream().anyMatch(id -> done.get(model.action(id)))
                || IntStream.range(0, model.joints)
                        .filter(done::get)
                        .anyMatch(j ->
                                model.engine.joints().get(j).freedom().opens().contains(circuit.id()));
    }

    /** The part itself is in one of the lifts. */
    private long leastLift(int part) {
        return model.away.get(part)
                ? 0
                : standing.request().means().ways().stream()
                        .filter(way -> Model.milligrams(way.limitKilograms()) >= model.mass[part])
                        .mapToLong(LiftingWay::seconds)
                        .min()
                        .orElse(0);
    }

    private long liftSeconds(Optional<OrderSearch.Found> order) {
        return order.stream()
                .flatMap(found -> found.steps().stream())
                .filter(OrderSearch.Step::isLift)
                .mapToLong(step -> lightest(IntStream.of(step.lifted())
                        .mapToLong(p -> model.mass[p])
                        .sum()))
                .sum();
    }

    private long lightest(long milligrams) {
        return standing.request().means().ways().stream()
                .filter(way -> Model.milligrams(way.limitKilograms()) >= milligrams)
                .min((a, b) -> Double.compare(a.limitKilograms(), b.limitKilograms()))
                .map(LiftingWay::seconds)
                .orElse(0L);
    }

    private long leastChangeover(BitSet chosen, State end, boolean build) {
        BitSet enter = new BitSet();
        Set<String> tools = new LinkedHashSet<>();
        for (int a = chosen.nextSetBit(0); a >= 0; a = chosen.nextSetBit(a + 1)) {
            if (build && a >= model.joints && !isTakenBack(a)) {
                continue;
            }
            tools.addAll(tools(a, build));
            if (!mayBeAtBench(a, end, build)) {
                enter.set(zones.indexOf(zone(a)));
            }
        }
        for (Check check : build ? checks(chosen) : List.<Check>of()) {
            tools.addAll(check.work().tools());
            enter.set(zones.indexOf(check.work().zone()));
        }
        enter.clear(start);
        return tour(enter.stream().toArray())
                + tools.size() * model.engine.workplace().toolChangeSeconds();
    }

    private List<String> tools(int action, boolean build) {
        return build && action < model.joints
                ? model.engine.joints().get(action).work().buildTools()
                : Steps.tools(model, standing.request(), action);
    }

    private String zone(int action) {
        return action < model.joints
                ? model.engine.joints().get(action).work().zone()
                : Steps.ready(model, action).zone();
    }

    /** Whether all parts of an operation's joint may be away when it is done. */
    private boolean mayBeAtBench(int action, State end, boolean build) {
        int judge = build && action >= model.joints ? -1 : model.judgedAt[action];
        return judge >= 0 && IntStream.of(model.jointParts[judge]).allMatch(end.moved::get);
    }

    /** The shortest round from the start zone through some zones, exact. */
    private long tour(int[] through) {
        int n = through.length;
        if (n == 0) {
            return 0;
        }
        long[][] best = new long[1 << n][n];
        for (int set = 1; set < 1 << n; set++) {
            for (int last = 0; last < n; last++) {
                best[set][last] = Long.MAX_VALUE / 4;
                int rest = set & ~(1 << last);
                if (rest == set) {
                    continue;
                }
                if (rest == 0) {
                    best[set][last] = travel[start][through[last]];
                }
                for (int before = 0; before < n; before++) {
                    if ((rest >> before & 1) != 0) {
                        best[set][last] =
                                Math.min(best[set][last], best[rest][before] + travel[through[before]][through[last]]);
                    }
                }
            }
        }
        long round = Long.MAX_VALUE;
        for (int last = 0; last < n; last++) {
            round = Math.min(round, best[(1 << n) - 1][last] + travel[through[last]][start]);
        }
        return round;
    }

    /** One stop of the way back. */
    private record Stop(String zone, List<String> tools) {}

    /** Changeover of the way back when an order is walked backwards. */
    private long walkedBack(OrderSearch.Found order) {
        List<Stop> stops = new ArrayList<>();
        State state = State.of(model, initial.done, new BitSet());
        for (OrderSearch.Step step : order.steps()) {
            if (step.isLift()) {
                IntStream.of(step.lifted()).forEach(state.moved::set);
            } else {
                stop(step.action(), state).ifPresent(stops::addFirst);
                state.perform(step.action());
            }
        }
        BitSet chosen = new BitSet();
        order.steps().stream().filter(step -> !step.isLift()).forEach(step -> chosen.set(step.action()));
        checks(chosen)
                .forEach(check ->
                        stops.add(new Stop(check.work().zone(), check.work().tools())));
        long seconds = 0;
        int at = start;
        List<String> hand = List.of();
        for (Stop stop : stops) {
            int next = zones.indexOf(stop.zone());
            List<String> before = hand;
            long taken = stop.tools().stream()
                    .distinct()
                    .filter(tool -> !before.contains(tool))
                    .count();
            seconds += travel[at][next] + taken * model.engine.workplace().toolChangeSeconds();
            at = next;
            hand = stop.tools();
        }
        return seconds + travel[at][start];
    }

    private Optional<Stop> stop(int action, State state) {
        if (action < model.joints) {
            return Optional.of(joint(action, state));
        }
        Ready ready = Steps.ready(model, action);
        if (ready.kind() == ReadyKind.CRACK_LOOSE && ready.joint().isPresent()) {
            return Optional.of(joint(model.action(ready.joint().get()), state));
        }
        return isTakenBack(action) ? Optional.of(new Stop(ready.zone(), ready.tools())) : Optional.empty();
    }

    private Stop joint(int joint, State state) {
        Joint.Work work = model.engine.joints().get(joint).work();
        boolean away = IntStream.of(model.jointParts[joint]).allMatch(state.moved::get);
        return new Stop(away ? Zone.BENCH : work.zone(), work.buildTools());
    }
}
