package gudgeon.app.desk;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import java.util.List;
import java.util.Locale;

/** Which joints stand covered: what is written of an opening names a joint, its circuit, or a part of it. */
final class CoveredJoints {
    private CoveredJoints() {}

    /** Ids of joints that are covered now, in file order. */
    static List<String> of(Job job) {
        Engine engine = job.engine();
        List<String> said = job.facts().ledger().covered().keySet().stream()
                .map(opening -> opening.strip().toLowerCase(Locale.ROOT))
                .toList();
        return engine.joints().stream()
                .filter(joint -> said.stream().anyMatch(opening -> names(engine, joint, opening)))
                .map(Joint::id)
                .toList();
    }

    private static boolean names(Engine engine, Joint joint, String opening) {
        return is(opening, joint.id(), joint.name())
                || joint.between().stream().map(engine::part).anyMatch(part -> is(opening, part.id(), part.name()))
                || joint.freedom().opens().stream()
                        .map(engine::circuit)
                        .anyMatch(circuit -> is(opening, circuit.id(), circuit.name()));
    }

    private static boolean is(String opening, String id, String name) {
        return opening.equals(id) || opening.equals(name.toLowerCase(Locale.ROOT));
    }
}
