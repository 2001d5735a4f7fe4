package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The cautions of a thing done in the strip, by the engine file alone; those of the place where one stands come on top when one
 * goes there. Ids of cautions, each once, in the order of the file.
 */
public final class StripCautions {
    /** About the weight of the whole. */
    private static final String HEAVY = "heavy-lift";

    private StripCautions() {}

    /** Of undoing a joint: its own, then the hazards of the circuits that it opens. */
    public static List<String> undoing(Engine engine, Joint joint) {
        Set<String> ids = new LinkedHashSet<>(joint.work().cautions());
        joint.freedom().opens().forEach(id -> ids.addAll(engine.circuit(id).hazards()));
        return List.copyOf(ids);
    }

    /** Of making ready: its own, then the hazards of the circuits that it drains. */
    public static List<String> readying(Engine engine, Ready ready) {
        Set<String> ids = new LinkedHashSet<>(ready.effect().cautions());
        engine.circuits().stream()
                .filter(circuit -> circuit.drains().contains(ready.id()))
                .forEach(circuit -> ids.addAll(circuit.hazards()));
        return List.copyOf(ids);
    }

    /** Of lifting parts as one piece. @param heavy whether their weight can hurt a back */
    public static List<String> lifting(Engine engine, Collection<String> parts, boolean heavy) {
        Set<String> ids = new LinkedHashSet<>();
        if (heavy) {
            ids.add(HEAVY);
        }
        parts.forEach(part -> ids.addAll(engine.part(part).care().cautions()));
        return List.copyOf(ids);
    }
}
