package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.BuildPlan.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Where a build stands: steps done, what is open and away, the clock, where the person is and with what in hand. */
final class BuildSite {
    /** Typical times of steps that the engine file gives none for (common practice, typical). */
    static final long SEAL_SECONDS = 120;

    static final long FILL_SECONDS = 300;
    static final long BLEED_SECONDS = 600;

    /** What a step costs where the person stands now. */
    record Start(String zone, List<String> tools, long idle, long changeover) {}

    final BuildNet net;
    final BitSet finished;
    final long[] end;
    /** Joints open and ready operations not yet taken back, as actions. */
    final BitSet open;

    final BitSet away;
    /** Parts that may be loose. */
    final BitSet tolerated;
    /** Joints whose sealant is on, drying, and that are not yet put together; without those whose open time is given up. */
    final BitSet wet;

    long clock;
    String zone;
    List<String> tools;

    BuildSite(BuildNet net) {
        this.net = net;
        finished = new BitSet(net.graph.size());
        end = new long[net.graph.size()];
        open = (BitSet) net.history.end.done.clone();
        away = (BitSet) net.history.end.moved.clone();
        tolerated = net.history.end.loose(new BitSet());
        wet = new BitSet();
        zone = net.model.engine.workplace().startZone();
        tools = List.of();
    }

    private BuildSite(BuildSite other) {
        net = other.net;
        finished = (BitSet) other.finished.clone();
        end = other.end.clone();
        open = (BitSet) other.open.clone();
        away = (BitSet) other.away.clone();
        tolerated = (BitSet) other.tolerated.clone();
        wet = (BitSet) other.wet.clone();
        clock = other.clock;
        zone = other.zone;
        tools = other.tools;
    }

    BuildSite copy() {
        return new BuildSite(this);
    }

    /** Whether everything that must come before a step is done. */
    boolean ready(int node) {
        if (finished.get(node)) {
            return false;
        }
        for (BuildGraph.Edge edge : net.graph.into(node)) {
            if (!finished.get(edge.from())) {
                return false;
            }
        }
        return (net.graph.node(node).kind() != Kind.RESTORE
                || spared(net.graph.node(node).about()));
    }

    /**
     * Whether a check is too early: nothing that it comes before could start next, or, where it comes neither before nor after
     * anything, something else is left to do.
     */
    boolean tooEarly(int node) {
        BuildGraph.Node step = net.graph.node(node);
        if (step.kind() != Kind.CHECK) {
            return false;
        }
        BitSet before = net.checkBefore.get(step.about());
        if (before.isEmpty()) {
            return net.graph.into(node).isEmpty();
        }
        return before.stream().noneMatch(this::waitsForChecksOnly);
    }

    private boolean waitsForChecksOnly(int node) {
        return net.graph.into(node).stream()
                .map(BuildGraph.Edge::from)
                .allMatch(from -> finished.get(from) || net.graph.node(from).kind() == Kind.CHECK);
    }

    /** Whether nothing would be loose without a support, joints that are not tight counting as open. */
    private boolean spared(int action) {
        if (Steps.ready(net.model, action).kind() != ReadyKind.SUPPORT) {
            return true;
        }
        BitSet without = (BitSet) open.clone();
        for (int j : net.history.joints()) {
            without.set(j, !finished.get(net.last[j]));
        }
        without.clear(action);
        return State.of(net.model, without, away).loose(tolerated).isEmpty();
    }

    /** Parts of placed pieces that are loose. */
    BitSet loose() {
        return State.of(net.model, open, away).loose(tolerated);
    }

    /** Whether a step, done where nothing is loose and no sealant waits, leaves it so whatever comes next. */
    boolean staysCalm(int node) {
        BuildGraph.Node step = net.graph.node(node);
        return switch (step.kind()) {
            case PLACE, SEAL, RESTORE -> false;
            case SNUG -> !(net.model.flexible[step.about()] && net.model.rests[step.about()]);
            case TIGHTEN, STAGE, ANGLE, FILL, BLEED, CHECK, WAIT -> true;
        };
    }

    /** Whether a step is done where the person stands. */
    boolean onTheWay(int node) {
        Kind kind = net.graph.node(node).kind();
        return kind == Kind.PLACE || kind == Kind.SEAL;
    }

    /** What a step costs now. */
    Start start(int node) {
        long earliest = 0;
        for (BuildGraph.Edge edge : net.graph.into(node)) {
            earliest = Math.max(earliest, end[edge.from()] + edge.min());
        }
        if (onTheWay(node)) {
            return new Start(zone, tools, Math.max(0, earliest - clock), 0);
        }
        String nextZone = zoneOf(node);
        List<String> nextTools = toolsOf(node);
        long changeover = travel(zone, nextZone) + pickUp(nextTools);
        return new Start(nextZone, nextTools, Math.max(0, earliest - clock - changeover), changeover);
    }

    /** Whether a step, started now, keeps every longest time. */
    boolean inTime(int node, Start start) {
        long begins = clock + start.idle() + start.changeover();
        return net.graph.into(node).stream()
                .allMatch(edge -> edge.max().isEmpty()
                        || begins - end[edge.from()] <= edge.max().getAsLong());
    }

    void perform(int node, Start start) {
        clock += start.idle() + start.changeover() + seconds(node);
        zone = start.zone();
        tools = start.tools();
        finished.set(node);
        end[node] = clock;
        BuildGraph.Node step = net.graph.node(node);
        switch (step.kind()) {
            case SNUG -> {
                open.clear(step.about());
                wet.clear(step.about());
            }
            case RESTORE -> open.clear(step.about());
            case SEAL -> wet.set(step.about(), openSeconds(step.about()) > 0);
            case PLACE -> away.andNot(net.history.lifts.get(step.about()).parts());
            case TIGHTEN, STAGE, ANGLE, FILL, BLEED, CHECK, WAIT -> {}
        }
    }

    long travel(String from, String to) {
        return from.equals(to)
                ? 0
                : net.model.engine.zone(from).backSeconds()
                        + net.model.engine.zone(to).goSeconds();
    }

    private long pickUp(List<String> next) {
        long taken =
                next.stream().distinct().filter(tool -> !tools.contains(tool)).count();
        return taken * net.model.engine.workplace().toolChangeSeconds();
    }

    private String zoneOf(int node) {
        BuildGraph.Node step = net.graph.node(node);
        return switch (step.kind()) {
            case SNUG, TIGHTEN, STAGE, ANGLE ->
                Arrays.stream(net.model.jointParts[step.about()]).allMatch(away::get)
                        ? Zone.BENCH
                        : net.joint(step.about()).work().zone();
            case RESTORE -> Steps.ready(net.model, step.about()).zone();
            case CHECK -> checkOf(step).work().zone();
            case FILL, BLEED -> net.model.engine.workplace().startZone();
            case PLACE, SEAL, WAIT -> zone;
        };
    }

    private List<String> toolsOf(int node) {
        BuildGraph.Node step = net.graph.node(node);
        return switch (step.kind()) {
            case SNUG, TIGHTEN, STAGE, ANGLE -> net.joint(step.about()).work().buildTools();
            case RESTORE -> Steps.ready(net.model, step.about()).tools();
            case CHECK -> checkOf(step).work().tools();
            case FILL, BLEED, PLACE, SEAL, WAIT -> List.of();
        };
    }

    private Check checkOf(BuildGraph.Node step) {
        return net.model.engine.rules().checks().get(step.about());
    }

    /** Longest time that the sealant of a joint may be open; 0 when it does not matter. */
    long openSeconds(int joint) {
        return net.joint(joint)
                .makeup()
                .sealant()
                .map(Makeup.Sealant::openSeconds)
                .orElse(0L);
    }

    /** How long a step takes. */
    long seconds(int node) {
        BuildGraph.Node step = net.graph.node(node);
        return switch (step.kind()) {
            case SEAL -> SEAL_SECONDS;
            case PLACE -> BuildLifting.seconds(net, step.about());
            case SNUG -> shares(net.joint(step.about())).getFirst();
            case TIGHTEN, STAGE, ANGLE -> shares(net.joint(step.about())).getLast();
            case RESTORE -> Steps.ready(net.model, step.about()).seconds();
            case FILL -> FILL_SECONDS;
            case BLEED -> BLEED_SECONDS;
            case CHECK -> checkOf(step).work().seconds();
            case WAIT -> 0;
        };
    }

    /** Time of the SNUG and of each later step of a joint. */
    private List<Long> shares(Joint joint) {
        long whole = joint.work().buildSeconds();
        int j = net.model.action(joint.id());
        int stages = joint.makeup().stages().isEmpty() && net.turn[j] != net.snug[j]
                ? 1
                : joint.makeup().stages().size();
        if (stages == 0) {
            return new ArrayList<>(List.of(whole));
        }
        long each = whole / 2 / stages;
        return new ArrayList<>(List.of(whole - each * stages, each));
    }
}
