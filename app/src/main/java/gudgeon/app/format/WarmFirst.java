package gudgeon.app.format;

import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import java.util.ArrayList;
import java.util.List;

/** Derives the order that the warmth of the engine asks for: what is done warm comes before what is done cold and before the drains. */
final class WarmFirst {
    static final String BEFORE_COLD = "it is done while the engine is warm, the other when it is cold";
    static final String BEFORE_DRAIN =
            "it is done while the engine is warm, and the engine does not run again after draining";

    private WarmFirst() {}

    private record Operation(String id, Joint.EngineState state, boolean drain) {}

    static List<Precedence> derive(List<Joint> joints, List<Ready> ready) {
        List<Operation> all = new ArrayList<>();
        joints.forEach(
                joint -> all.add(new Operation(joint.id(), joint.freedom().engineState(), false)));
        ready.forEach(operation -> all.add(
                new Operation(operation.id(), operation.effect().engineState(), operation.kind() == ReadyKind.DRAIN)));
        List<Operation> later = all.stream()
                .filter(operation -> operation.drain || operation.state == Joint.EngineState.COLD)
                .toList();
        List<Precedence> derived = new ArrayList<>();
        for (Operation warm : all) {
            if (warm.state != Joint.EngineState.WARM) {
                continue;
            }
            for (Operation then : later) {
                boolean cold = then.state == Joint.EngineState.COLD;
                boolean twoWarmDrains = warm.drain && then.drain && !cold;
                if (!then.id.equals(warm.id) && !twoWarmDrains) {
                    derived.add(new Precedence(warm.id, then.id, cold ? BEFORE_COLD : BEFORE_DRAIN));
                }
            }
        }
        return derived;
    }
}
