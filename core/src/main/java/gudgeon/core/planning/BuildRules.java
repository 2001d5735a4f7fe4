package gudgeon.core.planning;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.planning.BuildHistory.Doubt;
import gudgeon.core.planning.BuildHistory.Met;
import gudgeon.core.planning.BuildPlan.CorrectionKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/**
 * What the strip says must come before what on the way back. Everything here fits the strip read backwards, so nothing here
 * can close a circle.
 */
final class BuildRules {
    private final BuildNet net;
    private final Model model;
    private final BuildHistory history;
    private final BuildGraph graph;

    private BuildRules(BuildNet net) {
        this.net = net;
        model = net.model;
        history = net.history;
        graph = net.graph;
    }

    static BuildRules apply(BuildNet net) {
        BuildRules rules = new BuildRules(net);
        for (int j : net.history.joints()) {
            rules.stages(j);
            rules.sealant(j);
            rules.meets(j);
            rules.room(j);
            rules.hold(j);
        }
        for (int l = 0; l < net.place.length; l++) {
            rules.lift(l);
        }
        IntStream.of(net.history.readyOperations())
                .filter(r -> net.restore[r] >= 0)
                .forEach(rules::takenBack);
        rules.circuits();
        return rules;
    }

    private void stages(int j) {
        int previous = net.snug[j];
        for (int s = 1; s <= net.joint(j).makeup().stages().size(); s++) {
            graph.before(previous, net.stage(j, s));
            previous = net.stage(j, s);
        }
        graph.before(net.snug[j], net.turn[j] == net.snug[j] ? -1 : net.turn[j]);
    }

    private void sealant(int j) {
        if (net.seal[j] < 0) {
            return;
        }
        Makeup.Sealant sealant = net.joint(j).makeup().sealant().orElseThrow();
        OptionalLong open = sealant.openSeconds() > 0 ? OptionalLong.of(sealant.openSeconds()) : OptionalLong.empty();
        graph.before(net.seal[j], net.snug[j], 0, open);
        for (int part : model.jointParts[j]) {
            int lift = history.liftOf[part];
            if (lift < 0 || history.wasAway(part, j)) {
                continue;
            }
            if (net.sealOnThread[j] || lift != net.closing[j]) {
                graph.before(net.place[lift], net.seal[j]);
            } else {
                graph.before(net.seal[j], net.place[lift]);
            }
        }
    }

    /** A joint meets its parts where it left them. */
    private void meets(int j) {
        boolean cracked = net.crack[j] >= 0;
        for (int part : model.jointParts[j]) {
            int lift = history.liftOf[part];
            if (lift < 0) {
                continue;
            }
            if (history.wasAway(part, j)) {
                graph.before(cracked ? net.snug[j] : net.last[j], net.place[lift]);
            } else {
                graph.before(net.place[lift], net.snug[j]);
            }
            if (cracked && history.wasAway(part, net.crack[j])) {
                graph.before(net.last[j], net.place[lift]);
            } else if (cracked) {
                graph.before(net.place[lift], net.turn[j]);
            }
        }
    }

    private void room(int j) {
        int crack = net.crack[j];
        int[] judge = model.jointParts[j];
        String id = model.actionId(j);
        List<Met> met =
                history.met(model.access[j], history.stateBefore(j), judge, new Doubt(CorrectionKind.ACCESS, id));
        keepsRoom(crack >= 0 ? net.snug[j] : net.last[j], met, judge, history.onBench(j, j));
        if (crack >= 0) {
            Doubt doubt = new Doubt(CorrectionKind.ACCESS, model.actionId(crack));
            keepsRoom(
                    net.last[j],
                    history.met(model.access[crack], history.stateBefore(crack), judge, doubt),
                    judge,
                    history.onBench(j, crack));
            needs(crack, net.last[j]);
        }
        needs(j, net.snug[j]);
        for (int circuit : model.opens[j]) {
            circuitReady(j, circuit);
        }
    }

    /** The step comes before whatever would take its room. */
    void keepsRoom(int step, List<Met> met, int[] judge, boolean onBench) {
        for (Met one : met) {
            for (int later : takesRoom(one, judge, onBench)) {
                graph.before(step, later);
            }
        }
    }

    /** The steps that would make a literal that held fail. */
    List<Integer> takesRoom(Met met, int[] judge, boolean onBench) {
        if (met.literal() < 0) {
            int undone = ~met.literal();
            return undone < model.joints && net.snug[undone] >= 0 ? List.of(net.snug[undone]) : List.of();
        }
        List<Integer> later = new ArrayList<>();
        int lift = history.liftOf[met.literal()];
        if (!onBench && lift >= 0) {
            later.add(net.place[lift]);
        }
        if (IntStream.of(judge).anyMatch(part -> met.before().moved.get(part))) {
            history.cutAround(met.literal(), met.before()).forEach(around -> later.add(net.snug[around]));
        }
        return later;
    }

    private void needs(int action, int step) {
        for (int need : model.needs[action]) {
            if (!history.happened(need) || history.position[need] > history.position[action]) {
                history.correct(CorrectionKind.NEEDS, model.actionId(action), List.of(model.actionId(need)));
            } else {
                graph.before(step, net.restore[need]);
                stays(action, need);
            }
        }
    }

    /** What a joint needs stays until it is tight; what came only after it was cracked loose until it is put together. */
    private void stays(int action, int need) {
        if (action >= model.joints) {
            return;
        }
        int crack = net.crack[action];
        if (crack < 0 || history.position[need] < history.position[crack]) {
            graph.before(net.last[action], net.restore[need]);
        }
    }

    private void circuitReady(int j, int circuit) {
        List<String> lacking = new ArrayList<>();
        for (int safe : model.makeSafe[circuit]) {
            if (history.stateBefore(j).done.get(safe)) {
                graph.before(net.snug[j], net.restore[safe]);
                stays(j, safe);
            } else {
                lacking.add(model.actionId(safe));
            }
        }
        int[] drains = model.drains[circuit];
        if (drains.length > 0 && IntStream.of(drains).noneMatch(history.stateBefore(j).done::get)) {
            IntStream.of(drains).forEach(drain -> lacking.add(model.actionId(drain)));
        }
        if (!lacking.isEmpty()) {
            history.correct(CorrectionKind.CIRCUIT, model.actionId(j), lacking);
        }
    }

    private void hold(int j) {
        int crack = net.crack[j];
        held(j, j, net.joint(j).freedom().hold());
        if (crack >= 0) {
            held(j, crack, Steps.ready(model, crack).effect().hold());
        }
    }

    private void held(int j, int action, Joint.Hold hold) {
        if (hold.alternatives().isEmpty()) {
            return;
        }
        BitSet done = history.stateBefore(action).done;
        for (List<String> alternative : hold.alternatives()) {
            if (alternative.stream().noneMatch(id -> done.get(model.action(id)))) {
                alternative.forEach(id -> holds(net.snug[model.action(id)], j));
                return;
            }
        }
        history.correct(
                CorrectionKind.HOLD,
                model.actionId(action),
                hold.alternatives().stream().flatMap(List::stream).distinct().toList());
    }

    /** A joint that is all done with its SNUG meets its holder open or closed. */
    private void holds(int holder, int j) {
        if (net.turn[j] != net.snug[j]) {
            graph.before(holder, net.turn[j]);
        }
    }

    private void lift(int l) {
        BuildHistory.Lifted lifted = history.lifts.get(l);
        for (int part = lifted.parts().nextSetBit(0);
                part >= 0;
                part = lifted.parts().nextSetBit(part + 1)) {
            for (Met met : history.metByLift(part, lifted)) {
                int literal = met.literal();
                if (literal < 0) {
                    graph.before(net.place[l], ~literal < model.joints ? net.snug[~literal] : -1);
                } else if (!lifted.parts().get(literal)) {
                    graph.before(net.place[l], net.place[history.liftOf[literal]]);
                }
            }
            for (int j : model.jointsOfPart[part]) {
                if (model.flexible[j] && !lifted.before().done.get(j)) {
                    hangs(l, j);
                }
            }
        }
    }

    /** While a lift hangs on a flexible joint, the joint must carry it whenever its other end is in place. */
    private void hangs(int l, int j) {
        BuildHistory.Lifted lifted = history.lifts.get(l);
        if (model.holds[j] >= mass(lifted.parts())) {
            return;
        }
        int strap = model.strap[j];
        if (strap >= 0 && lifted.before().done.get(strap)) {
            graph.before(net.place[l], net.restore[strap]);
            return;
        }
        int[] outside = IntStream.of(model.jointParts[j])
                .filter(part -> !lifted.parts().get(part))
                .toArray();
        if (IntStream.of(outside).allMatch(lifted.before().moved::get)) {
            IntStream.of(outside).forEach(part -> graph.before(net.place[l], net.place[history.liftOf[part]]));
        } else {
            history.correct(
                    CorrectionKind.HANGS, model.partId(lifted.parts().nextSetBit(0)), List.of(model.actionId(j)));
        }
    }

    long mass(BitSet parts) {
        return parts.stream().mapToLong(part -> model.mass[part]).sum();
    }

    private void takenBack(int r) {
        int step = net.restore[r];
        Doubt doubt = new Doubt(CorrectionKind.ACCESS, model.actionId(r));
        for (Met met : history.met(model.access[r], history.stateBefore(r), null, doubt)) {
            int literal = met.literal();
            if (literal >= 0) {
                graph.before(step, net.place[history.liftOf[literal]]);
            } else if (~literal < model.joints) {
                graph.before(step, net.snug[~literal]);
            }
        }
        needs(r, step);
    }

    private void circuits() {
        for (int c = 0; c < net.fill.length; c++) {
            if (net.fill[c] < 0) {
                continue;
            }
            Circuit circuit = model.engine.circuits().get(c);
            for (int j : net.opened(circuit)) {
                long cure = net.joint(j)
                        .makeup()
                        .sealant()
                        .map(Makeup.Sealant::cureSeconds)
                        .orElse(0L);
                graph.before(net.last[j], net.fill[c], cure, OptionalLong.empty());
            }
            graph.before(net.fill[c], net.bleed[c]);
            for (int safe : model.makeSafe[c]) {
                graph.before(net.fill[c], net.restore[safe]);
            }
        }
    }

    /** Make-safe operations of electric circuits come back after everything that need not come after them. */
    static void electricLast(BuildNet net) {
        Model model = net.model;
        List<Integer> electric = model.engine.circuits().stream()
                .filter(circuit -> circuit.kind() == CircuitKind.ELECTRIC)
                .flatMap(circuit -> circuit.makeSafe().stream())
                .map(model::action)
                .distinct()
                .filter(r -> net.restore[r] >= 0)
                .sorted(Comparator.comparingInt(r -> net.history.position[r]))
                .toList();
        for (int r : electric) {
            for (int record : net.history.readyOperations()) {
                if (Steps.ready(model, record).kind() == ReadyKind.RECORD
                        && net.history.position[record] < net.history.position[r]) {
                    net.graph.before(net.restore[r], net.restore[record]);
                }
            }
        }
        for (int r : electric) {
            int step = net.restore[r];
            BitSet later = net.graph.reachable(step);
            for (int node = 0; node < net.graph.size(); node++) {
                if (node != step && !later.get(node)) {
                    net.graph.before(node, step);
                }
            }
        }
    }
}
