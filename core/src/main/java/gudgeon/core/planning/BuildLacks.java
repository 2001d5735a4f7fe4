package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Spend;
import gudgeon.core.planning.BuildPlan.Input;
import gudgeon.core.planning.BuildPlan.InputKind;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Lack;
import gudgeon.core.planning.BuildPlan.LackKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What each step uses up, and what it lacks. */
final class BuildLacks {
    private final BuildNet net;
    private final BuildRequest request;
    private final List<List<Input>> inputs = new ArrayList<>();

    BuildLacks(BuildNet net, BuildRequest request) {
        this.net = net;
        this.request = request;
        for (int n = 0; n < net.graph.size(); n++) {
            inputs.add(new ArrayList<>());
        }
        Arrays.stream(net.history.joints()).forEach(this::joint);
        for (int r : net.history.readyOperations()) {
            if (net.restore[r] >= 0) {
                Steps.ready(net.model, r)
                        .effect()
                        .spends()
                        .forEach(spend -> inputs.get(net.restore[r]).add(piece(net.model.actionId(r), spend)));
            }
        }
        for (int c = 0; c < net.fill.length; c++) {
            fill(c);
        }
        for (int n = 0; n < net.graph.size(); n++) {
            lack(n);
        }
    }

    List<Input> inputs(int node) {
        return inputs.get(node);
    }

    /** What undoing a joint in the strip used up. */
    static List<Spend> spends(BuildNet net, int j) {
        Joint joint = net.joint(j);
        List<Spend> spends = new ArrayList<>(joint.makeup().spends());
        if (net.history.cut.get(j)) {
            joint.work().cut().ifPresent(cut -> spends.addAll(cut.destroys()));
        }
        return spends;
    }

    /** The step at which the new pieces of a joint are asked for. */
    static int asks(BuildNet net, int j) {
        if (net.model.flexible[j]) {
            return net.snug[j];
        }
        if (net.seal[j] >= 0 && (net.closing[j] < 0 || !net.sealOnThread[j])) {
            return net.seal[j];
        }
        return net.closing[j] < 0 ? net.snug[j] : net.place[net.closing[j]];
    }

    private static Input piece(String id, Spend spend) {
        return new Input(InputKind.PIECE, id, spend.spec(), spend.count(), null);
    }

    private void joint(int j) {
        String id = net.model.actionId(j);
        spends(net, j).forEach(spend -> inputs.get(asks(net, j)).add(piece(id, spend)));
        if (net.seal[j] >= 0) {
            Makeup.Sealant sealant = net.joint(j).makeup().sealant().orElseThrow();
            inputs.get(net.seal[j]).add(new Input(InputKind.SEALANT, id, sealant.spec(), 1, null));
        }
        if (net.model.licensed[j]) {
            IntStream.of(net.snug[j], net.turn[j], net.last[j])
                    .distinct()
                    .forEach(step -> net.graph.lack(step, new Lack(LackKind.LICENSED, List.of(id), List.of())));
        }
    }

    private void fill(int c) {
        if (net.fill[c] < 0) {
            return;
        }
        Circuit circuit = net.model.engine.circuits().get(c);
        inputs.get(net.fill[c])
                .add(new Input(
                        InputKind.FLUID,
                        circuit.id(),
                        circuit.fluid(),
                        1,
                        circuit.capacity().orElse(null)));
        if (circuit.kind().licensed()) {
            net.graph.lack(net.fill[c], new Lack(LackKind.LICENSED, List.of(circuit.id()), List.of()));
        }
    }

    private void lack(int n) {
        BuildGraph.Node node = net.graph.node(n);
        List<String> missing = inputs.get(n).stream()
                .map(Input::spec)
                .filter(request.missing()::contains)
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            net.graph.lack(n, new Lack(LackKind.NOT_IN_HAND, missing, List.of()));
        }
        if (node.kind() == Kind.PLACE
                && BuildLifting.way(net, node.about(), net.ways).isEmpty()) {
            net.graph.lack(n, tooHeavy(node.about()));
        }
        if (node.stage() > 0) {
            Makeup.Stage stage = net.joint(node.about()).makeup().stages().get(node.stage() - 1);
            if (stage.threadState().isEmpty()) {
                net.graph.lack(n, new Lack(LackKind.THREAD_STATE, List.of(net.ref(n)), List.of()));
            }
        }
        if (node.kind() == Kind.CHECK) {
            gate(n, net.model.engine.rules().checks().get(node.about()));
        }
    }

    private Lack tooHeavy(int lift) {
        List<String> parts = net.history.lifts.get(lift).parts().stream()
                .mapToObj(net.model::partId)
                .toList();
        List<String> helps = net.model.engine.workplace().waysOfLifting().stream()
                .filter(way -> Model.milligrams(way.limitKilograms()) >= BuildLifting.milligrams(net, lift))
                .sorted(Comparator.comparingDouble(LiftingWay::limitKilograms))
                .map(LiftingWay::name)
                .toList();
        return new Lack(LackKind.TOO_HEAVY, parts, helps);
    }

    private void gate(int n, Check check) {
        if (!check.gate()) {
            return;
        }
        List<String> open = net.model.engine.features().stream()
                .filter(feature -> restsOn(check, feature))
                .filter(feature -> feature.limits().stream().anyMatch(Feature.Limit::typical))
                .map(Feature::id)
                .filter(id -> !request.confirmed().contains(id))
                .toList();
        if (!open.isEmpty()) {
            net.graph.lack(n, new Lack(LackKind.LIMIT_NOT_CONFIRMED, open, List.of()));
        }
    }

    private static boolean restsOn(Check check, Feature feature) {
        String id = feature.id();
        return id.equals(check.id())
                || (id.startsWith(check.id() + "-")
                        && id.substring(check.id().length() + 1).chars().allMatch(c -> c >= '0' && c <= '9'));
    }
}
