package gudgeon.core.planning;

import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.BuildPlan.Clock;
import gudgeon.core.planning.BuildPlan.Cure;
import gudgeon.core.planning.BuildPlan.Handling;
import gudgeon.core.planning.BuildPlan.HoldUp;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Lag;
import gudgeon.core.planning.BuildPlan.Mark;
import gudgeon.core.planning.BuildPlan.Needs;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildPlan.Order;
import gudgeon.core.planning.BuildPlan.Subject;
import gudgeon.core.planning.BuildPlan.Tightening;
import gudgeon.core.planning.BuildPlan.Totals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Writes a schedule down as a {@link BuildPlan}. */
final class BuildWriter {
    /** Heavier than this reached over, a placing asks for the caution about heavy loads (common practice). */
    private static final long HEAVY_MILLIGRAMS = Model.milligrams(15);

    private final BuildNet net;
    private final BuildLacks lacks;
    private final List<BitSet> ancestors;
    private final BuildSchedule.Found found;
    private final List<Operation> operations = new ArrayList<>();
    private long work;
    private long waiting;
    private long changeover;

    BuildWriter(BuildNet net, BuildLacks lacks, List<BitSet> ancestors, BuildSchedule.Found found) {
        this.net = net;
        this.lacks = lacks;
        this.ancestors = ancestors;
        this.found = found;
    }

    BuildPlan plan() {
        int waits = 0;
        for (int i = 0; i < found.steps().size(); i++) {
            BuildSchedule.Done done = found.steps().get(i);
            if (done.start().idle() > 0) {
                waits++;
                operations.add(wait(waits, done, zoneFrom(i)));
                waiting += done.start().idle();
            }
            operations.add(operation(done, place(i)));
            work += found.site().seconds(done.node());
            changeover += done.start().changeover();
        }
        String start = net.model.engine.workplace().startZone();
        changeover += found.site().travel(found.site().zone, start);
        return new BuildPlan(
                operations,
                new Totals(work, waiting, changeover, lowerBound(start)),
                BuildAccounts.of(net, this::heldUp),
                net.history.corrections,
                cures());
    }

    private boolean heldUp(int node) {
        return !net.graph.lacks(node).isEmpty() || !waitsFor(node).isEmpty();
    }

    /** The zone of the first step from here on that has one of its own. */
    private String zoneFrom(int index) {
        for (int i = index; i < found.steps().size(); i++) {
            if (!found.site().onTheWay(found.steps().get(i).node())) {
                return found.steps().get(i).start().zone();
            }
        }
        return found.site().zone;
    }

    private StripPlan.Place place(int index) {
        BuildSchedule.Done done = found.steps().get(index);
        if (found.site().onTheWay(done.node())) {
            String zone = zoneFrom(index);
            return new StripPlan.Place(zone, List.of(), zone, 0);
        }
        return new StripPlan.Place(
                done.start().zone(),
                done.start().tools(),
                done.fromZone(),
                done.start().changeover());
    }

    private Operation wait(int count, BuildSchedule.Done before, String zone) {
        long begins =
                before.begins() - before.start().changeover() - before.start().idle();
        String id = net.graph.node(before.node()).id();
        return new Operation(
                operations.size() + 1,
                Kind.WAIT,
                "wait-" + count,
                new Subject(id, List.of()),
                new StripPlan.Place(zone, List.of(), zone, 0),
                new Clock(begins, before.start().idle()),
                null,
                null,
                new Needs(List.of(), List.of(), ""),
                new Order(List.of(), List.of(), false),
                HoldUp.NONE);
    }

    private Operation operation(BuildSchedule.Done done, StripPlan.Place place) {
        int n = done.node();
        BuildGraph.Node node = net.graph.node(n);
        boolean gate = node.kind() == Kind.CHECK
                && net.model.engine.rules().checks().get(node.about()).gate();
        return new Operation(
                operations.size() + 1,
                node.kind(),
                node.id(),
                new Subject(net.ref(n), parts(node)),
                place,
                new Clock(done.begins(), found.site().seconds(n)),
                tightening(node),
                handling(node, done.hangsOn()),
                new Needs(lacks.inputs(n), cautions(node, place), text(node)),
                new Order(direct(n), lags(n), gate),
                new HoldUp(net.graph.lacks(n), waitsFor(n)));
    }

    private List<String> parts(BuildGraph.Node node) {
        return switch (node.kind()) {
            case PLACE ->
                net.history.lifts.get(node.about()).parts().stream()
                        .mapToObj(net.model::partId)
                        .toList();
            case SEAL, SNUG, TIGHTEN, STAGE, ANGLE -> net.joint(node.about()).between();
            case RESTORE, FILL, BLEED, CHECK, WAIT -> List.of();
        };
    }

    private @Nullable Tightening tightening(BuildGraph.Node node) {
        if (node.kind() != Kind.SNUG && node.kind() != Kind.TIGHTEN && node.stage() == 0) {
            return null;
        }
        Makeup makeup = net.joint(node.about()).makeup();
        List<String> order = makeup.pattern().size() == makeup.fasteners().size()
                ? makeup.pattern().stream()
                        .map(position -> makeup.fasteners().get(position - 1).id())
                        .toList()
                : makeup.fasteners().stream().map(Fastener::id).toList();
        if (node.stage() == 0) {
            return new Tightening(0, order, null, null, "");
        }
        Makeup.Stage stage = makeup.stages().get(node.stage() - 1);
        return new Tightening(
                node.stage(), order, stage.torque().orElse(null), stage.angle().orElse(null), stage.threadState());
    }

    private @Nullable Handling handling(BuildGraph.Node node, List<Integer> hangsOn) {
        if (node.kind() != Kind.PLACE) {
            return null;
        }
        List<Mark> marks = net.history.lifts.get(node.about()).parts().stream()
                .mapToObj(part -> net.model.engine.parts().get(part))
                .filter(part -> !part.care().keep().isEmpty())
                .map(part -> new Mark(part.id(), part.care().keep()))
                .toList();
        return new Handling(
                BuildLifting.milligrams(net, node.about()) / 1e6,
                BuildLifting.way(net, node.about(), net.ways)
                        .map(LiftingWay::name)
                        .orElse(""),
                hangsOn.stream().map(net.model::actionId).toList(),
                marks);
    }

    private List<String> cautions(BuildGraph.Node node, StripPlan.Place place) {
        Set<String> cautions = new LinkedHashSet<>();
        if (!place.zone().equals(place.fromZone())) {
            cautions.addAll(net.model.engine.zone(place.zone()).cautions());
        }
        switch (node.kind()) {
            case SNUG, TIGHTEN -> cautions.addAll(net.joint(node.about()).work().cautions());
            case PLACE -> {
                if (BuildLifting.milligrams(net, node.about()) > HEAVY_MILLIGRAMS) {
                    cautions.add("heavy-lift");
                }
                net.history.lifts.get(node.about()).parts().stream()
                        .forEach(part -> cautions.addAll(
                                net.model.engine.parts().get(part).care().cautions()));
            }
            case RESTORE ->
                cautions.addAll(Steps.ready(net.model, node.about()).effect().cautions());
            case FILL, BLEED ->
                cautions.addAll(net.model.engine.circuits().get(node.about()).hazards());
            case CHECK ->
                cautions.addAll(net.model
                        .engine
                        .rules()
                        .checks()
                        .get(node.about())
                        .work()
                        .cautions());
            case SEAL, STAGE, ANGLE, WAIT -> {}
        }
        return List.copyOf(cautions);
    }

    private String text(BuildGraph.Node node) {
        return switch (node.kind()) {
            case SNUG -> net.joint(node.about()).work().note();
            case RESTORE -> Steps.ready(net.model, node.about()).effect().restore();
            case BLEED -> net.model.engine.circuits().get(node.about()).bleed();
            case CHECK ->
                net.model.engine.rules().checks().get(node.about()).work().note();
            case SEAL, PLACE, TIGHTEN, STAGE, ANGLE, FILL, WAIT -> "";
        };
    }

    /** Steps that must come before, without those that come before one of the others anyway; in the order of the plan. */
    private List<String> direct(int n) {
        BitSet implied = new BitSet();
        net.graph.into(n).forEach(edge -> implied.or(ancestors.get(edge.from())));
        BitSet direct = new BitSet();
        net.graph.into(n).stream()
                .map(BuildGraph.Edge::from)
                .filter(from -> !implied.get(from))
                .forEach(direct::set);
        return inOrder(direct);
    }

    private List<String> inOrder(BitSet nodes) {
        return found.steps().stream()
                .map(BuildSchedule.Done::node)
                .filter(nodes::get)
                .map(node -> net.graph.node(node).id())
                .toList();
    }

    private List<Lag> lags(int n) {
        return net.graph.outOf(n).stream()
                .filter(edge -> edge.min() > 0 || edge.max().isPresent())
                .map(edge -> new Lag(net.graph.node(edge.to()).id(), edge.min(), edge.max()))
                .toList();
    }

    private List<String> waitsFor(int n) {
        BitSet blocked = (BitSet) ancestors.get(n).clone();
        blocked.stream().filter(node -> net.graph.lacks(node).isEmpty()).forEach(blocked::clear);
        return blocked.isEmpty() ? List.of() : inOrder(blocked);
    }

    /** Every zone once there and back, every tool taken up once. */
    private long lowerBound(String start) {
        Set<String> zones = new LinkedHashSet<>();
        Set<String> tools = new LinkedHashSet<>();
        for (BuildSchedule.Done done : found.steps()) {
            if (!found.site().onTheWay(done.node()) && !done.start().zone().equals(start)) {
                zones.add(done.start().zone());
            }
            tools.addAll(done.start().tools());
        }
        long bound = tools.size() * net.model.engine.workplace().toolChangeSeconds();
        for (String id : zones) {
            Zone zone = net.model.engine.zone(id);
            bound += zone.goSeconds() + zone.backSeconds();
        }
        return bound;
    }

    private List<Cure> cures() {
        long end = found.totalSeconds();
        return Arrays.stream(net.history.joints())
                .filter(j -> net.seal[j] >= 0)
                .mapToObj(j -> new Cure(net.model.actionId(j), left(j, end)))
                .filter(cure -> cure.secondsLeft() > 0)
                .toList();
    }

    private long left(int j, long end) {
        long cure =
                net.joint(j).makeup().sealant().map(Makeup.Sealant::cureSeconds).orElse(0L);
        return found.site().end[net.last[j]] + cure - end;
    }
}
