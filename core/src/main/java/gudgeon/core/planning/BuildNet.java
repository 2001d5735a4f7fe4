package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.planning.BuildPlan.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** The steps of a build with their places in the graph: -1 stands for a step that there is not. */
final class BuildNet {
    private static final double STAGE = 0.001;
    private static final double SEAL = 0.1;

    final Model model;
    final BuildHistory history;
    final List<LiftingWay> ways;
    final BuildGraph graph = new BuildGraph();
    /** By joint. */
    final int[] seal;

    final int[] snug;
    /** By joint: the step that makes it tight. */
    final int[] last;
    /** By joint: the first step that turns it tight; its SNUG when there is no other. */
    final int[] turn;
    /** By joint: the crack-loose operation that was done, or -1. */
    final int[] crack;
    /** By joint: the lift that closes it, or -1. */
    final int[] closing;
    /** By joint: whether its sealant goes on the threads. */
    final boolean[] sealOnThread;

    final int[] place;
    /** By action. */
    final int[] restore;
    /** By circuit. */
    final int[] fill;

    final int[] bleed;
    /** By check. */
    final int[] check;
    /** By check: the steps that it must come before. */
    final List<BitSet> checkBefore = new ArrayList<>();

    BuildNet(Model model, BuildHistory history, List<LiftingWay> ways) {
        this.model = model;
        this.history = history;
        this.ways = ways;
        seal = none(model.joints);
        snug = none(model.joints);
        last = none(model.joints);
        turn = none(model.joints);
        crack = none(model.joints);
        closing = none(model.joints);
        sealOnThread = new boolean[model.joints];
        place = none(history.lifts.size());
        restore = none(model.actions);
        fill = none(model.engine.circuits().size());
        bleed = none(model.engine.circuits().size());
        check = none(model.engine.rules().checks().size());
        for (int r : history.readyOperations()) {
            Ready ready = Steps.ready(model, r);
            if (ready.kind() == ReadyKind.CRACK_LOOSE) {
                ready.joint().ifPresent(id -> crack[model.action(id)] = r);
            }
        }
        for (int l = 0; l < history.lifts.size(); l++) {
            place[l] = graph.add(
                    Kind.PLACE,
                    "place-" + (l + 1),
                    l,
                    0,
                    backwards(history.lifts.get(l).position()));
        }
        Arrays.stream(history.joints()).forEach(this::addJoint);
        Arrays.stream(history.readyOperations()).filter(this::isTakenBack).forEach(this::addRestore);
        addCircuits();
        addChecks();
    }

    private static int[] none(int count) {
        int[] result = new int[count];
        Arrays.fill(result, -1);
        return result;
    }

    private double backwards(int position) {
        return history.length - position;
    }

    Joint joint(int action) {
        return model.engine.joints().get(action);
    }

    private void addJoint(int j) {
        Makeup makeup = joint(j).makeup();
        String id = model.actionId(j);
        double rank = backwards(history.position[j]);
        closing[j] = history.closingLift(j);
        sealOnThread[j] = closing[j] < 0
                || (!makeup.stages().isEmpty() && makeup.stages().stream().allMatch(BuildNet::isWet));
        if (makeup.sealant().isPresent()) {
            double closed = sealOnThread[j]
                    ? rank
                    : backwards(history.lifts.get(closing[j]).position());
            seal[j] = graph.add(Kind.SEAL, id + "/seal", j, 0, closed - SEAL);
        }
        snug[j] = graph.add(Kind.SNUG, id + "/snug", j, 0, rank);
        last[j] = snug[j];
        turn[j] = snug[j];
        double turned = crack[j] < 0 ? rank : backwards(history.position[crack[j]]);
        for (int s = 0; s < makeup.stages().size(); s++) {
            Kind kind = makeup.stages().get(s).torque().isPresent() ? Kind.STAGE : Kind.ANGLE;
            last[j] = graph.add(kind, id + "/" + (s + 1), j, s + 1, turned + (s + 1) * STAGE);
            turn[j] = s == 0 ? last[j] : turn[j];
        }
        if (makeup.stages().isEmpty() && crack[j] >= 0) {
            last[j] = graph.add(Kind.TIGHTEN, id + "/tight", j, 0, turned + STAGE);
            turn[j] = last[j];
        }
    }

    private static boolean isWet(Makeup.Stage stage) {
        return stage.threadState().equals("locked") || stage.threadState().equals("sealed");
    }

    /** The node of a stage, 1-based; -1 when the joint was not undone. */
    int stage(int joint, int stage) {
        return graph.find(model.actionId(joint) + "/" + stage);
    }

    /** Whether a ready operation that was done has something to take back. */
    boolean isTakenBack(int action) {
        return isTakenBack(Steps.ready(model, action));
    }

    /** Whether a ready operation has something to take back. */
    static boolean isTakenBack(Ready ready) {
        return switch (ready.kind()) {
            case SUPPORT, STRAP, PIN, HOLDING_TOOL -> true;
            case RECORD, MAKE_SAFE -> !ready.effect().restore().isEmpty();
            case DRAIN, CRACK_LOOSE -> false;
        };
    }

    private void addRestore(int r) {
        restore[r] = graph.add(Kind.RESTORE, model.actionId(r) + "/back", r, 0, backwards(history.position[r]));
    }

    private void addCircuits() {
        double end = history.length + 1.0;
        for (int c = 0; c < fill.length; c++) {
            Circuit circuit = model.engine.circuits().get(c);
            if (circuit.fluid().isEmpty()
                    || !(wasDrained(circuit) || !opened(circuit).isEmpty())) {
                continue;
            }
            fill[c] = graph.add(Kind.FILL, "fill/" + circuit.id(), c, 0, end + c);
            if (!circuit.bleed().isEmpty()) {
                bleed[c] = graph.add(Kind.BLEED, "bleed/" + circuit.id(), c, 0, end + c + STAGE);
            }
        }
    }

    private boolean wasDrained(Circuit circuit) {
        return circuit.drains().stream().anyMatch(id -> history.happened(model.action(id)));
    }

    /** The step that fills a circuit which an operation drains, bleeding included, or -1. */
    int filledAfter(String drain) {
        for (int c = 0; c < fill.length; c++) {
            if (fill[c] >= 0 && model.engine.circuits().get(c).drains().contains(drain)) {
                return bleed[c] < 0 ? fill[c] : bleed[c];
            }
        }
        return -1;
    }

    /** Joints of the strip that opened a circuit. */
    List<Integer> opened(Circuit circuit) {
        List<Integer> result = new ArrayList<>();
        for (int j : history.joints()) {
            if (joint(j).freedom().opens().contains(circuit.id())) {
                result.add(j);
            }
        }
        return result;
    }

    private void addChecks() {
        for (int k = 0; k < check.length; k++) {
            checkBefore.add(new BitSet());
            Check due = model.engine.rules().checks().get(k);
            if (due.when().isEmpty() || due.when().stream().anyMatch(id -> history.happened(model.action(id)))) {
                check[k] = graph.add(Kind.CHECK, "check/" + due.id(), k, 0, 0);
            }
        }
    }

    /** Ids of the engine that a step is about. */
    String ref(int node) {
        BuildGraph.Node step = graph.node(node);
        return switch (step.kind()) {
            case SEAL, SNUG, TIGHTEN, STAGE, ANGLE, RESTORE -> model.actionId(step.about());
            case FILL, BLEED -> model.engine.circuits().get(step.about()).id();
            case CHECK -> model.engine.rules().checks().get(step.about()).id();
            case PLACE, WAIT -> step.id();
        };
    }
}
