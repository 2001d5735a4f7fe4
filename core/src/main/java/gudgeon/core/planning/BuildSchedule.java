package gudgeon.core.planning;

import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Lack;
import gudgeon.core.planning.BuildPlan.LackKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Walks the graph of a build. A list scheduler with three orders of preference, of which the quickest result is kept; no
 * claim that it is the best.
 */
final class BuildSchedule {
    /** A step of the result: what it cost to get to it and when it starts. */
    record Done(int node, BuildSite.Start start, String fromZone, long begins, List<Integer> hangsOn) {}

    /** What was found. */
    record Found(List<Done> steps, BuildSite site, List<Missed> missed) {
        long totalSeconds() {
            return site.clock
                    + site.travel(site.zone, site.net.model.engine.workplace().startZone());
        }
    }

    /** A rule that no order was found to keep at this step. */
    record Missed(int node, LackKind kind) {}

    /**
     * A step that could be next, with the way to the next calm state.
     *
     * @param early a check that nothing waits for yet
     * @param late what is better done when there is nothing else to do: filling, and placing what cannot be put together yet
     */
    private record Choice(
            List<Integer> path, boolean early, boolean late, long idle, long travel, long changeover, double rank) {}

    private static final Comparator<Choice> SOONEST =
            Comparator.comparing(Choice::early).thenComparingLong(Choice::idle).thenComparing(Choice::late);
    private static final Comparator<Choice> CHEAPEST =
            SOONEST.thenComparingLong(Choice::changeover).thenComparingDouble(Choice::rank);
    private static final Comparator<Choice> NEAREST =
            SOONEST.thenComparingLong(Choice::travel).thenComparingDouble(Choice::rank);
    private static final Comparator<Choice> BACKWARDS = SOONEST.thenComparingDouble(Choice::rank);

    private final BuildNet net;
    private final List<BitSet> ancestors;
    private final Comparator<Choice> preference;
    private final BuildPaths paths;
    private final double[] rank;
    private final BuildSite site;
    private final List<Done> steps = new ArrayList<>();
    private final List<Missed> missed = new ArrayList<>();

    private BuildSchedule(BuildNet net, List<BitSet> ancestors, Comparator<Choice> preference) {
        this.net = net;
        this.ancestors = ancestors;
        this.preference = preference;
        site = new BuildSite(net);
        paths = new BuildPaths(net, ancestors, true);
        rank = new double[net.graph.size()];
        for (int n = 0; n < rank.length; n++) {
            rank[n] = net.graph.node(n).kind() == Kind.CHECK
                    ? ancestors.get(n).stream()
                            .mapToDouble(before -> net.graph.node(before).rank())
                            .max()
                            .orElse(0)
                    : net.graph.node(n).rank();
        }
    }

    /** The quickest of the schedules tried: fewest rules missed, then shortest, then in the order of trying. */
    static Found best(BuildNet net, List<BitSet> ancestors) {
        Optional<Found> best = Optional.empty();
        for (Comparator<Choice> preference : List.of(CHEAPEST, NEAREST, BACKWARDS)) {
            Found found = new BuildSchedule(net, ancestors, preference).run();
            if (best.isEmpty()
                    || found.missed().size() < best.get().missed().size()
                    || (found.missed().size() == best.get().missed().size()
                            && found.totalSeconds() < best.get().totalSeconds())) {
                best = Optional.of(found);
            }
        }
        return best.orElseThrow();
    }

    private Found run() {
        while (site.finished.cardinality() < net.graph.size()) {
            List<Integer> path = choose();
            for (int node : path) {
                perform(node);
            }
        }
        return new Found(steps, site, missed);
    }

    private List<Integer> choose() {
        Optional<List<Integer>> path = choose(paths);
        if (path.isEmpty()) {
            paths.forget();
            path = choose(paths);
        }
        return path.or(() -> choose(new BuildPaths(net, ancestors, false))).orElseGet(this::forced);
    }

    private Optional<List<Integer>> choose(BuildPaths from) {
        List<Choice> choices = new ArrayList<>();
        for (int n = 0; n < net.graph.size(); n++) {
            if (!site.ready(n)) {
                continue;
            }
            int node = n;
            if (site.staysCalm(n)) {
                choices.add(choice(n, List.of(n)));
            } else {
                from.from(site, n).ifPresent(path -> choices.add(choice(node, path)));
            }
        }
        return choices.stream()
                .sorted(preference)
                .map(Choice::path)
                .filter(path -> site.staysCalm(path.getFirst()) || from.stillLeads(site, path))
                .findFirst();
    }

    private Choice choice(int first, List<Integer> path) {
        BuildSite then = site.copy();
        long idle = 0;
        long travel = 0;
        long changeover = 0;
        boolean late = net.graph.node(first).kind() == Kind.FILL;
        List<Integer> whole = new ArrayList<>(path);
        for (int i = 0; i < whole.size(); i++) {
            BuildSite.Start start = then.start(whole.get(i));
            idle += start.idle();
            travel += then.travel(then.zone, start.zone());
            changeover += start.changeover();
            then.perform(whole.get(i), start);
            if (i + 1 == whole.size() && whole.stream().allMatch(site::onTheWay)) {
                OptionalInt next = leadsTo(then, whole.get(i));
                next.ifPresent(whole::add);
                late = next.isEmpty();
            }
        }
        return new Choice(whole, site.tooEarly(first), late, idle, travel, changeover, rank[first]);
    }

    /** The cheapest joint that a placing makes possible: it is put together at once. */
    private OptionalInt leadsTo(BuildSite then, int placed) {
        return net.graph.outOf(placed).stream()
                .mapToInt(BuildGraph.Edge::to)
                .filter(node -> net.graph.node(node).kind() == Kind.SNUG && then.staysCalm(node) && then.ready(node))
                .boxed()
                .min(Comparator.comparingLong((Integer node) -> then.start(node).changeover())
                        .thenComparing(node -> rank[node]))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** No step keeps every rule: the one that the strip read backwards has first is done and says what it misses. */
    private List<Integer> forced() {
        int node = -1;
        for (int n = 0; n < net.graph.size(); n++) {
            boolean possible = !site.finished.get(n)
                    && net.graph.into(n).stream().allMatch(edge -> site.finished.get(edge.from()));
            if (possible && (node < 0 || rank[n] < rank[node])) {
                node = n;
            }
        }
        missed.add(new Missed(node, net.graph.node(node).kind() == Kind.SEAL ? LackKind.OPEN_TIME : LackKind.LOOSE));
        return List.of(node);
    }

    private void perform(int node) {
        BuildSite.Start start = site.start(node);
        if (!site.inTime(node, start)) {
            missed.add(new Missed(node, LackKind.OPEN_TIME));
        }
        String from = site.zone;
        List<Integer> hangsOn = net.graph.node(node).kind() == Kind.PLACE
                ? BuildLifting.hangsOn(net, net.graph.node(node).about(), site.open)
                : List.of();
        long begins = site.clock + start.idle() + start.changeover();
        site.perform(node, start);
        steps.add(new Done(node, start, from, begins, hangsOn));
        if (!missed.isEmpty() && missed.getLast().node() == node) {
            site.tolerated.or(site.loose());
            site.wet.clear();
        }
    }

    /** Writes what was missed into the graph, with the step's id. */
    static void report(BuildNet net, Found found) {
        for (Missed miss : found.missed()) {
            net.graph.lack(miss.node(), new Lack(miss.kind(), List.of(net.ref(miss.node())), List.of()));
        }
    }
}
