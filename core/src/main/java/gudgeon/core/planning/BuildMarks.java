package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Makeup;
import gudgeon.core.planning.BuildHistory.Met;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Lack;
import gudgeon.core.planning.BuildPlan.LackKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;

/**
 * What the strip does not know: marks, checks and the further room of tightening. Each is added in file order; what would
 * close a circle is left out, and the step is blocked with the pair.
 */
final class BuildMarks {
    private final BuildNet net;
    private final Model model;
    private final BuildHistory history;
    private final BuildGraph graph;
    private final BuildRules rules;

    private BuildMarks(BuildNet net, BuildRules rules) {
        this.net = net;
        this.rules = rules;
        model = net.model;
        history = net.history;
        graph = net.graph;
    }

    static void apply(BuildNet net, BuildRules rules) {
        BuildMarks marks = new BuildMarks(net, rules);
        for (int j : net.history.joints()) {
            marks.afterJoint(j);
        }
        for (int j : net.history.joints()) {
            marks.buildRoom(j);
        }
        for (int k = 0; k < net.check.length; k++) {
            if (net.check[k] >= 0) {
                marks.check(k);
            }
        }
        marks.priming();
    }

    private void afterJoint(int j) {
        Makeup makeup = net.joint(j).makeup();
        for (String mark : makeup.after()) {
            reached(mark).ifPresent(step -> beforeStart(step, mark, j));
        }
        for (int s = 0; s < makeup.stages().size(); s++) {
            int stage = net.stage(j, s + 1);
            for (String mark : makeup.stages().get(s).after()) {
                reached(mark).ifPresent(step -> orBlocked(step, stage, mark));
            }
        }
    }

    /** The step by which a mark is reached; empty when it is reached from the start. */
    private OptionalInt reached(String mark) {
        int slash = mark.indexOf('/');
        String id = slash < 0 ? mark : mark.substring(0, slash);
        for (int k = 0; k < net.check.length; k++) {
            if (slash < 0 && model.engine.rules().checks().get(k).id().equals(id)) {
                return step(net.check[k]);
            }
        }
        int action = model.action(id);
        if (action >= model.joints) {
            return step(net.restore[action] < 0 ? net.filledAfter(id) : net.restore[action]);
        }
        if (slash < 0 || net.snug[action] < 0) {
            return step(net.last[action]);
        }
        if (mark.endsWith("/snug")) {
            return step(net.snug[action]);
        }
        int stage = net.stage(action, Integer.parseInt(mark.substring(slash + 1)));
        return step(stage < 0 ? net.last[action] : stage);
    }

    private static OptionalInt step(int node) {
        return node < 0 ? OptionalInt.empty() : OptionalInt.of(node);
    }

    /** A step comes before a joint is started: before its closing placing where it does not depend on that. */
    private void beforeStart(int step, String mark, int j) {
        int closing = net.closing[j] < 0 ? -1 : net.place[net.closing[j]];
        if (closing >= 0 && !graph.reaches(closing, step)) {
            graph.before(step, closing);
            putOff(step, closing);
        }
        if (net.seal[j] >= 0 && !graph.reaches(net.seal[j], step)) {
            graph.before(step, net.seal[j]);
            putOff(step, net.seal[j]);
        }
        orBlocked(step, net.snug[j], mark);
    }

    private void orBlocked(int first, int then, String about) {
        orBlocked(first, then, about, 0);
    }

    private void orBlocked(int first, int then, String about, long min) {
        if (graph.before(first, then, min, OptionalLong.empty())) {
            putOff(first, then);
        } else {
            graph.lack(then, new Lack(LackKind.ORDER, List.of(about, net.ref(then)), List.of()));
        }
    }

    /** A check is put off until something that it comes before could start. */
    private void putOff(int first, int then) {
        if (graph.node(first).kind() == Kind.CHECK) {
            net.checkBefore.get(graph.node(first).about()).set(then);
        }
    }

    private void buildRoom(int j) {
        int[] judge = model.jointParts[j];
        int action = net.crack[j] < 0 ? j : net.crack[j];
        State state = whileTightened(j, action);
        int[][][] clauses = model.compile(net.joint(j).freedom().accessBuild());
        for (int[][] clause : clauses) {
            buildRoom(j, clause, state, history.onBench(j, action));
        }
    }

    /** The state with most room in which a joint can be tightened: all of the strip open but it, its parts where they belong. */
    private State whileTightened(int j, int action) {
        State state = State.of(model, history.end.done, history.end.moved);
        state.done.clear(j);
        for (int part : model.jointParts[j]) {
            int lift = history.liftOf[part];
            if (lift >= 0 && !history.wasAway(part, action)) {
                state.moved.andNot(history.lifts.get(lift).parts());
            }
        }
        return State.of(model, state.done, state.moved);
    }

    private void buildRoom(int j, int[][] clause, State state, boolean onBench) {
        int[] judge = model.jointParts[j];
        boolean some = false;
        for (int[] alternative : clause) {
            if (!state.holds(new int[][][] {{alternative}}, judge)) {
                continue;
            }
            some = true;
            List<Integer> later = new ArrayList<>();
            for (int literal : alternative) {
                later.addAll(rules.takesRoom(new Met(literal, state), judge, onBench));
            }
            if (later.stream().noneMatch(step -> graph.reaches(step, net.last[j]))) {
                later.forEach(step -> graph.before(net.last[j], step));
                return;
            }
        }
        Set<String> ids = new LinkedHashSet<>();
        for (int[] alternative : clause) {
            for (int literal : alternative) {
                ids.add(literal < 0 ? model.actionId(~literal) : model.partId(literal));
            }
        }
        List<String> about = new ArrayList<>(List.of(model.actionId(j)));
        about.addAll(ids);
        for (int step = net.turn[j]; step >= 0; step = next(j, step)) {
            graph.lack(step, new Lack(some ? LackKind.ORDER : LackKind.NO_ROOM, about, List.of()));
        }
    }

    private int next(int j, int step) {
        return step == net.last[j] ? -1 : net.stage(j, graph.node(step).stage() + 1);
    }

    private void check(int k) {
        Check check = model.engine.rules().checks().get(k);
        int node = net.check[k];
        for (String mark : check.after()) {
            reached(mark).ifPresent(step -> orBlocked(step, node, mark, check.minLagSeconds()));
        }
        for (String mark : check.before()) {
            int action = mark.indexOf('/') < 0 ? jointOf(mark) : jointOf(mark.replace("/snug", ""));
            if (action >= 0) {
                if (net.snug[action] >= 0) {
                    beforeStart(node, check.id(), action);
                }
            } else {
                reached(mark).ifPresent(step -> orBlocked(node, step, check.id()));
            }
        }
    }

    /** The joint that an id names, or -1. */
    private int jointOf(String id) {
        return model.engine.findJoint(id).isPresent() ? model.action(id) : -1;
    }

    /** Priming comes after filling, and waits for the cure of the joints that it depends on anyway. */
    private void priming() {
        for (int k = 0; k < net.check.length; k++) {
            if (net.check[k] < 0 || !model.engine.rules().checks().get(k).kind().equals("prime")) {
                continue;
            }
            for (int c = 0; c < net.fill.length; c++) {
                graph.before(net.bleed[c] < 0 ? net.fill[c] : net.bleed[c], net.check[k]);
            }
            for (int j : history.joints()) {
                long cure = net.joint(j)
                        .makeup()
                        .sealant()
                        .map(Makeup.Sealant::cureSeconds)
                        .orElse(0L);
                if (cure > 0 && graph.reaches(net.last[j], net.check[k])) {
                    graph.before(net.last[j], net.check[k], cure, OptionalLong.empty());
                }
            }
        }
    }
}
